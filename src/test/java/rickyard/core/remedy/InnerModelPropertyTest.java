package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What must hold of the optimum of any support: seeded random ones of one to four items. */
class InnerModelPropertyTest {
  private static final long SEED = 88_000;
  private static final int CASES = 400;
  private static final double TIE = 1e-7;

  private static Optional<Double> optimum(RemedyRequest request, MixSpec spec) {
    return new MixModel(request, spec).solve().map(x -> new SecondModel(request, spec).value(x));
  }

  private static RemedyRequest with(
      RemedyRequest r, List<DietLimit> limits, List<MealLimit> meals, MassUnit units) {
    return new RemedyRequest(
        r.horse(),
        r.ration(),
        List.of(),
        r.reach(),
        limits,
        meals,
        r.intake(),
        r.needs(),
        units,
        r.settings(),
        r.check());
  }

  private static DietLimit looser(DietLimit l) {
    double value = l.isMaximum() ? l.value() * 1.08 : l.value() * 0.92;
    return new DietLimit(
        l.id(), l.quantity(), l.words(), value, l.isMaximum(), l.z() * 0.9, l.isAskedWhenMissing());
  }

  private static void isNoWorse(String where, Optional<Double> before, Optional<Double> after) {
    if (before.isPresent()) {
      assertTrue(after.isPresent(), where);
      assertTrue(after.get() <= before.get() + TIE * Math.max(1, before.get()), where);
    }
  }

  @Test
  void aLooserLimitNeverCostsMore() {
    int cheaper = 0;
    int opened = 0;
    for (int i = 0; i < CASES; i++) {
      RandomSupport s = new RandomSupport(SEED + i);
      RemedyRequest r = s.request();
      RemedyRequest loose =
          with(
              r,
              r.dietLimits().stream().map(InnerModelPropertyTest::looser).toList(),
              r.mealLimits().stream()
                  .map(
                      m ->
                          new MealLimit(m.id(), m.quantity(), m.words(), m.maxGrams() * 1.1, m.z()))
                  .toList(),
              r.units());
      Optional<Double> before = optimum(r, s.spec());
      Optional<Double> after = optimum(loose, s.spec());
      isNoWorse("seed " + (SEED + i), before, after);
      opened += before.isEmpty() && after.isPresent() ? 1 : 0;
      cheaper += before.isPresent() && after.get() < before.get() - 1e-3 ? 1 : 0;
    }
    assertTrue(cheaper > CASES / 20 && opened > CASES / 50, cheaper + " cheaper, " + opened);
  }

  @Test
  void oneMoreItemNeverMakesTheBestWorse() {
    int cheaper = 0;
    for (int i = 0; i < CASES; i++) {
      RandomSupport s = new RandomSupport(SEED + i);
      List<FreeItem> free = s.spec().free();
      FreeItem last = free.get(free.size() - 1);
      boolean mayGo = free.size() > 1 && last.leastDmKg() <= 0;
      if (!mayGo) {
        continue;
      }
      // the smaller support keeps the last item at what is fed today, where the larger may choose
      double today = s.request().todayDmKg(last);
      MixSpec smaller = s.spec().with(free.size() - 1, last.between(today, today));
      Optional<Double> before =
          today <= last.mostDmKg() ? optimum(s.request(), smaller) : Optional.empty();
      Optional<Double> after = optimum(s.request(), s.spec());
      isNoWorse("seed " + (SEED + i), before, after);
      cheaper +=
          (before.isEmpty() && after.isPresent())
                  || (before.isPresent() && after.get() < before.get() - 1e-3)
              ? 1
              : 0;
    }
    assertTrue(cheaper > CASES / 20, "cheaper " + cheaper);
  }

  @Test
  void kilogramsAndPoundsHaveTheSameOptimum() {
    List<double[]> kg = new ArrayList<>();
    List<double[]> lb = new ArrayList<>();
    for (int i = 0; i < CASES; i++) {
      RandomSupport s = new RandomSupport(SEED + i);
      RemedyRequest r = s.request();
      new MixModel(r, s.spec()).solve().ifPresent(kg::add);
      new MixModel(with(r, r.dietLimits(), r.mealLimits(), MassUnit.LB), s.spec())
          .solve()
          .ifPresent(lb::add);
    }
    assertEquals(kg.size(), lb.size());
    for (int i = 0; i < kg.size(); i++) {
      assertTrue(java.util.Arrays.equals(kg.get(i), lb.get(i)), "case " + i);
    }
  }
}
