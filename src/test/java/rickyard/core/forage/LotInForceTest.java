package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.forage.Reports.AS_OF;
import static rickyard.core.forage.Reports.N2;
import static rickyard.core.forage.Reports.answer;
import static rickyard.core.forage.Reports.fin;
import static rickyard.core.forage.Reports.hasAnalysis;
import static rickyard.core.forage.Reports.nsc;
import static rickyard.core.forage.Reports.outcome;
import static rickyard.core.forage.Reports.question;
import static rickyard.core.forage.Reports.received;
import static rickyard.core.forage.Reports.sample;
import static rickyard.core.forage.Reports.sugars;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What counts for a lot with several tests or with none, what is said of it and what is asked. */
class LotInForceTest {
  private static final Lot N3 = Reports.lot("N3", Optional.empty());

  private static Settled settle(List<Received> reports, Answer... answers) {
    return Reports.settle(reports, List.of(N2, N3), List.of(answers), List.of());
  }

  private static String why(Settled settled, String lot) {
    return settled.find(lot, "").orElseThrow().why();
  }

  private static double wscU(Settled settled, String lot, String batch) {
    return settled
        .find(lot, batch)
        .flatMap(InForce::analysis)
        .flatMap(a -> a.analysis().find(AnalyteCode.WSC))
        .orElseThrow()
        .u();
  }

  private static Sample of(Sample s, String label, String batch, String material, Method method) {
    List<Reading> readings = new ArrayList<>();
    for (Reading r : s.readings()) {
      readings.add(
          new Reading(
              r.analyte(),
              r.raw(),
              r.rawUnit(),
              r.rawBasis(),
              method,
              r.place(),
              r.value(),
              r.doubt()));
    }
    return new Sample(
        label,
        batch,
        s.labNo(),
        material,
        s.sampledOn(),
        s.cores(),
        readings,
        s.doubts(),
        s.checks());
  }

  private static List<Received> threeTests() {
    return List.of(
        fin("d1", "R-1", sugars("N2", 6, 1)),
        fin("d2", "R-2", sugars("N2", 14, 1)),
        fin("d3", "R-3", sugars("N2", 25, 1)));
  }

  @Test
  void everyTwoTestsAreCompared() {
    String disagreement =
        "NSC_WSC 7 and 15 %, WSC 6 and 14 %; NSC_WSC 7 and 26 %, WSC 6 and 25 %;"
            + " NSC_WSC 15 and 26 %, WSC 14 and 25 %";

    Settled settled = settle(threeTests());

    assertEquals("two tests of the lot disagree: " + disagreement, why(settled, "N2"));
    assertEquals(
        "Two tests of N2 disagree (" + disagreement + "): which counts?",
        question(settled, "tests-disagree").question());
  }

