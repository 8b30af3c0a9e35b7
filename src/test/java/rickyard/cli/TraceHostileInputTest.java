package rickyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.report.HostileNames;
import rickyard.report.csv.Table;
import rickyard.report.trace.TraceText;

/** Ten thousand cells, columns, files and names that want to be something else, as a trace. */
class TraceHostileInputTest {
  private static final long SEED = 20261127L;
  private static final int ROUNDS = 2_500;

  @Test
  void noCellOfAReportSteersTheTerminalThatItsTraceIsPrintedOn() {
    Random random = new Random(SEED);
    for (int round = 0; round < ROUNDS; round++) {
      String about = "seed " + SEED + ", round " + round;
      String file = HostileNames.next(random, 4 * round);
      Place place = new Place("d", 1, 1, HostileNames.next(random, 4 * round + 1));
      Evidence cell = new Evidence.Reported(place, HostileNames.next(random, 4 * round + 2));
      Measured value = Measured.of(Unit.PERCENT, Basis.DRY_MATTER, 9.4, 0.05, 0.03, cell);
      String name = HostileNames.next(random, 4 * round + 3);

      List<String> trace = new TraceText(p -> file).of(name, value);

      for (String line : TraceList.of(trace)) {
        assertTrue(line.codePoints().noneMatch(TraceHostileInputTest::steers), about);
      }
      Table table = TraceList.table(name, trace);
      assertEquals(1, table.rows().size(), about);
    }
  }

  private static boolean steers(int c) {
    return c < ' '
        || (c >= 0x7F && c <= 0x9F)
        || c == 0x2028
        || (c >= 0x202A && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x2069);
  }
}
