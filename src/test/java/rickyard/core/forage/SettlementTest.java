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
import static rickyard.core.forage.Reports.settle;
import static rickyard.core.forage.Reports.sugars;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;

class SettlementTest {
  private static final Optional<LocalDate> NO_DATE = Optional.empty();

  private static Received amended(String document, int revision, Sample... samples) {
    return received(document, "R-1", revision, ReportStatus.AMENDED, NO_DATE, samples);
  }

  @Test
  void aReportOfAKnownLotIsInForce() {
    Settled settled = settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1))));

    assertEquals(9, nsc(settled, "N2"), 1e-12);
    assertEquals("accepted", outcome(settled, "d1"));
    assertEquals(List.of(), settled.questions());
  }

  @Test
  void anAmendmentIsInForceAlsoWhenItArrivesFirst() {
    Received old = fin("d1", "R-1", sugars("N2", 8, 1));
    Received newer = amended("d2", 1, sugars("N2", 12, 1));

    for (List<Received> order : List.of(List.of(old, newer), List.of(newer, old))) {
      Settled settled = settle(order);
      assertEquals(13, nsc(settled, "N2"), 1e-12);
      assertEquals(Standing.SUPERSEDED, sample(settled, "d1").standing());
      assertEquals("superseded", outcome(settled, "d1"));
    }
  }

  @Test
  void aDecisionMadeOnTheReplacedValueIsReopened() {
    Received old = Reports.read(fin("d1", "R-1", sugars("N2", 8, 1)), AS_OF.minusDays(3));
    Received newer = amended("d2", 1, sugars("N2", 12, 1));
    Decision told =
        new Decision(AS_OF.minusDays(2), "N2", "told", "clears", Optional.empty(), "r", "", 4);
    Decision later = new Decision(AS_OF, "N2", "told", "exceeds", Optional.empty(), "r", "", 5);

    Settled settled = settle(List.of(old, newer), List.of(N2), List.of(), List.of(told, later));

    Reopened reopened = settled.reopened().get(0);
    assertEquals("N2", reopened.subject());
    assertEquals("newer-revision", reopened.why());
    assertEquals(List.of(4), reopened.decisionRows());
  }

  @Test
  void aWithdrawalTakesTheValueAway() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("N2", 8, 1)),
                received("d2", "R-1", 0, ReportStatus.WITHDRAWN, NO_DATE, Samples.of("N2"))));

    assertFalse(hasAnalysis(settled, "N2"));
    assertEquals(Standing.SUPERSEDED, sample(settled, "d1").standing());
    assertEquals("withdrawn", settled.reopened().get(0).why());
    assertTrue(settled.find("N2", "").orElseThrow().why().contains("withdrew"));
  }

  @Test
  void aPreliminaryReportNeverDecides() {
    Received early =
        received("d1", "R-1", 0, ReportStatus.PRELIMINARY, NO_DATE, sugars("N2", 5, 1));

    Settled alone = settle(List.of(early));
    assertFalse(hasAnalysis(alone, "N2"));
    assertEquals("question", outcome(alone, "d1"));

    Settled both = settle(List.of(early, fin("d2", "R-1", sugars("N2", 12, 1))));
    assertEquals(13, nsc(both, "N2"), 1e-12);
    assertEquals("superseded", outcome(both, "d1"));
  }

  @Test
  void theSameFiguresInAnotherFileAreACopy() {
    Settled settled =
        settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-1", sugars("N2", 8, 1))));

    assertEquals("accepted", outcome(settled, "d1"));
    assertEquals("duplicate", outcome(settled, "d2"));
    assertFalse(settled.find("N2", "").orElseThrow().isCombined());
  }

  @Test
  void theSameFiguresWithoutAReportNumberAreNoSecondTest() {
    Settled settled =
        settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d0", "", sugars("N2", 8, 1))));

    assertEquals("duplicate", outcome(settled, "d0"));
    assertFalse(settled.find("N2", "").orElseThrow().isCombined());
  }

  @Test
  void oneNumberWithOtherFiguresAndNoOrderIsAQuestion() {
    List<Received> reports =
        List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-1", sugars("N2", 12, 1)));

    Settled settled = settle(reports);
    assertFalse(hasAnalysis(settled, "N2"));
    Question which = question(settled, "which-revision");
    assertEquals(List.of("R-1 d1.csv (d1)", "R-1 d2.csv (d2)", "leave out"), which.choices());

    Settled answered =
        settle(reports, List.of(N2), List.of(answer(which.id(), "R-1 d2.csv (d2)")), List.of());
    assertEquals(13, nsc(answered, "N2"), 1e-12);
    assertEquals(List.of(), answered.questions());
  }

  @Test
  void theDayOfIssueOrdersWhereNothingElseDoes() {
    Settled settled =
        settle(
            List.of(
                received(
                    "d1", "R-1", 0, ReportStatus.FINAL, Optional.of(AS_OF), sugars("N2", 8, 1)),
                received(
                    "d2",
                    "R-1",
                    0,
                    ReportStatus.FINAL,
                    Optional.of(AS_OF.minusDays(1)),
                    sugars("N2", 12, 1))));

    assertEquals(9, nsc(settled, "N2"), 1e-12);
  }

  @Test
  void evidenceOfOrderThatContradictsItselfIsAQuestion() {
    Settled settled =
        settle(
            List.of(
                received(
                    "d1",
                    "R-1",
                    1,
                    ReportStatus.AMENDED,
                    Optional.of(AS_OF.minusDays(5)),
                    sugars("N2", 8, 1)),
                received(
                    "d2", "R-1", 0, ReportStatus.FINAL, Optional.of(AS_OF), sugars("N2", 12, 1))));

    assertFalse(hasAnalysis(settled, "N2"));
    assertEquals("question", outcome(settled, "d1"));
  }

  @Test
  void aReportThatNamesTheOneItReplacesIsInForce() {
    Settled settled =
        settle(
            List.of(
                Reports.replacing(
                    "d2", "R-9", 0, "R-1", ReportStatus.AMENDED, NO_DATE, sugars("N2", 12, 1)),
                fin("d1", "R-1", sugars("N2", 8, 1))));

    assertEquals(13, nsc(settled, "N2"), 1e-12);
    assertEquals("superseded", outcome(settled, "d1"));
  }

  @Test
  void aSampleThatTheAmendmentNoLongerHoldsIsAsked() {
    List<Received> reports =
        List.of(
            fin("d1", "R-1", sugars("N2", 8, 1), sugars("N3", 7, 1)),
            amended("d2", 1, sugars("N2", 9, 1)));
    List<Lot> lots = List.of(N2, Reports.lot("N3", Optional.empty()));

    Settled settled = settle(reports, lots, List.of(), List.of());
    assertEquals(10, nsc(settled, "N2"), 1e-12);
    assertFalse(hasAnalysis(settled, "N3"));

    Question asked = question(settled, "not-in-amendment");
    Settled answered =
        settle(reports, lots, List.of(answer(asked.id(), "still stands")), List.of());
    assertEquals(8, nsc(answered, "N3"), 1e-12);
  }

  @Test
  void nearMissesAreQuestionsWithAProposal() {
    Lot n20 = Reports.lot("N20", Optional.empty());
    for (String label : List.of("N2O", "n20", "N 20", "N-20", "N20 second cut", "20N")) {
      Settled settled =
          settle(
              List.of(fin("d1", "R-1", sugars(label, 8, 1))), List.of(n20), List.of(), List.of());

      assertFalse(hasAnalysis(settled, "N20"), label);
      Question asked = question(settled, "lot-near");
      assertEquals(List.of("N20", "new lot", "<lot>", "leave out"), asked.choices(), label);
      assertEquals("N20", asked.proposed(), label);
      assertEquals("question", outcome(settled, "d1"), label);
    }
  }

  @Test
  void anAnswerSaysWhichLotItIs() {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("N 2", 8, 1)));
    String id = question(settle(reports), "lot-near").id();

    Settled lot = settle(reports, List.of(N2), List.of(answer(id, "N2")), List.of());
    assertEquals(9, nsc(lot, "N2"), 1e-12);
    assertEquals("accepted", outcome(lot, "d1"));

    Settled wrong = settle(reports, List.of(N2), List.of(answer(id, "N7")), List.of());
    assertFalse(hasAnalysis(wrong, "N2"));
    assertTrue(
        question(wrong, "lot-near")
            .why()
            .endsWith("\"N7\" of ruth, 2026-11-02, does not settle it."));

    Settled own = settle(reports, List.of(N2), List.of(answer(id, "new lot")), List.of());
    assertTrue(own.find("N 2", "").orElseThrow().provisional());
  }

  @Test
  void anUnknownLotIsKeptAsALotOfItsOwnAndAsked() {
    Settled settled = settle(List.of(fin("d1", "R-1", sugars("Beck meadow", 8, 1))));

    assertTrue(settled.find("Beck meadow", "").orElseThrow().provisional());
    assertEquals(9, nsc(settled, "Beck meadow"), 1e-12);
    assertEquals("question", outcome(settled, "d1"));
    question(settled, "lot-unknown");
  }

  @Test
  void aReportWithoutALotIsAsked() {
    Settled settled = settle(List.of(fin("d1", "R-1", sugars("", 8, 1))));

    assertEquals(Standing.QUESTION, sample(settled, "d1").standing());
    question(settled, "lot-missing");
  }

  @Test
  void aCertificateIsMatchedToItsBatchOnly() {
    Sample certificate =
        new Sample(
            "Fellside Chop",
            "B7",
            "",
            "",
            Optional.empty(),
            java.util.OptionalInt.empty(),
            sugars("x", 5, 1).readings(),
            List.of(),
            List.of());
    List<Received> reports = List.of(fin("d1", "R-1", certificate));
    List<BagBatch> known = List.of(new BagBatch("chop", "B7", "Fellside Chop"));
    List<BagBatch> other = List.of(new BagBatch("chop", "B8", "Fellside Chop"));

    Settled settled =
        settle(new Unsettled(reports, List.of(N2), known, List.of(), List.of(), AS_OF));
    assertTrue(settled.find("chop", "B7").flatMap(InForce::analysis).isPresent());

    Settled unknown =
        settle(new Unsettled(reports, List.of(N2), other, List.of(), List.of(), AS_OF));
    assertEquals("question", outcome(unknown, "d1"));
  }

  @Test
  void testsOfOneLotThatAgreeAreCombined() {
    Settled settled =
        settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-2", sugars("N2", 9, 1))));

    InForce inForce = settled.find("N2", "").orElseThrow();
    assertTrue(inForce.isCombined());
    assertEquals(9.5, nsc(settled, "N2"), 1e-9);
    assertEquals("combined", sample(settled, "d1").reasonCode());
    assertEquals(Standing.SUPERSEDED, sample(settled, "d1").standing());
    assertEquals("accepted", outcome(settled, "d1"));
    double one =
        Samples.analysis(Samples.cores(sugars("N2", 8, 1), 12))
            .analysis()
            .find(AnalyteCode.WSC)
            .orElseThrow()
            .u();
    double both =
        inForce.analysis().orElseThrow().analysis().find(AnalyteCode.WSC).orElseThrow().u();
    assertEquals(one / Math.sqrt(2), both, 1e-9);
  }

  @Test
  void testsOfTheSameDayShareTheSamplingError() {
    LocalDate day = AS_OF.minusDays(10);
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", Samples.sampled(sugars("N2", 8, 1), day)),
                fin("d2", "R-2", Samples.sampled(sugars("N2", 9, 1), day))));

    double u =
        settled
            .find("N2", "")
            .flatMap(InForce::analysis)
            .flatMap(a -> a.analysis().find(AnalyteCode.WSC))
            .orElseThrow()
            .u();
    double round = 0.05 * 0.05 / 3;
    assertEquals(Math.sqrt((1.5 * 1.5 + round) / 2 + 4.0 / 12), u, 1e-9);
  }

  /** Two laboratories on one bag: 4.8 apart agree as two samplings do, not as one bag must. */
  @Test
  void theSharedSamplingErrorDoesNotMakeTestsOfOneBagAgree() {
    LocalDate day = AS_OF.minusDays(10);
    Sample low = Samples.cores(sugars("N2", 6, 1), 3);
    Sample high = Samples.cores(sugars("N2", 10.8, 1), 3);

    // 2 root(2 · (1.5² + 2²/3)) = 5.36 for two samplings, 2 root(2 · 1.5²) = 4.24 for one bag
    assertTrue(hasAnalysis(settle(List.of(fin("d1", "R-1", low), fin("d2", "R-2", high))), "N2"));
    assertFalse(
        hasAnalysis(
            settle(
                List.of(
                    fin("d1", "R-1", Samples.sampled(low, day)),
                    fin("d2", "R-2", Samples.sampled(high, day)))),
            "N2"));
  }

  @Test
  void aCombinedValueKeepsWhatItsMostCertainTestIsMadeOf() {
    Settled settled =
        settle(List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-2", sugars("N2", 9, 1))));
    AccountedAnalysis made = settled.find("N2", "").flatMap(InForce::analysis).orElseThrow();

    for (AnalyteCode code : List.of(AnalyteCode.WSC, AnalyteCode.STARCH, AnalyteCode.NSC_WSC)) {
      ErrorBudget budget = made.findBudget(code).orElseThrow();
      double u = made.analysis().find(code).orElseThrow().u();
      assertTrue(budget.isOfSeveral(), code.value());
      assertEquals(u, budget.u(), 1e-12, code.value());
      assertTrue(budget.core() > 0, code.value());
      // one more test of the same kind: 1/u² = 1/u² + 1/u_new²
      double fresh =
          Math.sqrt(
              budget.lab() * budget.lab()
                  + budget.core() * budget.core() / 20
                  + budget.rest() * budget.rest());
      assertEquals(1 / Math.sqrt(1 / (u * u) + 1 / (fresh * fresh)), budget.u(20, false), 1e-12);
    }
  }

  @Test
  void testsThatDisagreeLeaveTheLotWithoutAnalysis() {
    List<Received> reports =
        List.of(fin("d1", "R-1", sugars("N2", 6, 1)), fin("d2", "R-2", sugars("N2", 14, 1)));

    Settled settled = settle(reports);
    assertFalse(hasAnalysis(settled, "N2"));
    assertEquals(Standing.QUARANTINED, sample(settled, "d1").standing());
    assertEquals(Standing.QUARANTINED, sample(settled, "d2").standing());
    Question asked = question(settled, "tests-disagree");
    assertEquals(
        List.of("R-1 d1.csv (d1)", "R-2 d2.csv (d2)", "combine", "retest"), asked.choices());

    Settled answered =
        settle(reports, List.of(N2), List.of(answer(asked.id(), "R-2 d2.csv (d2)")), List.of());
    assertEquals(15, nsc(answered, "N2"), 1e-12);
  }

  @Test
  void aDateInTheFutureIsNotBelieved() {
    List<Received> reports =
        List.of(
            received(
                "d1",
                "R-1",
                0,
                ReportStatus.FINAL,
                Optional.of(AS_OF.plusDays(1)),
                sugars("N2", 8, 1)));

    Settled settled = settle(reports);
    assertFalse(hasAnalysis(settled, "N2"));
    Question asked = question(settled, "date-in-future");

    assertTrue(
        hasAnalysis(
            settle(reports, List.of(N2), List.of(answer(asked.id(), "ignore the date")), List.of()),
            "N2"));
    assertFalse(
        hasAnalysis(
            settle(reports, List.of(N2), List.of(answer(asked.id(), "leave out")), List.of()),
            "N2"));
  }

  @Test
  void aSampleOlderThanTheHarvestIsAsked() {
    Sample lastYear = Samples.sampled(sugars("N2", 8, 1), LocalDate.of(2025, 9, 1));
    List<Received> reports = List.of(fin("d1", "R-1", lastYear));

    Settled settled = settle(reports);
    assertFalse(hasAnalysis(settled, "N2"));
    String id = question(settled, "older-than-lot").id();
    assertTrue(
        hasAnalysis(settle(reports, List.of(N2), List.of(answer(id, "take it")), List.of()), "N2"));
  }

  private static Sample inDoubt(String code, Reading reading, String... choices) {
    Reading open =
        new Reading(
            reading.analyte(),
            reading.raw(),
            reading.rawUnit(),
            "",
            reading.method(),
            reading.place(),
            Optional.empty(),
            code);
    Doubt doubt =
        new Doubt(
            code,
            reading.analyte().value(),
            Optional.of(reading.place()),
            "?",
            List.of(choices),
            "",
            "");
    return Samples.with(
        Samples.of("N2", open, Samples.dm("STARCH", 1), Samples.af("DM", 88)),
        List.of(doubt),
        List.of());
  }

  @Test
  void anAnsweredBasisBecomesAValueWithItsAnswerAsEvidence() {
    List<Received> reports =
        List.of(fin("d1", "R-1", inDoubt("basis-not-stated", Samples.dm("WSC", 8.8), "af", "dm")));
    Settled open = settle(reports);
    assertEquals("question", outcome(open, "d1"));
    assertFalse(
        open.find("N2", "")
            .flatMap(InForce::analysis)
            .orElseThrow()
            .analysis()
            .find(AnalyteCode.NSC_WSC)
            .orElseThrow()
            .isBoundedAbove());
    String id = question(open, "basis-not-stated").id();

    Settled asFed = settle(reports, List.of(N2), List.of(answer(id, "af")), List.of());
    assertEquals(11, nsc(asFed, "N2"), 1e-9);
    Settled dry = settle(reports, List.of(N2), List.of(answer(id, "dm")), List.of());
    assertEquals(9.8, nsc(dry, "N2"), 1e-9);
    assertEquals("accepted", outcome(dry, "d1"));
    Reading reading = sample(dry, "d1").sample().readings().get(0);
    assertEquals(
        new Evidence.Answered(id, "ruth", "2026-11-02"), reading.value().orElseThrow().evidence());
  }

  @Test
  void anAnswerThatSettlesNothingLeavesTheQuestionOpen() {
    List<Received> reports =
        List.of(fin("d1", "R-1", inDoubt("basis-not-stated", Samples.dm("WSC", 8.8), "af", "dm")));
    String id = question(settle(reports), "basis-not-stated").id();

    Settled settled = settle(reports, List.of(N2), List.of(answer(id, "perhaps")), List.of());

    assertTrue(
        question(settled, "basis-not-stated")
            .why()
            .endsWith("\"perhaps\" of ruth, 2026-11-02, is not a choice."));
  }

  @Test
  void anAnsweredDefinitionNamesTheNsc() {
    Reading printed = Samples.inDoubt(Samples.dm("NSC", 10.7), "nsc-definition-unknown");
    Doubt doubt =
        new Doubt(
            "nsc-definition-unknown",
            "NSC",
            Optional.empty(),
            "?",
            List.of("NSC_WSC", "NSC_ESC"),
            "",
            "");
    List<Received> reports =
        List.of(
            fin("d1", "R-1", Samples.with(Samples.of("N2", printed), List.of(doubt), List.of())));
    String id = question(settle(reports), "nsc-definition-unknown").id();

    for (String said : List.of("NSC_WSC", "WSC + starch")) {
      Settled settled = settle(reports, List.of(N2), List.of(answer(id, said)), List.of());
      assertEquals(10.7, nsc(settled, "N2"), 1e-12, said);
    }
    Settled esc = settle(reports, List.of(N2), List.of(answer(id, "NSC_ESC")), List.of());
    assertFalse(
        esc.find("N2", "")
            .flatMap(InForce::analysis)
            .orElseThrow()
            .analysis()
            .find(AnalyteCode.NSC_WSC)
            .orElseThrow()
            .isBoundedAbove());
  }

  @Test
  void anAnsweredUnitReadsTheFigureAgain() {
    Reading open =
        new Reading(
            AnalyteCode.WSC,
            "88",
            "",
            "dm",
            Method.UNKNOWN,
            Samples.dm("WSC", 1).place(),
            Optional.empty(),
            "unit-not-stated");
    Doubt doubt =
        new Doubt("unit-not-stated", "WSC", Optional.empty(), "?", List.of("%", "g/kg"), "", "");
    List<Received> reports =
        List.of(
            fin(
                "d1",
                "R-1",
                Samples.with(
                    Samples.of("N2", open, Samples.dm("STARCH", 1)), List.of(doubt), List.of())));
    String id = question(settle(reports), "unit-not-stated").id();

    Settled settled =
        new Settlement(
                new AnalysisMaker(Samples.UNCERTAINTIES),
                java.util.Map.of(
                    AnalyteCode.WSC,
                    new Analyte(
                        AnalyteCode.WSC,
                        "WSC",
                        rickyard.core.quantity.Unit.PERCENT,
                        Basis.DRY_MATTER,
                        1,
                        1)))
            .settle(
                new Unsettled(
                    reports,
                    List.of(N2),
                    List.of(),
                    List.of(answer(id, "g/kg")),
                    List.of(),
                    AS_OF));

    assertEquals(9.8, nsc(settled, "N2"), 1e-9);
  }

  @Test
  void aCautionAboutTheWholeDocumentHoldsIt() {
    Doubt caution =
        new Doubt(
            "hidden-text",
            "report",
            Optional.empty(),
            "Right as printed?",
            List.of("yes", "no"),
            "",
            "");
    List<Received> reports = List.of(Reports.noted(fin("d1", "R-1", sugars("N2", 8, 1)), caution));
    Settled open = settle(reports);
    assertFalse(hasAnalysis(open, "N2"));
    String id = question(open, "hidden-text").id();

    assertTrue(
        hasAnalysis(settle(reports, List.of(N2), List.of(answer(id, "yes")), List.of()), "N2"));
    assertFalse(
        hasAnalysis(settle(reports, List.of(N2), List.of(answer(id, "no")), List.of()), "N2"));
  }

  @Test
  void aCorrectionReplacesAFigure() {
    Decision correction =
        new Decision(
            AS_OF, "N2 WSC", "correction", "11.2", Optional.empty(), "ruth", "rang the lab", 7);

    Settled settled =
        settle(
            List.of(fin("d1", "R-1", sugars("N2", 8, 1))),
            List.of(N2),
            List.of(),
            List.of(correction));

    assertEquals(12.2, nsc(settled, "N2"), 1e-12);
  }

  @Test
  void aLotWithoutReportSaysSo() {
    assertEquals("no report of it was read", settle(List.of()).find("N2", "").orElseThrow().why());
  }

  @Test
  void oneFileForEachSampleOfAReportIsNoRevision() {
    List<Lot> lots = List.of(N2, Reports.lot("K7", Optional.empty()));
    Settled settled =
        settle(
            List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-1", sugars("K7", 12, 1))),
            lots,
            List.of(),
            List.of());

    assertEquals(9, nsc(settled, "N2"), 1e-12);
    assertEquals(13, nsc(settled, "K7"), 1e-12);
  }

  @Test
  void theSameFiguresUnderTwoLotsAreAQuestion() {
    List<Lot> lots = List.of(N2, Reports.lot("K7", Optional.empty()));
    Settled settled =
        settle(
            List.of(fin("d1", "R-1", sugars("N2", 8, 1)), fin("d2", "R-1", sugars("K7", 8, 1))),
            lots,
            List.of(),
            List.of());

    assertFalse(hasAnalysis(settled, "N2"));
    assertFalse(hasAnalysis(settled, "K7"));
    question(settled, "which-revision");
  }
}
