package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.forage.Reports.AS_OF;
import static rickyard.core.forage.Reports.answer;
import static rickyard.core.forage.Reports.fin;
import static rickyard.core.forage.Reports.hasAnalysis;
import static rickyard.core.forage.Reports.nsc;
import static rickyard.core.forage.Reports.question;
import static rickyard.core.forage.Reports.sample;
import static rickyard.core.forage.Reports.sugars;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Labels, batches and answers that tell what a sample belongs to, and the words of the question.
 */
class BelongingLabelsTest {
  private static final Lot C25 = Reports.lot("C25-103", Optional.empty());
  private static final Lot TAR = Reports.lot("TAR-2", Optional.empty());
  private static final List<BagBatch> BAGS =
      List.of(
          new BagBatch("CHOP", "B71", "Fell Chop"), new BagBatch("BALANCER", "", "Fell Balancer"));

  private static Settled settle(List<Received> reports, Answer... answers) {
    return settle(List.of(C25, TAR), reports, answers);
  }

  private static Settled settle(List<Lot> lots, List<Received> reports, Answer... answers) {
    return new Settlement(
            new AnalysisMaker(Samples.UNCERTAINTIES),
            Map.of(),
            SampleKinds.of(Map.of("hay", "hay", "water", "water")))
        .settle(new Unsettled(reports, lots, BAGS, List.of(answers), List.of(), AS_OF));
  }

  private static Sample sample(String label, String batch, String labNo, String material) {
    Sample s = sugars(label, 8, 1);
    return new Sample(
        label,
        batch,
        labNo,
        material,
        s.sampledOn(),
        s.cores(),
        s.readings(),
        List.of(),
        List.of());
  }

  private static String belongs(String document, int index) {
    return QuestionId.of("belongs", document, Integer.toString(index));
  }

  private static String asked(Received report) {
    List<Question> asked = settle(List.of(report)).questions();
    assertEquals(1, asked.size(), asked::toString);
    return asked.get(0).question();
  }

  private static Received unsigned(String lab, String number, Sample... samples) {
    Report report =
        new Report(
            "d1",
            lab,
            number,
            0,
            "",
            ReportStatus.FINAL,
            Optional.empty(),
            List.of(samples),
            List.of());
    return new Received(report, AS_OF, "d1.csv");
  }

