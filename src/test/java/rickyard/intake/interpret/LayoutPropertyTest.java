package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.quantity.Measured;
import rickyard.intake.grid.Grid;

/** Whatever the layout: the true figure or a question, never a wrong figure that looks settled. */
class LayoutPropertyTest {
  private static final int RUNS = 3000;

  @Test
  void aSettledFigureIsTheTrueOneInEveryLayout() {
    long settled = 0;
    long printed = 0;
    for (int seed = 0; seed < RUNS; seed++) {
      Random random = new Random(seed);
      RandomReport truth = new RandomReport(random);
      Grid grid = grid(truth.rows(), random);
      Report report = Readings.report(grid);
      assertEquals(1, report.samples().size(), "seed " + seed);
      assertEquals("T7", report.samples().get(0).label(), "seed " + seed);
      for (Reading reading : report.samples().get(0).readings()) {
        Optional<String> wrong = wrong(reading, truth);
        assertTrue(wrong.isEmpty(), () -> wrong.orElse("") + "\n" + truth.rows());
        settled += reading.isSettled() ? 1 : 0;
      }
      boolean stated = truth.basis != RandomReport.Basis.NOWHERE;
      printed += stated ? truth.contents.size() : 0;
    }
    assertTrue(settled > 0.97 * printed, settled + " settled of " + printed + " that could be");
  }

  @Test
  void withoutABasisNoContentIsSettled() {
    for (int seed = 0; seed < RUNS; seed++) {
      Random random = new Random(seed);
      RandomReport truth = new RandomReport(random);
      if (truth.basis == RandomReport.Basis.NOWHERE) {
        for (Reading reading : readings(grid(truth.rows(), random))) {
          boolean water = reading.analyte().value().equals("DM");
          assertTrue(water || !reading.isSettled(), "seed " + seed + ": " + reading);
        }
      }
    }
  }

  private static Grid grid(List<List<String>> rows, Random random) {
    return random.nextBoolean() ? RandomReport.table(rows) : RandomReport.page(rows, random);
  }

  static List<Reading> readings(Grid grid) {
    return Readings.interpret(grid)
        .fold(u -> u.report().samples().get(0).readings(), n -> new ArrayList<>());
  }

  /** Why a settled reading is wrong; empty if it is right or in doubt. */
  static Optional<String> wrong(Reading reading, RandomReport truth) {
    if (!reading.isSettled()) {
      return Optional.empty();
    }
    String code = reading.analyte().value();
    Measured value = reading.value().orElseThrow();
    double dry = code.equals("DM") ? truth.dm : truth.contents.getOrDefault(code, -1.0);
    boolean wet = value.basis() == rickyard.core.quantity.Basis.AS_FED && !code.equals("DM");
    double expected = wet ? dry * truth.dm / 100 : dry;
    double half = Math.max(value.high() - value.best(), 1e-9) * 1.001 + 1e-9;
    return Math.abs(expected - value.best()) <= half
        ? Optional.empty()
        : Optional.of(code + " is " + expected + ", read " + value);
  }
}
