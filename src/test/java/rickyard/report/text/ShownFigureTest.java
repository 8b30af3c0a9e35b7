package rickyard.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ShownFigureTest {
  @Test
  void whatCannotBeJudgedIsNotKnownWhateverItsKnownPartMakes() {
    assertEquals("not known", Shown.figure("cannot-judge", 0.61, null, 0.2));
    assertEquals("not known", Shown.figure("cannot-judge", null, null, null));
  }

  @Test
  void whatHasAPartThatNobodyKnowsIsTheLeast() {
    assertEquals("at least 13.14 ± 1.51", Shown.figure("exceeds", 13.14, null, 1.51));
  }

  @Test
  void whatIsKnownStandsWithItsUncertainty() {
    assertEquals("9.2 ± 0.63", Shown.figure("clears", 9.2, 9.4, 0.63));
    assertEquals("9.2 ± 0.63", Shown.figure("cannot-judge", 9.2, 12.0, 0.63));
  }
}
