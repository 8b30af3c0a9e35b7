package rickyard.core.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

class OverTimeTest {
  private static Course course(Tests tests) {
    OverTime found = tests.look();
    assertEquals(1, found.lots().size());
    return found.lots().get(0).course();
  }

  @Test
  void twoTestsAreApartBeyondTwiceTheirJointUncertaintyAndNotAtIt() {
    // u 0.6 and 0.8: joint 1.0, so 2.0 apart is within and 2.01 is not
    assertEquals(
        Course.STEADY, course(new Tests().add("A", "L", 0, 8, 0.6).add("A", "L", 30, 10, 0.8)));
    assertEquals(
        Course.CHANGED, course(new Tests().add("A", "L", 0, 8, 0.6).add("A", "L", 30, 10.01, 0.8)));
    LotCourse found =
        new Tests().add("A", "L", 30, 10.5, 0.8).add("A", "L", 0, 8, 0.6).look().lots().get(0);
    assertEquals(2.5, found.change(), 1e-12, "the later day less the earlier");
    assertEquals(1.0, found.uChange(), 1e-12);
    assertTrue(found.trend().isEmpty(), "two values are no trend");
  }

  @Test
  void threeDaysOnALineAreATrendAndWithoutDirectionAScatter() {
    Tests falling =
        new Tests()
            .add("A", "L", 0, 12, 0.5)
            .add("A", "L", 30, 10.5, 0.5)
            .add("A", "L", 60, 9, 0.5);
    assertEquals(Course.FALLING, course(falling));
    assertEquals(-0.05, falling.look().lots().get(0).trend().orElseThrow().slope(), 1e-12);
    assertEquals(
        Course.RISING,
        course(
            new Tests()
                .add("A", "L", 0, 9, 0.5)
                .add("A", "L", 30, 10.5, 0.5)
                .add("A", "L", 60, 12, 0.5)));
    assertEquals(
        Course.SCATTERED,
        course(
            new Tests()
                .add("A", "L", 0, 9, 0.5)
                .add("A", "L", 30, 12, 0.5)
                .add("A", "L", 60, 9, 0.5)));
    assertEquals(
        Course.STEADY,
        course(
            new Tests()
                .add("A", "L", 0, 9, 0.5)
                .add("A", "L", 30, 9.4, 0.5)
                .add("A", "L", 60, 9.2, 0.5)));
  }

  @Test
  void testsOfOneDayAreOneSamplingAndBoundsAreNoValues() {
    assertTrue(new Tests().add("A", "L", 0, 8, 1).add("A", "M", 0, 12, 1).look().lots().isEmpty());
    Measured bound =
        Measured.below(
            Unit.PERCENT, Basis.DRY_MATTER, 5, 1, new Evidence.Derived("given", List.of()));
    assertTrue(new Tests().add("A", "L", 0, 8, 1).add("A", "L", 9, bound).look().lots().isEmpty());
    assertTrue(
        new Tests().add("A", "L", 0, 8, 1).add("B", "L", 9, 12, 1).look().lots().isEmpty(),
        "another lot");
  }

  @Test
  void aDifferenceOfLaboratoriesIsShownFromTheLeastNumberOfLotsOn() {
    Tests tests = new Tests();
    double[] differences = {0.8, 1.0, 0.9, 1.1, 0.7};
    for (int i = 0; i < differences.length; i++) {
      assertTrue(
          tests.look().laboratories().stream().allMatch(p -> p.difference().isEmpty()), "lot " + i);
      tests.add("L" + i, "Brook Vale", 20, 8 + i + differences[i], 1);
      tests.add("L" + i, "Fellside", 0, 8 + i, 1);
    }
    LaboratoryPair pair = tests.look().laboratories().get(0);
    PairedDifference found = pair.difference().orElseThrow();
    assertEquals("Brook Vale", pair.first().name());
    assertEquals("Fellside", pair.second().name());
    assertEquals(0.9, found.mean(), 1e-12);
    assertEquals(Math.sqrt(0.1 / 4), found.sd(), 1e-12);
    assertEquals(5, found.above());
    assertTrue(pair.isRare(Tests.RULES));
    assertEquals(20, pair.daysLater().orElseThrow(), 1e-12);
  }

