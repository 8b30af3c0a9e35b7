package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Why nothing in reach is enough: the requirements that stand against each other, found as the
 * smallest total violation over everything in reach at once.
 *
 * <p>The optimiser itself only says that no solution exists, so each row gets a priced way out.
 */
final class Conflict {
  private static final int MOST_CUTS = 80;
  private static final double NOTHING = 1e-6;

  private final RemedyRequest request;
  private final LinearProgram program = new LinearProgram();
  private final List<String> names = new ArrayList<>();
  private final List<Integer> places = new ArrayList<>();
  private final List<UncertainRow> rows = new ArrayList<>();
  private final List<Candidate> items;

  Conflict(RemedyRequest request) {
    this.request = request;
    SortedMap<String, Candidate> byKey = new TreeMap<>();
    request.ration().forEach(a -> byKey.put(a.item().key(), a.item()));
    request.reach().forEach(c -> byKey.putIfAbsent(c.key(), c));
    this.items = byKey.values().stream().filter(request::isKnown).toList();
  }

  /** The rows that cannot be met together, in plain words; empty if a solution in parts exists. */
  List<String> words() {
    if (items.isEmpty()) {
      return List.of("no item in reach has the analyses that the limits ask for");
    }
    build();
    Optional<double[]> found = solve();
    List<String> broken = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (found.isEmpty() || found.get()[places.get(i)] > NOTHING) {
        broken.add(names.get(i));
      }
    }
    return broken;
  }

  private void build() {
    double bodyWeight = request.horse().bodyWeightKg();
    for (Candidate c : items) {
      double today = request.todayKg(c);
      double stock = c.stock().mostKgPerDay(request.settings().stockHorizonDays());
      double label = c.isForage() ? c.label().mostAsWholeRationKg(bodyWeight) : today;
      program.variable(0, Math.min(Math.max(stock, today), label) * c.dryMatterFraction(), 0);
    }
    IntakeRange intake = request.intake();
    double target = Math.max(intake.floorKgDm(), NOTHING);
    addLinear("the least intake", ones(c -> 1), intake.floorKgDm(), target, true);
    addLinear(
        "the forage floor",
        ones(c -> c.isForage() ? 1 : 0),
        intake.forageFloorKgDm(),
        target,
        true);
    addLinear("the largest intake", ones(c -> 1), intake.ceilingKgDm(), target, false);
    addLinear(
        "the cap on straw",
        ones(c -> (c.isStraw() ? 1 : 0) - (c.isForage() ? intake.maxStrawShare() : 0)),
        0,
        target,
        false);
    request.dietLimits().forEach(this::addLimit);
  }

  private double[] ones(java.util.function.ToDoubleFunction<Candidate> slope) {
    return items.stream().mapToDouble(slope).toArray();
  }

  private void addLinear(
      String name, double[] slopes, double bound, double scale, boolean isLeast) {
    int way = way(name, scale);
    double[] row = Arrays.copyOf(slopes, way + 1);
    row[way] = isLeast ? 1 : -1;
    program.row(
        row,
        isLeast ? bound : Double.NEGATIVE_INFINITY,
        isLeast ? Double.POSITIVE_INFINITY : bound);
  }

  private int way(String name, double scale) {
    int way = program.variable(0, Double.POSITIVE_INFINITY, 1 / scale);
    names.add(name);
    places.add(way);
    return way;
  }

  private void addLimit(DietLimit limit) {
    double sign = limit.isMaximum() ? 1 : -1;
    double scale = Math.max(1e-9, limit.value()) * Math.max(1e-9, request.intake().floorKgDm());
    int way =
        way(
            limit.words()
                + (limit.isMaximum() ? " at most " : " at least ")
                + Figures.number(limit.value())
                + " (with its guard band)",
            scale);
    double[] slopes = new double[way + 1];
    double[] spreads = new double[way + 1];
    for (int i = 0; i < items.size(); i++) {
      Content content = items.get(i).findContent(limit.quantity()).orElse(new Content(0, 0));
      slopes[i] = sign * (content.value() - limit.value());
      spreads[i] = content.u();
    }
    slopes[way] = -1;
    UncertainRow row = new UncertainRow(0, slopes, 0, spreads, limit.z(), scale);
    row.addRelaxedTo(program);
    rows.add(row);
  }

  private Optional<double[]> solve() {
    Optional<double[]> found = Optional.empty();
    for (int cuts = 0; cuts < MOST_CUTS; cuts++) {
      found = program.minimise();
      if (found.isEmpty()) {
        return found;
      }
      double[] x = found.get();
      List<UncertainRow> broken = rows.stream().filter(r -> r.excess(x) > NOTHING / 10).toList();
      if (broken.isEmpty()) {
        return found;
      }
      broken.forEach(r -> r.addTangentTo(program, x));
    }
    return found;
  }

  /**
   * One sentence for the page.
   *
   * @param nearest why the nearest proposal is not enough; empty if there is none
   */
  String sentence(String nearest) {
    List<String> words = words();
    String names = String.join("; ", words);
    String ways = new WayOut(request).sentence();
    if (!words.isEmpty()) {
      return "Nothing in reach is enough; what cannot be met together: " + names + "." + ways;
    }
    return "Nothing in reach is enough in amounts that can be weighed"
        + (nearest.isEmpty() ? "." : "; nearest: " + nearest)
        + ways;
  }
}
