package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.forage.Reports.AS_OF;
import static rickyard.core.forage.Reports.N2;
import static rickyard.core.forage.Reports.fin;
import static rickyard.core.forage.Reports.nsc;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Place;

/** Figures that a person corrects: which one, with what, and how it is said. */
class CorrectionsTest {
  private static final String HASH = "0123456789abcdef";

  private static Decision correction(String about, String value) {
    return correction(AS_OF, about, value, 7);
  }

  private static Decision correction(LocalDate on, String about, String value, int row) {
    return new Decision(on, about, "correction", value, Optional.empty(), "ruth", "rang", row);
  }

  private static Settled settle(Sample sample, Decision... decisions) {
    Received read = fin(HASH, "R-1", sample);
    return Reports.settle(
        List.of(new Received(read.report(), AS_OF, "in/mail.eml!a 1.csv")),
        List.of(N2),
        List.of(),
        List.of(decisions));
  }

  private static Sample sugars() {
    return Reports.sugars("N2", 8, 1);
  }

  private static Reading at(Reading r, int page, int row, String column) {
    return new Reading(
        r.analyte(),
        r.raw(),
        r.rawUnit(),
        r.rawBasis(),
        r.method(),
        new Place(HASH, page, row, column),
        r.value(),
        r.doubt());
  }

