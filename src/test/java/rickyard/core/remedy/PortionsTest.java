package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A change gives of each item none, or as much as a person troubles to weigh out. */
class PortionsTest {
  /** Half a kilogram of hay a day for a 500-kg horse, from {@code config/remedy.csv}. */
  private static final double LEAST_HAY_KG = 0.5;

  private static final Candidate OLD = Yard.lot("OLD", 11, 0.5);

  @Test
  void theTableSaysHalfAKilogramOfHayForA500KgHorse() {
    assertEquals(LEAST_HAY_KG, Yard.SETTINGS.leastPortions().kg("grass-hay", true, 500), 1e-12);
    assertEquals(0.1, Yard.SETTINGS.leastPortions().kg("concentrate", false, 500), 1e-12);
    assertEquals(0, Yard.SETTINGS.leastPortions().kg("salt", false, 500), 0);
  }

  /** With z = 0 the least share of LOW is 0.2/9.85 = 2 % of 10 kg, by the mean of a mix. */
  @Test
  void aShareTooSmallToWeighIsRaisedToTheLeastPortion() {
    var spec = spec(500, Yard.lot("LOW", 0, 0), 9.65);

    double[] exact = new Workbench(spec.request).exact(spec.spec).orElseThrow().dmKg();
    Draft best = new Workbench(spec.request).best(spec.spec).orElseThrow();

    assertTrue(exact[0] > 0 && exact[0] < 0.3 * 0.88, "the convex optimum is " + exact[0]);
    assertTrue(best.kgOf(spec.low) >= LEAST_HAY_KG - 1e-9, "" + best.kgOf(spec.low));
    assertTrue(best.diet().isEnough());
  }

  /** All but 2 % of the hay has to go: the rest goes too. */
  @Test
  void aRestTooSmallToWeighIsLeftOut() {
    Candidate high = Yard.lot("HIGH", 30, 0);
    Candidate low = Yard.lot("LOW", 9.6, 0);
    RemedyRequest request =
        Yard.request(
            Yard.horse(500),
            List.of(Serving.ofForage(high, 10)),
            List.of(low),
            Yard.nscLimit(10, 0));
    MixSpec spec =
        new MixSpec(
            List.of(
                new FreeItem(low, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY),
                new FreeItem(high, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY)),
            List.of(),
            OptionalDouble.of(8.8),
            false);

    double[] exact = new Workbench(request).exact(spec).orElseThrow().dmKg();
    Draft best = new Workbench(request).best(spec).orElseThrow();

    assertTrue(exact[1] > 0.1 && exact[1] < LEAST_HAY_KG * 0.88, "" + exact[1]);
    assertEquals(0, best.kgOf(high), 0);
    assertEquals(10, best.kgOf(low), 1e-9);
  }

  @Test
  void whatIsFedTodayIsNeverTooLittle() {
    Candidate pinch = Yard.lot("PINCH", 5, 0);
    RemedyRequest request =
        Yard.request(
            Yard.horse(500),
            List.of(Serving.ofForage(OLD, 10), Serving.ofForage(pinch, 0.2)),
            List.of(),
            Yard.nscLimit(10, 0));
    Portions portions = new Portions(request);
    FreeItem item = new FreeItem(pinch, true, OptionalInt.empty(), 0, 5);

    assertTrue(portions.isPractical(item, 0.2 * 0.88));
    assertTrue(portions.isPractical(item, 0));
    assertFalse(portions.isPractical(item, 0.1 * 0.88));
    assertEquals(0.2 * 0.88, portions.leastDmKg(item), 1e-12);
  }

  /** An item without the analysis that a limit asks for may go, but no crumb of it may be added. */
  @Test
  void nothingIsLeftOfHayThatNobodyAnalysed() {
    Candidate unknown = without(Yard.lot("UNKNOWN", 0, 0));
    RemedyRequest request =
        Yard.request(
            Yard.horse(500),
            List.of(Serving.ofForage(unknown, 10)),
            List.of(Yard.lot("LOW", 7, 0.8), Yard.controlled("BAG", 7, 0.4)),
            Yard.nscLimit(10, 1.645));

    for (Remedy remedy : RemedySearch.search(request)) {
      if (remedy.isEnough()) {
        assertTrue(
            remedy.then().stream().noneMatch(a -> a.item().id().equals("UNKNOWN")), remedy.why());
      }
    }
  }

  @Test
  void noProposalOfRandomYardsHasAPortionBelowTheLeast() {
    SplittableRandom random = new SplittableRandom(20260316);
    int seen = 0;
    for (int i = 0; i < 40; i++) {
      RemedyRequest request = random(random);
      for (Remedy remedy : RemedySearch.search(request)) {
        if (!remedy.isEnough()) {
          continue;
        }
        for (Serving a : remedy.then()) {
          double today = request.todayKg(a.item());
          boolean isToday = Math.abs(a.kg() - today) < 1e-9;
          double least = new Portions(request).leastKg(a.item(), a.fedAsForage());
          assertTrue(isToday || a.kg() >= least - 1e-6, i + ": " + a + " in " + remedy.why());
          seen++;
        }
      }
    }
    assertTrue(seen > 100, "only " + seen + " amounts");
  }

  @Test
  void aTableWithoutALeastPortionOfForageIsRefused() {
    var e =
        assertThrows(
            IllegalArgumentException.class,
            () -> new LeastPortions(new TreeMap<>(Map.of("", 0.1))));

    assertEquals("no least portion of forage or of every other item", e.getMessage());
  }

  private static RemedyRequest random(SplittableRandom random) {
    double bodyWeight = 90 + random.nextInt(600);
    double hayKg = Math.rint(bodyWeight * 0.2) / 10;
    return Yard.request(
        Yard.horse(bodyWeight),
        List.of(
            Serving.ofForage(Yard.lot("OLD", 10 + 5 * random.nextDouble(), 1), hayKg),
            Yard.bucket(Yard.balancer("BAL"), 0.3, 2)),
        List.of(
            Yard.lot("A", 6 + 5 * random.nextDouble(), 0.8),
            Yard.lot("B", 6 + 5 * random.nextDouble(), 1.2),
            Yard.controlled("BAG", 6 + 3 * random.nextDouble(), 0.4)),
        Yard.nscLimit(10, 0.8416));
  }

  private record Given(RemedyRequest request, MixSpec spec, Candidate low) {}

  private static Given spec(double bodyWeight, Candidate low, double limit) {
    Candidate high = Yard.lot("HIGH", limit + 0.2, 0);
    RemedyRequest request =
        Yard.request(
            Yard.horse(bodyWeight),
            List.of(Serving.ofForage(high, 10)),
            List.of(low),
            Yard.nscLimit(limit, 0));
    MixSpec spec =
        new MixSpec(
            List.of(
                new FreeItem(low, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY),
                new FreeItem(high, true, OptionalInt.empty(), 0, Double.POSITIVE_INFINITY)),
            List.of(),
            OptionalDouble.of(8.8),
            false);
    return new Given(request, spec, low);
  }

  private static Candidate without(Candidate c) {
    return new Candidate(
        c.id(),
        c.batch(),
        c.name(),
        c.kind(),
        c.role(),
        c.form(),
        c.isForage(),
        c.isStraw(),
        c.dryMatterFraction(),
        new TreeMap<>(),
        c.nutrientsPerKgDm(),
        c.stock(),
        c.label());
  }
}
