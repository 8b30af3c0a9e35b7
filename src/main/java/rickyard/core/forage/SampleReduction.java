package rickyard.core.forage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Dimension;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** The working of one sample into one analysis; used once. */
final class SampleReduction {
  /** Kept as a lower bound where only the as-fed figure is known: what they do is condemn. */
  private static final Set<AnalyteCode> BOUNDED_AS_FED =
      Set.of(
          AnalyteCode.WSC,
          AnalyteCode.ESC,
          AnalyteCode.STARCH,
          AnalyteCode.NSC_WSC,
          AnalyteCode.NSC_ESC,
          AnalyteCode.NO3,
          AnalyteCode.NO3_N,
          AnalyteCode.SE,
          AnalyteCode.FE,
          AnalyteCode.OXALATE,
          AnalyteCode.ERGOVALINE);

  /**
   * More dry matter than this no feed has as it lies, whoever confirmed it: a figure of 100 is one
   * of another column. Common practice, no source.
   */
  private static final double DRIEST = 98;

  private final Sample sample;
  private final Subject subject;
  private final Uncertainties uncertainties;
  private final Withheld withheld;
  private final int cores;
  private final String coresFrom;
  private final Optional<Measured> dryMatter;
  private final SortedMap<AnalyteCode, Measured> contents = new TreeMap<>();
  private final SortedMap<AnalyteCode, Method> methods = new TreeMap<>();
  private final SortedMap<AnalyteCode, ErrorBudget> budgets = new TreeMap<>();
  private final SortedMap<AnalyteCode, String> leftOut = new TreeMap<>();

  SampleReduction(Sample sample, Subject subject, Uncertainties uncertainties) {
    this.sample = sample;
    this.subject = subject;
    this.uncertainties = uncertainties;
    this.withheld = new Withheld(sample);
    leftOut.putAll(withheld.reasons());
    boolean printed = sample.cores().orElse(0) >= 1;
    boolean registered = subject.cores().orElse(0) >= 1;
    this.cores =
        printed
            ? sample.cores().getAsInt()
            : registered ? subject.cores().getAsInt() : uncertainties.assumedCores();
    this.coresFrom = printed ? "report" : registered ? "lots.csv" : "assumed";
    this.dryMatter = findDryMatter();
  }

  AccountedAnalysis reduce() {
    SortedMap<AnalyteCode, List<Figure>> figures = new TreeMap<>();
    for (int i = 0; i < sample.readings().size(); i++) {
      collect(sample.readings().get(i), i, figures);
    }
    figures.forEach(this::settle);
    new DerivedContents(contents, budgets, withheld, uncertainties.sumCorrelation()).add();
    leftOut.keySet().removeAll(contents.keySet());
    if (dryMatter.isPresent()) {
      leftOut.remove(AnalyteCode.DM);
      leftOut.remove(AnalyteCode.MOISTURE);
    }
    return new AccountedAnalysis(
        new Analysis(subject.id(), subject.batch(), dryMatter, contents),
        subject.material(),
        cores,
        coresFrom,
        methods,
        budgets,
        leftOut.entrySet().stream()
            .map(e -> new AccountedAnalysis.LeftOut(e.getKey(), e.getValue()))
            .toList());
  }

  private Optional<Measured> findDryMatter() {
    if (withheld.holdsWater()) {
      return Optional.empty();
    }
    List<Measured> found = new ArrayList<>();
    for (Reading reading : sample.readings()) {
      if (reading.isSettled() && reading.analyte().equals(AnalyteCode.DM)) {
        reading.value().map(SampleReduction::asFedPercent).ifPresent(found::add);
      }
      if (reading.isSettled() && reading.analyte().equals(AnalyteCode.MOISTURE)) {
        reading
            .value()
            .map(SampleReduction::asFedPercent)
            .flatMap(SampleReduction::dry)
            .ifPresent(found::add);
      }
    }
    return found.stream()
        .filter(d -> d.low() > 0 && d.best() <= DRIEST)
        .min(java.util.Comparator.comparingDouble(Measured::u))
        .map(this::withDryMatterError);
  }

