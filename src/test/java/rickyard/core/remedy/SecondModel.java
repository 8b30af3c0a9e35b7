package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The convex model of one support, stated a second time and solved by another library: the amounts
 * as a vector on a common scale, every limit as {@code g'x + z‖D x‖ ≤ 0}, cut by tangent planes
 * until what is left of any limit is far below what is compared.
 *
 * <p>Each linear program is a relaxation and its value is proven by its dual, so that it is a lower
 * bound of the model's; the point itself breaks no limit by more than {@link #LEFT}.
 */
final class SecondModel {
  /** What a limit may be exceeded by, as a share of it. */
  static final double LEFT = 1e-9;

  /** From here on rows that must give way count as infeasible. */
  static final double INFEASIBLE = 1e-7;

  private static final double INFINITY = Double.POSITIVE_INFINITY;
  private static final int MOST_CUTS = 400;

  /**
   * {@code constant + slopes'x + z √(variance + Σ (spreads x)²) ≤ 0}, already a share of its limit.
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Cone(
      double constant, double[] slopes, double variance, double[] spreads, double z) {
    double root(double[] x) {
      double sum = variance;
      for (int i = 0; i < spreads.length; i++) {
        sum += spreads[i] * spreads[i] * x[i] * x[i];
      }
      return Math.sqrt(sum);
    }

    double at(double[] x) {
      double sum = constant + z * root(x);
      for (int i = 0; i < slopes.length; i++) {
        sum += slopes[i] * x[i];
      }
      return sum;
    }
  }

  /** An optimum: the proven bound below all values, and a point that reaches it. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Optimum(double value, double[] dmKg) {}

  private final RemedyRequest request;
  private final MixSpec spec;
  private final int n;
  private final List<Cone> cones = new ArrayList<>();

  /**
   * Columns: amounts, then what they differ from today by, then what is missing of each need, then
   * how far the forage is off its target where that may give way, then what all rows give way by.
   */
  private final int width;

  private final int elastic;
  private final int off;
  private final boolean hasEnergy;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> sides = new ArrayList<>();

  SecondModel(RemedyRequest request, MixSpec spec) {
    this.request = request;
    this.spec = spec;
    this.n = spec.free().size();
    int needs = spec.hasWishes() ? request.needs().size() : 0;
    this.hasEnergy =
        request.intake().energy().isPresent()
            && java.util.stream.Stream.concat(
                    spec.free().stream().map(FreeItem::item),
                    spec.fixed().stream().map(Serving::item))
                .allMatch(c -> c.contents().containsKey("energy"));
    this.off = 2 * n + needs;
    this.elastic = off + 1;
    this.width = elastic + 1;
    for (DietLimit limit : request.dietLimits()) {
      cones.add(diet(limit));
    }
    for (MealLimit limit : request.mealLimits()) {
      cones.add(meal(limit));
    }
    bounds();
    intake();
    if (spec.hasWishes()) {
      needs();
    }
  }

  private double content(Candidate item, String quantity) {
    Content c = item.contents().get(quantity);
    return c == null ? 0 : c.value();
  }

  private double u(Candidate item, String quantity) {
    Content c = item.contents().get(quantity);
    return c == null ? 0 : c.u();
  }

  private Cone diet(DietLimit limit) {
    double side = limit.isMaximum() ? 1 : -1;
    double scale = Math.max(1e-6, limit.value()) * fixedAndFreeDm();
    double constant = 0;
    double variance = 0;
    for (Serving a : spec.fixed()) {
      double dm = a.kg() * a.item().dryMatterFraction();
      constant += side * dm * (content(a.item(), limit.quantity()) - limit.value()) / scale;
      variance += Math.pow(dm * u(a.item(), limit.quantity()) / scale, 2);
    }
    double[] slopes = new double[n];
    double[] spreads = new double[n];
    for (int i = 0; i < n; i++) {
      Candidate item = spec.free().get(i).item();
      slopes[i] = side * (content(item, limit.quantity()) - limit.value()) / scale;
      spreads[i] = u(item, limit.quantity()) / scale;
    }
    return new Cone(constant, slopes, variance, spreads, limit.z());
  }

  private double fixedAndFreeDm() {
    return Math.max(
        1e-3,
        spec.fixed().stream().mapToDouble(Serving::dmKg).sum()
            + spec.freeForageDmKg().orElse(request.intake().floorKgDm()));
  }

  private Cone meal(MealLimit limit) {
    double scale = limit.maxGrams();
    double constant = -1;
    double variance = 0;
    for (Serving a : spec.fixed()) {
      if (!a.fedAsForage()) {
        double kg = a.kg() * a.item().dryMatterFraction() / meals(a.meals());
        constant += 1000 * kg * content(a.item(), limit.quantity()) / 100 / scale;
        variance += Math.pow(1000 * kg * u(a.item(), limit.quantity()) / 100 / scale, 2);
      }
    }
    double[] slopes = new double[n];
    double[] spreads = new double[n];
    for (int i = 0; i < n; i++) {
      FreeItem f = spec.free().get(i);
      double perMeal = f.fedAsForage() ? 0 : 1000.0 / 100 / meals(f.meals()) / scale;
      slopes[i] = perMeal * content(f.item(), limit.quantity());
      spreads[i] = perMeal * u(f.item(), limit.quantity());
    }
    return new Cone(constant, slopes, variance, spreads, limit.z());
  }

  private double meals(java.util.OptionalInt own) {
    return own.orElse(request.horse().mealsPerDay());
  }

  private double[] row() {
    return new double[width];
  }

  private void atLeast(double[] row, double side) {
    if (Double.isFinite(side)) {
      rows.add(row);
      sides.add(side);
    }
  }

  private void atMost(double[] row, double side) {
    atLeast(Arrays.stream(row).map(c -> -c).toArray(), -side);
  }

  private double today(FreeItem f) {
    return request.ration().stream()
        .filter(a -> a.item().id().equals(f.item().id()) && a.fedAsForage() == f.fedAsForage())
        .filter(a -> a.item().batch().equals(f.item().batch()))
        .mapToDouble(a -> a.kg() * a.item().dryMatterFraction())
        .sum();
  }

  private boolean isKnown(Candidate item) {
    return request.dietLimits().stream()
        .allMatch(l -> !l.isAskedWhenMissing() || item.contents().containsKey(l.quantity()));
  }

  private void bounds() {
    for (int i = 0; i < n; i++) {
      FreeItem f = spec.free().get(i);
      double[] one = row();
      one[i] = 1;
      atLeast(one, f.leastDmKg());
      atMost(one, isKnown(f.item()) ? f.mostDmKg() : 0);
      double[] above = row();
      above[i] = 1;
      above[n + i] = -1;
      atMost(above, today(f));
      double[] below = row();
      below[i] = -1;
      below[n + i] = -1;
      atMost(below, -today(f));
    }
  }

  /** The free forage adds up to its target; where there is none the intake range holds. */
  private void intake() {
    IntakeRange intake = request.intake();
    double fixed = spec.fixed().stream().mapToDouble(Serving::dmKg).sum();
    double fixedForage = 0;
    double fixedStraw = 0;
    for (Serving a : spec.fixed()) {
      fixedForage += a.item().isForage() ? a.dmKg() : 0;
      fixedStraw += a.item().isStraw() ? a.dmKg() : 0;
    }
    double[] all = row();
    double[] forage = row();
    double[] straw = row();
    boolean hasForage = false;
    boolean hasStraw = false;
    for (int i = 0; i < n; i++) {
      FreeItem f = spec.free().get(i);
      boolean isForage = f.item().isForage() && f.fedAsForage();
      all[i] = 1;
      forage[i] = isForage ? 1 : 0;
      straw[i] = (f.item().isStraw() ? 1 : 0) - (isForage ? intake.maxStrawShare() : 0);
      hasForage |= isForage;
      hasStraw |= f.item().isStraw();
    }
    boolean hasTarget = spec.freeForageDmKg().isPresent() && hasForage;
    if (hasTarget) {
      double[] least = forage.clone();
      double[] most = forage.clone();
      least[off] = hasEnergy ? 1 : 0;
      most[off] = hasEnergy ? -1 : 0;
      atLeast(least, spec.freeForageDmKg().getAsDouble());
      atMost(most, spec.freeForageDmKg().getAsDouble());
    }
    double[] none = row();
    none[off] = 1;
    atLeast(none, 0);
    if (hasEnergy) {
      energy();
    }
    if (!hasTarget || hasEnergy) {
      atLeast(all, intake.floorKgDm() - fixed);
      atMost(all, intake.ceilingKgDm() - fixed);
      atLeast(forage, intake.forageFloorKgDm() - fixedForage);
    }
    if (hasStraw) {
      atMost(straw, intake.maxStrawShare() * fixedForage - fixedStraw);
    }
  }

  /** The energy of all that is fed lies in its band, as a share of the larger end. */
  private void energy() {
    EnergyBand band = request.intake().energy().orElseThrow();
    double scale = Math.max(1, band.leastMcal());
    double given = 0;
    for (Serving a : spec.fixed()) {
      given += a.dmKg() * content(a.item(), "energy");
    }
    double[] row = row();
    for (int i = 0; i < n; i++) {
      row[i] = content(spec.free().get(i).item(), "energy") / scale;
    }
    atLeast(row, (band.leastMcal() - given) / scale);
    atMost(row, (band.mostMcal() - given) / scale);
  }

  /** What is missing of each need, as a share of it. */
  private void needs() {
    for (int k = 0; k < request.needs().size(); k++) {
      NutrientNeed need = request.needs().get(k);
      double[] row = row();
      double given = 0;
      for (Serving a : spec.fixed()) {
        given += a.dmKg() * a.item().nutrientsPerKgDm().getOrDefault(need.code(), 0.0);
      }
      for (int i = 0; i < n; i++) {
        Candidate item = spec.free().get(i).item();
        row[i] = item.nutrientsPerKgDm().getOrDefault(need.code(), 0.0) / need.perDay();
      }
      row[2 * n + k] = 1;
      atLeast(row, 1 - given / need.perDay());
    }
  }

  /** The objective of the model at given amounts: change, what is missing, cost. */
  double value(double[] x) {
    RemedySettings s = request.settings();
    double value = 0;
    for (int i = 0; i < n; i++) {
      FreeItem f = spec.free().get(i);
      value += s.changeWeight() * Math.abs(x[i] - today(f)) + s.costWeight() * price(f) * x[i];
    }
    value += s.targetWeight() * offTarget(x);
    for (int k = 0; spec.hasWishes() && k < request.needs().size(); k++) {
      NutrientNeed need = request.needs().get(k);
      double given = 0;
      for (Serving a : spec.fixed()) {
        given += a.dmKg() * a.item().nutrientsPerKgDm().getOrDefault(need.code(), 0.0);
      }
      for (int i = 0; i < n; i++) {
        Candidate item = spec.free().get(i).item();
        given += x[i] * item.nutrientsPerKgDm().getOrDefault(need.code(), 0.0);
      }
      value += s.shortfallWeight() * Math.max(0, 1 - given / need.perDay());
    }
    return value;
  }

  private double offTarget(double[] x) {
    double forage = 0;
    boolean hasForage = false;
    for (int i = 0; i < n; i++) {
      FreeItem f = spec.free().get(i);
      boolean isForage = f.item().isForage() && f.fedAsForage();
      hasForage |= isForage;
      forage += isForage ? x[i] : 0;
    }
    return hasForage && hasEnergy && spec.freeForageDmKg().isPresent()
        ? Math.abs(forage - spec.freeForageDmKg().getAsDouble())
        : 0;
  }

  private static double price(FreeItem f) {
    return f.item().stock().pricePerKg().orElse(0) / f.item().dryMatterFraction();
  }

  /** How much the worst limit is exceeded, as a share of it. */
  double worst(double[] x) {
    return cones.stream().mapToDouble(c -> c.at(x)).max().orElse(-INFINITY);
  }

  /** How far a point lies outside of any row that is no limit, kg or a share of a need. */
  double outside(double[] x) {
    double[] whole = new double[width];
    System.arraycopy(x, 0, whole, 0, n);
    for (int i = 0; i < n; i++) {
      whole[n + i] = Math.abs(x[i] - today(spec.free().get(i)));
    }
    Arrays.fill(whole, 2 * n, off, 1);
    whole[off] = offTarget(x);
    double most = 0;
    for (int i = 0; i < rows.size(); i++) {
      double at = 0;
      for (int k = 0; k < width; k++) {
        at += rows.get(i)[k] * whole[k];
      }
      most = Math.max(most, sides.get(i) - at);
    }
    return most;
  }

  /** The optimum; empty where the rows and limits cannot be met together. */
  Optional<Optimum> solve() {
    if (leastExcess() > INFEASIBLE) {
      return Optional.empty();
    }
    double[] price = row();
    RemedySettings s = request.settings();
    for (int i = 0; i < n; i++) {
      price[i] = s.costWeight() * price(spec.free().get(i));
      price[n + i] = s.changeWeight();
    }
    Arrays.fill(price, 2 * n, off, s.shortfallWeight());
    price[off] = s.targetWeight();
    CertifiedProgram program = program(price, 0);
    double[] none = row();
    none[elastic] = -1;
    program.atLeast(none, 0);
    return Optional.of(minimise(program, 0));
  }

  /** The least amount by which all rows and limits must give way; 0 where they can be met. */
  double leastExcess() {
    double[] price = row();
    price[elastic] = 1;
    return minimise(program(price, 1), 1).value();
  }

  private CertifiedProgram program(double[] price, double slack) {
    CertifiedProgram program = new CertifiedProgram(price);
    for (int i = 0; i < rows.size(); i++) {
      double[] row = rows.get(i).clone();
      row[elastic] = slack;
      program.atLeast(row, sides.get(i));
    }
    for (Cone cone : cones) {
      cut(program, cone, new double[n], slack);
    }
    return program;
  }

  private Optimum minimise(CertifiedProgram program, double slack) {
    for (int cuts = 0; cuts < MOST_CUTS; cuts++) {
      CertifiedProgram.Solved solved = program.solve();
      double[] x = Arrays.copyOf(solved.x(), n);
      boolean isBroken = false;
      for (Cone cone : cones) {
        if (cone.at(x) - slack * solved.x()[elastic] > LEFT) {
          cut(program, cone, x, slack);
          isBroken = true;
        }
      }
      if (!isBroken) {
        return new Optimum(solved.bound(), x);
      }
    }
    throw new IllegalStateException("no end of cuts");
  }

  /** The plane that touches the cone above a point; at the tip the cone without its spread. */
  private void cut(CertifiedProgram program, Cone cone, double[] at, double slack) {
    double root = cone.root(at);
    double[] row = row();
    double side = cone.constant() + (root > 0 ? cone.z() * cone.variance() / root : 0);
    for (int i = 0; i < n; i++) {
      double s = cone.spreads()[i];
      row[i] = -cone.slopes()[i] - (root > 0 ? cone.z() * s * s * at[i] / root : 0);
    }
    row[elastic] = slack;
    program.atLeast(row, side);
  }
}
