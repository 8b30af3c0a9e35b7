package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ChangeoverTest {
  private static final Serving OLD = Serving.ofForage(Yard.lot("OLD", 11, 1), 10);
  private static final Serving NEW = Serving.ofForage(Yard.lot("NEW", 7, 1), 10);
  private static final Serving SALT =
      Yard.bucket(
          Yard.item("SALT", CandidateKind.FEED, "salt", "meal", false, 0.99, 0, 0, Label.NONE),
          0.03,
          2);

  private static ChangeoverPlan plan(
      boolean exceeds, boolean isGone, double floor, String... conditions) {
    return Changeover.plan(
        new ChangeoverRequest(
            List.of(OLD, SALT),
            List.of(NEW, SALT),
            new TreeSet<>(List.of(conditions)),
            floor,
            exceeds,
            true,
            isGone,
            MassUnit.KG,
            Yard.SETTINGS));
  }

  /** Quarters at days 1-4, 5-8, 9-12 and all from day 13: texts on changing hay, secondary. */
  @Test
  void quartersOverTwelveDaysThenAll() {
    ChangeoverPlan plan = plan(false, false, 0);

    assertTrue(plan.isStepwise());
    assertEquals(13, plan.days().size());
    assertEquals(
        List.of(.25, .25, .25, .25, .5, .5, .5, .5, .75, .75, .75, .75, 1.0),
        plan.days().stream().map(ChangeoverDay::share).toList());
    assertEquals(2.5, kg(plan.days().get(0), "NEW"), 1e-9);
    assertEquals(7.5, kg(plan.days().get(0), "OLD"), 1e-9);
    assertEquals(10, kg(plan.days().get(12), "NEW"), 0);
    assertEquals(0, kg(plan.days().get(12), "OLD"), 0);
  }

  @Test
  void everyItemStandsOnEveryDayUnchangedOnesToo() {
    for (ChangeoverDay day : plan(false, false, 0).days()) {
      assertEquals(
          List.of("NEW", "OLD", "SALT"), day.amounts().stream().map(s -> s.item().id()).toList());
      assertEquals(0.03, kg(day, "SALT"), 0);
    }
  }

  @Test
  void dentalHorsesTakeLonger() {
    assertEquals(22, plan(false, false, 0, "dental").days().size());
  }

  @Test
  void aLotThatExceedsIsNotPhasedOutSlowlyAndTheVetIsAskedFirst() {
    ChangeoverPlan plan = plan(true, false, 0);

    assertFalse(plan.isStepwise());
    assertEquals(1, plan.days().size());
    assertTrue(plan.words().get(0).startsWith("Ask the vet first"), plan.words().toString());
  }

  @Test
  void hyppAlwaysPhasesInAndAsksTheVet() {
    ChangeoverPlan plan = plan(true, false, 0, "hypp");

    assertTrue(plan.isStepwise());
    assertTrue(plan.words().get(0).startsWith("HYPP"), plan.words().toString());
  }

  @Test
  void whereTheOldForageIsGoneNoChangeoverIsPossible() {
    ChangeoverPlan plan = plan(false, true, 0);

    assertEquals(1, plan.days().size());
    assertEquals(10, kg(plan.days().get(0), "NEW"), 0);
    assertTrue(plan.words().get(0).contains("No changeover is possible"), plan.words().toString());
  }

  @Test
  void noDayFallsBelowTheForageFloor() {
    ChangeoverPlan plan = plan(false, false, 8.8);

    plan.days().forEach(d -> assertTrue(d.forageDmKg() >= 8.8 - 1e-9, "day " + d.day()));
    assertEquals(10, kg(plan.days().get(12), "NEW"), 0);
  }

  @Test
  void aChangeInTheBucketAloneIsMadeAtOnce() {
    ChangeoverPlan plan =
        Changeover.plan(
            new ChangeoverRequest(
                List.of(OLD, SALT),
                List.of(OLD),
                new TreeSet<>(),
                0,
                false,
                true,
                false,
                MassUnit.KG,
                Yard.SETTINGS));

    assertEquals(1, plan.days().size());
    assertTrue(plan.words().isEmpty());
  }

  private static ChangeoverPlan with(Stock oldStock, boolean exceeds) {
    return Changeover.plan(
        new ChangeoverRequest(
            List.of(Serving.ofForage(Yard.with(OLD.item(), oldStock), 10), SALT),
            List.of(NEW, SALT),
            new TreeSet<>(),
            8.8,
            exceeds,
            true,
            false,
            MassUnit.KG,
            Yard.SETTINGS));
  }

  private static Stock stock(double kg, double others) {
    return new Stock(OptionalDouble.of(kg), others, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** 4 x 7.5 + 4 x 5 + 4 x 2.5 = 60 kg of the old hay are needed; with 40 it lasts to day 6. */
  @Test
  void whereTheOldHayRunsOutTheNewOneTakesItsPlaceFromThatDay() {
    ChangeoverPlan plan = with(stock(40, 0), false);

    assertEquals(13, plan.days().size());
    double used = plan.days().stream().mapToDouble(d -> kg(d, "OLD")).sum();
    assertTrue(used <= 40 + 1e-9, "" + used);
    assertEquals(
        List.of(7.5, 5.0), List.of(kg(plan.days().get(3), "OLD"), kg(plan.days().get(5), "OLD")));
    assertEquals(0, kg(plan.days().get(6), "OLD"), 0);
    assertEquals(10, kg(plan.days().get(6), "NEW"), 0);
    plan.days().forEach(d -> assertTrue(d.forageDmKg() >= 8.8 - 1e-9, "day " + d.day()));
    assertTrue(plan.words().get(0).contains("from day 7"), plan.words().toString());
  }

  @Test
  void whatOtherHorsesTakeOfTheOldHayIsNotThereForTheSteps() {
    ChangeoverPlan alone = with(stock(60, 0), false);
    ChangeoverPlan shared = with(stock(60, 5), false);

    assertTrue(alone.words().isEmpty(), alone.words().toString());
    assertTrue(shared.words().get(0).contains("does not last"), shared.words().toString());
  }

  @Test
  void withoutAnythingOfTheOldHayNoChangeoverIsPossible() {
    ChangeoverPlan plan = with(stock(0, 0), true);

    assertEquals(1, plan.days().size());
    assertTrue(plan.words().get(0).contains("No changeover is possible"), plan.words().toString());
  }

  private static double kg(ChangeoverDay day, String id) {
    return day.amounts().stream()
        .filter(s -> s.item().id().equals(id))
        .mapToDouble(Serving::kg)
        .sum();
  }
}
