package rickyard.core.forage;

import static rickyard.core.forage.AnalyteCode.ASH;
import static rickyard.core.forage.AnalyteCode.CA;
import static rickyard.core.forage.AnalyteCode.CA_OXALATE;
import static rickyard.core.forage.AnalyteCode.CP;
import static rickyard.core.forage.AnalyteCode.EE;
import static rickyard.core.forage.AnalyteCode.ESC;
import static rickyard.core.forage.AnalyteCode.FRUCTAN;
import static rickyard.core.forage.AnalyteCode.NDF;
import static rickyard.core.forage.AnalyteCode.NFC;
import static rickyard.core.forage.AnalyteCode.NO3;
import static rickyard.core.forage.AnalyteCode.NO3_N;
import static rickyard.core.forage.AnalyteCode.NSC_ESC;
import static rickyard.core.forage.AnalyteCode.NSC_WSC;
import static rickyard.core.forage.AnalyteCode.OXALATE;
import static rickyard.core.forage.AnalyteCode.STARCH;
import static rickyard.core.forage.AnalyteCode.WSC;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Adds to the contents of an analysis what follows from them; used once. */
final class DerivedContents {
  private static final double NO3_MOLAR_MASS = 62.0049;
  private static final double N_MOLAR_MASS = 14.0067;

  private final Map<AnalyteCode, Measured> contents;
  private final Map<AnalyteCode, ErrorBudget> budgets;
  private final Withheld withheld;
  private final double correlation;

  DerivedContents(
      Map<AnalyteCode, Measured> contents,
      Map<AnalyteCode, ErrorBudget> budgets,
      Withheld withheld,
      double correlation) {
    this.contents = contents;
    this.budgets = budgets;
    this.withheld = withheld;
    this.correlation = correlation;
  }

  void add() {
    addNitrateNitrogen();
    addNfc();
    addCalciumToOxalate();
    addSum(ESC, "ESC + starch", NSC_ESC);
    addSum(WSC, "WSC + starch", NSC_WSC);
    if (isOpen(NSC_ESC)) {
      addBound(NSC_ESC, List.of(List.of(ESC), List.of(STARCH)));
    }
    if (isOpen(NSC_WSC)) {
      addBound(NSC_WSC, List.of(List.of(WSC), List.of(NSC_ESC), List.of(ESC), List.of(STARCH)));
    }
  }

  private boolean isOpen(AnalyteCode sum) {
    Measured known = contents.get(sum);
    return known == null || !known.isBoundedAbove();
  }

  /** The parts beat a printed sum; a printed sum of a part in doubt hangs on that part. */
  @Cites(source = "frank-2009", locator = "NSC = WSC + starch")
  private void addSum(AnalyteCode soluble, String formula, AnalyteCode sum) {
    Measured first = contents.get(soluble);
    Measured second = contents.get(STARCH);
    if (first != null && second != null) {
      List<Evidence.Term> terms =
          List.of(new Evidence.Term(name(soluble), first), new Evidence.Term("starch", second));
      contents.put(sum, first.plus(second, correlation, new Evidence.Derived(formula, terms)));
      ErrorBudget a = budgets.get(soluble);
      ErrorBudget b = budgets.get(STARCH);
      if (a != null && b != null) {
        budgets.put(sum, a.plus(b, correlation));
      }
    } else if (withheld.holds(soluble) || withheld.holds(STARCH) || isBelowAPart(soluble, sum)) {
      contents.remove(sum);
      budgets.remove(sum);
    }
  }

  /**
   * A printed sum that is smaller than one of its parts contradicts it. ESC is a part of WSC, so
   * that ESC + starch is a part of WSC + starch.
   */
  private boolean isBelowAPart(AnalyteCode soluble, AnalyteCode sum) {
    Measured printed = contents.get(sum);
    if (printed == null) {
      return false;
    }
    List<AnalyteCode> parts =
        sum.equals(NSC_WSC)
            ? List.of(soluble, STARCH, ESC, NSC_ESC, FRUCTAN)
            : List.of(soluble, STARCH);
    return parts.stream()
        .map(contents::get)
        .anyMatch(part -> part != null && part.low() > printed.high());
  }

