package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.remedy.RemedySettings;

class RemedyTablesTest {
  private static final String HEAD = "setting,key,value,unit,source,locator,status\n";

  @Test
  void theBuiltInTableIsComplete() {
    RemedySettings settings = RemedyTables.load(Optional.empty()).settings();

    assertEquals(List.of(0.25, 0.5, 1.0), settings.controlledShares());
    assertEquals(30, settings.stockHorizonDays());
    assertEquals(12, settings.changeoverDays().get(""));
    assertEquals(List.of(0.25, 0.5, 0.75), settings.changeoverShares());
    assertEquals(
        new TreeSet<>(Set.of("chopped", "cubes", "meal", "pellets")), settings.chewableForms());
  }

  @Test
  void everySourceOfTheTableIsInTheBibliography() {
    Set<String> keys = new TreeSet<>();
    TableFile.load(
            "sources.csv",
            List.of("key", "citation", "kind", "status", "source"),
            List.of("key"),
            Optional.empty())
        .rows()
        .forEach(r -> keys.add(r.text("key")));

    RemedyTables.load(Optional.empty())
        .table()
        .rows()
        .forEach(r -> assertTrue(keys.contains(r.text("source")), r.text("source")));
  }

  @Test
  void theOfficeOverridesOneRow(@TempDir Path office) throws IOException {
    Files.writeString(
        office.resolve("remedy.csv"), HEAD + "changeover-days,ppid,18,days,assumed,ours,assumed\n");

    RemedySettings settings = RemedyTables.load(Optional.of(office)).settings();

    assertEquals(18, settings.changeoverDays().get("ppid"));
    assertEquals(12, settings.changeoverDays().get(""));
  }

  @Test
  void aShareAboveOneIsRefusedWithItsPlace(@TempDir Path office) throws IOException {
    Files.writeString(
        office.resolve("remedy.csv"), HEAD + "controlled-share,1,25,1,assumed,ours,assumed\n");

    UnusableTablesException e =
        assertThrows(UnusableTablesException.class, () -> RemedyTables.load(Optional.of(office)));

    assertEquals(
        "office config/remedy.csv, row 2, column \"value\": expected a share above 0 and at most 1,"
            + " found \"25\"",
        e.getMessage());
  }

  @Test
  void aMissingSettingIsRefused(@TempDir Path office) throws IOException {
    Files.writeString(
        office.resolve("remedy.csv"), HEAD + "month-days,,30,days,assumed,ours,off\n");

    UnusableTablesException e =
        assertThrows(UnusableTablesException.class, () -> RemedyTables.load(Optional.of(office)));

    assertTrue(String.valueOf(e.getMessage()).contains("a row of setting month-days"));
  }
}
