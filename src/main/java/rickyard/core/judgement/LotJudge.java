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
 * only where logic allows: a part is at most its whole, so a whole that clears clears its part. NFC
 * is printed as a hint and never decides: it is no whole of WSC + starch, see {@link Containment}.
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
   * @param rules limits of other subjects or materials are passed over
   */
  public static List<Verdict> judge(AccountedAnalysis analysis, LotRules rules) {
    List<Verdict> verdicts = new ArrayList<>();
    for (Limit limit : rules.limits()) {
      if (limit.subject() == LimitSubject.LOT
          && limit.isForMaterial(analysis.material().isDryStored())) {
        Verdict verdict = judge(analysis, limit, rules.settings());
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
  public static List<Verdict> unanalysed(String why, LotRules rules) {
    return rules.limits().stream()
        .filter(l -> l.subject() == LimitSubject.LOT && l.ifMissing() == IfMissing.ASK)
        .map(l -> Judge.judge(l, Optional.empty(), why))
        .sorted(ORDER)
        .toList();
  }

  private static Verdict judge(
      AccountedAnalysis analysis, Limit limit, JudgementSettings settings) {
    Optional<Measured> value = find(analysis.analysis(), limit);
    Optional<Verdict> byDefinition = clearedByAWhole(analysis, limit, value);
    if (byDefinition.isPresent()) {
      return byDefinition.get();
    }
    Verdict verdict = Judge.judge(limit, value, Missing.words(analysis, limit, settings));
    String settle = advice(analysis, limit, verdict, settings).orElse(verdict.settle());
    String assumption = analysis.assumption();
    String reason =
        assumption.isEmpty() || verdict.word() == Word.CANNOT_JUDGE
            ? verdict.reason()
            : verdict.reason() + "; " + assumption;
    return new Verdict(limit, verdict.value(), verdict.pOver(), verdict.word(), reason, settle);
  }

  private static Optional<String> advice(
      AccountedAnalysis analysis, Limit limit, Verdict verdict, JudgementSettings settings) {
    boolean isBorderline =
        verdict.word() == Word.BORDERLINE_UNDER || verdict.word() == Word.BORDERLINE_OVER;
    Optional<ErrorBudget> budget = analysis.findBudget(limit.analyte());
    Optional<Unit> canonical = analysis.analysis().find(limit.analyte()).map(Measured::unit);
    if (!isBorderline || budget.isEmpty() || canonical.isEmpty()) {
      return Optional.empty();
    }
    double factor = canonical.get().convert(1, limit.unit().unit());
    return verdict.value().map(v -> new Settling(limit, v, budget.get(), factor, settings).words());
  }

  private static Optional<Measured> find(Analysis analysis, Limit limit) {
    if (limit.analyte().equals(AnalyteCode.MOISTURE)) {
      return analysis.dryMatter().map(LotJudge::moisture);
    }
    return analysis
        .find(limit.analyte())
        .or(() -> Containment.atLeastItsParts(limit.analyte(), analysis.contents()));
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

  /**
   * A whole that clears clears its part, whatever is not known of the part; it never condemns it.
   */
  private static Optional<Verdict> clearedByAWhole(
      AccountedAnalysis analysis, Limit limit, Optional<Measured> own) {
    boolean isKnown = own.map(Measured::isBoundedAbove).orElse(false);
    if (isKnown || limit.bound() != Bound.MAX) {
      return Optional.empty();
    }
    return Containment.wholes(limit.analyte(), analysis.analysis().contents()).stream()
        .map(w -> new Evidence.Term(w.name(), limit.unit().of(w.value())))
        .filter(w -> DecisionRule.find(w.value(), limit).word() == Word.CLEARS)
        .findFirst()
        .map(w -> cleared(limit, w, own));
  }

  private static Verdict cleared(Limit limit, Evidence.Term whole, Optional<Measured> own) {
    double lower = own.map(m -> limit.unit().of(m).lower()).orElse(0.0);
    Measured wider = whole.value();
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
            new Evidence.Derived("at most " + whole.name(), List.of(whole)));
    Finding finding = DecisionRule.find(bound, limit);
    OptionalDouble chance = finding.chanceWrong();
    String reason =
        Containment.name(limit.analyte())
            + " is not reported in full; it is at most "
            + whole.name()
            + "; "
            + Reasons.of(limit, bound, finding, "");
    return new Verdict(limit, Optional.of(bound), chance, finding.word(), reason, "");
  }
}
