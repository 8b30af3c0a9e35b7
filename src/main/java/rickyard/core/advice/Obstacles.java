package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.Floor;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.NutrientLine;
import rickyard.core.nutrition.NutrientStatus;
import rickyard.core.nutrition.Origin;
import rickyard.core.remedy.EnergyBand;

/** What stands against feeding a diet besides the limits, and what it falls short of. */
final class Obstacles {
  private Obstacles() {}

  /** Something that stands against feeding a diet besides the limits. */
  record Obstacle(String code, String words) {}

  /**
   * Everything that stands against a diet.
   *
   * @param leastCaP calcium to phosphorus below which no diet is proposed, where both were reported
   */
  static List<Obstacle> of(Diet diet, double leastCaP) {
    List<Obstacle> found = new ArrayList<>();
    Floor floor = diet.intake().floor();
    if (floor == Floor.REFUSE || floor == Floor.NEEDS_VET_PLAN) {
      found.add(new Obstacle("floor-" + floor.code(), diet.intake().words()));
    }
    if (diet.intake().isStrawOverUsualCap()) {
      found.add(new Obstacle("straw", "more straw than is usual for its type"));
    }
    Optional.ofNullable(diet.lines().get(Nutrient.CA_P))
        .filter(r -> r.supply().isComplete() && r.supply().origin() == Origin.REPORTED)
        .filter(r -> r.supply().best() < leastCaP)
        .ifPresent(r -> found.add(new Obstacle("ratio", "less calcium than phosphorus")));
    for (NutrientLine line : diet.lines().values()) {
      if (line.status() == NutrientStatus.ABOVE_CEILING) {
        found.add(
            new Obstacle(
                "ceiling-" + line.nutrient().code(),
                line.nutrient().code() + " may pass what is tolerated"));
      }
    }
    return found;
  }

  /** What the energy of a changed diet says against it; empty where it is not all reported. */
  static Optional<Obstacle> ofEnergy(Diet diet, EnergyBand band) {
    NutrientLine line = diet.line(Nutrient.DE);
    double mcal = line.supply().best();
    if (!SearchBounds.isReported(line) || band.holds(mcal)) {
      return Optional.empty();
    }
    boolean isLess = mcal < band.leastMcal();
    return Optional.of(
        new Obstacle(
            isLess ? "energy-less" : "energy-more",
            String.format(
                Locale.ROOT,
                "%s energy than its condition allows (%.1f Mcal, %s %.1f)",
                isLess ? "less" : "more",
                mcal,
                isLess ? "least" : "most",
                isLess ? band.leastMcal() : band.mostMcal())));
  }

  static SortedMap<String, Double> shortfalls(Diet diet) {
    SortedMap<String, Double> short_ = new TreeMap<>();
    for (NutrientLine line : diet.lines().values()) {
      if (line.status() == NutrientStatus.BELOW && line.requirement().isPresent()) {
        double missing = line.requirement().getAsDouble() - line.supply().best();
        if (missing > 0) {
          short_.put(line.nutrient().code(), missing);
        }
      }
    }
    return short_;
  }

  /** Nutrients whose supply all comes from reports and is short. */
  static List<String> reportedShort(Diet diet) {
    return diet.lines().values().stream()
        .filter(line -> line.status() == NutrientStatus.BELOW && SearchBounds.isReported(line))
        .map(line -> line.nutrient().code())
        .toList();
  }
}