  @Test
  void anAnswerOutweighsALabel() {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("C25-103", 8, 1)));

    Settled settled = settle(reports, answer(belongs("d1", 0), "TAR-2"));

    assertEquals(9, nsc(settled, "TAR-2"), 1e-12);
    assertFalse(hasAnalysis(settled, "C25-103"));
    assertEquals(
        "report R-1; belongs to it by answer \"TAR-2\" (ruth, 2026-11-02)",
        settled.find("TAR-2", "").orElseThrow().why());
  }

  @Test
  void aReplacedSampleBelongsWhereTheAnswerPutIt() {
    List<Received> reports =
        List.of(
            fin("d1", "R-1", sugars("Long field", 8, 1)),
            Reports.received(
                "d2", "R-1", 1, ReportStatus.AMENDED, Optional.empty(), sugars("TAR-2", 12, 1)));

    Settled answered = settle(reports, answer(belongs("d1", 0), "C25-103"));
    assertEquals("C25-103", sample(answered, "d1").subject());
    assertEquals("C25-103", answered.reopened().get(0).subject());

    assertEquals("", sample(settle(reports), "d1").subject());
    assertEquals("Long field", settle(reports).reopened().get(0).subject());
    Settled noLot = settle(reports, answer(belongs("d1", 0), "leave out"));
    assertEquals("", sample(noLot, "d1").subject());
  }

  private static SettledSample sample(Settled settled, String document) {
    return Reports.sample(settled, document);
  }

  @Test
  void aReplacedSampleWithAKnownLabelBelongsToIt() {
    Settled settled =
        settle(
            List.of(
                fin("d1", "R-1", sugars("TAR-2", 8, 1)),
                Reports.received(
                    "d2",
                    "R-1",
                    1,
                    ReportStatus.AMENDED,
                    Optional.empty(),
                    sugars("TAR-2", 12, 1))));

    assertEquals("TAR-2", sample(settled, "d1").subject());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Beck meadow", "TAR 2"})
  void aSampleThatNobodyKnowsMayBeLeftOut(String label) {
    List<Received> reports = List.of(fin("d1", "R-1", sugars(label, 8, 1)));

    Settled settled = settle(reports, answer(belongs("d1", 0), "leave out"));

    assertEquals("left-out", sample(settled, "d1").reasonCode());
    assertEquals("", sample(settled, "d1").subject());
    assertEquals(List.of(), settled.questions());
    assertTrue(settled.find(label, "").isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"CHOP / B71,CHOP,B71", "BALANCER,BALANCER,''"})
  void anAnswerMayNameAFeedAndItsBatch(String said, String feed, String batch) {
    String label = said.equals("BALANCER") ? "BALANCR" : "CHOP B7I";
    List<Received> reports = List.of(fin("d1", "R-1", sugars(label, 8, 1)));
    Question asked = question(settle(reports), "lot-near");
    assertTrue(asked.choices().contains(said), asked.choices()::toString);

    Settled settled = settle(reports, answer(asked.id(), said));

    InForce entry = settled.find(feed, batch).orElseThrow();
    assertTrue(entry.analysis().isPresent());
    assertFalse(entry.provisional());
    assertEquals(
        "report R-1; belongs to it by answer \"" + said + "\" (ruth, 2026-11-02)", entry.why());
  }

  @Test
  void aBatchThatNoFeedHasSettlesNothing() {
    List<Received> reports = List.of(fin("d1", "R-1", sugars("CHOP B7I", 8, 1)));
    String id = question(settle(reports), "lot-near").id();

    Settled settled = settle(reports, answer(id, "CHOP / B72"));

    assertEquals(AnswerUse.NO_EFFECT, settled.answers().get(0).effect());
    assertEquals("question", Reports.outcome(settled, "d1"));
  }

  @ParameterizedTest
  @CsvSource({
    "CHOP,B71,true",
    "Fell Chop,B71,true",
    "CHOP,B72,false",
    "Other,B71,false",
    "'',CHOP B71,true",
    "'',Fell Chop/B71,true",
    "'',CHOPB71,false",
    "'',B71,false"
  })
  void aCertificateBelongsToAFeedByItsNameAndBatch(String label, String batch, boolean belongs) {
    Settled settled = settle(List.of(fin("d1", "R-1", sample(label, batch, "", ""))));

    assertEquals(belongs, settled.find("CHOP", "B71").flatMap(InForce::analysis).isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "CHOP B71,true",
    "Fell Chop B71,true",
    "'CHOP, batch: B71',true",
    "CHOPB71,false",
    "Other B71,false",
    "CHOP,false"
  })
  void oneFieldMayHoldFeedAndBatchWithASignBetween(String label, boolean belongs) {
    Settled settled = settle(List.of(fin("d1", "R-1", sugars(label, 8, 1))));

    assertEquals(belongs, settled.find("CHOP", "B71").flatMap(InForce::analysis).isPresent());
  }

  @ParameterizedTest
  @ValueSource(strings = {"BALANCER", "Fell Balancer"})
  void aFeedWithoutBatchIsKnownByItsNameAlone(String label) {
    Settled settled = settle(List.of(fin("d1", "R-1", sugars(label, 8, 1))));

    assertTrue(settled.find("BALANCER", "").flatMap(InForce::analysis).isPresent());
  }

  @Test
  void theQuestionNamesTheSampleAsThePagePrintsIt() {
    assertEquals(
        "To which lot does sample \"Beck meadow\" belong?",
        asked(fin("d1", "R-1", sugars("Beck meadow", 8, 1))));
    assertEquals(
        "To which feed and batch does sample \"Rowan mash / Z9\" belong?",
        asked(fin("d1", "R-1", sample("Rowan mash", "Z9", "", ""))));
    assertEquals(
        "To which lot does the laboratory's sample \"L-7\" belong?",
        asked(fin("d1", "R-1", sample("", "", "L-7", ""))));
    assertEquals(
        "To which lot does report \"R-1\" of Fellside belong?",
        asked(fin("d1", "R-1", sugars("", 8, 1))));
    assertEquals(
        "To which lot does sample 2 of report \"R-1\" of Fellside belong?",
        asked(fin("d1", "R-1", sugars("TAR-2", 8, 1), sugars("", 5, 1))));
    assertEquals("To which lot does the report belong?", asked(unsigned("", "", sugars("", 8, 1))));
  }

  @ParameterizedTest
  @CsvSource({
    "'','',lot-missing,The report names no lot.,<lot>;leave out",
    "C25 103,'',lot-near,'The label is close to a known one, but not the same.',"
        + "C25-103;new lot;<lot>;leave out",
    "Rowan mash,Z9,batch-unknown,No feed of the register has this batch.,<lot>;leave out",
    "Beck,'',lot-unknown,No register knows it; it is kept as a lot of its own until then.,"
        + "new lot;<lot>;leave out"
  })
  void eachKindOfQuestionSaysWhyAndOffersWhatFits(
      String label, String batch, String kind, String why, String choices) {
    Settled settled = settle(List.of(fin("d1", "R-1", sample(label, batch, "", ""))));
    Question asked = question(settled, kind);

    assertEquals(why, asked.why());
    assertEquals(List.of(choices.split(";", -1)), asked.choices());
    assertEquals(label.isEmpty() ? "lot" : label, asked.about());
    assertEquals(belongs("d1", 0), asked.id());
  }

  @Test
  void onlyTheNearestOfSeveralIsProposed() {
    List<Lot> lots =
        List.of(
            Reports.lot("N20", Optional.empty()),
            Reports.lot("N2-0A", Optional.empty()),
            Reports.lot("N20B", Optional.empty()));

    Question nearer =
        question(settle(lots, List.of(fin("d1", "R-1", sugars("N-20", 8, 1)))), "lot-near");
    assertEquals("N20", nearer.proposed());
    Question alike =
        question(
            settle(lots.subList(1, 3), List.of(fin("d1", "R-1", sugars("N20", 8, 1)))), "lot-near");
    assertEquals(List.of("N2-0A", "N20B", "new lot", "<lot>", "leave out"), alike.choices());
    assertEquals("", alike.proposed());
  }

  @ParameterizedTest
  @CsvSource({
    "CHOP,B7I,CHOP / B71",
    "Fell Chops,B71,CHOP / B71",
    "CHOPS,'',CHOP / B71",
    "CHOP,Z99,''",
    "Rowan,B71,''"
  })
  void aFeedIsProposedWhereItsNameIsNearAndItsBatchNoOther(
      String label, String batch, String proposed) {
    Settled settled = settle(List.of(fin("d1", "R-1", sample(label, batch, "", ""))));

    assertEquals(proposed, settled.questions().get(0).proposed());
  }

  @Test
  void aSampleOfHayIsNeverSetApartForAnUnknownName() {
    Settled hay = settle(List.of(fin("d1", "R-1", sample("Beck", "", "", "meadow hay"))));
    assertTrue(hay.find("Beck", "").orElseThrow().provisional());

    Settled water = settle(List.of(fin("d1", "R-1", sample("Beck", "", "", "water"))));
    assertEquals("set-apart", sample(water, "d1").reasonCode());
    Settled byLabel = settle(List.of(fin("d1", "R-1", sample("water", "", "", ""))));
    assertEquals("set-apart", sample(byLabel, "d1").reasonCode());
  }

  @ParameterizedTest
  @CsvSource({
    "C25-103,TAR-2,true",
    "TAR-2,C25-103,true",
    "TAR-2,xC25-103,false",
    "TAR-2,C25-1039,false",
    "TAR-2,12,false"
  })
  void aFileNameIsBelievedWhereALotStandsAloneInIt(String label, String file, boolean asked) {
    Received r = fin("d1", "R-1", sugars(label, 8, 1));
    Settled settled = settle(List.of(new Received(r.report(), AS_OF, "in/" + file)));

    assertEquals(asked, !settled.questions().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"20", "2026", "A1", "Meadow"})
  void aNameThatMayBeADateOrAWordTellsNothingInAFileName(String id) {
    List<Lot> lots = List.of(TAR, Reports.lot(id, Optional.empty()));
    Received r = fin("d1", "R-1", sugars("TAR-2", 8, 1));
    Settled settled =
        settle(lots, List.of(new Received(r.report(), AS_OF, "hay " + id + " final.pdf")));

    assertEquals(List.of(), settled.questions());
  }

  @ParameterizedTest
  @ValueSource(strings = {"A10", "9A9", "B-0"})
  void aNameWithALetterAndADigitTellsItsLotInAFileName(String id) {
    List<Lot> lots = List.of(TAR, Reports.lot(id, Optional.empty()));
    Received r = fin("d1", "R-1", sugars("TAR-2", 8, 1));
    Settled settled = settle(lots, List.of(new Received(r.report(), AS_OF, id)));

    assertEquals("lot-in-file-name", settled.questions().get(0).kind());
  }
}
