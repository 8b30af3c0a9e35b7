package rickyard.core.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Unit;

/** Gathers lots on which two laboratories, or one laboratory twice, have tested one quantity. */
final class LaboratoryPairs {
  private final AnalyteCode quantity;
  private final OverTimeRules rules;
  private final SortedMap<Two, Gathered> gathered = new TreeMap<>();

  LaboratoryPairs(AnalyteCode quantity, OverTimeRules rules) {
    this.quantity = quantity;
    this.rules = rules;
  }

  private record Two(Laboratory first, Laboratory second) implements Comparable<Two> {
    @Override
    public int compareTo(Two other) {
      int byFirst = first.compareTo(other.first);
      return byFirst != 0 ? byFirst : second.compareTo(other.second);
    }
  }

  /** The differences so far, one for each lot. */
  private static final class Gathered {
    private final Unit unit;
    private final List<Double> differences = new ArrayList<>();
    private final List<Double> daysLater = new ArrayList<>();
    private final SortedSet<Method> firstMethods = new TreeSet<>();
    private final SortedSet<Method> secondMethods = new TreeSet<>();

    Gathered(Unit unit) {
      this.unit = unit;
    }
  }

  /** Takes in the tests of one lot: each lot counts once for two laboratories. */
  void lot(List<Tested> tests) {
    SortedMap<Laboratory, List<Tested>> byLaboratory = new TreeMap<>();
    for (Tested test : tests) {
      if (test.laboratory().isNamed()) {
        byLaboratory.computeIfAbsent(test.laboratory(), l -> new ArrayList<>()).add(test);
      }
    }
    byLaboratory.forEach(
        (first, own) -> {
          again(first, own);
          byLaboratory
              .tailMap(first)
              .forEach(
                  (second, others) -> {
                    if (!first.equals(second)) {
                      between(new Two(first, second), own, others);
                    }
                  });
        });
  }

  private void between(Two two, List<Tested> own, List<Tested> others) {
    Gathered into = into(two, own);
    into.differences.add(Tested.mean(own) - Tested.mean(others));
    own.forEach(t -> into.firstMethods.add(t.method()));
    others.forEach(t -> into.secondMethods.add(t.method()));
    OptionalDouble first = meanDay(own);
    OptionalDouble second = meanDay(others);
    if (first.isPresent() && second.isPresent()) {
      into.daysLater.add(first.getAsDouble() - second.getAsDouble());
    }
  }

  private void again(Laboratory laboratory, List<Tested> own) {
    List<DayValue> days = Tested.byDay(own);
    if (days.size() < 2) {
      return;
    }
    DayValue early = days.get(0);
    DayValue late = days.get(days.size() - 1);
    Gathered into = into(new Two(laboratory, laboratory), own);
    into.differences.add(late.value() - early.value());
    into.daysLater.add((double) (late.day().toEpochDay() - early.day().toEpochDay()));
    own.forEach(t -> into.firstMethods.add(t.method()));
    own.forEach(t -> into.secondMethods.add(t.method()));
  }

  private Gathered into(Two two, List<Tested> own) {
    return gathered.computeIfAbsent(two, k -> new Gathered(own.get(0).unit()));
  }

  private static OptionalDouble meanDay(List<Tested> tests) {
    return tests.stream()
        .map(Tested::day)
        .flatMap(Optional::stream)
        .mapToLong(LocalDate::toEpochDay)
        .average();
  }

  /** What was gathered, in the order of the laboratories' names. */
  List<LaboratoryPair> found() {
    List<LaboratoryPair> found = new ArrayList<>();
    for (Map.Entry<Two, Gathered> entry : gathered.entrySet()) {
      Gathered of = entry.getValue();
      int lots = of.differences.size();
      found.add(
          new LaboratoryPair(
              entry.getKey().first(),
              entry.getKey().second(),
              quantity,
              of.unit,
              lots,
              lots < rules.leastPairs()
                  ? Optional.empty()
                  : Optional.of(PairedDifference.of(of.differences)),
              of.firstMethods,
              of.secondMethods,
              of.daysLater.stream().mapToDouble(Double::doubleValue).average()));
    }
    return found;
  }
}
