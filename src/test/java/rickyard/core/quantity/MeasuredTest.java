package rickyard.core.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasuredTest {
  private static final Evidence SAID = new Evidence.Assumed("test", "row");
  private static final double OPEN = Double.POSITIVE_INFINITY;

  private static Measured percent(Basis basis, double best, double halfWidth, double u) {
    return Measured.of(Unit.PERCENT, basis, best, halfWidth, u, SAID);
  }

  private static Measured dryMatter(double best, double halfWidth, double u) {
    return percent(Basis.AS_FED, best, halfWidth, u);
  }

  private static Measured bounds(double low, double high, double lower, double upper) {
    return new Measured(Unit.PERCENT, Basis.AS_FED, 5, low, high, lower, upper, 1, SAID);
  }

  private static void assertBounds(
      double low, double high, double lower, double upper, Measured is) {
    assertEquals(low, is.low(), 1e-12);
    assertEquals(high, is.high(), 1e-12);
    assertEquals(lower, is.lower(), 1e-12);
    assertEquals(upper, is.upper(), 1e-12);
  }

  @Test
  void aPrintedFigureMayBeAnythingThatRoundsToIt() {
    Measured figure = percent(Basis.DRY_MATTER, 9.4, 0.05, 0.7);

    assertEquals(9.4, figure.best());
    assertBounds(9.35, 9.45, 9.4, 9.4, figure);
    assertEquals(0.7, figure.u());
    assertFalse(figure.isOneSided());
    assertTrue(figure.isBoundedAbove());
  }

  @Test
  void roundingReachesNoLowerThanNothing() {
    assertBounds(0, 0.07, 0.02, 0.02, percent(Basis.DRY_MATTER, 0.02, 0.05, 0));
  }

  @Test
  void belowALimitIsTakenAsHalfAndJudgedByItsEnds() {
    Measured trace = Measured.below(Unit.PERCENT, Basis.DRY_MATTER, 0.5, 0.1, SAID);

    assertEquals(0.25, trace.best());
    assertBounds(0, 0.5, 0, 0.5, trace);
    assertEquals(0.1, trace.u());
    assertTrue(trace.isOneSided());
    assertTrue(trace.isBoundedAbove());
  }

  @Test
  void atLeastIsOpenAbove() {
    Measured least = Measured.atLeast(Unit.PERCENT, Basis.DRY_MATTER, 12, 0.3, SAID);

    assertEquals(12, least.best());
    assertBounds(12, OPEN, 12, OPEN, least);
    assertEquals(0.3, least.u());
    assertTrue(least.isOneSided());
    assertFalse(least.isBoundedAbove());
  }

  @Test
  void aGuaranteedMaximumIsTakenAsWhatItGuarantees() {
    Measured most = Measured.atMost(Unit.PERCENT, Basis.AS_FED, 10, SAID);

    assertEquals(10, most.best());
    assertBounds(0, 10, 0, 10, most);
    assertEquals(0, most.u());
    assertTrue(most.isOneSided());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.001, Double.NaN, Double.POSITIVE_INFINITY})
  void everyNumberBelowTheOpenEndsIsFiniteAndNotNegative(double bad) {
    for (String name : new String[] {"best", "u", "low", "lower"}) {
      IllegalArgumentException thrown =
          assertThrows(
              IllegalArgumentException.class,
              () ->
                  new Measured(
                      Unit.PERCENT,
                      Basis.AS_FED,
                      name.equals("best") ? bad : 5,
                      name.equals("low") ? bad : 4,
                      OPEN,
                      name.equals("lower") ? bad : 4,
                      OPEN,
                      name.equals("u") ? bad : 1,
                      SAID));

      assertEquals(name + " must be finite and >= 0, was " + bad, thrown.getMessage());
    }
  }

  @Test
  void nothingAtAllIsANumber() {
    Measured none = new Measured(Unit.PERCENT, Basis.AS_FED, 0, 0, 0, 0, 0, 0, SAID);

    assertEquals(0, none.best());
  }

  @Test
  void endsOutOfOrderAreRefused() {
    assertEquals(4, bounds(4, 4, 5, 5).high());
    IllegalArgumentException thrown =
        assertThrows(IllegalArgumentException.class, () -> bounds(4, 3.9, 5, 6));
    assertEquals("bounds out of order: [4.0, 3.9], [5.0, 6.0]", thrown.getMessage());
    assertThrows(IllegalArgumentException.class, () -> bounds(4, 6, 5, 4.9));
    assertThrows(IllegalArgumentException.class, () -> bounds(4, Double.NaN, 5, 6));
    assertThrows(IllegalArgumentException.class, () -> bounds(4, 6, 5, Double.NaN));
  }

  @Test
  void oneThingIsChangedAtATime() {
    Measured trace = Measured.below(Unit.PERCENT, Basis.AS_FED, 0.5, 0.1, SAID);
    Evidence other = new Evidence.Assumed("other", "row");

    assertEquals(
        new Measured(Unit.PERCENT, Basis.AS_FED, 0.25, 0, 0.5, 0, 0.5, 0.2, SAID),
        trace.withU(0.2));
    assertEquals(
        new Measured(Unit.PERCENT, Basis.AS_FED, 0.25, 0, 0.5, 0, 0.5, 0.1, other),
        trace.withEvidence(other));
    assertEquals(
        new Measured(Unit.PERCENT, Basis.DRY_MATTER, 0.25, 0, 0.5, 0, 0.5, 0.1, SAID),
        trace.onBasis(Basis.DRY_MATTER));
  }

  @Test
  void anotherUnitScalesEveryNumberAlike() {
    Measured share = new Measured(Unit.PERCENT, Basis.DRY_MATTER, 1, 0.5, 2, 0.75, 3, 0.25, SAID);

    assertEquals(
        new Measured(Unit.G_PER_KG, Basis.DRY_MATTER, 10, 5, 20, 7.5, 30, 2.5, SAID),
        share.in(Unit.G_PER_KG));
  }

  @Test
  void endsOfASumAddAndItsEvidenceIsTheSums() {
    Evidence sum = new Evidence.Derived("WSC + starch", java.util.List.of());
    Measured wsc = new Measured(Unit.PERCENT, Basis.DRY_MATTER, 9, 8, 9.5, 8.5, 9.25, 2, SAID);
    Measured starch = new Measured(Unit.PERCENT, Basis.DRY_MATTER, 1, 0.5, 2, 0.75, 1.5, 0.5, SAID);

    Measured nsc = wsc.plus(starch, 0.3, sum);

    assertEquals(10, nsc.best(), 1e-12);
    assertBounds(8.5, 11.5, 9.25, 10.75, nsc);
    assertEquals(Math.sqrt(4 + 0.25 + 2 * 0.3 * 2 * 0.5), nsc.u(), 1e-12);
    assertEquals(sum, nsc.evidence());
    assertEquals(Unit.PERCENT, nsc.unit());
    assertEquals(Basis.DRY_MATTER, nsc.basis());
  }

  @Test
  void errorsThatCancelLeaveNone() {
    Measured a = percent(Basis.DRY_MATTER, 9, 0, 0.1);

    assertEquals(0, a.plus(percent(Basis.DRY_MATTER, 1, 0, 0.1), -1, SAID).u(), 1e-9);
    assertEquals(0, a.plus(percent(Basis.DRY_MATTER, 1, 0, 0.1), -1.5, SAID).u());
  }

  @Test
  void unlikeContentsDoNotAdd() {
    Measured wsc = percent(Basis.DRY_MATTER, 9, 0, 1);
    Measured asFed = percent(Basis.AS_FED, 1, 0, 1);
    Measured grams = Measured.of(Unit.G_PER_KG, Basis.DRY_MATTER, 10, 0, 1, SAID);

    UnlikeQuantitiesException thrown =
        assertThrows(UnlikeQuantitiesException.class, () -> wsc.plus(asFed, 0, SAID));
    assertEquals("cannot add % af to % dm", thrown.getMessage());
    assertThrows(UnlikeQuantitiesException.class, () -> wsc.plus(grams, 0, SAID));
  }

  @Test
  void dryMatterTakesTheWaterOutOfEveryNumber() {
    Measured asFed = new Measured(Unit.PERCENT, Basis.AS_FED, 8, 7.6, 8.4, 7.2, 8.8, 0.4, SAID);

    Measured dry = asFed.toDryMatter(dryMatter(80, 0.5, 2));

    assertEquals(Basis.DRY_MATTER, dry.basis());
    assertEquals(Unit.PERCENT, dry.unit());
    assertEquals(10, dry.best(), 1e-12);
    assertBounds(760 / 80.5, 840 / 79.5, 9, 11, dry);
    assertEquals(Math.sqrt(0.5 * 0.5 + 0.25 * 0.25), dry.u(), 1e-12);
  }

  @Test
  void theDryFigureLeadsBackToBothOfItsNumbers() {
    Measured asFed = percent(Basis.AS_FED, 8, 0, 0);
    Measured dm = dryMatter(80, 0, 0);

    assertEquals(
        new Evidence.Derived(
            "100 × as fed / DM",
            java.util.List.of(new Evidence.Term("as fed", asFed), new Evidence.Term("DM", dm))),
        asFed.toDryMatter(dm).evidence());
  }

  @Test
  void dryMatterIsNeverMoreThanAll() {
    Measured dry = percent(Basis.AS_FED, 8, 0, 0).toDryMatter(dryMatter(100, 0.5, 0));

    assertEquals(8, dry.best(), 1e-12);
    assertEquals(8, dry.low(), 1e-12);
  }

  @Test
  void aZeroContentKeepsItsOwnScaledError() {
    Measured dry = percent(Basis.AS_FED, 0, 0, 0.4).toDryMatter(dryMatter(80, 0, 2));

    assertEquals(0, dry.best());
    assertEquals(0.5, dry.u(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"100.01, 0", "0.4, 0.5", "0, 0"})
  void aDryMatterOfNoneOrOverAllIsRefused(double dm, double halfWidth) {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class,
            () -> percent(Basis.AS_FED, 8, 0, 0).toDryMatter(dryMatter(dm, halfWidth, 0)));

    assertEquals("dry matter must be in (0, 100] %, was " + dm, thrown.getMessage());
  }

  @Test
  void onlyAnAsFedContentIsDriedAndOnlyByADryMatter() {
    Measured asFed = percent(Basis.AS_FED, 8, 0, 0);
    Measured grams = Measured.of(Unit.G_PER_KG, Basis.AS_FED, 800, 0, 0, SAID);

    assertEquals(
        "not an as-fed content: % dm",
        assertThrows(
                UnlikeQuantitiesException.class,
                () -> percent(Basis.DRY_MATTER, 8, 0, 0).toDryMatter(dryMatter(80, 0, 0)))
            .getMessage());
    assertEquals(
        "not a dry-matter content: g/kg af",
        assertThrows(UnlikeQuantitiesException.class, () -> asFed.toDryMatter(grams)).getMessage());
    assertThrows(
        UnlikeQuantitiesException.class,
        () -> asFed.toDryMatter(percent(Basis.DRY_MATTER, 80, 0, 0)));
  }
}
