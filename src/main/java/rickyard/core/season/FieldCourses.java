package rickyard.core.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Lot;
import rickyard.core.quantity.Measured;

/** Finds fields and cuttings with hay of several years. */
final class FieldCourses {
  private final OverTimeRules rules;

  FieldCourses(OverTimeRules rules) {
    this.rules = rules;
  }

  /** What belongs together: case and spaces of its names do not matter. */
  record Series(String field, String cutting, String material) implements Comparable<Series> {
    static Series of(Lot lot) {
      return new Series(lot.field().strip(), lot.cutting().strip(), lot.material().strip());
    }

    private String key() {
      return String.join("\u001f", Laboratory.key(field), Laboratory.key(cutting), material)
          .toLowerCase(Locale.ROOT);
    }

    @Override
    public int compareTo(Series other) {
      return key().compareTo(other.key());
    }
  }

  List<FieldCourse> of(List<InForce> inForce, Map<String, Lot> lots) {
    Map<Series, SortedMap<Integer, List<InForce>>> bySeries = new TreeMap<>();
    for (InForce entry : inForce.stream().sorted(Comparator.comparing(InForce::subject)).toList()) {
      Optional.ofNullable(lots.get(entry.subject()))
          .filter(lot -> entry.batch().isEmpty() && entry.analysis().isPresent())
          .filter(lot -> !lot.field().isBlank() && lot.harvestedOn().isPresent())
          .ifPresent(
              lot ->
                  bySeries
                      .computeIfAbsent(Series.of(lot), s -> new TreeMap<>())
                      .computeIfAbsent(
                          lot.harvestedOn().orElseThrow().getYear(), y -> new ArrayList<>())
                      .add(entry));
    }
    List<FieldCourse> courses = new ArrayList<>();
    bySeries.forEach(
        (series, years) ->
            rules.quantities().forEach(q -> find(series, q, years).ifPresent(courses::add)));
    return courses;
  }

  private Optional<FieldCourse> find(
      Series series, AnalyteCode quantity, SortedMap<Integer, List<InForce>> years) {
    List<YearValue> values = new ArrayList<>();
    List<Measured> like = new ArrayList<>();
    years.forEach(
        (year, entries) -> {
          List<Measured> measured =
              entries.stream()
                  .flatMap(e -> e.analysis().stream())
                  .flatMap(a -> a.analysis().find(quantity).stream())
                  .filter(Tested::isComparable)
                  .toList();
          if (!measured.isEmpty()) {
            like.addAll(measured);
            values.add(year(year, measured));
          }
        });
    return values.size() < 2
        ? Optional.empty()
        : Optional.of(FieldCourse.of(series, quantity, like.get(0).unit(), values, rules));
  }

  private static YearValue year(int year, List<Measured> measured) {
    double sum = 0;
    double squares = 0;
    for (Measured each : measured) {
      sum += each.best();
      squares += each.u() * each.u();
    }
    int n = measured.size();
    return new YearValue(year, n, sum / n, StrictMath.sqrt(squares) / n);
  }
}
