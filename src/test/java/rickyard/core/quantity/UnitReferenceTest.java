package rickyard.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Holds every unit's factor against its definition, there and back. */
class UnitReferenceTest {

  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/reference/unit-factors.csv", useHeadersInDisplayName = true)
  void convertsByDefinition(
      double amount, String unit, double expected, String target, String source, String locator) {
    Unit from = Unit.findByCode(unit).orElseThrow();
    Unit to = Unit.findByCode(target).orElseThrow();

    assertEquals(expected, from.convert(amount, to), expected * 1e-12, () -> locator);
    assertEquals(amount, to.convert(expected, from), amount * 1e-12, () -> locator);
  }

  @Test
  void aPercentIsExactlyTenGramsInAKilogram() {
    assertEquals(94, Unit.PERCENT.convert(9.4, Unit.G_PER_KG));
  }

  @Test
  void aNumberStaysAsItIsInItsOwnUnit() {
    for (Unit unit : Unit.values()) {
      assertEquals(0.1, unit.convert(0.1, unit));
      assertEquals(Optional.of(unit), Unit.findByCode(unit.code()));
    }
  }

  @Test
  void anOpenBoundStaysOpen() {
    assertEquals(
        Double.POSITIVE_INFINITY, Unit.PERCENT.convert(Double.POSITIVE_INFINITY, Unit.MG_PER_KG));
  }

  @Test
  void unlikeDimensionsAreRefusedByName() {
    UnlikeQuantitiesException thrown =
        assertThrows(
            UnlikeQuantitiesException.class, () -> Unit.MCAL_PER_KG.convert(1, Unit.IU_PER_KG));

    assertEquals("Mcal/kg does not convert to IU/kg", thrown.getMessage());
  }

  @Test
  void aCodeIsTakenAsWrittenOnly() {
    assertEquals(Optional.empty(), Unit.findByCode("MG/KG"));
    assertEquals(Optional.empty(), Unit.findByCode(""));
  }

  @Test
  void everyUnitCountsOneThing() {
    assertSame(Dimension.MASS_SHARE, Unit.MG_PER_LB.dimension());
    assertSame(Dimension.ENERGY_DENSITY, Unit.MJ_PER_LB.dimension());
    assertSame(Dimension.ACTIVITY, Unit.IU_PER_LB.dimension());
    assertSame(Dimension.COUNT, Unit.CFU_PER_G.dimension());
    assertSame(Dimension.NUMBER, Unit.ONE.dimension());
  }
}
