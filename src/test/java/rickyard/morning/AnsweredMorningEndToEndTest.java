package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;
import rickyard.core.forage.Answer;
import rickyard.report.view.LotRow;

/** Mornings before and after a person has answered, corrected or pasted a draft. */
class AnsweredMorningEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final Path SKELETON = Path.of("src", "test", "resources", "skeleton-office");
  private static final String FIGURES =
      "Analyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,7.0\nStarch,%,0.6\nCrude protein,%,9.9\n";

  @TempDir Path folder;

  private static Map<String, String> row(
      List<Map<String, String>> rows, String column, String key) {
    return rows.stream().filter(r -> key.equals(r.get(column))).findFirst().orElseThrow();
  }

  private Path bare(String name, String... files) throws IOException {
    Path office = folder.resolve(name);
    Files.createDirectories(office.resolve("inbox"));
    for (int i = 0; i < files.length; i++) {
      Files.writeString(office.resolve("inbox/report-" + (char) ('a' + i) + ".csv"), files[i]);
    }
    return office;
  }

  private static void keep(Path office, String kind, String said) {
    OfficeSettle settle = OfficeSettle.open(SmallOffice.folders(office), DAY, Progress.silent());
    String id =
        settle.questions().stream()
            .filter(q -> q.kind().equals(kind))
            .findFirst()
            .orElseThrow()
            .id();
    settle.keep(List.of(settle.accept(new Answer(id, said, "ruth", DAY, ""))));
  }

  @Test
  void anOfficeWithOnlyAnInboxSortsItsLots() throws IOException {
    Path office =
        bare(
            "only",
            "Lot,FIELD-7\nMaterial,Grass hay\n" + FIGURES,
            "Lot,POND-2\nMaterial,Grass hay\n" + FIGURES.replace("7.0", "17.0"));

    List<LotRow> rows =
        OfficeSort.of(SmallOffice.folders(office), DAY, Optional.empty(), Progress.silent());

    assertEquals(List.of("FIELD-7", "POND-2"), rows.stream().map(LotRow::lot).toList());
    assertEquals(7.6, rows.get(0).nscWsc(), 1e-9);
    assertTrue(rows.get(0).isProvisional());
    assertFalse(rows.get(1).notFor().isEmpty());
    assertFalse(Files.exists(office.resolve("ledger")));
  }

  @Test
  void theDraftRowsPastedMakeTheNextMorningEqualButForProvisional() throws IOException {
    Path office =
        bare(
            "pasted",
            "Lot,FIELD-7\nMaterial,Grass hay\nDate sampled,2026-03-02\nCores,15\n" + FIGURES);
    Path before = SmallOffice.run(office, DAY).out();
    Files.createDirectories(office.resolve("registers"));
    Files.copy(before.resolve("drafts/lots.csv"), office.resolve("registers/lots.csv"));

    Path after = SmallOffice.run(office, DAY.plusDays(1)).out();

    Map<String, String> draft = SmallOffice.rows(before.resolve("drafts/lots.csv")).get(0);
    assertEquals("FIELD-7", draft.get("lot_id"));
    assertEquals("grass-hay", draft.get("material"));
    assertEquals("15", draft.get("cores"));
    assertEquals("2026-03-02", draft.get("sampled_on"));
    assertEquals("no", draft.get("for_sale"));
    assertEquals(
        SmallOffice.rows(before.resolve("verdicts.csv")),
        SmallOffice.rows(after.resolve("verdicts.csv")));
    assertEquals(
        SmallOffice.rows(before.resolve("analyses.csv")),
        SmallOffice.rows(after.resolve("analyses.csv")));
    assertEquals(1, SmallOffice.rows(before.resolve("questions.csv")).size());
    assertEquals(List.of(), SmallOffice.rows(after.resolve("questions.csv")));
    assertEquals(List.of(), SmallOffice.rows(after.resolve("drafts/lots.csv")));
  }

  @Test
  void anAnswerIsUsedRecordedAndTraced() throws IOException {
    Path office = bare("answered", "Lot,FIELD-7\n" + FIGURES.replace("7.0", "7.O"));
    Path before = SmallOffice.run(office, DAY).out();
    assertEquals(
        List.of("", ""),
        SmallOffice.rows(before.resolve("drafts/answers.csv")).stream()
            .map(r -> r.get("answer"))
            .toList());
    keep(office, "letters-in-number", "7.0");
    keep(office, "lot-unknown", "new lot");

    Path after = SmallOffice.run(office, DAY.plusDays(1)).out();

    Map<String, String> wsc =
        row(SmallOffice.rows(after.resolve("analyses.csv")), "analyte", "WSC");
    assertEquals("7.O", wsc.get("raw"));
    assertEquals("7", wsc.get("value"));
    assertEquals("answered", wsc.get("origin"));
    assertEquals("in-force", wsc.get("state"));
    assertEquals(List.of(), SmallOffice.rows(after.resolve("questions.csv")));
    Map<String, String> use =
        row(SmallOffice.rows(after.resolve("answered.csv")), "kind", "letters-in-number");
    assertEquals("ruth", use.get("by"));
    assertEquals("2026-03-16", use.get("on"));
    assertEquals("settled", use.get("effect"));
    List<String> trace =
        OfficeTrace.of(
            SmallOffice.folders(office),
            DAY.plusDays(1),
            "FIELD-7",
            Optional.of("NSC_WSC"),
            Progress.silent());
    assertTrue(
        trace.stream()
            .anyMatch(
                l ->
                    l.startsWith("read: WSC \"7.O\" in report-a.csv, page 1, row 4")
                        && l.contains("settled by ruth on 2026-03-16")),
        trace.toString());
    assertTrue(trace.get(0).contains("\"new lot\" (ruth, 2026-03-16)"), trace.get(0));
  }

  @Test
  void anAnswerToAQuestionThatIsGoneIsListedAndChangesNothing() throws IOException {
    Path office = bare("gone", "Lot,FIELD-7\n" + FIGURES);
    Path before = SmallOffice.run(office, DAY).out();
    Files.createDirectories(office.resolve("registers"));
    Files.writeString(
        office.resolve("registers/answers.csv"),
        "question_id,answer,by,on,note\nq-gone,as fed,ruth,2026-03-16,\n");

    Path after = SmallOffice.run(office, DAY.plusDays(1)).out();

    assertEquals(
        "no-such-question", SmallOffice.rows(after.resolve("answered.csv")).get(0).get("effect"));
    assertTrue(Files.readString(after.resolve("summary.html")).contains("answers no question"));
    assertEquals(
        SmallOffice.rows(before.resolve("analyses.csv")),
        SmallOffice.rows(after.resolve("analyses.csv")));
    assertEquals(
        SmallOffice.rows(before.resolve("questions.csv")),
        SmallOffice.rows(after.resolve("questions.csv")));
  }

  @Test
  void aFigureIsCorrectedByItsPlaceBesideWhatWasRead() throws IOException {
    Path office = bare("corrected", "Lot,FIELD-7\n" + FIGURES);
    SmallOffice.run(office, DAY);
    Files.createDirectories(office.resolve("registers"));
    Files.writeString(
        office.resolve("registers/decisions.csv"),
        "date,about,kind,value,start_on,by,why\n"
            + "2026-03-16,\"report-a.csv, page 1, row 4, column \"\"Dry matter\"\"\",correction,"
            + "17.0,,ruth,the sheet says 17\n");

    Path after = SmallOffice.run(office, DAY.plusDays(1)).out();

    Map<String, String> wsc =
        row(SmallOffice.rows(after.resolve("analyses.csv")), "analyte", "WSC");
    assertEquals("7.0", wsc.get("raw"));
    assertEquals("17", wsc.get("value"));
    assertEquals("answered", wsc.get("origin"));
    Map<String, String> use =
        row(SmallOffice.rows(after.resolve("answered.csv")), "kind", "correction");
    assertEquals("FIELD-7 WSC", use.get("about"));
    assertEquals("17.0", use.get("answer"));
    List<String> trace =
        OfficeTrace.of(
            SmallOffice.folders(office),
            DAY.plusDays(1),
            "FIELD-7",
            Optional.empty(),
            Progress.silent());
    assertTrue(
        trace.stream()
            .anyMatch(
                l -> l.startsWith("corrected: WSC \"7.0\"") && l.contains("now 17.0 by ruth")),
        trace.toString());
  }

  @Test
  void aWordUnderAnotherColumnIsNotCorrected() throws IOException {
    Path office = bare("elsewhere", "Lot,FIELD-7\n" + FIGURES);
    Files.createDirectories(office.resolve("registers"));
    Files.writeString(
        office.resolve("registers/decisions.csv"),
        "date,about,kind,value,start_on,by,why\n"
            + "2026-03-16,\"report-a.csv, page 1, row 5, column Unit\",correction,17.0,,ruth,x\n"
            + "2026-03-16,\"eport-a.csv, page 1, row 4, column Dry"
            + " matter\",correction,1.0,,ruth,x\n");

    Path out = SmallOffice.run(office, DAY).out();

    assertEquals(
        "7", row(SmallOffice.rows(out.resolve("analyses.csv")), "analyte", "WSC").get("value"));
    assertTrue(
        SmallOffice.rows(out.resolve("answered.csv")).stream()
            .noneMatch(r -> "correction".equals(r.get("kind"))));
  }

  @Test
  void aCertificateOfABatchTakesThePlaceOfTheRegistersValuesAndIsTraced() throws IOException {
    Path office = folder.resolve("bag");
    BuiltJar.copy(SKELETON, office);
    Files.writeString(
        office.resolve("registers/rations.csv"),
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "pip,CHOP,M2602,4.8,kg,forage,3,dry,2026-02-01\n"
            + "pip,BAL,,0.26,kg,bucket,2,dry,2026-02-01\n");
    List<String> before =
        OfficeTrace.of(
            SmallOffice.folders(office), DAY, "pip", Optional.of("WSC"), Progress.silent());
    Files.writeString(
        office.resolve("inbox/certificate.csv"),
        "Sample,CHOP\nBatch,M2602\n" + FIGURES.replace("7.0", "9.4"));

    List<String> after =
        OfficeTrace.of(
            SmallOffice.folders(office), DAY, "pip", Optional.of("WSC"), Progress.silent());

    assertTrue(before.stream().anyMatch(l -> l.contains("feeds.csv")), before.toString());
    assertTrue(
        after.stream().anyMatch(l -> l.contains("printed \"9.4\" in certificate.csv")),
        after.toString());
    assertTrue(after.stream().noneMatch(l -> l.contains("\"6.2\"")), after.toString());
  }
}