  @Test
  void aLotCountsOnceHoweverOftenALaboratoryTestedIt() {
    Tests tests = new Tests().add("A", "L", 0, 8, 1).add("A", "L", 9, 10, 1);
    tests.add("A", "M", 0, 8, 1);
    OverTime found = tests.look();
    assertEquals(1, found.laboratories().get(0).lots());
    assertEquals(1, found.again().size());
    assertEquals(9, found.again().get(0).daysLater().orElseThrow(), 1e-12);
  }

  @Test
  void aLaboratoryWithoutANameIsBesideNone() {
    OverTime found =
        new Tests()
            .add("A", "", 0, 8, 1)
            .add("A", " \u200B", 5, 8, 1)
            .add("A", "L", 9, 8, 1)
            .look();
    assertTrue(found.laboratories().isEmpty());
    assertEquals(1, found.lots().size(), "the lot's own course needs no name");
  }

  @Test
  void yearsOfAFieldAreOneSeriesAndOtherCuttingsAnother() {
    OverTime found =
        new Tests()
            .field("A24", "Long Acre", "1", 2024, 9, 0.5)
            .field("A25", "long  acre", "1", 2025, 10, 0.5)
            .field("B25", "Long Acre", "1", 2025, 11, 0.5)
            .field("A26", "Long Acre", "1", 2026, 12, 0.5)
            .field("A26-2", "Long Acre", "2", 2026, 15, 0.5)
            .field("X", "", "1", 2024, 9, 0.5)
            .field("Y", "", "1", 2025, 9, 0.5)
            .look();
    assertEquals(1, found.fields().size());
    FieldCourse course = found.fields().get(0);
    assertEquals(List.of(2024, 2025, 2026), course.years().stream().map(YearValue::year).toList());
    assertEquals(10.5, course.years().get(1).value(), 1e-12);
    assertEquals(0.5 * Math.sqrt(2) / 2, course.years().get(1).u(), 1e-12);
    assertEquals(3, course.change(), 1e-12);
    // 9, 10.5, 12 lie on a line: no scatter is left
    assertEquals(Course.RISING, course.course());
  }

  @Test
  void yearsThatScatterAreNoTrendHoweverSmallTheErrorsOfTheTests() {
    FieldCourse course =
        new Tests()
            .field("A", "Hag", "1", 2024, 9, 0.1)
            .field("B", "Hag", "1", 2025, 14, 0.1)
            .field("C", "Hag", "1", 2026, 12, 0.1)
            .look()
            .fields()
            .get(0);
    assertEquals(Course.SCATTERED, course.course());
  }

  @Test
  void namesOfLaboratoriesThatDifferInCaseSpacesOrUnseenSignsAreOne() {
    assertEquals(Laboratory.key("Brook Vale"), Laboratory.key("  BROOK\u00A0\tvale\u200B "));
    assertEquals(Laboratory.key("Brook Vale"), Laboratory.key("\u202EBrook Vale\u202C"));
    assertFalse(Laboratory.key("Brook Vale").equals(Laboratory.key("Brook Dale")));
    assertFalse(Laboratory.of("\u0000\u200B \r\n").isNamed());
    Laboratories spelled = new Laboratories(List.of("BROOK VALE", "Brook Vale", "Brook Vale"));
    assertEquals("Brook Vale", spelled.get("brook vale").name());
  }

  @Test
  void rulesThatWouldSayTooMuchAreRefused() {
    List<AnalyteCode> one = List.of(AnalyteCode.WSC);
    assertThrows(IllegalArgumentException.class, () -> new OverTimeRules(List.of(), 5, 3, 3, 0.05));
    assertThrows(IllegalArgumentException.class, () -> new OverTimeRules(one, 1, 3, 3, 0.05));
    assertThrows(IllegalArgumentException.class, () -> new OverTimeRules(one, 5, 2, 3, 0.05));
    assertThrows(IllegalArgumentException.class, () -> new OverTimeRules(one, 5, 3, 2, 0.05));
    assertThrows(IllegalArgumentException.class, () -> new OverTimeRules(one, 5, 3, 3, 0));
  }
}
