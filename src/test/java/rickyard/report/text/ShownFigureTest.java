package rickyard.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ShownFigureTest {
  @Test
  void whatCannotBeJudgedIsNotKnownWhateverItsKnownPartMakes() {
    assertEquals("not known", Shown.figure("cannot-judge", 0.61, 0.0, null, 0.2));
    assertEquals("not known", Shown.figure("cannot-judge", null, null, null, null));
  }

  @Test
  void whatHasAPartThatNobodyKnowsIsTheLeast() {
    assertEquals("at least 13.14 ± 1.51", Shown.figure("exceeds", 13.14, 11.0, null, 1.51));
  }

  @Test
  void whatIsKnownStandsWithItsUncertainty() {
    assertEquals("9.2 ± 0.63", Shown.figure("clears", 9.2, 9.0, 9.4, 0.63));
    assertEquals("9.2 ± 0.63", Shown.figure("cannot-judge", 9.2, 0.0, 12.0, 0.63));
  }

  @Test
  void whatIsOnlyKnownToBeUnderSomethingIsNoMeasuredFigure() {
    assertEquals("under 50", Shown.figure("clears", 25.0, 0.0, 50.0, 14.57));
    assertEquals("25 ± 14.57", Shown.figure("clears", 25.0, 0.0, 49.0, 14.57));
    assertEquals("under 50", Shown.bounded(25.0, 0.0, 50.0, 14.57));
    assertEquals("at least 7 ± 0.99", Shown.bounded(7.0, 6.9, null, 0.99));
  }

  @Test
  void hayThatLastsLongLastsOverAYear() {
    assertEquals("unknown", Shown.days(null));
    assertEquals("0", Shown.days(0.9));
    assertEquals("60", Shown.days(60.99));
    assertEquals("365", Shown.days(365.0));
    assertEquals("over a year", Shown.days(664.6));
  }
}
