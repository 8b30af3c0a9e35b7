package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScaleStepsTest {
  private static final ScaleSteps KG = Yard.SETTINGS.kgSteps();
  private static final ScaleSteps LB = Yard.SETTINGS.lbSteps();

  @Test
  void hayGoesByHalfKilogramsAndSaltByGrams() {
    assertEquals(7.5, KG.nearestKg(7.34), 1e-12);
    assertEquals(0.025, KG.nearestKg(0.0254), 1e-12);
    assertEquals(7.0, KG.neighbourKg(7.34, 0), 1e-12);
    assertEquals(8.0, KG.neighbourKg(7.34, 2), 1e-12);
    assertEquals(0, KG.neighbourKg(0.3, -100), 0);
  }

  @Test
  void stepsAreMultipliedInDecimals() {
    for (double size : new double[] {0.001, 0.005, 0.01, 0.025, 0.05, 0.1, 0.125, 0.25, 0.5, 1}) {
      for (int count = 0; count < 3000; count++) {
        double exact =
            BigDecimal.valueOf(size).multiply(BigDecimal.valueOf((long) count)).doubleValue();
        assertEquals(exact, ScaleSteps.multiple(count, size), 0, count + " of " + size);
      }
    }
    assertEquals(1 / 3.0 * 3, ScaleSteps.multiple(3, 1 / 3.0), 1e-15, "no decimal step at all");
  }

  @Test
  void poundsAreWeighedInPounds() {
    assertEquals(16 * 0.45359237, LB.nearestKg(7.34), 1e-12, "16.18 lb");
  }

  @Test
  void anAmountOnAStepStaysThere() {
    for (int i = 0; i < 40; i++) {
      double kg = i * 0.5;
      assertEquals(kg, KG.nearestKg(kg), 1e-12);
      assertEquals(kg, KG.neighbourKg(kg, 0), 1e-12);
    }
  }

  @Test
  void aNeighbourAcrossABoundIsAStepOfItsOwnSize() {
    assertEquals(5.0, KG.neighbourKg(4.9, 1), 1e-12);
    assertEquals(5.5, KG.neighbourKg(4.9, 2), 1e-12, "not 5.25, which no hay scale shows");
    assertEquals(4.75, KG.neighbourKg(5.2, -1), 1e-12, "finer below 5 kg");
    assertEquals(1.9, KG.neighbourKg(2.0, -1), 1e-12);
    assertEquals(11 * 0.45359237, LB.neighbourKg(9.6 * 0.45359237, 2), 1e-12);
  }

  @Test
  void everyNeighbourCanBeWeighed() {
    for (ScaleSteps scale : List.of(KG, LB)) {
      for (double kg = 0; kg < 12; kg += 0.0137) {
        for (int away = -3; away <= 3; away++) {
          double found = scale.neighbourKg(kg, away);
          assertEquals(found, scale.nearestKg(found), 1e-12, away + " steps from " + kg);
        }
      }
    }
  }

  @Test
  void stepsOutOfOrderAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new ScaleSteps(MassUnit.KG, List.of(new ScaleSteps.Step(2, 0.1))));
  }
}
