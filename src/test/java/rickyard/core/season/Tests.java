package rickyard.core.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Lot;
import rickyard.core.forage.LotTest;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Method;
import rickyard.core.forage.SampleKey;
import rickyard.core.forage.Settled;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Tests of lots, for tests. */
final class Tests {
  static final OverTimeRules RULES = new OverTimeRules(List.of(AnalyteCode.NSC_WSC), 5, 3, 3, 0.05);
  static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  private final List<LotTest> tests = new ArrayList<>();
  private final List<InForce> inForce = new ArrayList<>();
  private final Map<String, Lot> lots = new TreeMap<>();

  static Measured number(double value, double u) {
    return Measured.of(
        Unit.PERCENT, Basis.DRY_MATTER, value, 0.05, u, new Evidence.Derived("given", List.of()));
  }

  static AccountedAnalysis analysis(String lot, Measured value) {
    TreeMap<AnalyteCode, Measured> contents = new TreeMap<>();
    contents.put(AnalyteCode.NSC_WSC, value);
    TreeMap<AnalyteCode, Method> methods = new TreeMap<>();
    methods.put(AnalyteCode.WSC, Method.NIR);
    return new AccountedAnalysis(
        new Analysis(lot, "", Optional.empty(), contents),
        MaterialClass.GRASS,
        12,
        "report",
        methods,
        new TreeMap<>(),
        List.of());
  }

  Tests add(String lot, String lab, int day, double value, double u) {
    return add(lot, lab, day, number(value, u));
  }

  Tests add(String lot, String lab, int day, Measured value) {
    tests.add(
        new LotTest(
            new SampleKey(String.format(java.util.Locale.ROOT, "%04d", tests.size()), 0),
            lot,
            lab,
            "",
            Optional.of(DAY.plusDays(day)),
            Optional.empty(),
            analysis(lot, value)));
    return this;
  }

  Tests field(String lot, String field, String cutting, int year, double value, double u) {
    lots.put(
        lot,
        new Lot(
            lot,
            "co-op",
            "grass-hay",
            OptionalDouble.empty(),
            cutting,
            Optional.of(LocalDate.of(year, 7, 1)),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false,
            OptionalInt.empty(),
            Optional.empty(),
            "",
            field));
    inForce.add(
        new InForce(
            lot, "", Optional.of(analysis(lot, number(value, u))), List.of(), "report", false));
    return this;
  }

  List<LotTest> all() {
    return tests;
  }

  OverTime look() {
    return look(tests);
  }

  OverTime look(List<LotTest> ordered) {
    return OverTime.of(
        new Settled(
            List.of(), List.of(), List.of(), inForce, List.of(), List.of(), List.of(), List.of(),
            ordered),
        lots,
        RULES);
  }
}