  @Test
  void theLastTwoOfThreeAreComparedToo() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 10, 1)),
                fin("d2", "R-2", sugars("N2", 7, 1)),
                fin("d3", "R-3", sugars("N2", 14, 1))));

    assertEquals(
        "two tests of the lot disagree: NSC_WSC 8 and 15 %, WSC 7 and 14 %", why(settled, "N2"));
  }

  @Test
  void aDisputeIsAskedUnderANameThatLastsForItsTests() {
    String id = QuestionId.of("tests-disagree", "N2", "", "d10", "d20", "d30");

    assertEquals(id, question(settle(threeTests()), "tests-disagree").id());
  }

  @Test
  void aTestThatAPersonChoseTakesThePlaceOfTheOthers() {
    Question asked = question(settle(threeTests()), "tests-disagree");

    Settled settled = settle(threeTests(), answer(asked.id(), asked.choices().get(1)));

    assertEquals(15, nsc(settled, "N2"), 1e-12);
    assertEquals("report R-2; answered \"R-2 d2.csv (d2)\" (ruth, 2026-11-02)", why(settled, "N2"));
    assertEquals(Standing.IN_FORCE, sample(settled, "d2").standing());
    for (String other : List.of("d1", "d3")) {
      assertEquals("other-test-chosen", sample(settled, other).reasonCode());
      assertEquals("the office chose the other test", sample(settled, other).reason());
    }
  }

  @Test
  void aRetestIsAwaitedInWords() {
    Question asked = question(settle(threeTests()), "tests-disagree");

    Settled settled = settle(threeTests(), answer(asked.id(), "retest"));

    assertFalse(hasAnalysis(settled, "N2"));
    assertTrue(
        why(settled, "N2").endsWith("; a retest is awaited, \"retest\" (ruth, 2026-11-02)"),
        why(settled, "N2"));
    assertEquals("tests-disagree", sample(settled, "d1").reasonCode());
  }

  @Test
  void disagreeingTestsThatAPersonCombinedSaySo() {
    Question asked = question(settle(threeTests()), "tests-disagree");

    Settled settled = settle(threeTests(), answer(asked.id(), "combine"));

    assertEquals(
        "3 tests that agree, combined; answered \"combine\" (ruth, 2026-11-02)",
        why(settled, "N2"));
    assertEquals("combined with another test of the lot", sample(settled, "d3").reason());
  }

  @Test
  void testsOfDifferentDaysAreOfDifferentBags() {
    LocalDate day = AS_OF.minusDays(10);
    List<Received> reports =
        List.of(
            fin("d1", "R-1", Samples.sampled(sugars("N2", 8, 1), day)),
            fin("d2", "R-2", Samples.sampled(sugars("N2", 9, 1), day.plusDays(1))));
    List<Received> undated =
        List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-2", sugars("N2", 9, 1)));

    assertEquals(wscU(settle(undated), "N2", ""), wscU(settle(reports), "N2", ""), 1e-12);
  }

  @Test
  void anUnregisteredLotIsOfTheMaterialThatItsReportNames() {
    Sample alfalfa = of(sugars("Beck", 8, 1), "Beck", "", "alfalfa hay", Method.NIR);
    Sample grass = of(sugars("Moss", 8, 1), "Moss", "", "grass hay", Method.NIR);
    Settled settled = settle(List.of(fin("d1", "R-1", alfalfa), fin("d2", "R-2", grass)));

    assertEquals(
        MaterialClass.LEGUME,
        settled.find("Beck", "").flatMap(InForce::analysis).orElseThrow().material());
    assertTrue(wscU(settled, "Beck", "") > wscU(settled, "Moss", ""));
  }

  @Test
  void aBatchOfAFeedIsBagged() {
    Sample chop = of(sugars("CHOP", 8, 1), "CHOP", "B7", "", Method.UNKNOWN);
    Settled settled =
        Reports.settle(
            new Unsettled(
                List.of(fin("d1", "R-1", chop)),
                List.of(N2),
                List.of(new BagBatch("CHOP", "B7", "Fell Chop")),
                List.of(),
                List.of(),
                AS_OF));

    assertEquals(
        MaterialClass.BAGGED,
        settled.find("CHOP", "B7").flatMap(InForce::analysis).orElseThrow().material());
  }

  @Test
  void twoSamplesOfOneLotInOneReportAreTwoAlsoWhereOnlyOneOfThreeDiffers() {
    List<Received> reports =
        List.of(fin("d1", "R-1", sugars("N2", 8, 1), sugars("N2", 8, 1), sugars("N2", 18, 1)));

    Settled settled = settle(reports);
    Question asked = question(settled, "lot-twice");
    assertEquals(QuestionId.of("lot-twice", "d1", "0", "2"), asked.id());
    assertEquals(
        List.of(
            "R-1 d1.csv, sample 1 (d1)",
            "R-1 d1.csv, sample 3 (d1)",
            "two samples of it",
            "leave out"),
        asked.choices());
    assertEquals("They differ in WSC dm: 8.0 and 18.0.", asked.why());
    assertEquals(Standing.DUPLICATE, settled.samples().get(1).standing());
    assertEquals(Standing.QUARANTINED, settled.samples().get(0).standing());
    assertEquals(
        "the report names the lot twice with other figures", settled.samples().get(2).reason());
  }

  @Test
  void aLotThatIsNamedTwiceSaysWhichSampleWasChosen() {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("N2", 8, 1), sugars("N2", 18, 1)));
    Question asked = question(settle(reports), "lot-twice");

    Settled settled = settle(reports, answer(asked.id(), asked.choices().get(1)));

    assertEquals(
        "report R-1; the report names the lot twice, answered \"R-1 d1.csv, sample 2 (d1)\""
            + " (ruth, 2026-11-02)",
        why(settled, "N2"));
    assertEquals("left-out", settled.samples().get(0).reasonCode());
    Settled out = settle(reports, answer(asked.id(), "leave out"));
    assertFalse(hasAnalysis(out, "N2"));
    assertEquals("accepted", outcome(out, "d1"));
  }

  @Test
  void aLotWithoutAnalysisSaysWhatItsReportsWaitFor() {
    Received early =
        received("d1", "R-1", 0, ReportStatus.PRELIMINARY, Optional.empty(), sugars("N2", 5, 1));

    assertEquals("preliminary: the final report is awaited", why(settle(List.of(early)), "N2"));
    assertEquals("no report of it was read", why(settle(List.of(early)), "N3"));
  }

  @Test
  void aLotThatAnOpenQuestionOffersSaysSo() {
    Settled settled = settle(List.of(fin("d1", "R-1", sugars("N 3", 8, 1))));

    assertEquals("The label is close to a known one, but not the same.", why(settled, "N3"));
  }

  @Test
  void severalReasonsAreToldOnceEach() {
    Received first =
        received("d1", "R-1", 0, ReportStatus.PRELIMINARY, Optional.empty(), sugars("N2", 5, 1));
    Received second =
        received("d2", "R-2", 0, ReportStatus.PRELIMINARY, Optional.empty(), sugars("N2", 6, 1));
    Received near = fin("d3", "R-3", sugars("N 2", 8, 1));

    assertEquals(
        "preliminary: the final report is awaited;"
            + " The label is close to a known one, but not the same.",
        why(settle(List.of(first, second, near)), "N2"));
  }

  @Test
  void aWithdrawalThatIsToldIsNotToldAgain() {
    Received withdrawal =
        received("d2", "R-1", 0, ReportStatus.WITHDRAWN, Optional.empty(), Samples.of("N2"));

    assertEquals(
        "the laboratory withdrew it; withdraws the report; nothing takes its place",
        why(settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)), withdrawal)), "N2"));
    assertEquals(
        "withdraws the report; nothing takes its place",
        why(settle(List.of(fin("d3", "R-1", sugars("N2", 8, 1)), withdrawal)), "N2"));
  }

  @Test
  void anEntryLeadsToItsSamples() {
    List<Received> reports = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      reports.add(fin("d" + i, "R-" + i, sugars(i % 2 == 0 ? "N2" : "N3", 8 + 0.1 * i, 1)));
    }
    Settled settled = settle(reports);

    InForce even = settled.find("N2", "").orElseThrow();
    assertEquals(
        List.of("d0", "d2", "d4", "d6", "d8"),
        settled.samplesOf(even).stream().map(s -> s.key().document()).toList());
    InForce none =
        new InForce(
            "N2",
            "",
            Optional.empty(),
            List.of(new SampleKey("d9", 0), new SampleKey("d", 0)),
            "",
            false);
    assertEquals(List.of(), settled.samplesOf(none));
  }

  @Test
  void theFullerOfTwoCopiesUnderOtherNumbersCounts() {
    Sample poor = Samples.of("N2", Samples.dm("WSC", 8), Samples.dm("STARCH", 1));
    Sample fuller =
        Samples.of("N2", Samples.dm("WSC", 8), Samples.dm("STARCH", 1), Samples.dm("CP", 9));
    Settled settled = settle(List.of(fin("d1", "R-1", poor), fin("d2", "R-2", fuller)));

    assertEquals("duplicate", outcome(settled, "d1"));
    assertEquals("accepted", outcome(settled, "d2"));
  }

  @Test
  void questionsAreSortedByTheirNames() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("Beck", 8, 1)),
                fin("d2", "R-2", sugars("Moss", 9, 1)),
                fin("d3", "R-3", sugars("Scar", 10, 1)),
                fin("d4", "R-4", sugars("N 2", 11, 1))));
    List<String> ids = settled.questions().stream().map(Question::id).toList();

    assertEquals(4, ids.size());
    assertEquals(ids.stream().sorted().toList(), ids);
  }

  private static Sample doubtful(String label, double wsc) {
    Reading open =
        new Reading(
            AnalyteCode.ESC,
            "5",
            "%",
            "",
            Method.UNKNOWN,
            Samples.dm("ESC", 5).place(),
            Optional.empty(),
            "basis-not-stated");
    Doubt doubt =
        new Doubt(
            "basis-not-stated", "ESC", Optional.of(open.place()), "?", List.of("af", "dm"), "", "");
    return Samples.with(
        Samples.of(label, Samples.dm("WSC", wsc), Samples.dm("STARCH", 1), open),
        List.of(doubt),
        List.of());
  }

  @Test
  void aReportWithAnOpenFigureIsAQuestionInWords() {
    Settled settled = settle(List.of(fin("d1", "R-1", doubtful("N2", 8))));

    assertTrue(hasAnalysis(settled, "N2"));
    SettledReport report = settled.reports().get(0);
    assertEquals("question", report.outcome());
    assertEquals("open-doubt", report.reasonCode());
    assertEquals("some figures wait for an answer", report.reason());
  }

  @Test
  void aReportThatCountsSaysThatItIsInForce() {
    SettledReport report = settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)))).reports().get(0);

    assertEquals("in-force", report.reasonCode());
    assertEquals("", report.reason());
    SettledReport waits = settle(List.of(fin("d1", "R-1", sugars("", 8, 1)))).reports().get(0);
    assertEquals("lot-missing", waits.reasonCode());
    assertEquals("The report names no lot.", waits.reason());
  }

  @Test
  void nobodyIsAskedAboutWhatNoLongerCounts() {
    Settled replaced =
        settle(
            List.of(
                fin("d1", "R-1", doubtful("N2", 8)),
                received(
                    "d2", "R-1", 1, ReportStatus.AMENDED, Optional.empty(), sugars("N2", 9, 1))));
    assertEquals(List.of(), replaced.questions());

    Settled copied =
        settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "", doubtful("N2", 8))));
    assertEquals(List.of(), copied.questions());
    assertEquals("duplicate", outcome(copied, "d2"));
  }

  @Test
  void anOpenFigureOfACombinedTestIsStillAsked() {
    Settled settled =
        settle(List.of(fin("d1", "R-1", doubtful("N2", 8)), fin("d2", "R-2", sugars("N2", 9, 1))));

    assertEquals(1, settled.questions().size());
    assertEquals("question", outcome(settled, "d1"));
    assertEquals("accepted", outcome(settled, "d2"));
  }

  @Test
  void decisionsOlderThanTheMorningOfTheNewValueAreReopenedInTheirOrder() {
    List<Decision> decisions = new ArrayList<>();
    for (int row : new int[] {9, 4, 6}) {
      decisions.add(
          new Decision(AS_OF.minusDays(2), " N2 ", "told", "", Optional.empty(), "r", "", row));
    }
    decisions.add(new Decision(AS_OF, "N2", "told", "", Optional.empty(), "r", "", 5));
    decisions.add(new Decision(AS_OF.minusDays(2), "N3", "told", "", Optional.empty(), "r", "", 7));
    Settled settled =
        Reports.settle(
            List.of(
                fin("d1", "R-1", sugars("N3", 8, 1)),
                fin("d3", "R-2", sugars("N2", 7, 1)),
                received(
                    "d2", "R-1", 1, ReportStatus.AMENDED, Optional.empty(), sugars("N3", 9, 1)),
                received(
                    "d4", "R-2", 1, ReportStatus.AMENDED, Optional.empty(), sugars("N2", 9, 1))),
            List.of(N2, N3),
            List.of(),
            decisions);

    assertEquals(
        List.of("N2 [4, 6, 9] d4", "N3 [7] d2"),
        settled.reopened().stream()
            .map(r -> r.subject() + " " + r.decisionRows() + " " + r.by())
            .toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   "})
  void anAnswerLeftBlankIsNone(String blank) {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("Beck", 8, 1)));
    String id = question(settle(reports), "lot-unknown").id();

    Settled settled = settle(reports, answer(id, blank));

    assertEquals(List.of(), settled.answers());
    assertEquals(
        "No register knows it; it is kept as a lot of its own until then.",
        question(settled, "lot-unknown").why());
  }

  @Test
  void aBlankAnswerDoesNotTakeAnEarlierOneBack() {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("Beck", 8, 1)));
    String id = question(settle(reports), "lot-unknown").id();

    Settled settled = settle(reports, answer(id, "N2"), answer(id, " "));

    assertEquals(9, nsc(settled, "N2"), 1e-12);
    assertEquals(OptionalInt.empty(), sample(settled, "d1").sample().cores());
  }
}
