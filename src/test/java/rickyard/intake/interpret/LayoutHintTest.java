package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.quantity.Evidence;
import rickyard.intake.grid.Grid;
import rickyard.tables.DictionaryTables;

/** What one row of the office's own tables changes: a hint, a spelling. */
class LayoutHintTest {
  private static final String NO_BASIS =
      """
      Brook Vale Forage Laboratory
      Lot: | N2
      Analyte | Result | Unit
      Dry matter | 88.2 | %
      WSC | 10.2 | %
      Starch | 1.2 | %
      """;

  @TempDir Path config;

  private Report read(String table, String file, String row) {
    String header =
        file.equals("layouts.csv")
            ? "layout_words,what,about,value,source,status\n"
            : "spelling,kind,meaning,language,source,status\n";
    try {
      Files.writeString(config.resolve(file), header + row + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Grid grid = Grids.table(table);
    return new Interpreter(DictionaryTables.load(Optional.of(config)))
        .interpret(grid, "0".repeat(64))
        .fold(
            Interpretation.Understood::report,
            n -> {
              throw new AssertionError(n.reason());
            });
  }

  private Report hinted(String table, String row) {
    return read(table, "layouts.csv", row + ",letter of the laboratory,office");
  }

  private static String words(Report report) {
    return report.samples().stream().map(Readings::words).collect(Collectors.joining("\n"));
  }

  private static Reading reading(Report report, String code) {
    return report.samples().get(0).readings().stream()
        .filter(r -> r.analyte().value().equals(code))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> doubts(Report report) {
    return report.samples().stream().flatMap(s -> s.doubts().stream()).map(Doubt::code).toList();
  }

  @Test
  void oneRowTellsTheBasisThatALaboratoryNeverPrints() {
    assertEquals(
        "N2: DM=88.2 af, WSC?basis-not-stated, STARCH?basis-not-stated",
        Readings.words(Grids.table(NO_BASIS)));

    Report report = hinted(NO_BASIS, "Brook Vale Forage Laboratory,basis,*,dm");

    assertEquals("N2: DM=88.2 af, WSC=10.2 dm, STARCH=1.2 dm", words(report));
    Evidence evidence = reading(report, "WSC").value().orElseThrow().evidence();
    assertEquals("assumed", evidence.origin());
    assertEquals("basis by office config/layouts.csv row 2", ((Evidence.Hinted) evidence).hint());
    assertEquals("reported", reading(report, "DM").value().orElseThrow().evidence().origin());
  }

  @Test
  void aHintHoldsOnlyWhereAllItsWordsStandOnThePage() {
    String other = NO_BASIS.replace("Brook Vale", "Hollow Farm");

    assertEquals(
        List.of("basis-not-stated"),
        doubts(hinted(other, "Brook Vale Forage Laboratory,basis,*,dm")));
    assertEquals(
        List.of("basis-not-stated"),
        doubts(hinted(NO_BASIS, "Brook Vale Forage Laboratory;Forage batch,basis,*,dm")));
  }

  @Test
  void aHintNeverOverrulesThePageThatSaysOtherwise() {
    String asFed = NO_BASIS.replace("| Result |", "| As fed |");

    Report report = hinted(asFed, "Brook Vale Forage Laboratory,basis,*,dm");

    assertEquals("N2: DM=88.2 af, WSC?hint-contradicted, STARCH?hint-contradicted", words(report));
    assertEquals("af", reading(report, "WSC").value().orElseThrow().basis().code());
  }

  @Test
  void aPageThatSaysTheSameOrBothBasesNeedsNoHint() {
    String both =
        """
        Brook Vale Forage Laboratory
        Lot: | N2
        Analyte | Unit | As fed | Dry matter
        Dry matter | % | 88.2 | 100.0
        WSC | % | 9.0 | 10.2
        """;

    Report report = hinted(both, "Brook Vale Forage Laboratory,basis,*,dm");

    assertEquals("N2: DM=88.2 af, WSC=10.2 dm", words(report));
    assertEquals("reported", reading(report, "WSC").value().orElseThrow().evidence().origin());
  }

  @Test
  void oneRowTellsAUnitAndAnotherPrintedUnitIsAsked() {
    String bare =
        """
        Brook Vale Forage Laboratory
        Lot: | N2
        Analyte | Dry matter | Unit
        WSC | 10.2 | %
        Calcium | 4.1 |
        """;
    String row = "Brook Vale Forage Laboratory,unit,CA,g/kg";

    assertEquals("N2: WSC=10.2 dm, CA?unit-not-stated", Readings.words(Grids.table(bare)));
    assertEquals("N2: WSC=10.2 dm, CA=0.41 dm", words(hinted(bare, row)));
    assertEquals(
        "N2: WSC=10.2 dm, CA?hint-contradicted",
        words(hinted(bare.replace("| 4.1 |", "| 0.41 | %"), row)));
  }

  @Test
  void oneRowTellsWhatNscMeansUnlessThePageSaysOtherwise() {
    String open =
        """
        Brook Vale Forage Laboratory
        Lot: | N2
        Analyte | Unit | Dry matter
        Crude protein | % | 9.4
        NSC | % | 11.4
        """;
    String row = "Brook Vale Forage Laboratory,carbohydrate,NSC,NSC_WSC";

    assertEquals("N2: CP=9.4 dm, NSC?nsc-definition-unknown", Readings.words(Grids.table(open)));
    Report report = hinted(open, row);
    assertEquals("N2: CP=9.4 dm, NSC_WSC=11.4 dm", words(report));
    assertEquals("assumed", reading(report, "NSC_WSC").value().orElseThrow().evidence().origin());
    assertEquals(
        "N2: CP=9.4 dm, NSC?hint-contradicted", words(hinted(open + "NSC = ESC + starch\n", row)));
  }

  @Test
  void oneRowTellsTheFormOfNitrate() {
    String open =
        """
        Brook Vale Forage Laboratory
        Lot: | N2
        Analyte | Unit | Dry matter
        WSC | % | 9.4
        Nitrate | ppm | 3500
        """;

    assertEquals(
        "N2: WSC=9.4 dm, NO3=3500 dm",
        words(hinted(open, "Brook Vale Forage Laboratory,nitrate-form,NITRATE,NO3")));
  }

  @Test
  void oneRowTellsTheOrderOfDayAndMonthUnlessADateForbidsIt() {
    String dated = "Brook Vale Forage Laboratory\nSampled: | 03/05/2026\n" + tail();
    String row = "Brook Vale Forage Laboratory,date-order,*,day-first";

    assertEquals(List.of("date-ambiguous"), doubts(Readings.report(Grids.table(dated))));
    assertEquals(
        Optional.of(LocalDate.of(2026, 5, 3)), hinted(dated, row).samples().get(0).sampledOn());
    Report otherwise = hinted(dated.replace("03/05/2026", "03/25/2026"), row);
    assertEquals(Optional.of(LocalDate.of(2026, 3, 25)), otherwise.samples().get(0).sampledOn());
    assertEquals(
        List.of("hint-contradicted"), otherwise.notes().stream().map(Doubt::code).toList());
  }

  @Test
  void datesThatContradictEachOtherAreNotSettledByAHint() {
    String torn =
        "Brook Vale Forage Laboratory\nReceived: | 25/03/2026\nReported: | 03/26/2026\n"
            + "Sampled: | 03/05/2026\n"
            + tail();

    Report report = hinted(torn, "Brook Vale Forage Laboratory,date-order,*,day-first");

    assertEquals(List.of("date-ambiguous"), doubts(report));
  }

  private static String tail() {
    return """
    Lot: | N2
    Analyte | Unit | Dry matter
    WSC | % | 9.4
    Starch | % | 1.2
    """;
  }

  @Test
  void oneRowTellsTheDecimalMarkWhereNoNumberOfThePageDoes() {
    String open =
        """
        Brook Vale Forage Laboratory
        Lot: | N2
        Analyte | Unit | Dry matter
        Calcium | g/kg | 4,105
        """;
    String row = "Brook Vale Forage Laboratory,decimal-mark,*,comma";

    assertEquals("N2: CA?number-ambiguous", Readings.words(Grids.table(open)));
    Report report = hinted(open, row);
    assertEquals("N2: CA=0.4105 dm", words(report));
    assertEquals("assumed", reading(report, "CA").value().orElseThrow().evidence().origin());
    assertEquals(
        List.of("hint-contradicted"),
        hinted(open.replace("4,105", "4.1"), row).notes().stream().map(Doubt::code).toList());
  }

  @Test
  void oneRowTeachesASpelling() {
    String strange = tail().replace("Starch", "Storable meal sugar");

    assertEquals("N2: WSC=9.4 dm", Readings.words(Grids.table(strange)));
    assertEquals(
        "N2: WSC=9.4 dm, STARCH=1.2 dm",
        words(
            read(
                strange,
                "spellings.csv",
                "Storable meal sugar,ANALYTE,STARCH,en,letter of the laboratory,office")));
  }
}
