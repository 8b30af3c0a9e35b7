package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.ErrorBudget;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Normal;
import rickyard.core.quantity.Unit;

/**
 * What would settle a borderline value, worked by hand: the guard band is one standard uncertainty,
 * {@code u² = lab² + core²/n}.
 */
class SettlingTest {
  private static final OptionalDouble ONE_U = OptionalDouble.of(Normal.cdf(-1));
  private static final Limit MAX_10 = Limits.nsc(10, ONE_U);
  private static final Limit MIN_8 = Limits.of("cp", Bound.MIN, 8, "% DM", ONE_U);

  /** u² = 0.3² + 2²/n by the same method, 0.1² + 2²/n by wet chemistry; 4 cores were taken. */
  private static final ErrorBudget NIR = new ErrorBudget(0.3, 0.1, 2, 4, 0);

  /** The same where it was wet chemistry already. */
  private static final ErrorBudget WET = new ErrorBudget(0.3, 0.3, 2, 4, 0);

  private static Settling settling(Limit limit, double value, ErrorBudget budget) {
    return settling(limit, Limits.percent(value, 1), budget, 40);
  }

  private static Settling settling(Limit limit, Measured value, ErrorBudget budget, int most) {
    JudgementSettings settings = new JudgementSettings(3, most, 20, 0.5, new TreeSet<>());
    return new Settling(limit, value, budget, 1, settings);
  }

  private static String words(Limit limit, double value, ErrorBudget budget) {
    return settling(limit, value, budget).words();
  }

  /** 0.09 + 4/n ≤ 0.64 from n = 7.3 on; 0.01 + 4/n ≤ 0.64 from n = 6.3 on. */
  @Test
  void bothMethodsAreSaidWhereBothSettleIt() {
    assertEquals(
        "a new sample of 8 cores by the same method, or of 7 cores by wet chemistry, would clear if"
            + " it gives 9.2 % DM again",
        words(MAX_10, 9.2, NIR));
  }

  @Test
  void wetChemistryIsOnlySaidWhereItIsBetter() {
    assertEquals(
        "a new sample of 8 cores by the same method would clear if it gives 9.2 % DM again",
        words(MAX_10, 9.2, WET));
  }

  /** By wet chemistry 0.09 + 1/n ≤ 0.64 from n = 1.8 on; 10 − √(0.81 + 1/20) = 9.07. */
  @Test
  void wetChemistryAloneIsSaidWhereNoNumberOfCoresHelps() {
    assertEquals(
        "wet chemistry on a new sample of 2 cores would clear if it gives 9.2 % DM again; by the"
            + " same method no number of cores up to 40 does: with 20 it clears up to 9.07 % DM",
        words(MAX_10, 9.2, new ErrorBudget(0.9, 0.3, 1, 1, 0)));
  }

  /** 10 − √(0.09 + 4/40) = 9.56; with wet chemistry 10 − √(0.01 + 4/40) = 9.67. */
  @Test
  void whatNoSampleClearsSaysHowFarTheBestOneWould() {
    assertEquals(
        "a new test that gives 9.9 % DM again cannot clear it, however it is sampled: 40 cores clear only up to 9.56 % DM",
        words(MAX_10, 9.9, WET));
    assertEquals(
        "a new test that gives 9.9 % DM again cannot clear it, however it is sampled: 40 cores by wet chemistry clear only up"
            + " to 9.67 % DM",
        words(MAX_10, 9.9, NIR));
  }

  @Test
  void aValueAtTheLimitIsWithinItAndOneBeyondIsNot() {
    assertEquals(
        "a new test that gives 10 % DM again cannot clear it, however it is sampled: 40 cores clear only up to 9.56 % DM",
        words(MAX_10, 10, WET));
    // 10 − √(0.09 + 4/20) = 9.46
    assertEquals(
        "a new test that gives 10.1 % DM again cannot clear it; 20 cores would clear up to 9.46 % DM",
        words(MAX_10, 10.1, WET));
  }

  /** 8 + √(0.09 + 4/40) = 8.44; 8 + √(0.09 + 4/20) = 8.54. */
  @Test
  void overAMinimumTheSidesAreExchanged() {
    assertEquals(
        "a new test that gives 8 % DM again cannot clear it, however it is sampled: 40 cores clear only from 8.44 % DM",
        words(MIN_8, 8, WET));
    assertEquals(
        "a new test that gives 7.9 % DM again cannot clear it; 20 cores would clear from 8.54 % DM",
        words(MIN_8, 7.9, WET));
    assertEquals(
        "a new sample of 8 cores by the same method would clear if it gives 8.8 % DM again",
        words(MIN_8, 8.8, WET));
  }

