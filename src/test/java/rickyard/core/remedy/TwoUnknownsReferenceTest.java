package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * A published ration with two unknowns as a linear program: lecture slides on balancing horse diets
 * (undated, author not shown). Grass hay 5 kg and oil 0.5 kg are fixed; alfalfa A and grain B meet
 * 10.25 Mcal and 561 g of protein. The slides print B = 3.02 kg from rounded coefficients.
 */
class TwoUnknownsReferenceTest {

  @Test
  void alfalfaAndGrainMeetEnergyAndProtein() {
    LinearProgram program = new LinearProgram();
    program.variable(0, Double.POSITIVE_INFINITY, 1);
    program.variable(0, Double.POSITIVE_INFINITY, 1);
    double energy = 24.6 - 1.95 * 5.0 - 9.2 * 0.5;
    double protein = 984 - 84.6 * 5.0;
    program.row(new double[] {1.75, 2.45}, energy, energy);
    program.row(new double[] {180, 89}, protein, protein);

    double[] x = program.minimise().orElseThrow();

    assertEquals(10.25, energy, 1e-9, "as the slides print it");
    assertEquals(561, protein, 1e-9, "as the slides print it");
    assertEquals(3.02, x[1], 0.02, "as the slides print it");
    assertEquals(1.620, x[0], 0.0005, "recomputed; A was cut off in the excerpt");
    assertEquals(3.026, x[1], 0.0005, "recomputed");
  }
}
