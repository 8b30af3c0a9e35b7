package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.ErrorBudget;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * Judges a lot as the only forage against the limits for lots.
 *
 * <p>A limit is held only against its own definition. Partial evidence may condemn: WSC alone, or
 * ESC + starch, or an as-fed figure without dry matter, is a lower bound of WSC + starch. It clears
 * only where logic allows: ESC + starch is at most WSC + starch. NFC is printed as a hint and never
 * decides.
 */
public final class LotJudge {
  private static final Comparator<Verdict> ORDER =
      Comparator.<Verdict, String>comparing(v -> v.limit().group())
          .thenComparing(v -> v.limit().id());

  private LotJudge() {}

  /**
   * The verdicts on an analysed lot, sorted by group and limit; limits that ask for nothing when
   * nothing was measured give none.
   *
   * @param analysis the analysis in force
   * @param limits any limits; those of other subjects or materials are passed over
   */
  public static List<Verdict> judge(AccountedAnalysis analysis, List<Limit> limits) {
    List<Verdict> verdicts = new ArrayList<>();
    for (Limit limit : limits) {
      if (limit.subject() == LimitSubject.LOT
          && limit.isForMaterial(analysis.material().isDryStored())) {
        Verdict verdict = judge(analysis, limit);
        if (!verdict.isSilent()) {
          verdicts.add(verdict);
        }
      }
    }
    verdicts.sort(ORDER);
    return List.copyOf(verdicts);
  }

  /**
   * The verdicts on a lot that has no analysis in force: cannot-judge for every limit that asks.
   *
   * @param why why there is none, in plain words
   */
  public static List<Verdict> unanalysed(String why, List<Limit> limits) {
    return limits.stream()
        .filter(l -> l.subject() == LimitSubject.LOT && l.ifMissing() == IfMissing.ASK)
        .map(l -> Judge.judge(l, Optional.empty(), why))
        .sorted(ORDER)
        .toList();
  }

  private static Verdict judge(AccountedAnalysis analysis, Limit limit) {
    Optional<Measured> value = find(analysis.analysis(), limit);
    Optional<Verdict> byDefinition = clearedByTheWiderDefinition(analysis, limit, value);
    if (byDefinition.isPresent()) {
      return byDefinition.get();
    }
    String missing = Missing.words(analysis, limit);
    Verdict verdict = Judge.judge(limit, value, missing);
    String settle =
        analysis
            .findBudget(limit.analyte())
            .flatMap(b -> advice(analysis, limit, verdict, b))
            .orElse(verdict.settle());
    String assumption = analysis.assumption();
    String reason =
        assumption.isEmpty() || verdict.word() == Word.CANNOT_JUDGE
            ? verdict.reason()
            : verdict.reason() + "; " + assumption;
    return new Verdict(limit, verdict.value(), verdict.pOver(), verdict.word(), reason, settle);
  }

  private static Optional<String> advice(
      AccountedAnalysis analysis, Limit limit, Verdict verdict, ErrorBudget budget) {
    boolean borderline =
        verdict.word() == Word.BORDERLINE_UNDER || verdict.word() == Word.BORDERLINE_OVER;
    Optional<Unit> canonical = analysis.analysis().find(limit.analyte()).map(Measured::unit);
    return borderline && limit.risk().isPresent()
        ? verdict
            .value()
            .flatMap(
                v ->
                    canonical.map(
                        u -> Settling.words(limit, v, budget, u.convert(1, limit.unit().unit()))))
        : Optional.empty();
  }

  private static Optional<Measured> find(Analysis analysis, Limit limit) {
    if (limit.analyte().equals(AnalyteCode.MOISTURE)) {
      return analysis.dryMatter().map(LotJudge::moisture);
    }
    return analysis.find(limit.analyte());
  }

  @Cites(source = "definition", locator = "moisture = 100 - dry matter, % as fed")
  private static Measured moisture(Measured dryMatter) {
    double best = 100 - dryMatter.best();
    return new Measured(
        Unit.PERCENT,
        Basis.AS_FED,
        best,
        Math.max(0, 100 - dryMatter.high()),
        100 - dryMatter.low(),
        best,
        best,
        dryMatter.u(),
        new Evidence.Derived("100 − DM", List.of(new Evidence.Term("DM", dryMatter))));
  }

  /** Under a limit of ESC + starch, WSC + starch clears when it clears, and says no more. */
  @Cites(source = "definition", locator = "ESC is a part of WSC: ESC + starch <= WSC + starch")
  private static Optional<Verdict> clearedByTheWiderDefinition(
      AccountedAnalysis analysis, Limit limit, Optional<Measured> own) {
    boolean known = own.map(Measured::isBoundedAbove).orElse(false);
    if (known || limit.bound() != Bound.MAX || !limit.analyte().equals(AnalyteCode.NSC_ESC)) {
      return Optional.empty();
    }
    Optional<Measured> wider = analysis.analysis().find(AnalyteCode.NSC_WSC).map(limit.unit()::of);
    return wider
        .filter(Measured::isBoundedAbove)
        .filter(v -> DecisionRule.find(v, limit).word() == Word.CLEARS)
        .map(v -> cleared(limit, v, own));
  }

  private static Verdict cleared(Limit limit, Measured wider, Optional<Measured> own) {
    double lower = own.map(m -> limit.unit().of(m).lower()).orElse(0.0);
    Measured bound =
        new Measured(
            wider.unit(),
            wider.basis(),
            wider.best(),
            Math.min(lower, wider.high()),
            wider.high(),
            Math.min(lower, wider.upper()),
            wider.upper(),
            wider.u(),
            new Evidence.Derived(
                "at most WSC + starch", List.of(new Evidence.Term("WSC + starch", wider))));
    Finding finding = DecisionRule.find(bound, limit);
    OptionalDouble chance = finding.chanceWrong();
    String reason =
        "ESC is not reported; ESC + starch is at most WSC + starch; "
            + Reasons.of(limit, bound, finding, "");
    return new Verdict(limit, Optional.of(bound), chance, finding.word(), reason, "");
  }
}
