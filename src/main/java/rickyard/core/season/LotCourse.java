package rickyard.core.season;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Unit;

/**
 * One lot tested on several days.
 *
 * @param lot its id
 * @param quantity what was tested
 * @param unit on dry matter
 * @param days at least two, in their order
 * @param change last day less first day
 * @param uChange standard uncertainty of the change, {@code √(u1² + u2²)}
 * @param trend per day, weighted by {@code 1/u²}; from enough days on
 * @param course what it comes to
 */
public record LotCourse(
    String lot,
    AnalyteCode quantity,
    Unit unit,
    List<DayValue> days,
    double change,
    double uChange,
    Optional<Trend> trend,
    Course course) {

  /** Coverage factor of every comparison here, as for two tests of a lot. */
  static final double K = 2;

  public LotCourse {
    requireNonNull(lot, "lot");
    requireNonNull(quantity, "quantity");
    requireNonNull(unit, "unit");
    days = List.copyOf(days);
    requireNonNull(trend, "trend");
    requireNonNull(course, "course");
  }

  /**
   * The course of a lot: with a trend, whether {@code |b| > 2 u(b)}, else whether any two days are
   * apart; without one, whether the two are.
   */
  static LotCourse of(
      String lot, AnalyteCode quantity, Unit unit, List<DayValue> days, OverTimeRules rules) {
    DayValue first = days.get(0);
    DayValue last = days.get(days.size() - 1);
    Optional<Trend> trend =
        days.size() < rules.leastTests()
            ? Optional.empty()
            : Optional.of(Trend.weighted(days.stream().map(d -> point(first, d)).toList()));
    boolean apart = days.stream().anyMatch(a -> days.stream().anyMatch(b -> apart(a, b)));
    Course course =
        trend
            .filter(t -> Math.abs(t.slope()) > K * t.u())
            .map(t -> Course.of(t.slope()))
            .orElse(apart ? days.size() == 2 ? Course.CHANGED : Course.SCATTERED : Course.STEADY);
    return new LotCourse(
        lot,
        quantity,
        unit,
        days,
        last.value() - first.value(),
        StrictMath.sqrt(first.u() * first.u() + last.u() * last.u()),
        trend,
        course);
  }

  private static TimePoint point(DayValue first, DayValue day) {
    return new TimePoint(day.day().toEpochDay() - first.day().toEpochDay(), day.value(), day.u());
  }

  /** Whether two results differ by more than {@code 2 √(u1² + u2²)}. */
  @Cites(source = "jcgm100-2008", locator = "5.1.2; two results agree within k = 2")
  static boolean apart(DayValue a, DayValue b) {
    double joint = StrictMath.sqrt(a.u() * a.u() + b.u() * b.u());
    return Math.abs(a.value() - b.value()) > K * joint * (1 + 1e-12);
  }

  public int tests() {
    return days.stream().mapToInt(DayValue::tests).sum();
  }

  /**
   * All laboratories of the series; with several a change may be between them and not in the hay.
   */
  public SortedSet<Laboratory> laboratories() {
    SortedSet<Laboratory> all = new TreeSet<>();
    days.forEach(d -> all.addAll(d.laboratories()));
    return all;
  }
}
