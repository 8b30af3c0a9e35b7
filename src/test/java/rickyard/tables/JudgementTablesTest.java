package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.judgement.HorseGroups;
import rickyard.core.judgement.Limit;

class JudgementTablesTest {
  private static final JudgementTables TABLES = JudgementTables.load(Optional.empty());

  private static Limit limit(JudgementTables tables, String id) {
    return tables.limits().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }

  private static HorseGroups groups(String... conditions) {
    return TABLES.conditions().of(List.of(conditions));
  }

  @Test
  void theBuiltInTablesHaveNoProblem() {
    assertEquals(List.of(), TABLES.problems());
    assertEquals(List.of(), UncertaintyTable.load(Optional.empty()).problems());
  }

  @Test
  void everySourceOfTheTablesIsInTheBibliography() {
    Set<String> keys = new TreeSet<>();
    TableFile.load(
            "sources.csv",
            List.of("key", "citation", "kind", "status", "source"),
            List.of("key"),
            Optional.empty())
        .rows()
        .forEach(r -> keys.add(r.text("key")));
    Set<String> used = new TreeSet<>();
    TABLES.files().forEach(f -> f.rows().forEach(r -> used.add(r.text("source"))));
    UncertaintyTable.load(Optional.empty()).file().rows().forEach(r -> used.add(r.text("source")));

    used.removeAll(keys);
    assertEquals(Set.of(), used);
  }

  @Test
  void theDefaultLimitsAreTheOnesOfTheDesign() {
    assertEquals(10, limit(TABLES, "laminitis-nsc-lot").value());
    assertEquals(OptionalDouble.of(0.05), limit(TABLES, "laminitis-nsc-diet").risk());
    assertEquals(OptionalDouble.of(0.20), limit(TABLES, "id-nsc-lot").risk());
    assertEquals(12, limit(TABLES, "pssm-nsc12-diet").value());
    assertEquals(OptionalDouble.of(0.025), limit(TABLES, "pssm-nsc12-diet").risk());
    assertEquals(1.1, limit(TABLES, "hypp-k-diet").value());
    assertTrue(limit(TABLES, "hypp-k-diet").risk().isEmpty());
  }

  @Test
  void conditionsLeadToGroups() {
    assertEquals(Set.of("laminitis"), groups("laminitis-past").groups());
    assertEquals(Set.of("ID"), groups("insulin-dysregulation").groups());
    assertEquals(Set.of("laminitis"), groups("insulin-dysregulation", "laminitis-past").groups());
    assertEquals(Set.of("laminitis"), groups("ppid", "laminitis-acute").groups());
    assertEquals(Set.of("PSSM", "HYPP"), groups("PSSM", "hypp").groups());
    assertEquals(Set.of(), groups("dental", "overweight").groups());
  }

  @Test
  void ppidAloneCountsAsInsulinDysregulationAndSaysSo() {
    assertEquals(Set.of("ID"), groups("ppid").groups());
    assertEquals(
        List.of("PPID without an insulin test counts as insulin dysregulation until it is tested"),
        groups("ppid").notes());
    assertEquals(List.of(), groups("ppid", "insulin-dysregulation").notes());
  }

  @Test
  void anUnknownConditionIsSaidSo() {
    assertEquals(Set.of("laminitsi"), groups("laminitsi").unknown());
  }

  @Test
  void anOfficeRowTakesThePlaceOfTheBuiltInOne(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("limits.csv"),
        "limit_id,group,subject,quantity,bound,value,unit,risk,severity,if_missing,materials,"
            + "source,locator,status\n"
            + "id-nsc-lot,ID,lot,nsc_esc,max,11,% DM,0.1,change,ask,,office,,office\n"
            + "id-nsc12-lot,,,,,,,,,,,,,off\n");

    JudgementTables tables = JudgementTables.load(Optional.of(config));

    assertEquals(List.of(), tables.problems());
    assertEquals("nsc_esc", limit(tables, "id-nsc-lot").quantity());
    assertTrue(limit(tables, "id-nsc-lot").fromOffice());
    assertTrue(tables.limits().stream().noneMatch(l -> l.id().equals("id-nsc12-lot")));
  }

  @Test
  void aWrongCellIsNamedWithFileRowAndColumn(@TempDir Path config) throws IOException {
    Files.writeString(
        config.resolve("limits.csv"),
        "limit_id,group,subject,quantity,bound,value,unit,risk,severity,if_missing,materials,"
            + "source,locator,status\n"
            + "x,ID,lot,nsc_wsc,max,ten,percent,0.7,alarm,ask,,office,,office\n");

    List<String> messages =
        JudgementTables.load(Optional.of(config)).problems().stream()
            .map(TableProblem::message)
            .toList();

    assertEquals(
        List.of(
            "office config/limits.csv, row 2, column \"severity\": expected one of stop, change,"
                + " watch, info, found \"alarm\"",
            "office config/limits.csv, row 2, column \"unit\": expected a unit with its basis,"
                + " such as % DM, found \"percent\"",
            "office config/limits.csv, row 2, column \"value\": expected a decimal number with a"
                + " point, found \"ten\"",
            "office config/limits.csv, row 2, column \"risk\": expected a share above 0 and at"
                + " most 0.5, or blank, found \"0.7\""),
        messages);
  }
}
