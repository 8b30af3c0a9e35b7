package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;

/** Compares and combines two or more tests of one lot. */
final class Combining {
  /** A disagreement in one of these is a question: a verdict or a hazard rests on it. */
  private static final Set<AnalyteCode> DECIDING =
      Set.of(
          AnalyteCode.WSC,
          AnalyteCode.ESC,
          AnalyteCode.STARCH,
          AnalyteCode.NSC_WSC,
          AnalyteCode.NSC_ESC,
          AnalyteCode.K,
          AnalyteCode.NO3_N,
          AnalyteCode.SE);

  private Combining() {}

  /**
   * In what two tests disagree, in words; empty if {@code |y1 − y2| ≤ 2 √(u1² + u2²)} for every
   * value that decides.
   *
   * @param sameBag whether both are of one sampling: its error is in both and cannot part them, so
   *     u1 and u2 are taken without it
   */
  @Cites(source = "jcgm100-2008", locator = "5.1.2; two results agree within k = 2")
  static String disagreement(AccountedAnalysis a, AccountedAnalysis b, boolean sameBag) {
    List<String> words = new ArrayList<>();
    for (AnalyteCode code : new TreeSet<>(DECIDING)) {
      Optional<Measured> first = bounded(a, code).map(v -> own(v, a, code, sameBag));
      Optional<Measured> second = bounded(b, code).map(v -> own(v, b, code, sameBag));
      if (first.isPresent() && second.isPresent() && !agree(first.get(), second.get())) {
        words.add(
            code
                + " "
                + shown(first.get())
                + " and "
                + shown(second.get())
                + " "
                + first.get().unit().code());
      }
    }
    return String.join(", ", words);
  }

  /** The value with the error that the tests do not share. */
  private static Measured own(
      Measured value, AccountedAnalysis test, AnalyteCode code, boolean sameBag) {
    double shared = sameBag ? sampling(test, code) : 0;
    return value.withU(StrictMath.sqrt(Math.max(0, value.u() * value.u() - shared * shared)));
  }

  private static double sampling(AccountedAnalysis test, AnalyteCode code) {
    return test.findBudget(code).map(ErrorBudget::sampling).orElse(0.0);
  }

