package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;

/** What a limit, its unit and the settings beside it may be. */
class LimitTest {

  private static Limit max(double value, double risk) {
    return Limits.nsc(value, OptionalDouble.of(risk));
  }

  private static JudgementSettings settings(
      double allowance, int mostCores, int adviceCores, double sensitivity) {
    return new JudgementSettings(
        allowance, mostCores, adviceCores, sensitivity, new TreeSet<>(Set.of()));
  }

  @Test
  void nothingAtAllMayBeTheLimitAndLessMayNot() {
    assertEquals(0, max(0, 0.05).value());
    assertEquals(
        "a limit must be finite and >= 0, was -0.1",
        assertThrows(IllegalArgumentException.class, () -> max(-0.1, 0.05)).getMessage());
  }

  /** At a risk of one half the guard band is gone; beyond it, it would lie on the wrong side. */
  @Test
  void aRiskGoesFromAboveNothingToOneHalf() {
    assertEquals(0, max(10, 0.5).guardFactor());
    for (double risk : new double[] {0, 0.51}) {
      assertEquals(
          "risk must be in (0, 0.5], was " + risk,
          assertThrows(IllegalArgumentException.class, () -> max(10, risk)).getMessage());
    }
  }

  @Test
  void aQuantityIsWrittenInSmallLetters() {
    assertEquals(
        "not a quantity: NSC",
        assertThrows(
                IllegalArgumentException.class,
                () -> Limits.of("NSC", Bound.MAX, 10, "% DM", OptionalDouble.empty()))
            .getMessage());
  }

  @Test
  void gramsAndCountsNeedNoBasis() {
    assertEquals(Optional.of(new LimitUnit("g", Unit.ONE, Basis.NONE)), LimitUnit.parse(" g "));
    assertEquals(
        Optional.of(new LimitUnit("CFU/g", Unit.CFU_PER_G, Basis.NONE)),
        LimitUnit.parse(" CFU/g "));
    assertEquals(Optional.of(new LimitUnit("1", Unit.ONE, Basis.NONE)), LimitUnit.parse("1"));
  }

  @Test
  void contentsSayWhatTheyAreHeldAgainst() {
    assertEquals(
        Optional.of(new LimitUnit("% DM", Unit.PERCENT, Basis.DRY_MATTER)),
        LimitUnit.parse(" % DM"));
    assertEquals(
        Optional.of(new LimitUnit("% AF", Unit.PERCENT, Basis.AS_FED)), LimitUnit.parse("% AF"));
    assertEquals(
        Optional.of(new LimitUnit("g/kg BW", Unit.G_PER_KG, Basis.NONE)),
        LimitUnit.parse("g/kg BW"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"%", "mg/kg", "Mcal/kg", "IU/kg", "", "g DM", "% dry", "% DM DM", "kg"})
  void aUnitWithoutItsBasisIsNone(String text) {
    assertEquals(Optional.empty(), LimitUnit.parse(text));
  }

  @Test
  void settingsMayStandAtTheEndsOfTheirRanges() {
    assertEquals(1, settings(0, 1, 1, 1).mostCores());
    assertEquals(-1, settings(0, 1, 1, -1).sensitivity());
    assertEquals(0, settings(0, 1, 1, 0).sensitivity());
  }

  @Test
  void settingsBeyondTheirRangesAreRefused() {
    for (var wrong :
        List.<Executable>of(
            () -> settings(-0.1, 1, 1, 0),
            () -> settings(Double.NaN, 1, 1, 0),
            () -> settings(0, 0, 1, 0),
            () -> settings(0, 1, 0, 0),
            () -> settings(0, 1, 1, 1.1),
            () -> settings(0, 1, 1, -1.1))) {
      assertEquals(
          "settings of the judging are out of range",
          assertThrows(IllegalArgumentException.class, wrong).getMessage());
    }
  }

  @Test
  void aNoteNamesTheFigureThatItStandsBesideTogetherWithItsLine() {
    for (boolean named : new boolean[] {true, false}) {
      Optional<AnalyteCode> beside = named ? Optional.of(AnalyteCode.ASH) : Optional.empty();
      OptionalDouble over = named ? OptionalDouble.empty() : OptionalDouble.of(11);
      assertEquals(
          "beside and beside_over go together",
          assertThrows(
                  IllegalArgumentException.class,
                  () ->
                      new LotNote(
                          "n", "fe", Set.of(), beside, over, "", "soil", "memory", "memory"))
              .getMessage());
    }
  }
}
