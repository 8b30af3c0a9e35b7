package rickyard.mutants;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.intake.interpret.Dictionary;
import rickyard.tables.DictionaryTables;

/**
 * No altered report clears a lot that the truth does not clear.
 *
 * <p>The property {@code rickyard.mutants} gives the number of mutants; with {@code
 * rickyard.mutants.page} the table is written to that file.
 */
class MutantsPropertyTest {
  private static final long SEED = 20260316;
  private static final int MUTANTS = Integer.getInteger("rickyard.mutants", 200);
  private static final int RANDOM_REPORTS = MUTANTS < 1000 ? 28 : 140;

  private static Campaign campaign;

  @BeforeAll
  static void readTheReports() throws IOException {
    campaign = Campaign.of(DictionaryTables.load(Optional.empty()), SEED, RANDOM_REPORTS);
  }

  @Test
  void everyRandomReportIsReadAsItsTruthAndAsksNothing() {
    SortedMap<String, String> left = new TreeMap<>(campaign.reports().left());
    left.keySet().removeIf(name -> !name.startsWith("random-"));

    assertEquals(new TreeMap<>(), left, "seed " + SEED);
  }

  @Test
  void noAlteredReportClearsALotThatTheTruthDoesNotClear() throws IOException {
    long start = System.nanoTime();
    Tally tally = campaign.run(SEED, MUTANTS, List.of(Kind.values()));
    long seconds = (System.nanoTime() - start) / 1_000_000_000L;

    String page = System.getProperty("rickyard.mutants.page", "");
    if (!page.isEmpty()) {
      Files.writeString(Path.of(page), MutantsPage.of(campaign.reports(), tally, SEED));
    }
    System.out.println(tally.byKind() + tally.byReason() + seconds + " s, seed " + SEED);
    assertEquals(List.of(), tally.falseClears(), "seed " + SEED);
    assertTrue(tally.mutants() >= MUTANTS, "mutants " + tally.mutants());
  }

  /** The run must be able to fail: with one usual range taken away it does. */
  @Test
  void aReaderWithoutTheUsualRangeOfWscLetsFalseClearsThrough(@TempDir Path office)
      throws IOException {
    Files.writeString(
        office.resolve("analytes.csv"),
        """
        code,name,unit,basis,digits,use,units,ceiling,usual_low,usual_high,may_be,source,status
        WSC,Water-soluble carbohydrate,%,dm,1,VALUE,%;g/kg;g/lb,60,0,60,,memory,memory
        """);
    Dictionary weak = DictionaryTables.load(Optional.of(office));

    Tally tally = campaign.readBy(weak).run(SEED, 400, List.of(Kind.A_TENTH, Kind.POINT_MOVED));

    assertTrue(tally.count(Fate.FALSE_CLEAR) > 0, "false clears with a weak reader");
  }
}
