package rickyard.core.season;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Unit;

/**
 * One field and cutting over the years.
 *
 * @param field as the register of lots names it
 * @param cutting as the register names it
 * @param material as the register names it
 * @param quantity what was tested
 * @param unit on dry matter
 * @param years at least two, in their order
 * @param change last year less first year
 * @param uChange its standard uncertainty by the tests alone
 * @param trend per year, with its uncertainty from the scatter of the years; from enough years on
 * @param course what it comes to
 */
public record FieldCourse(
    String field,
    String cutting,
    String material,
    AnalyteCode quantity,
    Unit unit,
    List<YearValue> years,
    double change,
    double uChange,
    Optional<Trend> trend,
    Course course) {

  public FieldCourse {
    requireNonNull(field, "field");
    requireNonNull(cutting, "cutting");
    requireNonNull(material, "material");
    requireNonNull(quantity, "quantity");
    requireNonNull(unit, "unit");
    years = List.copyOf(years);
    requireNonNull(trend, "trend");
    requireNonNull(course, "course");
  }

  static FieldCourse of(
      FieldCourses.Series series,
      AnalyteCode quantity,
      Unit unit,
      List<YearValue> years,
      OverTimeRules rules) {
    YearValue first = years.get(0);
    YearValue last = years.get(years.size() - 1);
    double change = last.value() - first.value();
    double uChange = StrictMath.sqrt(first.u() * first.u() + last.u() * last.u());
    Optional<Trend> trend =
        years.size() < rules.leastYears()
            ? Optional.empty()
            : Optional.of(
                Trend.fromScatter(
                    years.stream()
                        .map(y -> new TimePoint(y.year() - first.year(), y.value(), y.u()))
                        .toList()));
    boolean apart = years.stream().anyMatch(a -> years.stream().anyMatch(b -> apart(a, b)));
    Course course =
        trend
            .filter(t -> t.chanceFromScatter() < rules.rareChance())
            .map(t -> Course.of(t.slope()))
            .orElse(apart ? years.size() == 2 ? Course.CHANGED : Course.SCATTERED : Course.STEADY);
    return new FieldCourse(
        series.field(),
        series.cutting(),
        series.material(),
        quantity,
        unit,
        years,
        change,
        uChange,
        trend,
        course);
  }

  private static boolean apart(YearValue a, YearValue b) {
    double joint = StrictMath.sqrt(a.u() * a.u() + b.u() * b.u());
    return Math.abs(a.value() - b.value()) > LotCourse.K * joint * (1 + 1e-12);
  }
}
