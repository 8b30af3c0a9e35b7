package rickyard.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills at random moments, up to five a morning, on an inbox of 60 files, and polite requests to
 * end on one of twelve: the same command then gives what an uninterrupted run gives.
 *
 * <p>That it can fail was seen with outputs written in place, block by block on a slow disk: three
 * torn files in six kills. On a fast disk such a file is whole within a tenth of a millisecond and
 * fourteen kills met none: that is what {@link PointSweepSoak} is for.
 */
class RandomKillsSoak {
  private static final long SEED = Long.getLong("rickyard.soak.seed", 20_260_316L);

  @Test
  void killedAnywhereTheSameCommandGivesTheSameResult(@TempDir Path folder) throws Exception {
    int wanted = Integer.getInteger("rickyard.soak.kills", 200);
    Tally tally = new Tally("random-kills");

    new Interruptions(folder, SoakOffice.sixty(folder.resolve("made")), false, SEED, tally)
        .run(wanted);

    assertEquals(List.of(), tally.complaints());
    assertTrue(tally.count("landed while outputs were partly written") >= wanted / 2);
  }

  @Test
  void askedToEndAnywhereItEndsAndTheSameCommandGivesTheSameResult(@TempDir Path folder)
      throws Exception {
    int wanted = Integer.getInteger("rickyard.soak.asked", 50);
    Tally tally = new Tally("asked-to-end");

    new Interruptions(folder, SoakOffice.twelve(folder.resolve("made")), true, SEED + 1, tally)
        .run(wanted);

    assertEquals(List.of(), tally.complaints());
  }
}
