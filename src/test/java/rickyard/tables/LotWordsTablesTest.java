package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.Analyte;
import rickyard.core.forage.AnalyteCode;
import rickyard.intake.interpret.AnalyteRule;

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

  @Test
  void aLimitThatNoValueCanBeHeldAgainstIsNamed(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("limits.csv"),
        "limit_id,group,subject,quantity,bound,value,unit,risk,severity,if_missing,materials,"
            + "source,locator,status\n"
            + "a,ID,lot,nsc,max,10,% DM,0.1,change,ask,,office,,office\n"
            + "b,ID,lot,nsc_wsc,max,10,% AF,0.1,change,ask,,office,,office\n"
            + "c,all,lot,se,max,2,Mcal/kg DM,,stop,silent,,office,,office\n"
            + "d,all,lot,ca_oxalate,min,0.6,1,,change,silent,,office,,office\n"
            + "e,all,lot,wsc,max,100,g/kg DM,,change,silent,,office,,office\n");
    Map<AnalyteCode, Analyte> kept = new TreeMap<>();
    DictionaryTables.load(Optional.empty())
        .analytes()
        .forEach(
            (code, rule) -> {
              if (rule.use() == AnalyteRule.Use.VALUE) {
                kept.put(code, rule.analyte());
              }
            });

    assertEquals(List.of(), JudgementTables.load(Optional.empty()).unfit(kept));
    assertEquals(
        List.of(
            "office config/limits.csv, row 2, column \"quantity\": expected an analyte of which"
                + " values are kept, found \"nsc\"",
            "office config/limits.csv, row 3, column \"unit\": expected a unit like % DM for"
                + " NSC_WSC, found \"% AF\"",
            "office config/limits.csv, row 4, column \"unit\": expected a unit like mg/kg DM for"
                + " SE, found \"Mcal/kg DM\""),
        JudgementTables.load(Optional.of(config)).unfit(kept).stream()
            .map(TableProblem::message)
            .toList());
  }
}