  private Measured withDryMatterError(Measured dm) {
    double lab = uncertainties.lab(AnalyteCode.DM, Method.UNKNOWN, subject.material(), dm.best());
    budgets.put(AnalyteCode.DM, new ErrorBudget(lab, lab, 0, cores, dm.u()));
    return dm.withU(root(dm.u(), lab));
  }

  private static Measured asFedPercent(Measured value) {
    Measured v = value.in(Unit.PERCENT);
    return new Measured(
        v.unit(),
        Basis.AS_FED,
        v.best(),
        v.low(),
        v.high(),
        v.lower(),
        v.upper(),
        v.u(),
        v.evidence());
  }

  @Cites(source = "definition", locator = "dry matter = 100 - moisture, % as fed")
  static Optional<Measured> dry(Measured moisture) {
    if (moisture.high() >= 100 || moisture.isOneSided()) {
      return Optional.empty();
    }
    double best = 100 - moisture.best();
    return Optional.of(
        new Measured(
            Unit.PERCENT,
            Basis.AS_FED,
            best,
            100 - moisture.high(),
            100 - moisture.low(),
            best,
            best,
            moisture.u(),
            new Evidence.Derived(
                "100 − moisture", List.of(new Evidence.Term("moisture", moisture)))));
  }

  private void collect(Reading reading, int place, SortedMap<AnalyteCode, List<Figure>> figures) {
    AnalyteCode code = reading.analyte();
    if (!reading.isSettled()
        || withheld.holds(code)
        || code.equals(AnalyteCode.DM)
        || code.equals(AnalyteCode.MOISTURE)) {
      return;
    }
    reading
        .value()
        .flatMap(v -> onDryMatter(code, v))
        .ifPresent(
            v ->
                figures
                    .computeIfAbsent(code, c -> new ArrayList<>())
                    .add(new Figure(v, reading.method(), place)));
  }

  private Optional<Measured> onDryMatter(AnalyteCode code, Measured value) {
    boolean isCounted =
        value.unit().dimension() == Dimension.COUNT || value.unit().dimension() == Dimension.NUMBER;
    if (isCounted) {
      return Optional.of(withBasis(value, Basis.NONE, value.evidence()));
    }
    if (value.basis() != Basis.AS_FED) {
      return Optional.of(value);
    }
    if (dryMatter.isPresent()) {
      return Optional.of(value.toDryMatter(dryMatter.get()));
    }
    if (BOUNDED_AS_FED.contains(code)) {
      return Optional.of(asLowerBound(value));
    }
    leftOut.putIfAbsent(code, "as fed, and no dry matter to convert it by");
    return Optional.empty();
  }

  private static Measured asLowerBound(Measured asFed) {
    return Measured.atLeast(
        asFed.unit(),
        Basis.DRY_MATTER,
        asFed.lower(),
        asFed.u(),
        new Evidence.Derived(
            "at least the as-fed figure, dry matter unknown",
            List.of(new Evidence.Term("as fed", asFed))));
  }

  private static Measured withBasis(Measured v, Basis basis, Evidence evidence) {
    return new Measured(
        v.unit(), basis, v.best(), v.low(), v.high(), v.lower(), v.upper(), v.u(), evidence);
  }

  private void settle(AnalyteCode code, List<Figure> figures) {
    List<Figure> ordered = figures.stream().sorted(Figure.PREFERENCE).toList();
    Figure first = ordered.get(0);
    if (ordered.stream().anyMatch(f -> !first.agreesWith(f))) {
      leftOut.put(code, "the sample gives two figures that do not agree");
      return;
    }
    Measured value = first.value();
    double lab = 0;
    double labWet = 0;
    double core = 0;
    if (value.basis() == Basis.DRY_MATTER) {
      lab = uncertainties.lab(code, first.method(), subject.material(), value.best());
      labWet = uncertainties.lab(code, Method.WET, subject.material(), value.best());
      core = uncertainties.core(code, subject.material(), value.best());
    }
    ErrorBudget budget = new ErrorBudget(lab, labWet, core, cores, value.u());
    contents.put(code, value.withU(budget.u()));
    methods.put(code, first.method());
    budgets.put(code, budget);
  }

  private static double root(double a, double b) {
    return StrictMath.sqrt(a * a + b * b);
  }
}