  /** A value in words: four digits, without the dust of binary sums. */
  private static String shown(Measured value) {
    return java.math.BigDecimal.valueOf(value.best())
        .round(new java.math.MathContext(4, java.math.RoundingMode.HALF_UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static Optional<Measured> bounded(AccountedAnalysis analysis, AnalyteCode code) {
    return analysis.analysis().find(code).filter(Measured::isBoundedAbove);
  }

  /** Two censored values agree when their intervals meet. */
  private static boolean agree(Measured a, Measured other) {
    Measured b = other.in(a.unit());
    double gap = Math.max(0, Math.max(a.lower() - b.upper(), b.lower() - a.upper()));
    return gap <= 2 * StrictMath.sqrt(a.u() * a.u() + b.u() * b.u()) * (1 + 1e-12);
  }

  /**
   * The analysis that tests which agree make together.
   *
   * @param tests at least two, of one lot
   * @param sameBag whether they are of one sampling and so share its error
   * @param correlation r between the errors of soluble carbohydrate and starch
   */
  static AccountedAnalysis combine(
      List<AccountedAnalysis> tests, boolean sameBag, double correlation) {
    SortedSet<AnalyteCode> codes = new TreeSet<>();
    tests.forEach(t -> codes.addAll(t.analysis().contents().keySet()));
    SortedMap<AnalyteCode, Measured> contents = new TreeMap<>();
    SortedMap<AnalyteCode, ErrorBudget> budgets = new TreeMap<>();
    SortedMap<AnalyteCode, Method> methods = new TreeMap<>();
    for (AnalyteCode code : codes) {
      combine(tests, code, sameBag)
          .ifPresent(
              v -> {
                contents.put(code, v);
                budgets.put(code, budget(tests, code, v));
              });
      tests.stream()
          .map(t -> t.methods().get(code))
          .filter(java.util.Objects::nonNull)
          .min(java.util.Comparator.comparing(m -> m == Method.WET ? 0 : 1))
          .ifPresent(m -> methods.put(code, m));
    }
    sum(tests, AnalyteCode.WSC, AnalyteCode.NSC_WSC, correlation, contents, budgets);
    sum(tests, AnalyteCode.ESC, AnalyteCode.NSC_ESC, correlation, contents, budgets);
    AccountedAnalysis first = tests.get(0);
    int cores = sameBag ? first.cores() : tests.stream().mapToInt(AccountedAnalysis::cores).sum();
    String from =
        tests.stream().anyMatch(t -> t.coresFrom().equals("assumed"))
            ? "assumed"
            : first.coresFrom();
    return new AccountedAnalysis(
        new Analysis(
            first.analysis().subject(),
            first.analysis().batch(),
            combine(tests, AnalyteCode.DM, sameBag),
            contents),
        first.material(),
        cores,
        from,
        methods,
        budgets,
        tests.stream()
            .map(AccountedAnalysis::leftOut)
            .flatMap(Collection::stream)
            .filter(l -> !contents.containsKey(l.analyte()))
            .distinct()
            .toList());
  }

  /** The sum is made of the combined parts, unless a test knows the sum but not its parts. */
  private static void sum(
      List<AccountedAnalysis> tests,
      AnalyteCode soluble,
      AnalyteCode sum,
      double correlation,
      SortedMap<AnalyteCode, Measured> contents,
      SortedMap<AnalyteCode, ErrorBudget> budgets) {
    Measured first = contents.get(soluble);
    Measured second = contents.get(AnalyteCode.STARCH);
    boolean printed =
        tests.stream().anyMatch(t -> bounded(t, sum).isPresent() && bounded(t, soluble).isEmpty());
    if (first == null || second == null || printed) {
      return;
    }
    List<Evidence.Term> terms =
        List.of(new Evidence.Term(soluble.value(), first), new Evidence.Term("starch", second));
    Measured value =
        first.plus(second, correlation, new Evidence.Derived(soluble + " + starch", terms));
    contents.put(sum, value);
    ErrorBudget a = budgets.get(soluble);
    ErrorBudget b = budgets.get(AnalyteCode.STARCH);
    if (a != null && b != null) {
      budgets.put(sum, a.plus(b, correlation));
    }
  }

  private static Optional<Measured> combine(
      List<AccountedAnalysis> tests, AnalyteCode code, boolean sameBag) {
    List<Measured> values = new ArrayList<>();
    List<Double> shared = new ArrayList<>();
    for (AccountedAnalysis test : tests) {
      Optional<Measured> value = test.analysis().find(code);
      if (value.isPresent()) {
        values.add(value.get());
        shared.add(sameBag ? sampling(test, code) : 0.0);
      }
    }
    if (values.isEmpty()) {
      return Optional.empty();
    }
    List<Measured> bounded = values.stream().filter(Measured::isBoundedAbove).toList();
    if (bounded.size() != values.size()) {
      return bounded.isEmpty()
          ? values.stream().max(java.util.Comparator.comparingDouble(Measured::lower))
          : Optional.of(bounded.size() == 1 ? bounded.get(0) : mean(bounded, zeros(bounded)));
    }
    return Optional.of(values.size() == 1 ? values.get(0) : mean(values, shared));
  }

  private static List<Double> zeros(List<Measured> values) {
    return values.stream().map(v -> 0.0).toList();
  }

  /**
   * The weighted mean with weights {@code 1/u²}; {@code u = 1/√Σ(1/u²)}. A sampling error that the
   * tests share is added in full; where tests disagree, u is at least half their spread.
   */
  @Cites(source = "jcgm100-2008", locator = "weighted mean of independent results")
  static Measured mean(List<Measured> values, List<Double> shared) {
    Measured like = values.get(0);
    double[] sums = new double[6];
    double total = 0;
    double common = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    List<Evidence.Term> terms = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Measured v = values.get(i).in(like.unit());
      double own = Math.max(1e-12, v.u() * v.u() - shared.get(i) * shared.get(i));
      double weight = 1 / own;
      double[] parts = {v.best(), v.low(), v.high(), v.lower(), v.upper()};
      for (int k = 0; k < parts.length; k++) {
        sums[k] += weight * parts[k];
      }
      total += weight;
      common = Math.max(common, shared.get(i));
      least = Math.min(least, v.best());
      most = Math.max(most, v.best());
      terms.add(new Evidence.Term("test " + (i + 1), values.get(i)));
    }
    double u = StrictMath.sqrt(1 / total);
    if (disagree(values)) {
      u = Math.max(u, (most - least) / 2);
    }
    boolean oneSided = values.stream().anyMatch(Measured::isOneSided);
    double best = sums[0] / total;
    return new Measured(
        like.unit(),
        like.basis(),
        best,
        sums[1] / total,
        sums[2] / total,
        oneSided ? sums[3] / total : best,
        oneSided ? sums[4] / total : best,
        StrictMath.sqrt(u * u + common * common),
        new Evidence.Derived("mean of the tests weighted by 1/u²", terms));
  }

  private static boolean disagree(List<Measured> values) {
    return values.stream().anyMatch(a -> values.stream().anyMatch(b -> !agree(a, b)));
  }

  /** A combined value keeps the parts of its most certain test, and what all reach together. */
  private static ErrorBudget budget(
      List<AccountedAnalysis> tests, AnalyteCode code, Measured value) {
    List<ErrorBudget> budgets =
        tests.stream().map(t -> t.findBudget(code)).flatMap(Optional::stream).toList();
    if (budgets.size() == 1) {
      return budgets.get(0);
    }
    return budgets.stream()
        .min(java.util.Comparator.comparingDouble(ErrorBudget::u))
        .map(b -> b.withStanding(value.u()))
        .orElseGet(() -> new ErrorBudget(value.u(), value.u(), 0, 1, 0));
  }
}
