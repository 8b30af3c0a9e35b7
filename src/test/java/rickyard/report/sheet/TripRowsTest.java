package rickyard.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.core.advice.TripLine;
import rickyard.core.advice.TripPlan;
import rickyard.report.text.Languages;
import rickyard.report.text.Mass;

/** A horse that leaves on 18 March: two days of a step, a day away. */
class TripRowsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  private static TripLine line(int day, String phase, String item, double kg) {
    return new TripLine(
        DAY.plusDays(day), phase, item, kg, "", item, item.equals("HAY") ? "grass-hay" : "salt");
  }

  private static HorseAdvice horse() {
    List<TripLine> lines =
        List.of(
            line(0, TripLine.BEFORE, "HAY", 8),
            line(0, TripLine.BEFORE, "SALT", 0.03),
            line(1, TripLine.BEFORE, "HAY", 8),
            line(1, TripLine.BEFORE, "SALT", 0.03),
            line(2, TripLine.AWAY, "HAY", 6),
            line(2, TripLine.AWAY, "SALT", 0.03));
    return new HorseAdvice(
        "h",
        "c",
        List.of(),
        Priority.NOTE,
        "why",
        "",
        null,
        null,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        false,
        true,
        List.of(),
        new TripPlan(DAY.plusDays(2), DAY.plusDays(2), lines, List.of()));
  }

  private static Optional<TripRows> rows(Course course, int day) {
    return TripRows.of(horse(), course, DAY.plusDays(day), Map.of());
  }

  @Test
  void whatIsFedIsThatOfTheDay() {
    assertEquals(8, rows(Course.KEEP, 0).orElseThrow().on(DAY).get(0).kg(), 0);
    assertEquals(6, rows(Course.KEEP, 2).orElseThrow().on(DAY.plusDays(2)).get(0).kg(), 0);
  }

  @Test
  void onlyWhatMovesHasAColumnAndEqualDaysStandTogether() {
    TripRows rows = rows(Course.BORDERLINE, 0).orElseThrow();
    Voice voice =
        new Voice(new Languages(new TreeMap<>()).of("en"), Mass.KG, "Hazel", "Ash Yard", "", "");

    assertEquals(List.of("HAY"), rows.moving().stream().map(Given::item).toList());
    assertEquals(
        List.of("16 March 2026 to 17 March 2026", "18 March 2026"),
        rows.steps(voice).stream().map(HorsePaper.Step::days).toList());
  }

  @Test
  void aDayOutsideThePlanAndADietThatMustChangeHaveNone() {
    assertTrue(rows(Course.KEEP, 3).isEmpty());
    assertTrue(rows(Course.CHANGE, 0).isEmpty());
    assertTrue(rows(Course.MISSING, 0).isEmpty());
  }
}