  /** The highest lower bound that the parts allow: a sum is at least each of its parts. */
  @Cites(source = "definition", locator = "a sum of contents is at least each of its parts")
  private void addBound(AnalyteCode sum, List<List<AnalyteCode>> candidates) {
    AnalyteCode best = contents.containsKey(sum) ? sum : null;
    for (List<AnalyteCode> candidate : candidates) {
      AnalyteCode code = candidate.get(0);
      Measured value = contents.get(code);
      Measured now = best == null ? null : contents.get(best);
      if (value != null && (now == null || value.lower() > now.lower())) {
        best = code;
      }
    }
    Measured part = best == null ? null : contents.get(best);
    if (best == null || part == null || best.equals(sum)) {
      return;
    }
    Evidence evidence =
        new Evidence.Derived(
            "at least " + name(best), List.of(new Evidence.Term(name(best), part)));
    contents.put(
        sum, Measured.atLeast(part.unit(), part.basis(), part.lower(), part.u(), evidence));
    ErrorBudget budget = budgets.get(best);
    if (budget != null) {
      budgets.put(sum, budget);
    }
  }

  /** {@code NO3-N = NO3 × 14.0067 / 62.0049}, in mg/kg. */
  @Cites(source = "atomic-masses", locator = "NO3 62.0049, N 14.0067: factor 4.4268")
  private void addNitrateNitrogen() {
    Measured nitrate = contents.get(NO3);
    if (nitrate == null || contents.containsKey(NO3_N) || withheld.holds(NO3_N)) {
      return;
    }
    Measured v = nitrate.in(Unit.MG_PER_KG);
    double f = N_MOLAR_MASS / NO3_MOLAR_MASS;
    contents.put(
        NO3_N,
        new Measured(
            v.unit(),
            v.basis(),
            v.best() * f,
            v.low() * f,
            v.high() * f,
            v.lower() * f,
            v.upper() * f,
            v.u() * f,
            new Evidence.Derived("NO3 / 4.4268", List.of(new Evidence.Term("NO3", nitrate)))));
  }

  /** {@code NFC = 100 − CP − NDF − EE − ash}, where the report does not print it. */
  @Cites(source = "definition", locator = "non-fibre carbohydrate by difference")
  private void addNfc() {
    List<AnalyteCode> parts = List.of(CP, NDF, EE, ASH);
    if (contents.containsKey(NFC) || withheld.holds(NFC) || !contents.keySet().containsAll(parts)) {
      return;
    }
    List<Measured> values = new ArrayList<>();
    List<Evidence.Term> terms = new ArrayList<>();
    for (AnalyteCode part : parts) {
      Measured value = contents.get(part);
      if (value == null || value.isOneSided() || value.unit() != Unit.PERCENT) {
        return;
      }
      values.add(value);
      terms.add(new Evidence.Term(name(part), value));
    }
    double best = 100 - values.stream().mapToDouble(Measured::best).sum();
    if (best < 0) {
      return;
    }
    double low = Math.max(0, 100 - values.stream().mapToDouble(Measured::high).sum());
    double high = 100 - values.stream().mapToDouble(Measured::low).sum();
    double variance = values.stream().mapToDouble(v -> v.u() * v.u()).sum();
    contents.put(
        NFC,
        new Measured(
            Unit.PERCENT,
            Basis.DRY_MATTER,
            best,
            low,
            high,
            best,
            best,
            StrictMath.sqrt(variance),
            new Evidence.Derived("100 − CP − NDF − fat − ash", terms)));
  }

  /**
   * {@code Ca:oxalate = Ca / oxalate}, both by mass; {@code (u/r)² = (u_Ca/Ca)² + (u_ox/ox)²}. An
   * oxalate of which only a lower bound is known gives none, and so does one not detected.
   */
  @Cites(source = "definition", locator = "ratio of two contents of the same sample, by mass")
  private void addCalciumToOxalate() {
    Measured calcium = contents.get(CA);
    Measured given = contents.get(OXALATE);
    if (calcium == null || given == null || contents.containsKey(CA_OXALATE)) {
      return;
    }
    Measured oxalate = given.in(calcium.unit());
    if (!(oxalate.low() > 0) || !oxalate.isBoundedAbove() || !calcium.isBoundedAbove()) {
      return;
    }
    double best = calcium.best() / oxalate.best();
    double share =
        StrictMath.hypot(
            calcium.u() / Math.max(1e-12, calcium.best()), oxalate.u() / oxalate.best());
    contents.put(
        CA_OXALATE,
        new Measured(
            Unit.ONE,
            Basis.NONE,
            best,
            calcium.low() / oxalate.high(),
            calcium.high() / oxalate.low(),
            calcium.lower() / oxalate.upper(),
            calcium.upper() / oxalate.lower(),
            best * share,
            new Evidence.Derived(
                "Ca / oxalate",
                List.of(new Evidence.Term("Ca", calcium), new Evidence.Term("oxalate", given)))));
  }

  private static String name(AnalyteCode code) {
    if (code.equals(STARCH)) {
      return "starch";
    }
    return code.equals(NSC_ESC) ? "ESC + starch" : code.value();
  }
}