  private static Sample placed() {
    return Samples.of(
        "N2", at(Samples.dm("WSC", 8), 1, 4, "dry"), at(Samples.dm("STARCH", 1), 2, 5, "dry"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"N2 WSC", "N2:wsc", " N2  WSC "})
  void aLotAndAnAnalyteNameAFigure(String about) {
    assertEquals(12.2, nsc(settle(sugars(), correction(about, " 11.2 ")), "N2"), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(strings = {"N3 WSC", "N2 ESC", "N2WSC"})
  void anotherNameCorrectsNothing(String about) {
    Settled settled = settle(sugars(), correction(about, "11.2"));

    assertEquals(9, nsc(settled, "N2"), 1e-12);
    assertEquals(List.of(), settled.corrected());
    assertTrue(settled.correctedDocuments().isEmpty());
  }

  @Test
  void anotherKindOfDecisionCorrectsNothing() {
    Decision told = new Decision(AS_OF, "N2 WSC", "told", "11.2", Optional.empty(), "ruth", "", 7);

    assertEquals(9, nsc(settle(sugars(), told), "N2"), 1e-12);
  }

  @Test
  void theLatestCorrectionCountsAndOfOneDayTheLaterRow() {
    Decision early = correction(AS_OF.minusDays(2), "N2 WSC", "20", 9);
    Decision late = correction(AS_OF, "N2 WSC", "11", 3);
    Decision last = correction(AS_OF, "N2 WSC", "12", 4);

    assertEquals(12, nsc(settle(sugars(), late, early), "N2"), 1e-12);
    assertEquals(13, nsc(settle(sugars(), last, late, early), "N2"), 1e-12);
  }

  @Test
  void whatIsNoNumberLeavesTheFigureOut() {
    for (String value : List.of("leave out", "-3", "")) {
      Settled settled = settle(sugars(), correction("N2 WSC", value));

      assertTrue(
          settled
              .find("N2", "")
              .flatMap(InForce::analysis)
              .orElseThrow()
              .analysis()
              .find(AnalyteCode.WSC)
              .isEmpty(),
          value);
    }
  }

  @Test
  void aCorrectedFigureSaysWhoseItIsAndWhatWasRead() {
    Settled settled = settle(sugars(), correction("N2 WSC", "11.2"));

    Corrected corrected = settled.corrected().get(0);
    assertEquals("8.0", corrected.read().raw());
    assertEquals("N2", corrected.subject());
    assertEquals(7, corrected.decision().row());
    assertEquals(new TreeSet<>(List.of(HASH)), settled.correctedDocuments());
    assertEquals(
        new Evidence.Answered("decisions.csv row 7", "ruth", "2026-11-02"),
        settled.samples().get(0).sample().readings().get(0).value().orElseThrow().evidence());
  }

  @Test
  void correctionsAreToldByAnalyteAndRow() {
    Settled settled =
        settle(sugars(), correction("N2 WSC", "11"), correction(AS_OF, "N2 STARCH", "2", 3));

    assertEquals(
        List.of("STARCH", "WSC"),
        settled.corrected().stream().map(c -> c.read().analyte().value()).toList());
  }

  @Test
  void ofTwoFiguresOfAnAnalyteTheDryOneIsCorrectedAndTheOtherLeftOut() {
    Sample both =
        Samples.of(
            "N2",
            Samples.af("WSC", 7),
            Samples.dm("WSC", 8),
            Samples.dm("STARCH", 1),
            Samples.af("DM", 88));

    Settled settled = settle(both, correction("N2 WSC", "11.2"));

    List<Reading> readings = settled.samples().get(0).sample().readings();
    assertEquals("left-out", readings.get(0).doubt());
    assertTrue(readings.get(0).value().isEmpty());
    assertEquals(11.2, readings.get(1).value().orElseThrow().best());
    assertEquals(Basis.DRY_MATTER, readings.get(1).value().orElseThrow().basis());
    assertEquals(2, settled.corrected().size());
  }

  @Test
  void aFigureInDoubtIsCorrectedInItsOwnUnitAndBasis() {
    Reading open = Samples.inDoubt(Samples.dm("WSC", 8), "two-values");

    assertEquals(
        12.2,
        nsc(
            settle(Samples.of("N2", open, Samples.dm("STARCH", 1)), correction("N2 WSC", "11.2")),
            "N2"),
        1e-12);
  }

  @Test
  void aFigureWhosePrintedBasisIsBlankKeepsTheOneThatWasFound() {
    Reading wsc = Samples.dm("WSC", 8);
    Reading blank = wsc.with(wsc.analyte(), "", wsc.value(), "");

    assertEquals(
        12.2,
        nsc(
            settle(Samples.of("N2", blank, Samples.dm("STARCH", 1)), correction("N2 WSC", "11.2")),
            "N2"),
        1e-12);
  }

  @Test
  void aFigureThatLacksOnlyItsValueIsCorrectedInTheUnitThatWasDecided() {
    Reading open =
        new Reading(
            AnalyteCode.WSC,
            "8?",
            "%",
            "dm",
            Method.UNKNOWN,
            new Place(HASH, 1, 1, "x"),
            Optional.empty(),
            "not-a-number",
            Optional.of(rickyard.core.quantity.Unit.PERCENT),
            Optional.empty());

    Settled settled =
        settle(Samples.of("N2", open, Samples.dm("STARCH", 1)), correction("N2 WSC", "11.2"));

    assertEquals(12.2, nsc(settled, "N2"), 1e-12);
  }

  @Test
  void twoCorrectionsOfOneAnalyteAreToldByRow() {
    Sample both =
        Samples.of(
            "N2",
            at(Samples.dm("WSC", 8), 1, 4, "dry"),
            at(Samples.af("WSC", 7), 1, 5, "fed"),
            at(Samples.af("DM", 88), 1, 6, "fed"));

    Settled settled =
        settle(
            both,
            correction(AS_OF, "a 1.csv page 1 row 4 column dry", "11", 9),
            correction(AS_OF, "a 1.csv page 1 row 5 column fed", "10", 2));

    assertEquals(List.of(2, 9), settled.corrected().stream().map(c -> c.decision().row()).toList());
  }

  @Test
  void aFigureWhoseUnitNobodyKnowsCannotBeCorrected() {
    Reading open =
        new Reading(
            AnalyteCode.WSC,
            "88",
            "",
            "dm",
            Method.UNKNOWN,
            new Place(HASH, 1, 1, "x"),
            Optional.empty(),
            "unit-not-stated");

    Settled settled =
        settle(Samples.of("N2", open, Samples.dm("STARCH", 1)), correction("N2 WSC", "11.2"));

    assertEquals("left-out", settled.samples().get(0).sample().readings().get(0).doubt());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "in/mail.eml!a 1.csv page 1 row 4 column dry",
        "mail.eml!a 1.csv, page 1, row 4, column dry",
        "a 1.csv page 1 row 4 column \"dry\"",
        "01234567 Page 1 Row 4 Column dry"
      })
  void aPlaceNamesOneFigure(String about) {
    assertEquals(12.2, nsc(settle(placed(), correction(about, "11.2")), "N2"), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "b.csv page 1 row 4 column dry",
        "1.csv page 1 row 4 column dry",
        "0123456 page 1 row 4 column dry",
        "12345678 page 1 row 4 column dry",
        "a 1.csv page 2 row 4 column dry",
        "a 1.csv page 1 row 5 column dry",
        "a 1.csv page 1 row 4 column wet"
      })
  void anotherPlaceIsAnotherFigure(String about) {
    assertEquals(9, nsc(settle(placed(), correction(about, "11.2")), "N2"), 1e-12);
  }

  @Test
  void aPlaceIsNearerThanALotWhateverCameLater() {
    Decision at = correction(AS_OF.minusDays(4), "a 1.csv page 1 row 4 column dry", "11", 3);
    Decision lot = correction(AS_OF, "N2 WSC", "20", 4);

    assertEquals(12, nsc(settle(placed(), at, lot), "N2"), 1e-12);
  }

  @Test
  void ofTwoCorrectionsOfOnePlaceTheLaterCounts() {
    Decision first = correction(AS_OF.minusDays(4), "a 1.csv page 1 row 4 column dry", "11", 3);
    Decision later = correction(AS_OF, "01234567 page 1 row 4 column dry", "12", 2);

    assertEquals(13, nsc(settle(placed(), later, first), "N2"), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"WSC,true", "'WSC,STARCH',false"})
  void aQuestionAboutOneFigureNamesIt(String about, boolean corrects) {
    Reading wsc = at(Samples.inDoubt(Samples.dm("WSC", 8), "decimal"), 1, 4, "dry");
    Doubt doubt =
        new Doubt("decimal", about, Optional.of(wsc.place()), "?", List.of("as printed"), "", "");
    Sample sample =
        Samples.with(
            Samples.of("N2", wsc, at(Samples.dm("STARCH", 1), 2, 5, "dry")),
            List.of(doubt),
            List.of());
    String id = Reports.question(settle(sample), "decimal").id();

    Settled settled = settle(sample, correction(id, "11.2"));

    assertEquals(corrects ? 1 : 0, settled.corrected().size());
    if (corrects) {
      assertEquals("8.0", settled.corrected().get(0).read().raw());
    }
  }
}
