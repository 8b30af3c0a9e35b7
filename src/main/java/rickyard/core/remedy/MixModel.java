package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rickyard.core.quantity.Cites;

/**
 * The optimiser's model of one support: the amounts that change least and satisfy every row.
 *
 * <p>A limit with its guard band is convex; the linear program meets it through tangent cuts until
 * the exact row holds.
 */
final class MixModel {
  private static final int MOST_CUTS = 80;

  /** From % of dry matter to g per kg of dry matter. */
  private static final double GRAMS = 10;

  private final RemedyRequest request;
  private final MixSpec spec;
  private final List<FreeItem> free;
  private final List<UncertainRow> limits = new ArrayList<>();
  private final Optional<EnergyBand> energy;

  MixModel(RemedyRequest request, MixSpec spec) {
    this.request = request;
    this.spec = spec;
    this.free = spec.free();
    this.energy = request.intake().energy().filter(band -> EnergyBand.isKnown(spec));
    request.dietLimits().forEach(this::addDietLimit);
    request.mealLimits().forEach(this::addMealLimit);
  }

  /** {@code Σ d·(c − L) + z·√Σ (d·u)² ≤ 0} over all items of the diet. */
  @Cites(source = "definition", locator = "mean of a mix by dry matter, guard band z times u")
  private void addDietLimit(DietLimit limit) {
    double sign = limit.isMaximum() ? 1 : -1;
    double constant = 0;
    double variance = 0;
    double dm = 0;
    for (Serving a : spec.fixed()) {
      Optional<Content> content = a.item().findContent(limit.quantity());
      constant += sign * a.dmKg() * (content.map(Content::value).orElse(0.0) - limit.value());
      double part = a.dmKg() * content.map(Content::u).orElse(0.0);
      variance += part * part;
      dm += a.dmKg();
    }
    double[] slopes = new double[free.size()];
    double[] spreads = new double[free.size()];
    for (int i = 0; i < slopes.length; i++) {
      Optional<Content> content = free.get(i).item().findContent(limit.quantity());
      slopes[i] = sign * (content.map(Content::value).orElse(0.0) - limit.value());
      spreads[i] = content.map(Content::u).orElse(0.0);
    }
    double whole = dm + spec.freeForageDmKg().orElse(request.intake().floorKgDm());
    addIfItBinds(
        new UncertainRow(constant, slopes, variance, spreads, limit.z(), limit.value() * whole));
  }

  /** A row that every item meets by itself is met by any mix of them. */
  private void addIfItBinds(UncertainRow row) {
    if (row.canBind()) {
      limits.add(row);
    }
  }

  private void addMealLimit(MealLimit limit) {
    double constant = -limit.maxGrams();
    double variance = 0;
    for (Serving a : spec.fixed()) {
      if (!a.fedAsForage()) {
        double perMeal = GRAMS * a.dmKg() / meals(a);
        Optional<Content> content = a.item().findContent(limit.quantity());
        constant += perMeal * content.map(Content::value).orElse(0.0);
        double part = perMeal * content.map(Content::u).orElse(0.0);
        variance += part * part;
      }
    }
    double[] slopes = new double[free.size()];
    double[] spreads = new double[free.size()];
    for (int i = 0; i < slopes.length; i++) {
      FreeItem item = free.get(i);
      if (!item.fedAsForage()) {
        double perKg = GRAMS / item.meals().orElse(request.horse().mealsPerDay());
        Optional<Content> content = item.item().findContent(limit.quantity());
        slopes[i] = perKg * content.map(Content::value).orElse(0.0);
        spreads[i] = perKg * content.map(Content::u).orElse(0.0);
      }
    }
    addIfItBinds(
        new UncertainRow(constant, slopes, variance, spreads, limit.z(), limit.maxGrams()));
  }

  private int meals(Serving amount) {
    return amount.meals().orElse(request.horse().mealsPerDay());
  }

  /**
   * The amounts with the least change from today, then the least missing, then the least cost.
   *
   * @return kg of dry matter per free item; empty if no amounts satisfy every row
   */
  Optional<double[]> solve() {
    if (free.stream().anyMatch(f -> leastOf(f) > mostOf(f)) || isHopeless()) {
      return Optional.empty();
    }
    LinearProgram program = program();
    for (int cuts = 0; cuts < MOST_CUTS; cuts++) {
      Optional<double[]> found = program.minimise();
      if (found.isEmpty()) {
        return Optional.empty();
      }
      double[] x = Arrays.copyOf(found.get(), free.size());
      List<UncertainRow> broken =
          limits.stream().filter(l -> l.excess(x) > UncertainRow.TOLERANCE).toList();
      if (broken.isEmpty()) {
        return Optional.of(x);
      }
      broken.forEach(l -> l.addTangentTo(program, x));
    }
    return Optional.empty();
  }

  /** A pair of forages of which no mix meets some limit: said without the optimiser. */
  private boolean isHopeless() {
    if (free.size() != 2
        || energy.isPresent()
        || spec.freeForageDmKg().isEmpty()
        || !free.stream().allMatch(FreeItem::isForage)) {
      return false;
    }
    double all = spec.freeForageDmKg().getAsDouble();
    double[] first = {all, 0};
    double[] second = {0, all};
    return limits.stream()
        .anyMatch(l -> l.leastExcessBetween(first, second) > 1000 * UncertainRow.TOLERANCE);
  }

