package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Normal;
import rickyard.core.quantity.Unit;
import rickyard.core.quantity.UnlikeQuantitiesException;

class DecisionRuleTest {
  private static final Limit NSC_10 = Limits.nsc(10, OptionalDouble.of(0.05));

  private static Word word(Measured value, Limit limit) {
    return DecisionRule.find(value, limit).word();
  }

  @Test
  void aCensoredValueCountsWithItsUpperEndUnderAMaximum() {
    Measured below = Measured.below(Unit.PERCENT, Basis.DRY_MATTER, 10.5, 0.1, Limits.SAID);

    assertEquals(10.5, DecisionRule.find(below, NSC_10).used());
    assertEquals(Word.EXCEEDS, word(below, NSC_10));
  }

  @Test
  void aValueOpenAboveNeverClears() {
    assertEquals(Word.CANNOT_JUDGE, word(atLeast(1, 0), NSC_10));
    assertEquals(Word.CANNOT_JUDGE, word(atLeast(11, 1), NSC_10));
  }

  @Test
  void aLowerEndSaysItsChanceFromEvenOn() {
    assertEquals(
        0.841345, DecisionRule.find(atLeast(11, 1), NSC_10).chanceWrong().getAsDouble(), 1e-6);
    assertEquals(0.5, DecisionRule.find(atLeast(10, 1), NSC_10).chanceWrong().getAsDouble(), 1e-12);
    assertTrue(DecisionRule.find(atLeast(9.9, 1), NSC_10).chanceWrong().isEmpty());
    assertTrue(
        Judge.judge(NSC_10, Optional.of(atLeast(11, 1)), "starch is not reported")
            .reason()
            .endsWith("chance of being over, from this test alone, at least 84 %"));
  }

  @Test
  void aValueOpenAboveExceedsWhenItsLowerEndDoes() {
    assertEquals(Word.EXCEEDS, word(atLeast(11.65, 1), NSC_10));
    assertTrue(DecisionRule.find(atLeast(11.65, 1), NSC_10).chanceWrong().getAsDouble() > 0.95);
  }

  @Test
  void underAMinimumTheSidesAreExchanged() {
    Limit min = Limits.of("cp", Bound.MIN, 8, "% DM", OptionalDouble.of(0.05));

    assertEquals(Word.CLEARS, word(Limits.percent(9.65, 1), min));
    assertEquals(Word.BORDERLINE_UNDER, word(Limits.percent(8, 1), min));
    assertEquals(Word.BORDERLINE_OVER, word(Limits.percent(7.9, 1), min));
    assertEquals(Word.EXCEEDS, word(Limits.percent(6.3, 1), min));
    assertEquals(
        0.158655, DecisionRule.find(Limits.percent(9, 1), min).chanceWrong().getAsDouble(), 1e-6);
  }

  @Test
  void anUpperEndAloneDoesNotShowThatAMinimumIsMissed() {
    Limit min = Limits.of("cp", Bound.MIN, 8, "% DM", OptionalDouble.empty());
    Measured label = Measured.atMost(Unit.PERCENT, Basis.DRY_MATTER, 9, Limits.SAID);
    Measured low = Measured.below(Unit.PERCENT, Basis.DRY_MATTER, 5, 0, Limits.SAID);

    assertEquals(Word.CANNOT_JUDGE, word(label, min));
    assertEquals(Word.EXCEEDS, word(low, min));
  }

  @Test
  void anotherUnitOfTheSameDimensionIsConverted() {
    Measured grams = Measured.of(Unit.G_PER_KG, Basis.DRY_MATTER, 83, 0, 10, Limits.SAID);

    Verdict verdict = Judge.judge(NSC_10, Optional.of(grams), "");

    assertEquals(8.3, verdict.value().orElseThrow().best(), 1e-12);
    assertEquals(Word.CLEARS, verdict.word());
  }

  @Test
  void anAsFedValueIsNeverHeldAgainstADryMatterLimit() {
    Measured asFed = Measured.of(Unit.PERCENT, Basis.AS_FED, 9.2, 0.05, 0.5, Limits.SAID);

    assertThrows(UnlikeQuantitiesException.class, () -> DecisionRule.find(asFed, NSC_10));
  }

  @Test
  void nothingKnownIsNotZero() {
    Verdict verdict = Judge.judge(NSC_10, Optional.empty(), "");

    assertEquals(Word.CANNOT_JUDGE, verdict.word());
    assertEquals("NSC (WSC + starch) is not reported", verdict.reason());
    assertTrue(verdict.pOver().isEmpty());
  }

  @Test
  void theReasonPrintsValueLimitBandAndChance() {
    Verdict verdict = Judge.judge(NSC_10, Optional.of(Limits.percent(8.36, 1)), "");

    assertEquals(
        "NSC (WSC + starch) 8.36 ± 1 % DM; limit 10 % DM, guard band 1.64 at 5 % risk;"
            + " chance of being over, from this test alone, 5.1 %",
        verdict.reason());
  }

