package rickyard.core.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.LotTest;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * One quantity of one test.
 *
 * @param laboratory who made it
 * @param day of sampling, else of the report, if known
 * @param value on dry matter, neither censored nor one-sided
 * @param unit of value and u
 * @param u standard uncertainty, above 0
 * @param method how it was obtained
 */
record Tested(
    Laboratory laboratory,
    Optional<LocalDate> day,
    double value,
    Unit unit,
    double u,
    Method method) {

  /** The quantity of a test, where it gives a number that can be compared. */
  static Optional<Tested> find(LotTest test, AnalyteCode quantity, Laboratories laboratories) {
    return test.analysis()
        .analysis()
        .find(quantity)
        .filter(Tested::isComparable)
        .map(
            m ->
                new Tested(
                    laboratories.get(test.lab()),
                    test.day(),
                    m.best(),
                    m.unit(),
                    m.u(),
                    test.method(quantity)));
  }

  /** A '<0.5' bounds a value and is none; without an uncertainty nothing can be compared. */
  static boolean isComparable(Measured value) {
    return value.basis() == Basis.DRY_MATTER
        && value.isBoundedAbove()
        && !value.isOneSided()
        && value.u() > 0;
  }

  /** The days of some tests of one lot, in their order; tests without a day are left out. */
  static List<DayValue> byDay(List<Tested> tests) {
    Map<LocalDate, List<Tested>> days = new TreeMap<>();
    for (Tested test : tests) {
      test.day.ifPresent(d -> days.computeIfAbsent(d, k -> new ArrayList<>()).add(test));
    }
    List<DayValue> values = new ArrayList<>();
    days.forEach(
        (day, of) ->
            values.add(
                new DayValue(
                    day,
                    mean(of),
                    of.stream().mapToDouble(Tested::u).max().orElseThrow(),
                    of.size(),
                    new TreeSet<>(of.stream().map(Tested::laboratory).toList()))));
    return values;
  }

  static double mean(List<Tested> tests) {
    double sum = 0;
    for (double value : tests.stream().mapToDouble(Tested::value).sorted().toArray()) {
      sum += value;
    }
    return sum / tests.size();
  }
}