  /** 10 − √(0.01 + 4/20) = 9.54. */
  @Test
  void whatWouldShowThatItExceedsIsSaidOfAValueOverTheLimit() {
    assertEquals(
        "a new test that gives 10.8 % DM again cannot clear it; 20 cores by wet chemistry would clear up"
            + " to 9.54 % DM; a new sample of 8 cores by the same method, or of 7 cores by wet"
            + " chemistry would show that it exceeds",
        words(MAX_10, 10.8, NIR));
    assertEquals(
        "a new test that gives 10.8 % DM again cannot clear it; 20 cores would clear up to 9.46 % DM; a"
            + " new sample of 8 cores by the same method would show that it exceeds",
        words(MAX_10, 10.8, WET));
  }

  @Test
  void ofAValueKnownInPartTheEndThatIsWorseForTheHorseCounts() {
    Measured open = Limits.percent(8, 1).plus(below(1.2), 0, Limits.SAID);
    Measured nearMinimum = Limits.percent(8.8, 1).plus(below(1.2), 0, Limits.SAID);

    assertEquals(
        "a new sample of 8 cores by the same method would clear if it gives 9.2 % DM again",
        settling(MAX_10, open, WET, 40).words());
    assertEquals(
        "a new sample of 8 cores by the same method would clear if it gives 8.8 % DM again",
        settling(MIN_8, nearMinimum, WET, 40).words());
  }

  private static Measured below(double x) {
    return Measured.below(Unit.PERCENT, Basis.DRY_MATTER, x, 0, Limits.SAID);
  }

  @Test
  void oneCoreIsSaidAsOne() {
    assertEquals(
        "a new sample of 1 core by the same method would clear if it gives 9.2 % DM again",
        words(MAX_10, 9.2, new ErrorBudget(0.3, 0.3, 0.5, 1, 0)));
  }

  /** 0.9 of the tests at hand, 1.044 of a new one of 4 cores: together 0.68, under 0.8. */
  @Test
  void aNewTestIsTakenTogetherWithThoseAtHand() {
    assertEquals(
        "a new sample of 4 cores by the same method would clear if it gives 9.2 % DM again (the new"
            + " test taken together with those at hand)",
        words(MAX_10, 9.2, WET.withStanding(0.9)));
  }

  @Test
  void theMostCoresThatAnybodyTakesMaySettleItAndOneMoreMayNot() {
    Measured value = Limits.percent(9.2, 1);

    assertEquals(OptionalInt.of(8), settling(MAX_10, value, WET, 8).cores(false));
    assertEquals(OptionalInt.empty(), settling(MAX_10, value, WET, 7).cores(false));
  }

  /** 0.3² + (0.8/√4)² = 0.5². */
  @Test
  void aGuardBandAsWideAsTheDistanceSettlesIt() {
    ErrorBudget pythagoras = new ErrorBudget(0.3, 0.3, 0.8, 4, 0);

    assertEquals(OptionalInt.of(4), settling(MAX_10, 9.5, pythagoras).cores(false));
    assertEquals(OptionalInt.of(5), settling(MAX_10, 9.501, pythagoras).cores(false));
  }

  @Test
  void neverFewerCoresThanWereTakenEvenIfTheyAreMoreThanAnybodyTakes() {
    ErrorBudget many = new ErrorBudget(0.3, 0.3, 2, 50, 0);

    assertEquals(OptionalInt.of(50), settling(MAX_10, 9.2, many).cores(false));
    assertEquals(9.59, settling(MAX_10, 9.2, many).edge(20, false), 0.005, "10 − √(0.09 + 4/50)");
  }

  @Test
  void withoutAGuardBandTheLimitItselfIsClear() {
    Limit plain = Limits.nsc(10, OptionalDouble.empty());

    assertEquals(OptionalInt.of(4), settling(plain, 10, WET).cores(false));
    assertEquals(10, settling(plain, 10, WET).edge(20, false));
  }

  @Test
  void noSampleClearsBelowNothing() {
    assertEquals(0, settling(Limits.nsc(0.2, ONE_U), 0.1, WET).edge(20, false));
  }

  @Test
  void aLimitInAnotherUnitIsServedByABudgetInPerCent() {
    Limit grams = Limits.of("nsc_wsc", Bound.MAX, 100, "g/kg DM", ONE_U);
    Measured value = Measured.of(Unit.G_PER_KG, Basis.DRY_MATTER, 92, 0, 10, Limits.SAID);
    double factor = Unit.PERCENT.convert(1, Unit.G_PER_KG);

    assertEquals(
        "a new sample of 8 cores by the same method would clear if it gives 92 g/kg DM again",
        new Settling(grams, value, WET, factor, Hay.TABLES.settings()).words());
  }
}