  @Test
  void aMealOfTheBucketIsJudgedPerKilogramOfBodyWeight() {
    Limit meal = Limits.of("nsc_wsc", Bound.MAX, 0.1, "g/kg BW", OptionalDouble.empty());
    Measured fed = Measured.of(Unit.G_PER_KG, Basis.NONE, 60.0 / 500, 0, 0, Limits.SAID);

    assertEquals(Word.EXCEEDS, word(fed, meal));
  }

  /** Φ(1.65) = 0.95053, printed in every table of the normal distribution. */
  @Test
  void theChanceOfAValueOpenAboveIsThatOfItsLowerEnd() {
    assertEquals(
        0.95053, DecisionRule.find(atLeast(11.65, 1), NSC_10).chanceWrong().orElseThrow(), 1e-5);
  }

  /** 10 + 1.645: binary sums leave dust there. */
  @Test
  void aValueOverTheLimitByJustTheGuardBandExceeds() {
    double w = NSC_10.guardFactor();

    assertEquals(Word.EXCEEDS, word(Limits.percent(10 + w, 1), NSC_10));
    assertEquals(Word.BORDERLINE_OVER, word(Limits.percent(10 + w - 1e-6, 1), NSC_10));
    assertEquals(Word.CLEARS, word(Limits.percent(10 - w, 1), NSC_10));
    assertEquals(Word.BORDERLINE_UNDER, word(Limits.percent(10 - w + 1e-6, 1), NSC_10));
  }

  /** A count of a thousand million, one more of which is a billionth part: still the same. */
  @Test
  void aBillionthPartIsNoDifference() {
    double u = 3e6 / Normal.guardFactor(0.05);

    assertEquals(Word.CLEARS, word(count(1e9 + 1, 0), counted(Bound.MAX, false)));
    assertEquals(Word.EXCEEDS, word(count(1e9 + 2, 0), counted(Bound.MAX, false)));
    assertEquals(Word.BORDERLINE_UNDER, word(count(1e9 + 1, u), counted(Bound.MAX, true)));
    assertEquals(Word.BORDERLINE_OVER, word(count(1e9 + 2, u), counted(Bound.MAX, true)));
    assertEquals(Word.EXCEEDS, word(count(1e9 + 3e6 - 1, u), counted(Bound.MAX, true)));
    assertEquals(Word.BORDERLINE_OVER, word(count(1e9 + 3e6 - 3, u), counted(Bound.MAX, true)));
  }

  @Test
  void anUpperEndABillionthPartUnderAMinimumDoesNotShowThatItIsMissed() {
    assertEquals(Word.CANNOT_JUDGE, word(atMostCounted(999_999_999), counted(Bound.MIN, false)));
    assertEquals(Word.EXCEEDS, word(atMostCounted(999_999_998), counted(Bound.MIN, false)));
  }

  @Test
  void withoutUncertaintyTheChanceIsNothingUpToTheLimitAndOneBeyond() {
    assertEquals(0, DecisionRule.chance(0, 0, 0).orElseThrow());
    assertEquals(0, DecisionRule.chance(-1, 0, 10).orElseThrow());
    assertEquals(0, DecisionRule.chance(1, 0, 1e9).orElseThrow(), "a tie");
    assertEquals(1, DecisionRule.chance(2, 0, 1e9).orElseThrow());
    assertEquals(1, DecisionRule.chance(1, 0, 10).orElseThrow());
  }

  @Test
  void theRuleThatStandsOnEveryOutputNamesEveryZone() {
    assertEquals(
        "Chance of being over the limit, from this test alone: Φ((y − L)/u). Guard band w = z(risk)"
            + " · u. clears: y ≤ L − w; borderline-under: L − w < y ≤ L (not cleared);"
            + " borderline-over: L < y < L + w (not cleared); exceeds: y ≥ L + w; cannot-judge: the"
            + " evidence does not bound it (not cleared).",
        DecisionRule.words());
  }

  private static Limit counted(Bound bound, boolean guarded) {
    return Limits.of(
        "mould", bound, 1e9, "CFU/g", guarded ? OptionalDouble.of(0.05) : OptionalDouble.empty());
  }

  private static Measured count(double x, double u) {
    return Measured.of(Unit.CFU_PER_G, Basis.NONE, x, 0, u, Limits.SAID);
  }

  private static Measured atMostCounted(double x) {
    return Measured.atMost(Unit.CFU_PER_G, Basis.NONE, x, Limits.SAID);
  }

  private static Measured atLeast(double x, double u) {
    return Measured.atLeast(Unit.PERCENT, Basis.DRY_MATTER, x, u, Limits.SAID);
  }
}
