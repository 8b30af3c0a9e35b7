package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.forage.Reports.AS_OF;
import static rickyard.core.forage.Reports.answer;
import static rickyard.core.forage.Reports.fin;
import static rickyard.core.forage.Reports.hasAnalysis;
import static rickyard.core.forage.Reports.nsc;
import static rickyard.core.forage.Reports.outcome;
import static rickyard.core.forage.Reports.question;
import static rickyard.core.forage.Reports.sample;
import static rickyard.core.forage.Reports.sugars;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sample belongs to, and what speaks against it. */
class BelongingTest {
  private static final SampleKinds KINDS =
      SampleKinds.of(
          Map.of(
              "hay", "hay",
              "Heu", "hay",
              "haylage", "haylage",
              "straw", "straw",
              "water", "water",
              "soil", "soil",
              "grain", "grain",
              "pâturage", "pasture",
              "feed", "feed"));
  private static final Lot C25 = Reports.lot("C25-103", Optional.of(LocalDate.of(2026, 7, 1)));
  private static final Lot OTHER = Reports.lot("TAR-2", Optional.empty());

  private static Settled settle(List<Received> reports, Answer... answers) {
    return settleWith(reports, List.of(), answers);
  }

  private static Settled settleWith(
      List<Received> reports, List<BagBatch> batches, Answer... answers) {
    return new Settlement(new AnalysisMaker(Samples.UNCERTAINTIES), Map.of(), KINDS)
        .settle(
            new Unsettled(
                reports, List.of(C25, OTHER), batches, List.of(answers), List.of(), AS_OF));
  }

  private static Sample of(String label, String material, double wsc) {
    Sample s = sugars(label, wsc, 1);
    return new Sample(
        s.label(),
        s.batch(),
        s.labNo(),
        material,
        s.sampledOn(),
        s.cores(),
        s.readings(),
        s.doubts(),
        s.checks());
  }

