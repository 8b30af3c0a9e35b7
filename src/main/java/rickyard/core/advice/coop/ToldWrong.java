package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.PortionLine;
import rickyard.core.forage.Decision;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;

/**
 * A horse of which, or of whose hay, the register says last that it clears, and it does not.
 *
 * @param horse register key
 * @param client whose it is
 * @param lot the hay that was spoken about, or most of what the horse is fed
 * @param told the last row of the register about it
 * @param now what holds instead
 */
record ToldWrong(String horse, String client, String lot, Decision told, String now) {
  private static final Set<String> DEALING = Set.of("told", "accepted", "override");

  /**
   * All of them, in the order of the advice; a horse once.
   *
   * @param decisions not after the morning
   * @param lots for each lot its verdicts
   */
  static List<ToldWrong> of(
      List<HorseAdvice> all, List<Decision> decisions, Map<String, List<Verdict>> lots) {
    List<ToldWrong> found = new ArrayList<>();
    for (HorseAdvice advice : all) {
      @Nullable DietSummary diet = advice.after();
      if (diet != null) {
        ofDiet(advice, diet, decisions)
            .or(() -> ofLots(advice, diet, decisions, lots))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private static Optional<ToldWrong> ofDiet(
      HorseAdvice advice, DietSummary diet, List<Decision> decisions) {
    @Nullable LimitLine worst = diet.worst();
    if (worst == null || worst.verdict().equals(Word.CLEARS.code())) {
      return Optional.empty();
    }
    return said(about(advice, most(diet)), decisions)
        .map(
            told ->
                new ToldWrong(
                    advice.horse(),
                    advice.client(),
                    most(diet),
                    told,
                    worst.limitId() + ": " + worst.verdict() + " now (" + worst.reason() + ")"));
  }

  private static String most(DietSummary diet) {
    return diet.portions().stream()
        .filter(PortionLine::asForage)
        .max(
            Comparator.comparingDouble(PortionLine::dmKg)
                .thenComparing(PortionLine::item, Comparator.reverseOrder()))
        .map(PortionLine::item)
        .orElse("");
  }

  private static Optional<ToldWrong> ofLots(
      HorseAdvice advice,
      DietSummary diet,
      List<Decision> decisions,
      Map<String, List<Verdict>> lots) {
    for (PortionLine portion : diet.portions()) {
      String lot = portion.item();
      Optional<Verdict> against =
          lots.getOrDefault(lot, List.of()).stream()
              .filter(v -> portion.asForage() && isAgainst(v, advice.groups()))
              .findFirst();
      Optional<Decision> told = said(about(advice, lot), decisions);
      if (against.isPresent() && told.isPresent()) {
        Verdict verdict = against.get();
        return Optional.of(
            new ToldWrong(
                advice.horse(),
                advice.client(),
                lot,
                told.get(),
                verdict.limit().id()
                    + ": "
                    + verdict.word().code()
                    + " now ("
                    + verdict.reason()
                    + ")"));
      }
    }
    return Optional.empty();
  }

  private static boolean isAgainst(Verdict verdict, List<String> groups) {
    Limit limit = verdict.limit();
    boolean asksForChange =
        limit.severity() == Severity.STOP || limit.severity() == Severity.CHANGE;
    return asksForChange
        && !verdict.isSilent()
        && !verdict.word().isCleared()
        && (limit.group().equals(Limit.ALL) || groups.contains(limit.group()));
  }

  private static List<String> about(HorseAdvice advice, String lot) {
    return List.of(advice.horse(), lot, lot + " " + advice.client());
  }

  /** The last row about any of these, where it tells that it clears. */
  private static Optional<Decision> said(List<String> about, List<Decision> decisions) {
    return decisions.stream()
        .filter(d -> DEALING.contains(d.kind()) && about.contains(d.about()))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
        .filter(d -> d.kind().equals("told") && d.value().strip().equals(Word.CLEARS.code()));
  }
}
