package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Method;
import rickyard.core.forage.Report;
import rickyard.core.forage.ReportStatus;
import rickyard.core.forage.Sample;

/** What the head of a report says of itself and of its samples. */
class FrontTest {
  private static final String ROWS = "\nAnalyte|% DM\nCrude protein|10.2\nStarch|1.2\n";

  private static Report read(String head) {
    return Readings.report(Grids.table(head + ROWS));
  }

  @Test
  void fieldsOfTheHeadAreKept() {
    Report report =
        read(
            """
            Thistle Vale Forage Laboratory
            Report No: TV-2231|Date reported: 2026-07-14
            Lot|N2|Lab no|90017
            Material: Grass hay
            Date sampled: 3 July 2026
            Cores: 20
            Batch: B7
            Method: NIR""");
    Sample sample = report.samples().get(0);

    assertEquals("Thistle Vale Forage Laboratory", report.lab());
    assertEquals("TV-2231", report.reportNo());
    assertEquals(Optional.of(LocalDate.of(2026, 7, 14)), report.reportedOn());
    assertEquals("N2", sample.label());
    assertEquals("90017", sample.labNo());
    assertEquals("Grass hay", sample.material());
    assertEquals(Optional.of(LocalDate.of(2026, 7, 3)), sample.sampledOn());
    assertEquals(20, sample.cores().orElse(0));
    assertEquals("B7", sample.batch());
    assertEquals(Method.NIR, sample.readings().get(0).method());
    assertEquals(ReportStatus.FINAL, report.status());
  }

  @Test
  void anAmendedReportSaysWhatItReplaces() {
    Report report =
        read("AMENDED REPORT\nReport no: 118-2\nRevision: 2\nThis report replaces report 118-1.");

    assertEquals(ReportStatus.AMENDED, report.status());
    assertEquals(2, report.revision());
    assertEquals("118-1", report.replaces());
  }

  @Test
  void standingIsReadFromStampsAndSentences() {
    assertEquals(ReportStatus.PRELIMINARY, read("Preliminary results").status());
    assertEquals(ReportStatus.PRELIMINARY, read("Status: provisional").status());
    assertEquals(ReportStatus.WITHDRAWN, read("REPORT WITHDRAWN").status());
    assertEquals(ReportStatus.AMENDED, read("Corrected report").status());
    assertEquals(ReportStatus.FINAL, read("Report status: final").status());
    assertEquals(ReportStatus.FINAL, read("This report may not be amended").status());
  }

  @Test
  void aDateWithoutOrderIsAQuestion() {
    Report report = read("Date reported: 03/04/2026");

    assertTrue(report.reportedOn().isEmpty());
    assertEquals("date-ambiguous", report.notes().get(0).code());
    assertEquals("Which day is the report date \"03/04/2026\"?", report.notes().get(0).question());
  }

  @Test
  void anotherDateOfTheReportSettlesTheOrder() {
    Report report = read("Date reported: 03/04/2026\nDate received: 28/03/2026");

    assertEquals(Optional.of(LocalDate.of(2026, 4, 3)), report.reportedOn());
  }

  @Test
  void anImpossibleDateIsRefused() {
    assertEquals("date-not-understood", read("Date reported: 31/02/2026").notes().get(0).code());
  }

  @Test
  void cautionsOfTheGridBecomeDoubtsOfTheReport() {
    var grid = Grids.table("Analyte|% DM\nStarch|1.2");
    var hidden =
        new rickyard.intake.grid.Grid(
            grid.kind(), grid.pages(), java.util.List.of("hidden-text", "readings-differ"));

    assertEquals(
        java.util.List.of("readings-differ"),
        Readings.report(hidden).notes().stream().map(d -> d.code()).toList());
  }
}
