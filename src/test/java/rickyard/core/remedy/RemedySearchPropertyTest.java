package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What must hold for every office: seeded random ones. */
class RemedySearchPropertyTest {
  private static final long SEED = 20261125L;
  private static final int OFFICES = 60;
  private static final int LOOSER = Integer.getInteger("rickyard.offices", 150);
  private static final double TIE = 1e-7;

  /** Half of what is told apart before rounding. */
  private static final double LEAST_TOLD = 1e-6;

  private static double between(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static List<Candidate> lots(Random random, int count) {
    List<Candidate> lots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Candidate lot =
          Yard.lot(
              "L" + i,
              between(random, 5, 15),
              between(random, 0.5, 1.8),
              between(random, 0.6, 0.92));
      lots.add(
          random.nextInt(3) == 0
              ? Yard.with(
                  lot,
                  new Stock(
                      OptionalDouble.of(between(random, 50, 1500)),
                      between(random, 0, 5),
                      OptionalDouble.of(20),
                      OptionalDouble.of(between(random, 0.1, 0.4))))
              : lot);
    }
    return lots;
  }

  private static RemedyRequest office(Random random) {
    double bodyWeight = between(random, 120, 700);
    List<Candidate> reach = lots(random, random.nextInt(5));
    if (random.nextBoolean()) {
      reach.add(Yard.controlled("BAG", between(random, 5, 9), 0.4));
    }
    List<Serving> ration = new ArrayList<>();
    Candidate hay = Yard.lot("HAY", between(random, 9, 17), between(random, 0.6, 1.6));
    ration.add(Serving.ofForage(hay, between(random, 0.012, 0.028) * bodyWeight));
    if (random.nextBoolean()) {
      ration.add(Yard.bucket(Yard.balancer("BAL"), 0.5 * bodyWeight / 500, 1 + random.nextInt(3)));
    }
    if (random.nextInt(3) == 0) {
      Candidate grain =
          Yard.item(
              "GRAIN",
              CandidateKind.FEED,
              "concentrate",
              "meal",
              false,
              0.88,
              between(random, 12, 55),
              2,
              Label.NONE);
      ration.add(Yard.bucket(grain, between(random, 0.2, 2), 2));
    }
    MealLimit meal = new MealLimit("meal", Yard.NSC, "NSC", 0.1 * bodyWeight, 0);
    double z = List.of(0.0, 0.8416, 1.282, 1.645, 1.96).get(random.nextInt(5));
    return Yard.request(
        Yard.horse(bodyWeight),
        ration,
        reach,
        List.of(Yard.nscLimit(between(random, 8, 12), z)),
        random.nextBoolean() ? List.of(meal) : List.of(),
        List.of(),
        random.nextBoolean() ? MassUnit.KG : MassUnit.LB);
  }

  private static Stream<RemedyRequest> offices() {
    Random random = new Random(SEED);
    return Stream.generate(() -> office(random)).limit(OFFICES);
  }

  @Test
  void everyProposalCalledEnoughPassesTheCheckAgain() {
    int[] enough = {0};
    offices()
        .forEach(
            office -> {
              for (Remedy r : RemedySearch.search(office)) {
                if (r.isEnough()) {
                  enough[0]++;
                  assertTrue(
                      office.check().check(r.then()).isEnough(), "seed " + SEED + ": " + r.why());
                  assertEquals(
                      r.then().stream().mapToDouble(Serving::kg).sum(),
                      r.items().stream().mapToDouble(RemedyItem::thenKg).sum(),
                      1e-9);
                }
              }
            });
    assertTrue(enough[0] > OFFICES / 2, "the generator must make solvable offices: " + enough[0]);
  }

  @Test
  void theSearchAlwaysSaysSomethingWhereTheRationIsNotEnough() {
    offices()
        .filter(o -> !o.check().check(o.ration()).isEnough())
        .forEach(o -> assertTrue(!RemedySearch.search(o).isEmpty(), "seed " + SEED));
  }

  @Test
  void everythingWeighedIsAStepOfTheScaleOrAsToday() {
    offices()
        .forEach(
            office ->
                RemedySearch.search(office).stream()
                    .flatMap(r -> r.items().stream())
                    .filter(i -> Math.abs(i.thenKg() - i.nowKg()) > 1e-9)
                    .forEach(
                        i ->
                            assertEquals(
                                i.thenKg(),
                                office.steps().nearestKg(i.thenKg()),
                                1e-9,
                                "seed " + SEED + ": " + i)));
  }

