package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What holds for every changeover: seeded random pairs of rations. */
class ChangeoverPropertyTest {
  private static final long SEED = 20261125L;
  private static final int PAIRS = 300;

  private static double between(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static Serving hay(Random random, String id) {
    return Serving.ofForage(Yard.lot(id, 9, 1, between(random, 0.5, 0.92)), between(random, 1, 14));
  }

  @Test
  void noDayFallsBelowTheFloorThatBothEndsReachAndTheLastDayIsTheProposal() {
    Random random = new Random(SEED);
    int roundedBelow = 0;
    for (int i = 0; i < PAIRS; i++) {
      Serving old = hay(random, "OLD");
      Serving fresh = hay(random, "NEW");
      double floor = Math.min(old.dmKg(), fresh.dmKg());
      MassUnit unit = random.nextBoolean() ? MassUnit.KG : MassUnit.LB;
      ChangeoverPlan plan = plan(old, fresh, floor, unit);
      ChangeoverPlan free = plan(old, fresh, 0, unit);
      String where = "seed " + SEED + ", pair " + i;
      for (ChangeoverDay day : plan.days()) {
        assertTrue(day.forageDmKg() >= floor - 1e-9, where + ", day " + day.day());
        assertEquals(2, day.amounts().size(), where);
      }
      if (free.days().stream().anyMatch(d -> d.forageDmKg() < floor - 1e-9)) {
        roundedBelow++;
      }
      ChangeoverDay last = plan.days().get(plan.days().size() - 1);
      assertEquals(1.0, last.share(), 0, where);
      assertEquals(fresh.dmKg(), last.forageDmKg(), 0, where);
    }
    assertTrue(roundedBelow > 10, "rounding alone must dip below for the test to mean anything");
  }

  private static ChangeoverPlan plan(Serving old, Serving fresh, double floor, MassUnit unit) {
    return Changeover.plan(
        new ChangeoverRequest(
            List.of(old),
            List.of(fresh),
            new TreeSet<>(),
            floor,
            false,
            true,
            false,
            unit,
            Yard.SETTINGS));
  }
}
