package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
  void stepsOutOfOrderAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new ScaleSteps(MassUnit.KG, List.of(new ScaleSteps.Step(2, 0.1))));
  }
}
