package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.forage.Reports.N2;
import static rickyard.core.forage.Reports.answer;
import static rickyard.core.forage.Reports.fin;
import static rickyard.core.forage.Reports.hasAnalysis;
import static rickyard.core.forage.Reports.nsc;
import static rickyard.core.forage.Reports.question;
import static rickyard.core.forage.Reports.received;
import static rickyard.core.forage.Reports.sample;
import static rickyard.core.forage.Reports.sugars;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What withdrawals, copies, preliminary reports and answers do to revisions. */
class RevisionsTest {
  private static final Lot N3 = Reports.lot("N3", Optional.empty());
  private static final Lot N4 = Reports.lot("N4", Optional.empty());

  private static Settled settle(List<Received> reports, Answer... answers) {
    return Reports.settle(reports, List.of(N2, N3, N4), List.of(answers), List.of());
  }

  private static Received report(String document, ReportStatus status, Sample... samples) {
    return received(document, "R-1", 0, status, Optional.empty(), samples);
  }

  private static Sample numbered(Sample s, String labNo) {
    return new Sample(
        s.label(),
        s.batch(),
        labNo,
        s.material(),
        s.sampledOn(),
        s.cores(),
        s.readings(),
        s.doubts(),
        s.checks());
  }

  @Test
  void aWithdrawalThatNamesNoSampleTakesThemAll() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 8, 1), sugars("N3", 7, 1)),
                report("d2", ReportStatus.WITHDRAWN, Samples.of(""))));

    assertFalse(hasAnalysis(settled, "N2"));
    assertFalse(hasAnalysis(settled, "N3"));
    assertEquals(
        List.of("N2 withdrawn d2", "N3 withdrawn d2"),
        settled.reopened().stream().map(r -> r.subject() + " " + r.why() + " " + r.by()).toList());
    assertEquals("withdrawal", sample(settled, "d2").reasonCode());
  }

  @Test
  void aWithdrawalTakesOnlyWhatItNames() {
    Received both =
        fin("d1", "R-1", numbered(sugars("N2", 8, 1), "5"), numbered(sugars("N3", 7, 1), "6"));
    for (Sample named :
        List.of(Samples.of("N2"), numbered(Samples.of(""), "5"), numbered(Samples.of("N2"), "5"))) {
      Settled settled = settle(List.of(both, report("d2", ReportStatus.WITHDRAWN, named)));

      assertFalse(hasAnalysis(settled, "N2"));
      assertEquals(8, nsc(settled, "N3"), 1e-12);
    }
  }

  @Test
  void aWithdrawalOfAnUnknownSampleTakesNothing() {
    Received both = fin("d1", "R-1", sugars("N2", 8, 1), sugars("N3", 7, 1));
    for (Sample named : List.of(Samples.of("N4"), numbered(Samples.of(""), "9"))) {
      Settled settled = settle(List.of(both, report("d2", ReportStatus.WITHDRAWN, named)));

      assertTrue(hasAnalysis(settled, "N2"));
      assertTrue(hasAnalysis(settled, "N3"));
    }
  }

  @Test
  void twoUnnamedSamplesWithdrawNothing() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 8, 1), sugars("N3", 7, 1)),
                report("d2", ReportStatus.WITHDRAWN, Samples.of(""), Samples.of(""))));

    assertTrue(hasAnalysis(settled, "N2"));
    assertTrue(hasAnalysis(settled, "N3"));
  }

  @Test
  void anAmendmentThatNamesNoSampleIsNoWithdrawal() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 8, 1), sugars("N3", 7, 1)),
                received(
                    "d2", "R-1", 1, ReportStatus.AMENDED, Optional.empty(), sugars("", 12, 1))));

    assertTrue(hasAnalysis(settled, "N2"));
    assertTrue(hasAnalysis(settled, "N3"));
  }

  @Test
  void aWithdrawalOfOneSheetLeavesTheReportsOtherSheets() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 8, 1)),
                fin("d3", "R-1", sugars("N3", 7, 1), sugars("N4", 6, 1)),
                report("d2", ReportStatus.WITHDRAWN, Samples.of("N2"))));

    assertFalse(hasAnalysis(settled, "N2"));
    assertTrue(hasAnalysis(settled, "N3"));
    assertTrue(hasAnalysis(settled, "N4"));
  }

  @Test
  void aWithdrawalThatNamesNoSampleTakesListsAndSheetsOfTheReport() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 8, 1)),
                fin("d3", "R-1", sugars("N3", 7, 1), sugars("N4", 6, 1)),
                report("d2", ReportStatus.WITHDRAWN, Samples.of(""))));

    for (String lot : List.of("N2", "N3", "N4")) {
      assertFalse(hasAnalysis(settled, lot), lot);
    }
  }

  @Test
  void aReportThatReplacesTheReplacementIsNewerThanTheFirst() {
    Received second =
        Reports.replacing(
            "d2", "R-2", 0, "R-1", ReportStatus.FINAL, Optional.empty(), sugars("N2", 12, 1));
    Received third =
        Reports.replacing(
            "d3", "R-3", 0, "R-2", ReportStatus.FINAL, Optional.empty(), sugars("N2", 10, 1));

    Settled settled = settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)), second, third));

    assertEquals(11, nsc(settled, "N2"), 1e-12);
    assertEquals(List.of(), settled.questions());
  }

  @Test
  void ofTwoCopiesTheFullerCounts() {
    Sample poor =
        Samples.of(
            "N2",
            Samples.dm("WSC", 8),
            Samples.inDoubt(Samples.dm("STARCH", 1), "unit-not-stated"));
    for (String fuller : List.of("d1", "d3")) {
      Settled settled =
          settle(List.of(fin("d2", "R-1", poor), fin(fuller, "R-1", sugars("N2", 8, 1))));

      assertEquals(9, nsc(settled, "N2"), 1e-12);
      assertEquals(Standing.IN_FORCE, sample(settled, fuller).standing());
      assertEquals(Standing.DUPLICATE, sample(settled, "d2").standing());
    }
  }

  @Test
  void figuresThatAreTheSameWithinTheirRoundingAreACopyAndNoSecondTest() {
    Settled settled =
        settle(
            List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-1", sugars("N2", 8.04, 1))));

    assertEquals("same-content", sample(settled, "d2").reasonCode());
    assertEquals("another file holds the same figures", sample(settled, "d2").reason());
    assertFalse(settled.find("N2", "").orElseThrow().isCombined());
  }

  @Test
  void aPreliminaryReportIsAskedAboutByItsLabelOrAsAReport() {
    assertEquals(
        "N2",
        question(
                settle(List.of(report("d1", ReportStatus.PRELIMINARY, sugars("N2", 5, 1)))),
                "preliminary")
            .about());
    assertEquals(
        "report",
        question(
                settle(List.of(report("d1", ReportStatus.PRELIMINARY, sugars("", 5, 1)))),
                "preliminary")
            .about());
  }

  @Test
  void aFinalReportPromisedForTodayIsStillAwaited() {
    List<Received> reports = List.of(report("d1", ReportStatus.PRELIMINARY, sugars("N2", 5, 1)));
    String id = question(settle(reports), "preliminary").id();

    assertEquals(QuestionId.of("preliminary", "d1", "0"), id);
    assertEquals(List.of(), settle(reports, answer(id, Reports.AS_OF.toString())).questions());
  }

  @Test
  void whichRevisionCountsIsAskedUnderANameThatLasts() {
    List<Received> reports =
        List.of(
            fin("d1", "R-1", sugars("N2", 8, 1)),
            fin("d2", "R-1", sugars("N2", 12, 1)),
            fin("d3", "R-2", sugars("N3", 8, 1)),
            fin("d4", "R-2", sugars("N3", 12, 1)));
    List<String> ids =
        settle(reports).questions().stream()
            .filter(q -> q.kind().equals("which-revision"))
            .map(Question::id)
            .toList();

    assertEquals(2, ids.size());
    assertNotEquals(ids.get(0), ids.get(1));
    assertTrue(ids.contains(QuestionId.of("which-revision", "d10", "d20")), ids::toString);
  }

  @Test
  void revisionsThatAPersonLeftOutAreLeftOut() {
    List<Received> reports =
        List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-1", sugars("N2", 12, 1)));
    String id = question(settle(reports), "which-revision").id();

    Settled settled = settle(reports, answer(id, "leave out"));

    assertFalse(hasAnalysis(settled, "N2"));
    assertEquals(List.of(), settled.questions());
    for (String document : List.of("d1", "d2")) {
      assertEquals("left-out", sample(settled, document).reasonCode());
      assertEquals(
          "left out by an answer, \"leave out\" (ruth, 2026-11-02)",
          sample(settled, document).reason());
    }
  }

  @Test
  void aRevisionThatAPersonChoseSaysSo() {
    List<Received> reports =
        List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-1", sugars("N2", 12, 1)));
    Question which = question(settle(reports), "which-revision");

    Settled settled = settle(reports, answer(which.id(), which.choices().get(1)));

    assertEquals(
        "report R-1; chosen as the newer revision, \"R-1 d2.csv (d2)\" (ruth, 2026-11-02)",
        settled.find("N2", "").orElseThrow().why());
    assertEquals(Standing.SUPERSEDED, sample(settled, "d1").standing());
  }

  @Test
  void aSampleThatAnAmendmentLeftOutMayBeSaidToBeWithdrawn() {
    List<Received> reports =
        List.of(
            fin("d1", "R-1", sugars("N2", 8, 1), sugars("N3", 7, 1)),
            received("d2", "R-1", 1, ReportStatus.AMENDED, Optional.empty(), sugars("N2", 9, 1)));
    Question asked = question(settle(reports), "not-in-amendment");
    assertEquals(QuestionId.of("still-stands", "d1", "1"), asked.id());

    Settled settled = settle(reports, answer(asked.id(), "withdrawn"));

    assertFalse(hasAnalysis(settled, "N3"));
    assertEquals(List.of(), settled.questions());
    assertTrue(settled.find("N3", "").orElseThrow().why().startsWith("no longer in the amended"));

    Settled stands = settle(reports, answer(asked.id(), "still stands"));
    assertEquals(
        "report R-1; left out of the amendment, \"still stands\" (ruth, 2026-11-02)",
        stands.find("N3", "").orElseThrow().why());
  }

  @Test
  void aSampleOfAnotherReportIsNotAskedAboutByAnAmendment() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 8, 1)),
                received(
                    "d2", "R-1", 1, ReportStatus.AMENDED, Optional.empty(), sugars("N2", 9, 1)),
                fin("d3", "R-2", sugars("N3", 7, 1), sugars("N4", 6, 1))));

    assertEquals(List.of(), settled.questions());
    assertEquals(8, nsc(settled, "N3"), 1e-12);
  }

  @Test
  void aPreliminarySheetIsDoneWithWhenTheFinalOneCame() {
    Settled settled =
        settle(
            List.of(
                report("d1", ReportStatus.PRELIMINARY, sugars("N2", 5, 1)),
                fin("d2", "R-1", sugars("N2", 12, 1))));

    assertEquals("final-came", sample(settled, "d1").reasonCode());
    assertEquals(List.of(), settled.questions());
    assertEquals(OptionalInt.empty(), sample(settled, "d1").sample().cores());
  }

  @Test
  void aPreliminarySampleWaitsWhileTheRestOfItsReportCounts() {
    Sample s = sugars("N2", 5, 1);
    Sample preliminary =
        new Sample(
            s.label(),
            s.batch(),
            s.labNo(),
            s.material(),
            s.sampledOn(),
            s.cores(),
            s.readings(),
            s.doubts(),
            s.checks(),
            Optional.of(ReportStatus.PRELIMINARY));

    Settled settled = settle(List.of(fin("d1", "R-1", preliminary, sugars("N3", 7, 1))));

    assertFalse(hasAnalysis(settled, "N2"));
    assertEquals(8, nsc(settled, "N3"), 1e-12);
    assertEquals("N2", question(settled, "preliminary").about());
  }
}
