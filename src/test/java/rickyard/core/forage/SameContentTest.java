package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;

/** Whether two samples print the same figures. */
class SameContentTest {
  private static Sample of(Reading... readings) {
    return Samples.of("N2", readings);
  }

  private static Reading wsc(Unit unit, double best) {
    return Samples.reading("WSC", Basis.DRY_MATTER, unit, best, Method.UNKNOWN);
  }

  private static void assertWithinRounding(boolean expected, Sample a, Sample b) {
    assertEquals(expected, SameContent.withinRounding(a, b));
    assertEquals(expected, SameContent.withinRounding(b, a));
  }

  private static void assertExactly(boolean expected, Sample a, Sample b) {
    assertEquals(expected, SameContent.exactly(a, b));
    assertEquals(expected, SameContent.exactly(b, a));
  }

  @Test
  void figuresAreTheSameWithinRoundingWhereTheirIntervalsMeet() {
    assertWithinRounding(true, of(Samples.dm("WSC", 8)), of(Samples.dm("WSC", 8.1)));
    assertWithinRounding(false, of(Samples.dm("WSC", 8)), of(Samples.dm("WSC", 8.11)));
  }

  @Test
  void samplesThatShareNoFigureAreNotTheSame() {
    assertWithinRounding(false, of(Samples.dm("WSC", 8)), of(Samples.dm("STARCH", 8)));
    assertWithinRounding(false, of(Samples.dm("WSC", 8)), of(Samples.af("WSC", 8)));
    assertWithinRounding(false, of(), of());
  }

  @Test
  void oneOtherFigureIsEnoughToDiffer() {
    assertWithinRounding(
        false,
        of(Samples.dm("WSC", 8), Samples.dm("STARCH", 1)),
        of(Samples.dm("WSC", 8), Samples.dm("STARCH", 2)));
  }

  @Test
  void exactlyTheSameTakesTwoSharedFiguresAndNoDifference() {
    Sample both = of(Samples.dm("WSC", 8), Samples.dm("STARCH", 1));

    assertExactly(true, both, both);
    assertExactly(true, both, of(wsc(Unit.G_PER_KG, 80), Samples.dm("STARCH", 1)));
    assertExactly(false, both, of(Samples.dm("WSC", 8)));
    assertExactly(false, both, of(Samples.dm("WSC", 8.01), Samples.dm("STARCH", 1)));
    assertExactly(false, both, of(Samples.dm("WSC", 8), Samples.dm("STARCH", 1.01)));
  }

  @Test
  void figuresOfUnlikeKindsAreNotTheSame() {
    assertWithinRounding(false, of(Samples.dm("WSC", 8)), of(wsc(Unit.MCAL_PER_KG, 8)));
  }

  @Test
  void aDifferenceNamesTheFiguresThatDiffer() {
    Sample one = of(Samples.dm("WSC", 8), Samples.dm("STARCH", 1), Samples.dm("CP", 9));

    assertEquals("", SameContent.difference(one, one));
    assertEquals("", SameContent.difference(one, of(Samples.dm("ADF", 30))));
    assertEquals(
        "They differ in CP dm: 9.0 and 10.0, WSC dm: 8.0 and 12.0.",
        SameContent.difference(one, of(Samples.dm("WSC", 12), Samples.dm("CP", 10))));
  }

  @Test
  void figuresThatDifferByTheDustOfBinarySumsAreTheSame() {
    Sample sum = of(Samples.dm("WSC", 0.1 + 0.2), Samples.dm("STARCH", 1));

    assertTrue(SameContent.exactly(sum, of(Samples.dm("WSC", 0.3), Samples.dm("STARCH", 1))));
    assertFalse(
        SameContent.exactly(sum, of(Samples.dm("WSC", 0.3000001), Samples.dm("STARCH", 1))));
  }
}
