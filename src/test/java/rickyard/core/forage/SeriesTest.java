package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Which documents are one report with its revisions, and which of their sheets are one sample. */
class SeriesTest {
  private static Held held(String document, String lab, String number, String replaces) {
    return held(document, lab, number, replaces, 0, ReportStatus.FINAL, "N2", "", "", 8);
  }

  private static Held held(
      String document,
      String lab,
      String number,
      String replaces,
      int revision,
      ReportStatus status,
      String label,
      String batch,
      String labNo,
      double wsc) {
    Sample sample =
        new Sample(
            label,
            batch,
            labNo,
            "",
            Optional.empty(),
            OptionalInt.empty(),
            Reports.sugars(label, wsc, 1).readings(),
            List.of(),
            List.of());
    Report report =
        new Report(
            document,
            lab,
            number,
            revision,
            replaces,
            status,
            Optional.empty(),
            List.of(sample),
            List.of());
    return new Held(new Received(report, Reports.AS_OF, document + ".csv"), report, 0, sample);
  }

  private static Held sheet(
      String document, int revision, ReportStatus status, String label, String labNo, double wsc) {
    return held(document, "Fellside", "R-1", "", revision, status, label, "", labNo, wsc);
  }

  private static String series(Held... all) {
    List<String> words = new ArrayList<>();
    for (List<Held> series : Series.of(Arrays.asList(all))) {
      words.add(String.join("=", series.stream().map(h -> h.key.document()).toList()));
    }
    return String.join(" ", words.stream().sorted().toList());
  }

  private static void assertOne(boolean expected, Held a, Held b) {
    assertEquals(expected, Series.areSheetsOfOneSample(a, b), "forth");
    assertEquals(expected, Series.areSheetsOfOneSample(b, a), "back");
  }

  @Test
  void oneNumberOfOneLaboratoryIsOneSeries() {
    assertEquals(
        "a=b c",
        series(
            held("a", "Fellside", "R-1", ""),
            held("b", "FELLSIDE ", "r-1", ""),
            held("c", "Fellside", "R-2", "")));
  }

  @Test
  void anotherLaboratoryWithTheSameNumberIsAnotherSeries() {
    assertEquals("a b", series(held("a", "Fellside", "R-1", ""), held("b", "Tarnside", "R-1", "")));
  }

  @Test
  void aLaboratoryIsTheSameWithOtherSigns() {
    assertEquals(
        "a=b",
        series(held("a", "Fellside Lab.", "R-1", ""), held("b", "fellside-lab.", "R-1", "")));
  }

  @Test
  void aReportWithoutLaboratoryJoinsTheOnlyOneThatHasItsNumber() {
    assertEquals("a=b", series(held("a", "Fellside", "R-1", ""), held("b", "", "R-1", "")));
    assertEquals(
        "a b c",
        series(
            held("a", "Fellside", "R-1", ""),
            held("b", "", "R-1", ""),
            held("c", "Tarnside", "R-1", "")));
  }

  @Test
  void aReportWithoutNumberIsASeriesOfItsOwn() {
    assertEquals("a b", series(held("a", "Fellside", "", ""), held("b", "Fellside", "", "")));
  }

  @Test
  void whatReplacesAReportJoinsItsSeries() {
    assertEquals(
        "a=b=c d",
        series(
            held("a", "Fellside", "R-1", ""),
            held("b", "Fellside", "R-5", "R-1"),
            held("c", "Fellside", "R-3", "R-5"),
            held("d", "Fellside", "R-4", "")));
    assertEquals("a=b", series(held("a", "Fellside", "", "R-1"), held("b", "Fellside", "R-1", "")));
  }

  @Test
  void sheetsOfOneNameAreOneSampleWhateverTheirNumbers() {
    assertOne(
        true,
        sheet("a", 0, ReportStatus.FINAL, "N2", "1", 8),
        sheet("b", 0, ReportStatus.FINAL, "n2", "2", 12));
    assertOne(
        false,
        held("a", "", "R-1", "", 0, ReportStatus.FINAL, "Chop", "B7", "1", 8),
        held("b", "", "R-1", "", 0, ReportStatus.FINAL, "Chop", "B8", "2", 12));
  }

  @Test
  void theSameDocumentIsNoRevisionOfItself() {
    assertOne(
        false,
        sheet("a", 0, ReportStatus.FINAL, "N2", "", 8),
        sheet("a", 0, ReportStatus.FINAL, "N2", "", 8));
  }

  @Test
  void otherNamesAndFiguresOfOneRevisionAreSheetsOfOneReport() {
    assertOne(
        false,
        sheet("a", 0, ReportStatus.FINAL, "N2", "", 8),
        sheet("b", 0, ReportStatus.FINAL, "K7", "", 12));
  }

  @Test
  void anotherNameIsARevisionWhereRevisionStatusNumberOrFiguresSaySo() {
    Held sheet = sheet("a", 0, ReportStatus.FINAL, "N2", "", 8);

    assertOne(true, sheet, sheet("b", 1, ReportStatus.FINAL, "K7", "", 12));
    assertOne(true, sheet, sheet("b", 0, ReportStatus.AMENDED, "K7", "", 12));
    assertOne(true, sheet, sheet("b", 0, ReportStatus.FINAL, "K7", "", 8));
    assertOne(true, sheet, sheet("b", 0, ReportStatus.FINAL, "", "", 12));
    assertOne(
        true,
        sheet("a", 0, ReportStatus.FINAL, "N2", "5", 8),
        sheet("b", 0, ReportStatus.FINAL, "K7", "5", 12));
    assertOne(
        false,
        sheet("a", 0, ReportStatus.FINAL, "N2", "5", 8),
        sheet("b", 1, ReportStatus.FINAL, "K7", "6", 12));
    assertOne(
        false,
        sheet("a", 0, ReportStatus.FINAL, "N2", "5", 8),
        sheet("b", 0, ReportStatus.FINAL, "K7", "", 12));
  }

  @Test
  void aSheetThatNamesTheOtherReportReplacesItsSample() {
    Held older = held("a", "", "R-1", "", 0, ReportStatus.FINAL, "N2", "", "5", 8);

    assertOne(true, older, held("b", "", "R-2", "R-1", 0, ReportStatus.FINAL, "K7", "", "6", 12));
    assertOne(false, older, held("b", "", "R-2", "R-3", 0, ReportStatus.FINAL, "K7", "", "6", 12));
    assertOne(false, older, held("b", "", "R-1", "R-1", 0, ReportStatus.FINAL, "K7", "", "6", 12));
    assertOne(false, older, held("b", "", "R-2", "", 0, ReportStatus.FINAL, "K7", "", "6", 12));
  }
}
