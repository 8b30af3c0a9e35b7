package rickyard.core.remedy;

import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.Origin;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** What of a foodstuff the rows of the optimiser count. */
final class FoodContents {
  private FoodContents() {}

  static SortedMap<String, Content> forLimits(
      Foodstuff food, SortedMap<String, Unit> units, FeedingStandards standards) {
    SortedMap<String, Content> contents = new TreeMap<>();
    units.forEach(
        (quantity, unit) -> {
          AnalyteCode code = new AnalyteCode(quantity.toUpperCase(Locale.ROOT));
          known(food, code)
              .map(m -> m.in(unit))
              .map(m -> new Content(m.upper(), m.u()))
              .or(() -> high(food, code, standards))
              .ifPresent(c -> contents.put(quantity, c));
        });
    return contents;
  }

  private static Optional<Measured> known(Foodstuff food, AnalyteCode code) {
    return food.find(code)
        .filter(m -> m.basis() == Basis.DRY_MATTER && m.isBoundedAbove())
        .filter(m -> !food.isForage() || Origin.of(m.evidence()) == Origin.REPORTED);
  }

  private static Optional<Content> high(
      Foodstuff food, AnalyteCode code, FeedingStandards standards) {
    return food.isForage()
        ? Optional.empty()
        : standards.findHighValue(food.role(), code).map(h -> new Content(h.value(), 0));
  }

  static SortedMap<String, Double> perKgDm(Foodstuff food) {
    SortedMap<String, Double> nutrients = new TreeMap<>();
    for (Nutrient n : Nutrient.values()) {
      if (n.isSummed()) {
        food.find(n.analyte())
            .map(m -> m.in(n.contentUnit()).best() * n.perKg())
            .filter(Double::isFinite)
            .ifPresent(amount -> nutrients.put(n.code(), amount));
      }
    }
    return nutrients;
  }
}
