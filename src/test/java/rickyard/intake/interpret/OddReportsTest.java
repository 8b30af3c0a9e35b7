package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Report;
import rickyard.intake.grid.Grid;

/** What is asked of a report that is odd but breaks no exact relation of its own. */
class OddReportsTest {
  private static final String GOOD =
      """
      Lot|QV-1
      Material|grass hay
      Analysis|Unit|Dry matter
      Dry matter (as fed)|%|88.4
      Crude protein|%|9.8
      ADF|%|36.1
      NDF|%|60.2
      Crude fat|%|2.3
      Ash|%|7.1
      WSC|%|10.4
      Starch|%|1.2
      """;

  private static List<Doubt> doubts(String table) {
    Report report = report(table);
    return report.samples().stream().flatMap(s -> s.doubts().stream()).toList();
  }

  private static Report report(String table) {
    Grid grid = Grids.table(table);
    return Readings.report(grid);
  }

  private static SortedSet<String> held(String table, String code) {
    return report(table).samples().stream()
        .flatMap(s -> s.readings().stream())
        .filter(r -> r.doubt().equals(code))
        .map(r -> r.analyte().value())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void anOrdinaryReportAsksNothing() {
    assertEquals(List.of(), doubts(GOOD));
  }

  @Test
  void starchInAnotherUnitThanProteinAndFibreIsAsked() {
    Doubt doubt = doubts(GOOD.replace("Starch|%|1.2", "Starch|g/kg|1.2")).get(0);

    assertEquals("unit-unlike-others", doubt.code());
    assertEquals(
        "Protein and fibre are printed in another unit than STARCH: is its unit right?"
            + " (STARCH \"1.2\")",
        doubt.question());
    assertEquals(List.of("%", "g/kg", "g/lb", "leave out"), doubt.choices());
  }

  @Test
  void aSlippedDecimalMarkShowsByTheNumberOfDecimals() {
    Doubt doubt = doubts(GOOD.replace("Starch|%|1.2", "Starch|%|0.12")).get(0);

    assertEquals("digits-unlike-others", doubt.code());
    assertEquals(
        "The other lines are printed with fewer decimals than STARCH: does the decimal mark stand"
            + " where it should? (STARCH \"0.12\")",
        doubt.question());
    assertEquals(List.of("as printed", "<number>", "leave out"), doubt.choices());
  }

  @Test
  void twoDecimalsInEveryCarbohydrateAreALaboratorysHabit() {
    String habit =
        GOOD.replace("Starch|%|1.2", "Starch|%|1.24").replace("WSC|%|10.4", "WSC|%|10.38");

    assertEquals(List.of(), doubts(habit));
  }

  @Test
  void fewerDecimalsAreNoFault() {
    assertEquals(List.of(), doubts(GOOD.replace("WSC|%|10.4", "WSC|%|10")));
  }

  @Test
  void nfcTellsThatTheColumnStandsOnTheOtherBasis() {
    String asFed =
        """
        Lot|QV-1
        Material|grass hay
        Analysis|Unit|Dry matter
        Dry matter (as fed)|%|88.0
        Crude protein|%|8.6
        ADF|%|31.8
        NDF|%|53.0
        Crude fat|%|2.0
        Ash|%|6.2
        NFC|%|18.2
        WSC|%|9.2
        Starch|%|1.1
        """;

    assertTrue(held(asFed, "basis-unlike-figures").containsAll(List.of("WSC", "STARCH", "ADF")));
    Doubt doubt =
        doubts(asFed).stream()
            .filter(d -> d.code().equals("basis-unlike-figures"))
            .findFirst()
            .orElseThrow();
    assertEquals(List.of("as fed", "dry matter", "leave out"), doubt.choices());
    String dry = asFed.replace("NFC|%|18.2", "NFC|%|30.2");
    assertEquals(new TreeSet<>(), held(dry, "basis-unlike-figures"));
  }

  @Test
  void grassThatLooksLikeLegumeHoldsTheCarbohydrates() {
    String legume = GOOD + "Calcium|%|1.52\n";

    assertEquals(new TreeSet<>(List.of("CA", "STARCH", "WSC")), held(legume, "unlike-material"));
    assertEquals(List.of(), doubts(legume.replace("grass hay", "mixed hay")));
    assertEquals(List.of(), doubts(legume.replace("Material|grass hay\n", "")));
  }

  @Test
  void aMaterialNamedByWordsOfTwoIsNotTried() {
    assertEquals(
        List.of(), doubts(GOOD.replace("grass hay", "grass and clover") + "Calcium|%|1.52\n"));
  }

  @Test
  void oneOfSeveralSamplesUnlikeItsMaterialPutsAllInDoubt() {
    String two =
        """
        All results on dry matter unless stated otherwise
        Lot|QV-1|QV-2
        Material|legume hay|grass hay
        Dry matter (as fed), %|88.4|89.0
        Crude protein, %|9.8|19.6
        NDF, %|60.2|40.1
        WSC, %|10.4|7.0
        Starch, %|1.2|1.6
        """;

    Optional<Doubt> doubt =
        report(two).notes().stream().filter(d -> d.code().equals("samples-exchanged")).findFirst();

    assertEquals(
        "The figures of sample \"QV-1\" do not look like legume hay: do all figures of the report"
            + " stand under the right samples?",
        doubt.orElseThrow().question());
    String right = two.replace("legume hay|grass hay", "grass hay|legume hay");
    assertEquals(List.of(), report(right).notes());
  }

  @Test
  void twoFaultsElsewhereHoldWhatDecides() {
    String one = GOOD.replace("Crude fat|%|2.3", "Crude fat|%|0.2");
    String two = one.replace("Ash|%|7.1", "Ash|%|0.7");

    assertEquals(new TreeSet<>(), held(one, "page-in-doubt"));
    assertEquals(new TreeSet<>(List.of("STARCH", "WSC")), held(two, "page-in-doubt"));
  }

  @Test
  void dryMatterOfGroundSampleIsAsked() {
    assertFalse(held(GOOD.replace("88.4", "96.4"), "unlike-material").isEmpty());
    String nameless = GOOD.replace("88.4", "96.4").replace("Material|grass hay\n", "");
    assertEquals(new TreeSet<>(List.of("DM")), held(nameless, "outside-usual-range"));
  }
}
