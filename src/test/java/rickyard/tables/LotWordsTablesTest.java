package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Settings of the judging, notes and cautions, with an office's changes and their mistakes. */
class LotWordsTablesTest {

  private static List<String> messages(Path config) {
    return JudgementTables.load(Optional.of(config)).problems().stream()
        .map(TableProblem::message)
        .toList();
  }

  @Test
  void anOfficeSaysItsRegion(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("judgement-settings.csv"),
        "name,value,unit,source,locator,status\nregions,fescue; selenium-low,codes,office,,office\n");

    JudgementTables tables = JudgementTables.load(Optional.of(config));

    assertEquals(List.of(), tables.problems());
    assertEquals(Set.of("fescue", "selenium-low"), tables.settings().regions());
    assertEquals(3, tables.settings().nfcAllowance());
    assertEquals(40, tables.settings().mostCores());
    assertEquals(20, tables.settings().adviceCores());
    assertEquals(0.5, tables.settings().sensitivity());
  }

  @Test
  void settingsThatCannotBeAreNamed(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("judgement-settings.csv"),
        "name,value,unit,source,locator,status\n"
            + "most_cores,3.5,cores,office,,office\n"
            + "sensitivity_r,2,1,office,,office\n"
            + "advice_cores,,cores,office,,off\n"
            + "region,fescue,codes,office,,office\n");

    assertEquals(
        List.of(
            "office config/judgement-settings.csv, row 5, column \"name\": expected one of"
                + " nfc_allowance, most_cores, advice_cores, sensitivity_r, regions, found"
                + " \"region\"",
            "office config/judgement-settings.csv, row 2, column \"value\": expected a number that"
                + " the setting allows, found \"3.5\"",
            "judgement-settings.csv, column \"name\": expected a row advice_cores, found \"\"",
            "office config/judgement-settings.csv, row 3, column \"value\": expected a number that"
                + " the setting allows, found \"2\""),
        messages(config));
  }

  @Test
  void mistakesInNotesAreNamed(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("lot-notes.csv"),
        "note_id,quantity,verdicts,beside,beside_over,materials,text,source,locator,status\n"
            + "a,fe,over,,,,x,office,,office\n"
            + "b,fe,exceeds,ASH,,,x,office,,office\n"
            + "c,fe,exceeds,ash,3,,x,office,,office\n"
            + "d,fe,exceeds,,,silage,x,office,,office\n");

    assertEquals(
        List.of(
            "office config/lot-notes.csv, row 2, column \"verdicts\": expected words of verdicts,"
                + " ';' between, found \"over\"",
            "office config/lot-notes.csv, row 3, column \"beside_over\": expected a number where"
                + " beside names an analyte, found \"\"",
            "office config/lot-notes.csv, row 4, column \"beside\": expected an analyte code, found"
                + " \"ash\"",
            "office config/lot-notes.csv, row 4, column \"beside_over\": expected a number where"
                + " beside names an analyte, found \"3\"",
            "office config/lot-notes.csv, row 5, column \"materials\": expected hay, haylage or"
                + " blank, found \"silage\""),
        messages(config));
  }

  @Test
  void everyHazardOfACautionIsNamedWhereTheOfficeSaysItsRegion() throws IOException {
    String settings = Files.readString(Path.of("config", "judgement-settings.csv"));

    JudgementTables.load(Optional.empty())
        .cautions()
        .forEach(c -> c.hazards().forEach(h -> assertTrue(settings.contains(h), h)));
  }

  @Test
  void anOfficeAddsAndRemovesCautions(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("cautions.csv"),
        "caution_id,materials,hazards,text,source,locator,status\n"
            + "toxic-weeds,,,,,,off\n"
            + "river,grass-hay,,The meadow is flooded in spring.,office,,office\n");

    JudgementTables tables = JudgementTables.load(Optional.of(config));

    assertEquals(List.of(), tables.problems());
    assertTrue(tables.cautions().stream().anyMatch(c -> c.id().equals("river")));
    assertTrue(tables.cautions().stream().noneMatch(c -> c.id().equals("toxic-weeds")));
  }
}
