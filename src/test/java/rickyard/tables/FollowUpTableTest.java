package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.advice.due.FollowUpSettings;

class FollowUpTableTest {
  private static final String HEAD = "setting,key,value,unit,source,locator,status\n";

  @TempDir Path office;

  private String refusal(String rows) throws IOException {
    Files.writeString(office.resolve("follow-ups.csv"), HEAD + rows);
    return String.valueOf(
        assertThrows(UnusableTablesException.class, () -> FollowUpTable.load(Optional.of(office)))
            .getMessage());
  }

  @Test
  void theBuiltInTableHasADefaultForEveryHorseAndLot() {
    FollowUpSettings settings = FollowUpTable.load(Optional.empty()).settings();

    assertEquals(180, settings.weightDays().get(""));
    assertEquals(12, settings.testMonths().get(""));
    assertEquals(14, settings.recheckDays());
  }

  @Test
  void aNumberOfDaysThatIsNoneIsRefusedWithItsRow() throws IOException {
    String refusal = refusal("weight-days,overweight,0,days,assumed,ours,assumed\n");

    assertTrue(
        refusal.contains(
            "follow-ups.csv, row 2, column \"value\": expected a whole number from 1 to 3660"),
        refusal);
  }

  @Test
  void anUnknownSettingAndAMissingDefaultAreRefused() throws IOException {
    assertTrue(
        refusal("weigh-days,,30,days,assumed,ours,assumed\n")
            .contains("row 2, column \"setting\""));
    String refusal = refusal("recheck-days,,14,days,assumed,ours,off\n");

    assertTrue(refusal.contains("a row of setting recheck-days"), refusal);
  }
}
