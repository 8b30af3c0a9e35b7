package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energy against need and condition: within 5 % is even; 4 and less is thin, 7 and more is fat. */
class EnergyViewTest {

  private static EnergyView view(double supply, List<String> missing, Horses horse) {
    double upper = missing.isEmpty() ? supply : Double.POSITIVE_INFINITY;
    Amount amount = new Amount(supply, supply, upper, 0, supply, Origin.REPORTED, missing);
    NutrientLine line =
        NutrientLine.of(Nutrient.DE, amount, OptionalDouble.of(100), OptionalDouble.empty(), false);
    return EnergyView.of(line, horse.build(), Foods.STANDARDS.settings(), true, false);
  }

  @ParameterizedTest
  @CsvSource({
    "94.9, 5, energy-short-fit",
    "95, 5, energy-even-fit",
    "100, 5, energy-even-fit",
    "105, 5, energy-even-fit",
    "105.1, 5, energy-over-fit",
    "100, 4, energy-even-thin",
    "100, 4.5, energy-even-fit",
    "100, 6.5, energy-even-fit",
    "100, 7, energy-even-fat"
  })
  void theEndsOfARangeBelongToIt(double supply, double condition, String code) {
    assertEquals(code, view(supply, List.of(), Horses.adult(500).condition(condition)).code());
  }

  @Test
  void anOpenSupplyIsKnownOnlyWhereItIsOverAlready() {
    EnergyView unknown = view(105, List.of("oats"), Horses.adult(500).condition(5));

    assertEquals("energy-unknown-fit", unknown.code());
    assertEquals(
        "the energy of this diet is not known; go by weight and body condition", unknown.words());
    assertTrue(unknown.percentOfRequirement().isEmpty());
    assertEquals(
        "energy-unknown-fit", view(98, List.of("oats"), Horses.adult(500).condition(5)).code());
    assertEquals(
        "energy-over-fit", view(105.1, List.of("oats"), Horses.adult(500).condition(5)).code());
  }

  @Test
  void withoutAConditionTheHorseHasToBeLookedAt() {
    EnergyView unseen = view(100, List.of(), Horses.adult(500));

    assertEquals("energy-even-unseen", unseen.code());
    assertEquals(
        "energy is about the average requirement; its body condition is not on record: look at the"
            + " horse",
        unseen.words());
  }
}
