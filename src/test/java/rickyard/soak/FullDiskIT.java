package rickyard.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;

/**
 * A disk that is full in the middle of the outputs, once; {@code PointSweepSoak} goes through all
 * the other calls.
 */
class FullDiskIT {

  @Test
  void aDiskThatIsFullWhileOutputsAppearFailsTheRunAndTheNextMakesItGood(@TempDir Path folder)
      throws Exception {
    assumeTrue(Strace.isHere(), "strace is not installed here, or may not trace: nothing tried");
    Path office = SoakOffice.three(folder.resolve("office"));
    Path log = folder.resolve("log.txt");
    Path trace = folder.resolve("trace.txt");
    Launch command = Launch.morning(office, SoakOffice.DAY);
    Path horses = SoakOffice.out(office).resolve("horses.csv");
    Strace strace =
        Strace.of(office, List.of("mornings/" + SoakOffice.DAY + "/horses.csv.rickyard-tmp"));

    BuiltJar.Ended full = command.under(strace.at("write", "error=ENOSPC", "1", trace)).run(log);

    assertTrue(Files.readString(trace).contains("(INJECTED)"), full.output());
    assertEquals(1, full.status(), full.output());
    assertTrue(full.output().contains("No space left on device"), full.output());
    assertFalse(Files.exists(horses));
    assertFalse(Files.exists(SoakOffice.out(office).resolve("run.json")));

    BuiltJar.Ended again = command.run(log);

    assertEquals(0, again.status(), again.output());
    assertTrue(Files.exists(horses));
    assertTrue(Files.exists(SoakOffice.out(office).resolve("run.json")));
  }
}
