package rickyard.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.nutrition.Driver;
import rickyard.core.nutrition.LifeStage;
import rickyard.core.nutrition.Nutrient;
import rickyard.core.nutrition.RequirementTables;
import rickyard.core.nutrition.Standing;
import rickyard.core.nutrition.Tolerance;

class NutritionTablesTest {
  @TempDir Path office;

  private void override(String name, String... lines) throws IOException {
    Path file = office.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
  }

  private String problems() {
    return String.valueOf(
        assertThrows(UnusableTablesException.class, () -> NutritionTables.load(Optional.of(office)))
            .getMessage());
  }

  @Test
  void theBuiltInTablesLoadWithoutAProblem() {
    NutritionTables tables = NutritionTables.load();
    assertEquals(15, tables.files().size());
    assertTrue(tables.files().stream().allMatch(f -> f.version().matches("[1-9][0-9]*")));
  }

  @Test
  void everySourceOfEveryRowIsInTheBibliography() {
    TableFile sources =
        TableFile.load(
            "sources.csv",
            List.of("key", "citation", "kind", "status", "source"),
            List.of("key"),
            Optional.empty());
    Set<String> known = new TreeSet<>();
    sources.rows().forEach(r -> known.add(r.text("key")));
    for (TableFile file : NutritionTables.load().files()) {
      for (TableRow row : file.rows()) {
        assertTrue(known.contains(row.text("source")), file.name() + " " + row.number());
        assertTrue(Standing.findByCode(row.text("status")).isPresent());
      }
    }
  }

  @Test
  void anOfficeRowTakesThePlaceOfTheBuiltInOneAndSaysSo() throws IOException {
    override(
        "tolerances.csv",
        "analyte,max,per,alarm,source,locator,status",
        "SE,1.5,mg/kg DM,yes,assumed,our vet,assumed");
    Tolerance selenium =
        NutritionTables.load(Optional.of(office))
            .standards()
            .findTolerance(new AnalyteCode("SE"))
            .orElseThrow();
    assertEquals(1.5, selenium.max());
    assertEquals("tolerances.csv 1 office", selenium.source().table());
  }

  @Test
  void aTypicalSugarIsRefused() throws IOException {
    override(
        "typical-values.csv",
        "material,analyte,unit,mean,u,low,high,source,locator,status",
        "grass-hay,WSC,%,9,1,,,assumed,,assumed");
    assertTrue(
        problems()
            .contains(
                "typical-values.csv, row 2, column \"analyte\": expected an analyte that no limit"
                    + " is set for, found \"WSC\""),
        problems());
  }

  @Test
  void floorsOutOfOrderAreRefused() throws IOException {
    override(
        "intake.csv",
        "type,state,warn_below_pct_bw,vet_below_pct_bw,refuse_below_pct_bw,max_pct_bw,"
            + "adlib_pct_bw,adlib_u_pct,straw_usual_pct,straw_hard_pct,source,locator,status",
        "horse,any,1.5,1.0,1.25,3,2.25,25,30,50,assumed,,assumed");
    assertTrue(problems().contains("floors out of order for horse"), problems());
  }

  @Test
  void anUnknownDriverNamesFileRowAndColumn() throws IOException {
    override(
        "requirements-2007/vitamins.csv",
        "life,level,from_month,to_month,nutrient,driver,coefficient,source,locator,status",
        "work,light,,,VIT_A,moon,45,assumed,,assumed");
    assertTrue(problems().contains("row 2, column \"driver\""), problems());
  }

  @Test
  void aSettingSwitchedOffIsMissed() throws IOException {
    override(
        "nutrition-settings.csv", "name,value,unit,source,locator,status", "de_preference,,,,,off");
    assertTrue(problems().contains("expected a row de_preference"), problems());
  }

  /** The key of a row of requirements is what it is for, not its number. */
  @Test
  void anOfficeTakesAnotherSourceByARowOfItsOwn() throws IOException {
    override(
        "requirements-2007/energy-protein.csv",
        "life,level,from_month,to_month,nutrient,driver,coefficient,source,locator,status",
        "work,very-heavy,,,CP,bw,1.44,s7,as the text is quoted,secondary");
    RequirementTables tables = NutritionTables.load(Optional.of(office)).standards().requirements();

    List<Double> base =
        tables.termsOf(Nutrient.CP, new LifeStage("work", "very-heavy", 0, "")).stream()
            .filter(t -> t.driver() == Driver.BW)
            .map(RequirementTables.RequirementTerm::coefficient)
            .toList();

    assertEquals(List.of(1.44), base);
  }

  @Test
  void everyOtherValueNamesARowThatExists() {
    NutritionTables tables = NutritionTables.load();
    TableFile others =
        tables.files().stream()
            .filter(f -> f.name().equals("other-values.csv"))
            .findFirst()
            .orElseThrow();
    long placed =
        tables.standards().requirements().terms().stream().mapToLong(t -> t.others().size()).sum()
            + tables.standards().tolerances().stream().mapToLong(t -> t.others().size()).sum()
            + tables.standards().settings().byName().values().stream()
                .mapToLong(s -> s.others().size())
                .sum();
    long ofTheEquation =
        others.rows().stream().filter(r -> r.text("table").endsWith("de-equation.csv")).count();

    assertEquals(others.rows().size(), placed + ofTheEquation);
    assertEquals(1, ofTheEquation);
  }

  @Test
  void anOtherValueForNoRowIsRefused() throws IOException {
    override(
        "other-values.csv",
        "table,row,value,use,words,source,locator,status",
        "tolerances.csv,GOLD,2,say,a hope,assumed,,assumed");
    assertTrue(
        problems()
            .contains(
                "other-values.csv, row 2, column \"row\": expected the key of a row of"
                    + " tolerances.csv, its cells joined by semicolons, found \"GOLD\""),
        problems());
  }

  @Test
  void aRuleThatNamesTooFewStagesIsRefused() throws IOException {
    override(
        "requirements-2007/outside.csv",
        "life,level,from_month,to_month,nutrient,rule,first,second,words,source,locator,status",
        "lactation,,7,,,between,maintenance/elevated,,only one end,assumed,,assumed");
    assertTrue(problems().contains("this rule names 2 stages"), problems());
  }
}
