package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.remedy.share.ShareSettings;

class ShareTableTest {
  private static final String HEAD = "setting,key,value,unit,source,locator,status\n";

  @Test
  void laminitisComesFirstAndGroupsWithoutARowBeforeThoseThatNeedNoClearedHay() {
    ShareSettings settings = ShareTable.load(Optional.empty()).settings();

    List<String> groups = List.of("laminitis", "ID", "PSSM", "a group of the office");
    for (int i = 1; i < groups.size(); i++) {
      assertTrue(settings.rank(groups.get(i - 1)) < settings.rank(groups.get(i)), groups.get(i));
    }
    assertTrue(settings.rank("a group of the office") < settings.rankOfOthers());
    assertEquals(20, settings.retestCores());
  }

  @Test
  void theOfficeChangesTheOrder(@TempDir Path office) throws IOException {
    Files.writeString(
        office.resolve("share.csv"), HEAD + "sensitivity,PSSM,1,place,assumed,ours,assumed\n");

    ShareSettings settings = ShareTable.load(Optional.of(office)).settings();

    assertEquals(settings.rank("laminitis"), settings.rank("PSSM"));
  }

  @Test
  void aPlaceThatIsNoWholeNumberIsRefusedWithItsRow(@TempDir Path office) throws IOException {
    Files.writeString(
        office.resolve("share.csv"), HEAD + "sensitivity,PSSM,1.5,place,assumed,ours,assumed\n");

    UnusableTablesException refused =
        assertThrows(UnusableTablesException.class, () -> ShareTable.load(Optional.of(office)));

    assertTrue(
        String.valueOf(refused.getMessage())
            .contains("share.csv, row 2, column \"value\": expected a whole number from 1 to 1000"),
        refused.getMessage());
  }
}
