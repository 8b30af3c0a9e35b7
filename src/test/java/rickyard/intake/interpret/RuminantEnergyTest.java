package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Lot;
import rickyard.core.forage.Sample;
import rickyard.core.forage.Subject;
import rickyard.core.nutrition.Foodstuffs;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.intake.grid.Grid;
import rickyard.tables.NutritionTables;
import rickyard.tables.UncertaintyTable;

/** From the page to the diet: energy of cattle is never the energy of a horse. */
class RuminantEnergyTest {
  private static final String FIBRES =
      """
      Analyte|Unit|Dry matter
      Crude protein|%|10
      ADF|%|38
      NDF|%|62
      Crude fat|%|2.5
      Ash|%|8
      """;
  private static final double BY_EQUATION = 2.0555;

  private static Analysis analysis(String lines) {
    Grid grid = Grids.table(FIBRES + lines);
    Sample sample = Readings.report(grid).samples().get(0);
    return new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties())
        .make(sample, Subject.ofLot(lot(), "grass-hay"))
        .analysis();
  }

  private static Lot lot() {
    return new Lot(
        "N2",
        "c1",
        "grass-hay",
        OptionalDouble.empty(),
        "1",
        Optional.<LocalDate>empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        OptionalInt.empty(),
        Optional.<LocalDate>empty(),
        "");
  }

  private static Measured energy(String lines) {
    return new Foodstuffs(NutritionTables.load().standards())
        .ofLot(lot(), analysis("Dry matter|%|90\n" + lines))
        .orElseThrow()
        .find(AnalyteCode.DE)
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "TDN,%,56",
    "Total digestible nutrients,%,56",
    "NEL,Mcal/lb,0.55",
    "Net energy lactation,Mcal/kg,1.21",
    "NEM,Mcal/lb,0.53",
    "Net energy maintenance,Mcal/kg,1.17",
    "NEG,Mcal/lb,0.27",
    "ME,Mcal/lb,0.92",
    "Metabolizable energy,Mcal/kg,2.03",
    "ME ruminant,MJ/kg,8.5",
    "ME Rind,MJ/kg,8.5",
    "ME Pferd,MJ/kg,7.4",
    "DE,Mcal/lb,1.1",
    "Digestible energy,Mcal/kg,2.4",
    "DE cattle,Mcal/lb,1.1",
    "DE ruminant,Mcal/kg,2.4",
    "UFC,1,0.55",
    "RFV,,89"
  })
  void whatIsNotTheDigestibleEnergyOfAHorseIsLeftAndTheEquationTaken(
      String label, String unit, String printed) {
    String line = label + "|" + (unit == null ? "" : unit) + "|" + printed + "\n";

    assertTrue(analysis(line).find(AnalyteCode.DE).isEmpty());
    Measured energy = energy(line);
    assertEquals(BY_EQUATION, energy.best(), 0.00005);
    assertTrue(energy.evidence() instanceof Evidence.Derived);
  }

  /** The laboratory's own value for horses among those of cattle, in its unit. */
  @Test
  void theHorsesOwnLineIsTakenFromAmongThem() {
    String lines = "TDN|%|56\nNEL|Mcal/lb|0.55\nDE|Mcal/lb|1.10\nHorse DE|Mcal/lb|0.95\n";
    assertEquals(0.95 / 0.45359237, energy(lines).best(), 1e-9);
  }

  /** NFC printed beside them is no input either: it follows from the others by difference. */
  @Test
  void aPrintedNfcOrStarchAndSugarDoesNotChangeTheEquation() {
    assertEquals(BY_EQUATION, energy("NFC|%|17.5\n").best(), 0.00005);
    assertEquals(BY_EQUATION, energy("WSC|%|9.0\nStarch|%|1.2\n").best(), 0.00005);
  }
}
