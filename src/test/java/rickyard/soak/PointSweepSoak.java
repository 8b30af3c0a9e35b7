package rickyard.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A kill, a full disk and a broken disk at the points where a morning of twelve files writes,
 * renames, flushes or deletes below its office. A point is a call and its number within its thread.
 *
 * <p>{@code -Drickyard.soak.points=N} takes N of the points by a seed, {@code all} takes all. The
 * run that is compared with was made without the tracer.
 */
class PointSweepSoak {
  private static final long SEED = Long.getLong("rickyard.soak.seed", 20_260_316L);

  @BeforeEach
  void needsTheTracer() {
    assumeTrue(Strace.isHere(), "strace is not installed here, or may not trace: nothing tried");
  }

  private static int most(int usual) {
    String wanted = System.getProperty("rickyard.soak.points", String.valueOf(usual));
    return wanted.equals("all") ? Integer.MAX_VALUE : Integer.parseInt(wanted);
  }

  @Test
  void killedAtAnyPointTheSameCommandGivesTheSameResult(@TempDir Path folder) throws Exception {
    Tally tally = new Tally("sweep-kills");
    PointRuns runs = new PointRuns(folder, SoakOffice.twelve(folder.resolve("made")), tally);

    runs.killAt(
        Point.some(
            Point.all(runs.strace(), "signal=SIGKILL", false), most(Integer.MAX_VALUE), SEED));

    assertEquals(List.of(), tally.complaints());
    assertTrue(tally.count("landed") > 0);
  }

  @Test
  void aFullDiskIsNeverSuccessWithOtherOutputs(@TempDir Path folder) throws Exception {
    failing(folder, "ENOSPC", SEED + 1);
  }

  @Test
  void aBrokenDiskIsNeverSuccessWithOtherOutputs(@TempDir Path folder) throws Exception {
    failing(folder, "EIO", SEED + 2);
  }

  private static void failing(Path folder, String error, long seed)
      throws IOException, InterruptedException {
    Tally tally = new Tally("sweep-" + error.toLowerCase(java.util.Locale.ROOT));
    PointRuns runs = new PointRuns(folder, SoakOffice.twelve(folder.resolve("made")), tally);
    List<Point> points = new ArrayList<>(Point.all(runs.strace(), "error=" + error, false));
    points.addAll(Point.all(runs.strace(), "error=" + error, true));

    runs.failAt(Point.some(points, most(60), seed));

    assertEquals(List.of(), tally.complaints());
    assertTrue(tally.count("landed") > 0);
  }
}