  private static MixSpec pair(RemedyRequest request, Candidate a, Candidate b) {
    double target = request.ration().get(0).dmKg();
    return new MixSpec(
        List.of(
            new FreeItem(a, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY),
            new FreeItem(b, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY)),
        request.ration().subList(1, request.ration().size()),
        OptionalDouble.of(target),
        false);
  }

  private static Optional<Double> change(RemedyRequest request, MixSpec spec) {
    return new MixModel(request, spec).solve().map(x -> request.changeDmKg(spec.ration(x)));
  }

  private static RemedyRequest withLimit(RemedyRequest r, DietLimit limit) {
    return Yard.request(
        r.horse(), r.ration(), r.reach(), List.of(limit), List.of(), r.needs(), r.units());
  }

  @Test
  void aLooserLimitNeverCostsMoreChange() {
    Random random = new Random(SEED);
    for (int i = 0; i < OFFICES; i++) {
      RemedyRequest office = office(random);
      Candidate other = Yard.lot("X", between(random, 4, 12), between(random, 0, 1.5));
      MixSpec spec = pair(office, office.ration().get(0).item(), other);
      double limit = between(random, 7, 12);
      double z = between(random, 0, 2);
      Optional<Double> tight = change(withLimit(office, Yard.nscLimit(limit, z)), spec);
      Optional<Double> loose =
          change(withLimit(office, Yard.nscLimit(limit + random.nextDouble(), z * 0.9)), spec);
      if (tight.isPresent()) {
        assertTrue(loose.isPresent(), "seed " + SEED + ", office " + i);
        assertTrue(loose.get() <= tight.get() + TIE, "seed " + SEED + ", office " + i);
      }
    }
  }

  @Test
  void anotherLotInReachNeverMakesTheBestWorse() {
    Random random = new Random(SEED);
    for (int i = 0; i < OFFICES; i++) {
      RemedyRequest office = office(random);
      List<Candidate> more = new ArrayList<>(office.reach());
      more.add(Yard.lot("X", between(random, 4, 14), between(random, 0, 1.5)));
      RemedyRequest richer =
          Yard.request(
              office.horse(),
              office.ration(),
              more,
              office.dietLimits(),
              office.mealLimits(),
              office.needs(),
              office.units());
      for (boolean frees : new boolean[] {false, true}) {
        String where = "seed " + SEED + ", office " + i;
        isNoWorse(
            new ForageProposals(office, frees).swap(),
            new ForageProposals(richer, frees).swap(),
            where);
        isNoWorse(
            new ForageProposals(office, frees).blend(),
            new ForageProposals(richer, frees).blend(),
            where);
      }
    }
  }

  @Test
  void aLooserLimitNeverMakesTheBestInWeighableAmountsWorse() {
    Random random = new Random(SEED);
    int cheaper = 0;
    for (int i = 0; i < LOOSER; i++) {
      RemedyRequest office = office(random);
      DietLimit limit = office.dietLimits().get(0);
      RemedyRequest loose =
          Yard.request(
              office.horse(),
              office.ration(),
              office.reach(),
              List.of(Yard.nscLimit(limit.value() * between(random, 1, 1.2), limit.z())),
              office.mealLimits(),
              office.needs(),
              office.units());
      String where = "seed " + SEED + ", office " + i;
      for (boolean frees : new boolean[] {false, true}) {
        ForageProposals tight = new ForageProposals(office, frees);
        ForageProposals wide = new ForageProposals(loose, frees);
        isNoWorse(tight.swap(), wide.swap(), where);
        isNoWorse(tight.blend(), wide.blend(), where);
        for (Candidate c : tight.controlled()) {
          Optional<Draft> before = tight.leastShare(c);
          Optional<Draft> after = wide.leastShare(c);
          // what the bucket or more of the same settles asks for no other forage
          if (isForageAsked(loose)) {
            isNoWorseButForTheDose(before, after, where);
            cheaper += score(after) < score(before) - 1e-3 ? 1 : 0;
          }
        }
      }
    }
    assertTrue(cheaper > LOOSER / 20, "cheaper " + cheaper);
  }

  private static boolean isForageAsked(RemedyRequest request) {
    return !request.check().check(request.ration()).uncleared().isEmpty()
        && new BucketProposals(request).best().isEmpty();
  }

