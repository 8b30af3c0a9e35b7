package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;

/**
 * A laboratory's own digestible energy for horses beside what the equation makes of the same
 * report.
 *
 * @param item key of the forage
 * @param printed the report's value, Mcal/kg DM
 * @param formula the equation's value, Mcal/kg DM
 * @param isPrintedInForce whether the report's value is the one that counts
 * @param typical the inputs of the equation that the report does not give
 */
public record EnergyComparison(
    String item, double printed, double formula, boolean isPrintedInForce, List<String> typical) {

  /** Name of the report's own value among the inputs of one that took its place. */
  static final String PRINTED = "DE as printed, not in force";

  public EnergyComparison {
    requireNonNull(item, "item");
    typical = List.copyOf(typical);
  }

  /**
   * Compares them.
   *
   * @return empty where the report prints no such value, or not enough for the equation
   */
  public static Optional<EnergyComparison> of(Foodstuff food, FeedingStandards standards) {
    Optional<Measured> inForce = food.find(AnalyteCode.DE);
    Optional<Measured> replaced = inForce.flatMap(EnergyComparison::replaced);
    if (replaced.isPresent()) {
      return Optional.of(
          new EnergyComparison(
              food.key(),
              replaced.get().best(),
              inForce.orElseThrow().best(),
              false,
              typical(food.contents())));
    }
    if (!food.isForage() || inForce.filter(EnergyComparison::isPrinted).isEmpty()) {
      return Optional.empty();
    }
    return ForageEnergy.byEquation(food.role(), food.contents(), standards)
        .map(
            formula ->
                new EnergyComparison(
                    food.key(),
                    inForce.get().best(),
                    formula.best(),
                    true,
                    typical(food.contents())));
  }

  /** Neither typical nor made by the equation. */
  private static boolean isPrinted(Measured value) {
    boolean isByEquation =
        value.evidence() instanceof Evidence.Derived derived
            && derived.inputs().stream().anyMatch(t -> t.name().equals(EnergyEquation.FIBRE));
    return !isByEquation && Origin.of(value.evidence()) == Origin.REPORTED;
  }

  private static Optional<Measured> replaced(Measured value) {
    if (!(value.evidence() instanceof Evidence.Derived derived)) {
      return Optional.empty();
    }
    return derived.inputs().stream()
        .filter(t -> t.name().equals(PRINTED))
        .map(Evidence.Term::value)
        .findFirst();
  }

  private static List<String> typical(Map<AnalyteCode, Measured> contents) {
    List<String> names = new ArrayList<>();
    for (AnalyteCode code : List.of(AnalyteCode.EE, AnalyteCode.ASH)) {
      Measured value = contents.get(code);
      if (value == null || Origin.of(value.evidence()) == Origin.ASSUMED) {
        names.add(code.equals(AnalyteCode.EE) ? "fat" : "ash");
      }
    }
    return names;
  }

  /** The report's value less the equation's, Mcal/kg DM. */
  public double difference() {
    return printed - formula;
  }

  static List<DietNote> notes(List<DietItem> items, FeedingStandards standards) {
    double large = standards.settings().number("de_large_difference");
    Map<String, DietNote> notes = new LinkedHashMap<>();
    for (DietItem item : items) {
      of(item.portion().food(), standards)
          .ifPresent(c -> notes.putIfAbsent(c.item(), c.note(large)));
    }
    return List.copyOf(notes.values());
  }

  private DietNote note(double large) {
    boolean isLarge = Math.abs(difference()) >= large;
    String inputs = typical.isEmpty() ? "" : ", with typical " + String.join(" and ", typical);
    String words =
        String.format(
            Locale.ROOT,
            "%s: its report prints %.2f Mcal of digestible energy per kg of dry matter, the"
                + " equation gives %.2f%s: a difference of %.2f, %s; the %s is used",
            item,
            printed,
            formula,
            inputs,
            Math.abs(difference()),
            isLarge ? "which is much" : "within what such equations miss by",
            isPrintedInForce ? "report's" : "equation's");
    return new DietNote(isLarge ? "energy-differs" : "energy-compared", item, words);
  }
}
