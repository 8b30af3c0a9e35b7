package rickyard.core.advice;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Portion;

/** What the verdicts on lots themselves have to say about a ration. */
final class LotHazards {
  private static final double WHOLE_SHARE = 0.999;

  private final Map<String, List<Verdict>> verdicts;
  private final List<Limit> limits;
  private final HorseGroups groups;

  /**
   * @param verdicts by lot
   * @param limits the table of limits
   */
  LotHazards(Map<String, List<Verdict>> verdicts, List<Limit> limits, HorseGroups groups) {
    this.verdicts = verdicts;
    this.limits = limits;
    this.groups = groups;
  }

  /** The verdicts on a lot that is all of the forage; of any other it is the diet that counts. */
  List<Verdict> alone(List<Portion> portions) {
    double forage =
        portions.stream().filter(p -> p.food().isForage()).mapToDouble(Portion::kgDm).sum();
    return portions.stream()
        .filter(p -> p.food().isForage() && p.kgDm() >= WHOLE_SHARE * forage && forage > 0)
        .flatMap(this::own)
        .toList();
  }

  /**
   * What no mixing takes away, such as mould: verdicts that stop the feeding of a lot for something
   * that no limit of the diet counts, whatever share of the forage the lot is.
   */
  List<Verdict> notDiluted(List<Portion> portions) {
    return portions.stream()
        .filter(p -> p.food().isForage() && p.kgDm() > 0)
        .flatMap(this::own)
        .filter(v -> v.limit().severity() == Severity.STOP && !v.isSilent())
        .filter(v -> !v.word().isCleared())
        .filter(v -> limits.stream().noneMatch(l -> isOfDiet(l, v.limit())))
        .toList();
  }

  private static boolean isOfDiet(Limit limit, Limit ofLot) {
    return limit.subject() == LimitSubject.DIET && limit.quantity().equals(ofLot.quantity());
  }

  private Stream<Verdict> own(Portion portion) {
    return verdicts.getOrDefault(portion.food().id(), List.of()).stream()
        .filter(
            v ->
                v.limit().group().equals(Limit.ALL) || groups.groups().contains(v.limit().group()));
  }
}
