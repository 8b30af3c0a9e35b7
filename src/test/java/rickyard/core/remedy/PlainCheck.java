package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rickyard.core.quantity.Normal;

/** A diet code of the tests' own: sums and the guard band written out, nothing of the search. */
final class PlainCheck implements DietCheck {
  private final HorseFacts horse;
  private final List<DietLimit> dietLimits;
  private final List<MealLimit> mealLimits;
  private final IntakeRange intake;
  private final List<NutrientNeed> needs;

  PlainCheck(
      HorseFacts horse,
      List<DietLimit> dietLimits,
      List<MealLimit> mealLimits,
      IntakeRange intake,
      List<NutrientNeed> needs) {
    this.horse = horse;
    this.dietLimits = dietLimits;
    this.mealLimits = mealLimits;
    this.intake = intake;
    this.needs = needs;
  }

  @Override
  public CheckedDiet check(List<Serving> ration) {
    List<CheckedLimit> limits = new ArrayList<>();
    dietLimits.forEach(l -> limits.add(diet(l, ration)));
    mealLimits.forEach(l -> limits.add(meal(l, ration)));
    limits.sort((a, b) -> Double.compare(b.pOver().orElse(1), a.pOver().orElse(1)));
    TreeMap<String, Double> shortfalls = new TreeMap<>();
    for (NutrientNeed need : needs) {
      double supply = 0;
      for (Serving a : ration) {
        supply += a.dmKg() * a.item().nutrientsPerKgDm().getOrDefault(need.code(), 0.0);
      }
      if (supply < need.perDay()) {
        shortfalls.put(need.code(), need.perDay() - supply);
      }
    }
    return new CheckedDiet(limits, obstacles(ration), shortfalls, new java.util.TreeSet<>());
  }

  private List<String> obstacles(List<Serving> ration) {
    double dm = 0;
    double forage = 0;
    double straw = 0;
    for (Serving a : ration) {
      dm += a.dmKg();
      forage += a.item().isForage() ? a.dmKg() : 0;
      straw += a.item().isStraw() ? a.dmKg() : 0;
    }
    List<String> obstacles = new ArrayList<>();
    if (dm < intake.floorKgDm() - 1e-9 || forage < intake.forageFloorKgDm() - 1e-9) {
      obstacles.add("below the floor");
    }
    if (dm > intake.ceilingKgDm() + 1e-9) {
      obstacles.add("above the ceiling");
    }
    if (straw > intake.maxStrawShare() * forage + 1e-9) {
      obstacles.add("too much straw");
    }
    boolean isKnown = ration.stream().allMatch(a -> a.item().contents().containsKey("energy"));
    double mcal = 0;
    for (Serving a : ration) {
      mcal += isKnown ? a.dmKg() * a.item().contents().get("energy").value() : 0;
    }
    EnergyBand band = intake.energy().orElse(new EnergyBand(0, Double.POSITIVE_INFINITY));
    if (isKnown && (mcal < band.leastMcal() * 0.999999 || mcal > band.mostMcal() * 1.000001)) {
      obstacles.add("energy");
    }
    return obstacles;
  }

  private CheckedLimit diet(DietLimit limit, List<Serving> ration) {
    double dm = 0;
    double sum = 0;
    double variance = 0;
    for (Serving a : ration) {
      Content c = a.item().contents().get(limit.quantity());
      if (c == null) {
        return unknown(limit);
      }
      dm += a.dmKg();
      sum += a.dmKg() * c.value();
      variance += Math.pow(a.dmKg() * c.u(), 2);
    }
    double y = sum / dm;
    double u = Math.sqrt(variance) / dm;
    double beyond = limit.isMaximum() ? y - limit.value() : limit.value() - y;
    return new CheckedLimit(
        limit.id(),
        limit.words(),
        limit.value(),
        "% DM",
        OptionalDouble.of(y),
        OptionalDouble.of(u),
        OptionalDouble.of(u > 0 ? Normal.cdf(beyond / u) : beyond > 0 ? 1 : 0),
        word(beyond, limit.z() * u),
        true);
  }

  private static CheckedLimit unknown(DietLimit limit) {
    return new CheckedLimit(
        limit.id(),
        limit.words(),
        limit.value(),
        "% DM",
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "cannot-judge",
        true);
  }

  private CheckedLimit meal(MealLimit limit, List<Serving> ration) {
    double grams = 0;
    for (Serving a : ration) {
      if (!a.fedAsForage()) {
        Content c = a.item().contents().getOrDefault(limit.quantity(), new Content(0, 0));
        grams += 10 * a.dmKg() * c.value() / a.meals().orElse(horse.mealsPerDay());
      }
    }
    double beyond = grams - limit.maxGrams();
    return new CheckedLimit(
        limit.id(),
        limit.words(),
        limit.maxGrams(),
        "g a meal",
        OptionalDouble.of(grams),
        OptionalDouble.of(0),
        OptionalDouble.of(beyond > 0 ? 1 : 0),
        word(beyond, 0),
        true);
  }

  static String word(double beyond, double w) {
    if (beyond <= -w + 1e-8) {
      return "clears";
    }
    if (beyond <= 0) {
      return "borderline-under";
    }
    return beyond < w ? "borderline-over" : "exceeds";
  }
}