  /** An item of which a limit's content is unknown may stay away, but not be fed. */
  private double mostOf(FreeItem item) {
    return request.isKnown(item.item()) ? item.mostDmKg() : 0;
  }

  private static double leastOf(FreeItem item) {
    return item.leastDmKg();
  }

  private LinearProgram program() {
    LinearProgram program = new LinearProgram();
    RemedySettings settings = request.settings();
    for (FreeItem f : free) {
      double price = f.item().stock().pricePerKg().orElse(0) / f.item().dryMatterFraction();
      program.variable(leastOf(f), mostOf(f), settings.costWeight() * price);
    }
    for (int i = 0; i < free.size(); i++) {
      addChange(program, i, settings.changeWeight());
    }
    limits.forEach(l -> l.addRelaxedTo(program));
    addIntake(program);
    energy.ifPresent(band -> addEnergy(program, band));
    if (spec.hasWishes()) {
      request.needs().forEach(need -> addWish(program, need));
    }
    return program;
  }

  /** {@code x − more + less = today}: the change is the sum of both. */
  private void addChange(LinearProgram program, int i, double weight) {
    int more = program.variable(0, Double.POSITIVE_INFINITY, weight);
    int less = program.variable(0, Double.POSITIVE_INFINITY, weight);
    double[] row = new double[less + 1];
    row[i] = 1;
    row[more] = -1;
    row[less] = 1;
    double today = request.todayDmKg(free.get(i));
    program.row(row, today, today);
  }

  private void addIntake(LinearProgram program) {
    IntakeRange intake = request.intake();
    double fixedDm = spec.fixed().stream().mapToDouble(Serving::dmKg).sum();
    double fixedForage = forageDm(spec.fixed());
    double[] all = new double[free.size()];
    double[] forage = new double[free.size()];
    double[] straw = new double[free.size()];
    for (int i = 0; i < free.size(); i++) {
      all[i] = 1;
      forage[i] = free.get(i).isForage() ? 1 : 0;
      straw[i] = (free.get(i).item().isStraw() ? 1 : 0) - intake.maxStrawShare() * forage[i];
    }
    boolean hasForage = Arrays.stream(forage).anyMatch(c -> c > 0);
    boolean hasTarget = spec.freeForageDmKg().isPresent() && hasForage;
    if (hasTarget) {
      addTarget(program, forage, spec.freeForageDmKg().getAsDouble());
    }
    if (!hasTarget || energy.isPresent()) {
      program.row(all, intake.floorKgDm() - fixedDm, intake.ceilingKgDm() - fixedDm);
      program.row(forage, intake.forageFloorKgDm() - fixedForage, Double.POSITIVE_INFINITY);
    }
    if (free.stream().anyMatch(f -> f.item().isStraw())) {
      double fixedStraw =
          spec.fixed().stream().filter(a -> a.item().isStraw()).mapToDouble(Serving::dmKg).sum();
      program.row(
          straw, Double.NEGATIVE_INFINITY, intake.maxStrawShare() * fixedForage - fixedStraw);
    }
  }

  /**
   * Equal dry matter; where the energy binds, a kilogram off it has its price, since other hay of
   * the same weight may hold too little or too much.
   */
  private void addTarget(LinearProgram program, double[] forage, double target) {
    if (energy.isEmpty()) {
      program.row(forage, target, target);
      return;
    }
    double weight = request.settings().targetWeight();
    int over = program.variable(0, Double.POSITIVE_INFINITY, weight);
    int under = program.variable(0, Double.POSITIVE_INFINITY, weight);
    double[] row = Arrays.copyOf(forage, under + 1);
    row[over] = -1;
    row[under] = 1;
    program.row(row, target, target);
  }

  private void addEnergy(LinearProgram program, EnergyBand band) {
    double fixed = EnergyBand.of(spec.fixed());
    double[] row = free.stream().mapToDouble(f -> EnergyBand.perKgDm(f.item()).orElse(0)).toArray();
    program.row(row, band.leastMcal() - fixed, band.mostMcal() - fixed);
  }

  static double forageDm(List<Serving> ration) {
    return ration.stream().filter(a -> a.item().isForage()).mapToDouble(Serving::dmKg).sum();
  }

  private void addWish(LinearProgram program, NutrientNeed need) {
    double weight = request.settings().shortfallWeight() / need.perDay();
    int missing = program.variable(0, Double.POSITIVE_INFINITY, weight);
    double[] row = new double[missing + 1];
    for (int i = 0; i < free.size(); i++) {
      row[i] = free.get(i).item().nutrient(need.code());
    }
    row[missing] = 1;
    double fixed =
        spec.fixed().stream().mapToDouble(a -> a.dmKg() * a.item().nutrient(need.code())).sum();
    program.row(row, need.perDay() - fixed, Double.POSITIVE_INFINITY);
  }

  /** Whether every limit holds at a choice of amounts. */
  boolean isMet(double[] dmKg) {
    for (UncertainRow limit : limits) {
      if (limit.excess(dmKg) > UncertainRow.TOLERANCE) {
        return false;
      }
    }
    return true;
  }
}