  private static Received named(String file, Sample... samples) {
    Received r = fin("d1", "R-1", samples);
    return new Received(r.report(), AS_OF, file);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "C25-1O3",
        "C25-l03",
        "C25-I03",
        "c25-103",
        "C25 103",
        "C25103",
        "C25-103a",
        "C25-103 second cut",
        "C25-130",
        "C25/103",
        "C2S-103"
      })
  void aNearMissIsProposedAndNeverTaken(String label) {
    Settled settled = settle(List.of(fin("d1", "R-1", sugars(label, 8, 1))));

    assertFalse(hasAnalysis(settled, "C25-103"));
    assertEquals("C25-103", question(settled, "lot-near").proposed());
    assertEquals("question", outcome(settled, "d1"));

    Settled taken =
        settle(
            List.of(fin("d1", "R-1", sugars(label, 8, 1))),
            answer(question(settled, "lot-near").id(), "yes"));
    assertEquals(9, nsc(taken, "C25-103"), 1e-12);
    assertTrue(
        taken.find("C25-103", "").orElseThrow().why().contains("\"C25-103\" (ruth, 2026-11-02)"));
  }

  @Test
  void anAnswerMayNameAnyLotOfTheRegisterAndNoOther() {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("FOSS-9", 8, 1)));
    String id = question(settle(reports), "lot-unknown").id();

    assertEquals(9, nsc(settle(reports, answer(id, "TAR-2")), "TAR-2"), 1e-12);
    Settled wrong = settle(reports, answer(id, "TAR-3"));
    assertEquals(AnswerUse.NO_EFFECT, wrong.answers().get(0).effect());
    assertTrue(question(wrong, "lot-unknown").why().endsWith("does not settle it."));
  }

  @Test
  void anUnknownLotIsProvisionalUntilARegisterHasIt() {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("TAR-20", 8, 1)));
    String id = question(settle(reports), "lot-near").id();

    Settled own = settle(reports, answer(id, "new lot"));
    assertTrue(own.find("TAR-20", "").orElseThrow().provisional());

    Settled pasted =
        new Settlement(new AnalysisMaker(Samples.UNCERTAINTIES), Map.of())
            .settle(
                new Unsettled(
                    reports,
                    List.of(OTHER, Reports.lot("TAR-20", Optional.empty())),
                    List.of(),
                    List.of(answer(id, "new lot")),
                    List.of(),
                    AS_OF));
    assertFalse(pasted.find("TAR-20", "").orElseThrow().provisional());
    assertEquals(List.of(), pasted.questions());
  }

  @Test
  void aFileCalledAfterAnotherLotIsAQuestion() {
    List<Received> reports = List.of(named("mail.eml!hay TAR-2.pdf", sugars("C25-103", 8, 1)));

    Settled settled = settle(reports);
    Question asked = question(settled, "lot-in-file-name");
    assertFalse(hasAnalysis(settled, "C25-103"));
    assertEquals(List.of("C25-103", "TAR-2", "leave out"), asked.choices());

    assertEquals(9, nsc(settle(reports, answer(asked.id(), "TAR-2")), "TAR-2"), 1e-12);
    assertEquals(9, nsc(settle(reports, answer(asked.id(), "C25-103")), "C25-103"), 1e-12);
    Settled out = settle(reports, answer(asked.id(), "leave out"));
    assertEquals("left-out", sample(out, "d1").reasonCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"C25-103.pdf", "report 4471.pdf", "TAR-21.pdf", "TAR-2 and C25-103.pdf"})
  void aFileNameThatNamesNoOtherLotAsksNothing(String file) {
    Settled settled = settle(List.of(named(file, sugars("C25-103", 8, 1))));

    assertEquals(List.of(), settled.questions());
    assertTrue(hasAnalysis(settled, "C25-103"));
  }

  @Test
  void oneLotTwiceInOneReportWithOtherFiguresIsAQuestion() {
    List<Received> reports =
        List.of(fin("d1", "R-1", sugars("C25-103", 8, 1), sugars("C25-103", 18, 1)));

    Settled settled = settle(reports);
    Question asked = question(settled, "lot-twice");
    assertFalse(hasAnalysis(settled, "C25-103"));
    assertEquals("question", outcome(settled, "d1"));
    assertEquals(4, asked.choices().size());

    Settled second = settle(reports, answer(asked.id(), asked.choices().get(1)));
    assertEquals(19, nsc(second, "C25-103"), 1e-12);
    assertEquals(List.of(), second.questions());
    Settled both = settle(reports, answer(asked.id(), "two samples of it"));
    assertEquals("tests-disagree", both.questions().get(0).kind());
  }

  @Test
  void oneLotTwiceWithTheSameFiguresIsOneTest() {
    Settled settled =
        settle(List.of(fin("d1", "R-1", sugars("C25-103", 8, 1), sugars("C25-103", 8, 1))));

    assertEquals(List.of(), settled.questions());
    assertFalse(settled.find("C25-103", "").orElseThrow().isCombined());
    assertEquals("accepted", outcome(settled, "d1"));
  }

  @ParameterizedTest
  @CsvSource({"Water,water", "Soil (0-10 cm),soil", "Oat grain,grain", "Paturage,pasture"})
  void whatIsNoHayIsSetApartWithAReason(String material, String kind) {
    Settled settled = settle(List.of(fin("d1", "R-1", of("Top field", material, 8))));

    assertEquals("accepted", outcome(settled, "d1"));
    assertEquals("set-apart", sample(settled, "d1").reasonCode());
    assertEquals(
        "a sample of " + kind + ": kept, never judged as hay", sample(settled, "d1").reason());
    assertEquals(List.of(), settled.questions());
    assertTrue(settled.find("Top field", "").isEmpty());
  }

  @Test
  void aLotsNameOnASampleOfSoilIsAQuestion() {
    List<Received> reports = List.of(fin("d1", "R-1", of("C25-103", "Soil", 8)));

    Settled settled = settle(reports);
    Question asked = question(settled, "sample-kind");
    assertFalse(hasAnalysis(settled, "C25-103"));
    assertEquals("leave out", asked.proposed());
    assertTrue(hasAnalysis(settle(reports, answer(asked.id(), "take it")), "C25-103"));
    assertFalse(hasAnalysis(settle(reports, answer(asked.id(), "leave out")), "C25-103"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Grass hay", "grain hay", "Heu, Weide", "Mischung", ""})
  void hayIsHayWhateverElseItsWordsSay(String material) {
    Settled settled = settle(List.of(fin("d1", "R-1", of("C25-103", material, 8))));

    assertEquals(List.of(), settled.questions());
    assertTrue(hasAnalysis(settled, "C25-103"));
  }

  @Test
  void anotherMaterialThanTheRegistersIsAQuestion() {
    List<Received> reports = List.of(fin("d1", "R-1", of("C25-103", "Haylage", 8)));

    Question asked = question(settle(reports), "material-differs");
    assertTrue(hasAnalysis(settle(reports, answer(asked.id(), "take it")), "C25-103"));
    assertFalse(hasAnalysis(settle(reports, answer(asked.id(), "no")), "C25-103"));
  }

  @Test
  void aCertificateOfABagIsNoStrangeSample() {
    BagBatch bag = new BagBatch("MEDDLOW", "M2511", "Meddow Low");
    Settled settled =
        settleWith(
            List.of(fin("d1", "R-1", of("MEDDLOW M2511", "Complete feed", 8))), List.of(bag));

    assertEquals(List.of(), settled.questions());
    assertTrue(settled.find("MEDDLOW", "M2511").flatMap(InForce::analysis).isPresent());
  }

  /** The certificate says the product and the batch, and no sample of its own. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Meddow Low, 20 kg bag | M2511 | true",
        "Meddow Low | M2511 | true",
        "Meddow Lower | M2511 | false",
        "Meddow Low, 20 kg bag | M2512 | false"
      })
  void aCertificateThatNamesProductAndBatchBelongsToThem(
      String product, String number, boolean belongs) {
    BagBatch bag = new BagBatch("MEDDLOW", "M2511", "Meddow Low");
    Sample s = of("", product, 8);
    Sample certificate =
        new Sample(
            "",
            number,
            s.labNo(),
            product,
            s.sampledOn(),
            s.cores(),
            s.readings(),
            s.doubts(),
            s.checks());
    Settled settled = settleWith(List.of(fin("d1", "R-1", certificate)), List.of(bag));

    assertEquals(belongs, settled.find("MEDDLOW", "M2511").flatMap(InForce::analysis).isPresent());
    assertEquals(belongs, settled.questions().isEmpty());
  }

  @Test
  void aPreliminaryReportIsAskedForUntilTheDayItWasPromisedFor() {
    List<Received> reports =
        List.of(
            Reports.received(
                "d1", "R-1", 0, ReportStatus.PRELIMINARY, Optional.empty(), sugars("TAR-2", 8, 1)));
    String id = question(settle(reports), "preliminary").id();

    Settled promised = settle(reports, answer(id, "2026-11-05"));
    assertEquals(List.of(), promised.questions());
    assertFalse(hasAnalysis(promised, "TAR-2"));
    assertTrue(sample(promised, "d1").reason().contains("\"2026-11-05\" (ruth, 2026-11-02)"));
    Settled late = settle(reports, answer(id, "2026-11-01"));
    assertTrue(question(late, "preliminary").why().contains("expected on 2026-11-01"));
    assertEquals("left-out", sample(settle(reports, answer(id, "leave out")), "d1").reasonCode());
  }

  @Test
  void theOfficesChoiceBetweenTwoTestsIsSaid() {
    List<Received> reports =
        List.of(fin("d1", "R-1", sugars("TAR-2", 6, 1)), fin("d2", "R-2", sugars("TAR-2", 14, 1)));
    Question asked = question(settle(reports), "tests-disagree");

    Settled chosen = settle(reports, answer(asked.id(), asked.choices().get(1)));
    assertEquals(15, nsc(chosen, "TAR-2"), 1e-12);
    assertTrue(chosen.find("TAR-2", "").orElseThrow().why().contains("(ruth, 2026-11-02)"));
    Settled both = settle(reports, answer(asked.id(), "combine"));
    assertTrue(both.find("TAR-2", "").orElseThrow().isCombined());
    Settled retest = settle(reports, answer(asked.id(), "retest"));
    assertFalse(hasAnalysis(retest, "TAR-2"));
    assertEquals(List.of(), retest.questions());
  }

  @Test
  void oneAnswerConfirmsOrTakesOutAllFiguresReadFromAPicture() {
    Sample read =
        Samples.of(
            "TAR-2",
            Samples.inDoubt(Samples.dm("WSC", 8), "from-picture"),
            Samples.inDoubt(Samples.dm("STARCH", 1), "from-picture"));
    Doubt doubt =
        new Doubt(
            "from-picture",
            "report",
            Optional.empty(),
            "Right as read?",
            List.of("as read", "leave out STARCH", "leave out"),
            "",
            "");
    List<Received> reports =
        List.of(fin("d1", "R-1", Samples.with(read, List.of(doubt), List.of())));
    Settled open = settle(reports);
    String id = question(open, "from-picture").id();

    assertFalse(
        open.find("TAR-2", "")
            .orElseThrow()
            .analysis()
            .orElseThrow()
            .analysis()
            .find(AnalyteCode.WSC)
            .isPresent());
    assertEquals(9, nsc(settle(reports, answer(id, "yes")), "TAR-2"), 1e-12);
    Settled one = settle(reports, answer(id, "leave out STARCH"));
    assertEquals(
        8,
        one.find("TAR-2", "")
            .orElseThrow()
            .analysis()
            .orElseThrow()
            .analysis()
            .find(AnalyteCode.WSC)
            .orElseThrow()
            .best(),
        1e-12);
  }

  @Test
  void aDryMatterThatNoFeedHasIsNotTakenWhoeverConfirmedIt() {
    Sample dry =
        Samples.of(
            "TAR-2",
            Samples.af("WSC", 8),
            Samples.af("STARCH", 1),
            Samples.inDoubt(Samples.af("DM", 100), "identity-broken"));
    Doubt doubt =
        new Doubt("identity-broken", "DM", Optional.empty(), "?", List.of("as printed"), "", "");
    List<Received> reports =
        List.of(fin("d1", "R-1", Samples.with(dry, List.of(doubt), List.of())));
    String id = question(settle(reports), "identity-broken").id();

    assertTrue(
        settle(reports, answer(id, "as printed"))
            .find("TAR-2", "")
            .flatMap(InForce::analysis)
            .flatMap(a -> a.analysis().dryMatter())
            .isEmpty());
  }
}
