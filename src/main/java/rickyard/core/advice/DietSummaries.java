package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.WorstVerdict;
import rickyard.core.nutrition.Amount;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.DietItem;
import rickyard.core.nutrition.DietNote;
import rickyard.core.nutrition.NutrientLine;
import rickyard.core.nutrition.Portion;
import rickyard.core.quantity.Measured;

/** Turns a diet and its verdicts into the plain rows that outputs and the next morning use. */
final class DietSummaries {
  private DietSummaries() {}

  static DietSummary of(Diet diet, List<Verdict> verdicts) {
    return of(diet, verdicts, Optional.empty());
  }

  /**
   * The same for a horse that shares a bale: the verdicts on the bale stand beside its own.
   *
   * @param herd what it shares and with whom
   */
  static DietSummary of(Diet diet, List<Verdict> verdicts, Optional<Herd> herd) {
    List<BaleVerdict> bales = herd.map(Herd::verdicts).orElse(List.of());
    Optional<Measured> nsc = bounded(diet, AnalyteCode.NSC_WSC);
    Optional<Measured> esc = bounded(diet, AnalyteCode.NSC_ESC);
    return new DietSummary(
        diet.intake().kgAsFed(),
        diet.intake().kgDm(),
        diet.intake().dmPercentOfWeight(),
        nsc.map(Measured::best).orElse(null),
        nsc.map(Measured::u).orElse(null),
        esc.map(Measured::best).orElse(null),
        grams(diet),
        diet.items().stream().map(DietSummaries::portion).toList(),
        diet.lines().values().stream().map(DietSummaries::line).toList(),
        Stream.concat(
                verdicts.stream().map(DietSummaries::limit),
                bales.stream().map(DietSummaries::limit))
            .toList(),
        worst(verdicts, bales),
        Stream.concat(notes(diet).stream(), herd.stream().flatMap(h -> h.notes().stream()))
            .toList());
  }

  private static Optional<Measured> bounded(Diet diet, AnalyteCode code) {
    return diet.content(code).filter(Measured::isBoundedAbove);
  }

  private static @Nullable Double grams(Diet diet) {
    Amount amount = diet.gramsPerDay().get(AnalyteCode.NSC_WSC);
    return amount != null && amount.isComplete() ? Double.valueOf(amount.best()) : null;
  }

  private static PortionLine portion(DietItem item) {
    Portion portion = item.portion();
    Optional<Measured> nsc =
        portion.food().find(AnalyteCode.NSC_WSC).filter(Measured::isBoundedAbove);
    return new PortionLine(
        portion.food().id(),
        portion.food().batch(),
        portion.food().name(),
        portion.food().role(),
        portion.asForage(),
        portion.kgAsFed(),
        item.kgDm(),
        nsc.map(Measured::best).orElse(null),
        nsc.map(Measured::u).orElse(null),
        portion.prepared());
  }

  private static DietLine line(NutrientLine line) {
    Amount supply = line.supply();
    boolean known = supply.isComplete() || supply.best() > 0;
    return new DietLine(
        line.nutrient().code(),
        line.nutrient().unit(),
        known ? Double.valueOf(supply.best()) : null,
        known ? Double.valueOf(supply.low()) : null,
        Double.isFinite(supply.high()) ? Double.valueOf(supply.high()) : null,
        line.requirement().isPresent() ? Double.valueOf(line.requirement().getAsDouble()) : null,
        line.maxTolerable().isPresent() ? Double.valueOf(line.maxTolerable().getAsDouble()) : null,
        line.status().code(),
        supply.origin().code());
  }

  static LimitLine limit(Verdict verdict) {
    Optional<Measured> value = verdict.value();
    return new LimitLine(
        verdict.limit().id(),
        verdict.limit().group(),
        verdict.limit().subject().code(),
        verdict.limit().quantity(),
        verdict.limit().value(),
        verdict.limit().unit().text(),
        value.map(Measured::best).orElse(null),
        value.map(Measured::low).orElse(null),
        value.map(Measured::high).filter(Double::isFinite).orElse(null),
        value.map(Measured::u).orElse(null),
        verdict.pOver().isPresent() ? Double.valueOf(verdict.pOver().getAsDouble()) : null,
        verdict.word().code(),
        verdict.limit().severity().code(),
        reason(verdict));
  }

  /**
   * The limit a diet stands worst against: among those of the horse's own groups, and those of all
   * horses that are not cleared.
   */
  private static @Nullable LimitLine worst(List<Verdict> verdicts, List<BaleVerdict> bales) {
    List<Verdict> all = new ArrayList<>(verdicts);
    bales.forEach(b -> all.add(b.verdict()));
    return WorstVerdict.find(
            all.stream()
                .filter(v -> !v.limit().group().equals(Limit.ALL) || !v.word().isCleared())
                .toList())
        .map(
            worst ->
                verdicts.contains(worst)
                    ? limit(worst)
                    : bales.stream()
                        .filter(b -> b.verdict().equals(worst))
                        .map(DietSummaries::limit)
                        .findFirst()
                        .orElseThrow())
        .orElse(null);
  }

  private static LimitLine limit(BaleVerdict bale) {
    LimitLine line = limit(bale.verdict());
    return new LimitLine(
        line.limitId(),
        line.group(),
        line.subject(),
        line.quantity(),
        line.limit(),
        line.unit(),
        line.value(),
        line.low(),
        line.high(),
        line.u(),
        line.pOver(),
        line.verdict(),
        line.severity(),
        bale.prefix() + line.reason());
  }

  /** Why, and what would settle it, said once. */
  static String reason(Verdict verdict) {
    return verdict.settle().isEmpty() || verdict.reason().contains(verdict.settle())
        ? verdict.reason()
        : verdict.reason() + "; " + verdict.settle();
  }

  private static List<NoteLine> notes(Diet diet) {
    List<NoteLine> notes = new ArrayList<>();
    notes.add(new NoteLine("floor-" + diet.intake().floor().code(), diet.intake().words()));
    notes.add(new NoteLine(diet.energy().code(), diet.energy().words()));
    for (DietNote note : diet.notes()) {
      notes.add(new NoteLine(note.code(), note.words()));
    }
    return notes;
  }
}