  /** The balancer's dose follows the share of a fortified bag in steps, so that a step may jump. */
  private static void isNoWorseButForTheDose(
      Optional<Draft> before, Optional<Draft> after, String where) {
    if (before.isPresent() && before.get().diet().isEnough()) {
      assertTrue(after.isPresent() && after.get().diet().isEnough(), where);
      boolean hasDose = before.get().ration().stream().anyMatch(a -> a.item().isBalancer());
      double most = before.get().score() * (hasDose ? 1.05 : 1) + TIE;
      assertTrue(after.get().score() <= most, where);
    }
  }

  private static double score(Optional<Draft> draft) {
    return draft.filter(d -> d.diet().isEnough()).map(Draft::score).orElse(Double.MAX_VALUE);
  }

  private static void isNoWorse(Optional<Draft> before, Optional<Draft> after, String where) {
    if (before.isPresent() && before.get().diet().isEnough()) {
      assertTrue(after.isPresent() && after.get().diet().isEnough(), where);
      assertTrue(after.get().ideal() <= before.get().ideal() + LEAST_TOLD, where);
    }
  }

  @Test
  void kilogramsAndPoundsHaveTheSameOptimumBeforeRounding() {
    Random random = new Random(SEED);
    for (int i = 0; i < OFFICES; i++) {
      RemedyRequest kg = office(random);
      RemedyRequest lb =
          Yard.request(
              kg.horse(),
              kg.ration(),
              kg.reach(),
              kg.dietLimits(),
              kg.mealLimits(),
              kg.needs(),
              kg.units() == MassUnit.KG ? MassUnit.LB : MassUnit.KG);
      MixSpec spec = pair(kg, kg.ration().get(0).item(), Yard.lot("X", 6, 0.7));
      assertEquals(change(kg, spec), change(lb, spec), "seed " + SEED + ", office " + i);
    }
  }

  /** A thousand shares tried one by one give the same share as the tangent cuts. */
  @Test
  void twoItemsOnAGridAgreeWithTheSearch() {
    Random random = new Random(SEED);
    int solved = 0;
    for (int i = 0; i < OFFICES; i++) {
      RemedyRequest office = office(random);
      Candidate hay = office.ration().get(0).item();
      Candidate other = Yard.lot("X", between(random, 4, 12), between(random, 0, 1.5));
      RemedyRequest alone =
          Yard.request(
              office.horse(),
              office.ration().subList(0, 1),
              List.of(),
              Yard.nscLimit(between(random, 8, 12), between(random, 0, 2)));
      double target = alone.ration().get(0).dmKg();
      Optional<double[]> found = new MixModel(alone, pair(alone, hay, other)).solve();
      double grid = -1;
      for (int step = 0; step <= 1000 && grid < 0; step++) {
        double p = step / 1000.0;
        if (clears(alone.dietLimits().get(0), hay, other, p)) {
          grid = p;
        }
      }
      String where = "seed " + SEED + ", office " + i;
      if (grid < 0) {
        assertTrue(found.isEmpty() || found.get()[1] / target > 0.999, where);
      } else {
        solved++;
        assertEquals(grid, found.orElseThrow()[1] / target, 0.001 + TIE, where);
      }
    }
    assertTrue(solved > OFFICES / 3, "solved " + solved);
  }

  private static boolean clears(DietLimit limit, Candidate a, Candidate b, double p) {
    Content ca = a.findContent(Yard.NSC).orElseThrow();
    Content cb = b.findContent(Yard.NSC).orElseThrow();
    double mean = (1 - p) * ca.value() + p * cb.value();
    double u = Math.hypot((1 - p) * ca.u(), p * cb.u());
    return mean + limit.z() * u <= limit.value();
  }

  @Test
  void theSameOfficeGivesTheSameAnswerWhateverTheOrderOfTheReach() {
    offices()
        .forEach(
            office -> {
              List<Candidate> turned = new ArrayList<>(office.reach());
              java.util.Collections.reverse(turned);
              RemedyRequest other =
                  Yard.request(
                      office.horse(),
                      office.ration(),
                      turned,
                      office.dietLimits(),
                      office.mealLimits(),
                      office.needs(),
                      office.units());
              assertEquals(RemedySearch.search(office), RemedySearch.search(other), "seed " + SEED);
            });
  }
}
