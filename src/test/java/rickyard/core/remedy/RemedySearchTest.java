package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.remedy.Yard.NSC;
import static rickyard.core.remedy.Yard.SETTINGS;
import static rickyard.core.remedy.Yard.balancer;
import static rickyard.core.remedy.Yard.bucket;
import static rickyard.core.remedy.Yard.controlled;
import static rickyard.core.remedy.Yard.horse;
import static rickyard.core.remedy.Yard.lot;
import static rickyard.core.remedy.Yard.nscLimit;
import static rickyard.core.remedy.Yard.request;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RemedySearchTest {
  private static final Candidate HIGH = lot("HIGH", 14, 1.2);

  private static List<Remedy> of(List<Remedy> remedies, RemedyKind kind) {
    return remedies.stream().filter(r -> r.kind() == kind).toList();
  }

  private static double kg(Remedy remedy, String id) {
    return remedy.items().stream()
        .filter(i -> i.item().id().equals(id))
        .mapToDouble(RemedyItem::thenKg)
        .sum();
  }

  private static double dm(Remedy remedy, String id) {
    return remedy.then().stream()
        .filter(a -> a.item().id().equals(id))
        .mapToDouble(Serving::dmKg)
        .sum();
  }

  @Test
  void aRationThatClearsNeedsNothing() {
    var ration = List.of(Serving.ofForage(lot("LOW", 7, 0.8), 10));

    assertTrue(
        RemedySearch.search(request(horse(500), ration, List.of(), nscLimit(10, 1.645))).isEmpty());
  }

  @Test
  void aLowLotIsSwappedInAtEqualDryMatter() {
    var ration = List.of(Serving.ofForage(HIGH, 10));
    var low = lot("LOW", 7, 0.8, 0.8);

    var found = RemedySearch.search(request(horse(500), ration, List.of(low), nscLimit(10, 1.645)));

    var swap = of(found, RemedyKind.SWAP).get(0);
    assertTrue(swap.isEnough(), swap.why());
    assertEquals(11, kg(swap, "LOW"), 0.25 + 1e-9);
    assertEquals(0, kg(swap, "HIGH"), 0);
    assertTrue(swap.why().contains("clears the chosen limit"), swap.why());
  }

  private static Candidate priced(Candidate lot, double pricePerKg) {
    return Yard.with(
        lot,
        new Stock(
            OptionalDouble.empty(), 0, OptionalDouble.empty(), OptionalDouble.of(pricePerKg)));
  }

  /** 10 kg at 88 % dry matter are 8.8 kg; 10.86 kg at 81 % round to 11.0, 10.11 at 87 % to 10.0. */
  @Test
  void betweenTwoLotsThatChangeTheSameThePriceDecidesAndNotTheStepOfTheScale() {
    var ration = List.of(Serving.ofForage(HIGH, 10));
    for (double dm : new double[] {0.81, 0.87}) {
      var cheap = priced(lot("B", 7, 0.8, dm), 0.1);
      var dear = priced(lot("A", 7, 0.8, dm > 0.85 ? 0.81 : 0.87), 0.3);

      var found =
          RemedySearch.search(
              request(horse(500), ration, List.of(dear, cheap), nscLimit(10, 1.645)));

      assertTrue(kg(of(found, RemedyKind.SWAP).get(0), "B") > 0, found.toString());
    }
  }

  @Test
  void everyShareOfControlledForageIsShownAlsoWhereItIsNotEnough() {
    var ration = List.of(Serving.ofForage(HIGH, 10));
    var found =
        RemedySearch.search(
            request(horse(500), ration, List.of(controlled("BAG", 7, 0.4)), nscLimit(10, 1.645)));

    var shares = of(found, RemedyKind.CONTROLLED);
    assertEquals(4, shares.size(), found.toString());
    assertEquals(2, shares.stream().filter(Remedy::isEnough).count());
    var notEnough = shares.stream().filter(r -> !r.isEnough()).toList();
    assertTrue(notEnough.stream().allMatch(r -> r.why().contains("not enough")));
    assertEquals(
        List.of(0.25, 0.5),
        notEnough.stream()
            .map(r -> Math.round(20 * dm(r, "BAG") / (dm(r, "BAG") + dm(r, "HIGH"))) / 20.0)
            .sorted()
            .toList());
    assertTrue(shares.get(0).why().contains("the least share"), shares.get(0).why());
  }

  /** "Stays on the present forage while it clears", with the days left = stock / use. */
  @Test
  void holdSaysHowLongThePresentForageLasts() {
    var old = Yard.with(lot("OLD", 7, 0.8), stock(200, 10));
    var ration = List.of(Serving.ofForage(HIGH, 10));
    var base = request(horse(500), ration, List.of(), nscLimit(10, 1.645));
    var withPresent = withPresent(base, List.of(Serving.ofForage(old, 10)));

    var hold = RemedySearch.search(withPresent).get(0);

    assertEquals(RemedyKind.HOLD, hold.kind());
    assertTrue(hold.isEnough());
    assertTrue(hold.why().contains("what is at the yard lasts 10 days"), hold.why());
    assertEquals(10, hold.items().get(0).daysOfStock().orElseThrow(), 1e-9);
  }

  private static Stock stock(double kg, double others) {
    return new Stock(OptionalDouble.of(kg), others, OptionalDouble.of(20), OptionalDouble.of(0.25));
  }

  private static RemedyRequest withPresent(RemedyRequest r, List<Serving> present) {
    return new RemedyRequest(
        r.horse(),
        r.ration(),
        present,
        r.reach(),
        r.dietLimits(),
        r.mealLimits(),
        r.intake(),
        r.needs(),
        r.units(),
        r.settings(),
        r.check());
  }

  @Test
  void aLotWhoseStockDoesNotLastIsNotEnoughForAll() {
    var ration = List.of(Serving.ofForage(HIGH, 10));
    var few = Yard.with(lot("FEW", 5, 0.5), stock(400, 5));

    var found = RemedySearch.search(request(horse(500), ration, List.of(few), nscLimit(10, 1.645)));

    double most = 400 / SETTINGS.stockHorizonDays() - 5;
    assertTrue(
        found.stream().allMatch(r -> kg(r, "FEW") <= most + 1e-9),
        "at most " + most + " kg a day: " + found);
  }

  @Test
  void aBlendIsForEveryFeedingOnly() {
    var ration = List.of(Serving.ofForage(HIGH, 10));
    var low = Yard.with(lot("LOW", 5, 0.5), stock(270, 0));

    var found = RemedySearch.search(request(horse(500), ration, List.of(low), nscLimit(10, 1.645)));

    var blend = of(found, RemedyKind.BLEND).get(0);
    assertTrue(blend.isEnough());
    assertTrue(blend.why().contains("only if it is mixed at every feeding"), blend.why());
    assertTrue(of(found, RemedyKind.SWAP).isEmpty(), "270 kg last 30 days at 9 kg only");
  }

  @Test
  void theBucketFeedThatBreaksTheMealLimitBecomesLess() {
    var grain =
        Yard.item(
            "GRAIN", CandidateKind.FEED, "concentrate", "meal", false, 0.9, 50, 2, Label.NONE);
    var ration = List.of(Serving.ofForage(lot("LOW", 7, 0.8), 10), bucket(grain, 1, 2));
    var meal = new MealLimit("meal", NSC, "NSC (WSC + starch)", 50, 0);

    var found =
        RemedySearch.search(
            request(
                horse(500),
                ration,
                List.of(),
                List.of(nscLimit(10, 0)),
                List.of(meal),
                List.of(),
                MassUnit.KG));

    var bucket = of(found, RemedyKind.BUCKET).get(0);
    assertTrue(bucket.isEnough());
    assertTrue(kg(bucket, "GRAIN") <= 50 * 2 / (0.9 * 500) + 1e-9, bucket.toString());
    assertTrue(kg(bucket, "GRAIN") > 0);
  }

  @Test
  void borderlineAloneProposesASecondTest() {
    var ration = List.of(Serving.ofForage(lot("NEAR", 9.4, 1), 10));

    var found = RemedySearch.search(request(horse(500), ration, List.of(), nscLimit(10, 1.645)));

    var retest = of(found, RemedyKind.RETEST).get(0);
    assertTrue(retest.why().contains("standard uncertainty of 0.36 or less"), retest.why());
    assertEquals(1, of(found, RemedyKind.NONE).size());
    assertTrue(
        of(
                RemedySearch.search(
                    request(
                        horse(500),
                        List.of(Serving.ofForage(HIGH, 10)),
                        List.of(),
                        nscLimit(10, 1.645))),
                RemedyKind.RETEST)
            .isEmpty(),
        "14 against 10 is no matter of a second test");
  }

  @Test
  void whereNothingIsEnoughTheConflictIsNamed() {
    var ration = List.of(Serving.ofForage(HIGH, 10));
    var found =
        RemedySearch.search(
            request(horse(500), ration, List.of(lot("ALSO", 12, 1)), nscLimit(10, 1.645)));

    var none = found.get(found.size() - 1);
    assertEquals(RemedyKind.NONE, none.kind());
    assertTrue(none.why().contains("NSC (WSC + starch) at most 10"), none.why());
    var swap = of(found, RemedyKind.SWAP).get(0);
    assertFalse(swap.isEnough());
    assertTrue(swap.why().contains("not enough"), swap.why());
  }

  @Test
  void aDentalHorseGetsWhatItCanChewFirst() {
    var ration = List.of(Serving.ofForage(HIGH, 10));
    var found =
        RemedySearch.search(
            request(
                horse(500, "dental"),
                ration,
                List.of(lot("LOW", 6, 0.5), controlled("BAG", 7, 0.4)),
                nscLimit(10, 1.645)));

    assertEquals(RemedyKind.CONTROLLED, found.get(0).kind());
    var swap = of(found, RemedyKind.SWAP).get(0);
    assertTrue(swap.why().contains("make sure that this horse can chew"), swap.why());
  }

  @Test
  void strawStaysBelowItsCap() {
    var straw =
        Yard.item("STRAW", CandidateKind.LOT, "straw", "long-stem", true, 0.9, 2, 0.5, Label.NONE);
    var found =
        RemedySearch.search(
            request(
                horse(500),
                List.of(Serving.ofForage(lot("MILD", 11, 0.8), 10)),
                List.of(straw),
                nscLimit(10, 1.645)));

    var blend = of(found, RemedyKind.BLEND).get(0);
    assertTrue(blend.isEnough());
    double share = dm(blend, "STRAW") / (dm(blend, "STRAW") + dm(blend, "MILD"));
    assertTrue(share <= 0.3 + 1e-9, "straw share " + share);
  }

  @Test
  void saltAndVitaminEAreAddedWhereTheyAreShort() {
    var salt =
        Yard.with(
            Yard.item("SALT", CandidateKind.FEED, "salt", "meal", false, 0.99, 0, 0, Label.NONE),
            Map.of("NA", 393.0));
    var e =
        Yard.with(
            Yard.item("E", CandidateKind.FEED, "supplement", "meal", false, 0.95, 5, 1, Label.NONE),
            Map.of("VIT_E", 20000.0));
    var needs = List.of(new NutrientNeed("NA", 10), new NutrientNeed("VIT_E", 500));

    var found =
        RemedySearch.search(
            request(
                horse(500),
                List.of(Serving.ofForage(HIGH, 10)),
                List.of(lot("LOW", 6, 0.5), salt, e),
                List.of(nscLimit(10, 1.645)),
                List.of(),
                needs,
                MassUnit.KG));

    var swap = of(found, RemedyKind.SWAP).get(0);
    assertTrue(swap.isEnough());
    // 10 g of sodium in salt of 393 g/kg: 25.4 g of salt (definition, molar masses), plus moisture
    assertEquals(0.0257, kg(swap, "SALT"), 0.005);
    assertTrue(kg(swap, "SALT") * 0.99 * 393 >= 10);
    assertEquals(500 / 20000.0 / 0.95, kg(swap, "E"), 0.005);
    assertEquals(Map.of(), swap.diet().orElseThrow().shortfalls());
  }

  @Test
  void theBalancerFollowsTheShareOfFortifiedForage() {
    var ration = List.of(Serving.ofForage(HIGH, 10), bucket(balancer("BAL"), 0.5, 2));
    var found =
        RemedySearch.search(
            request(horse(500), ration, List.of(controlled("BAG", 6, 0.4)), nscLimit(10, 0)));

    for (Remedy r : of(found, RemedyKind.CONTROLLED)) {
      double share = FortifiedShare.of(r.then(), 500);
      assertEquals(0.5 * (1 - share), kg(r, "BAL"), 0.05, r.why());
    }
  }

  @Test
  void bothHayAndBucketAreChangedWhereNeitherAloneIsEnough() {
    var grain =
        Yard.item(
            "GRAIN", CandidateKind.FEED, "concentrate", "meal", false, 0.9, 50, 2, Label.NONE);
    var ration = List.of(Serving.ofForage(HIGH, 10), bucket(grain, 1, 2));
    var meal = new MealLimit("meal", NSC, "NSC (WSC + starch)", 50, 0);

    var found =
        RemedySearch.search(
            request(
                horse(500),
                ration,
                List.of(lot("LOW", 7, 0.8)),
                List.of(nscLimit(10, 1.645)),
                List.of(meal),
                List.of(),
                MassUnit.KG));

    var swap = of(found, RemedyKind.SWAP).get(0);
    assertTrue(swap.isEnough(), swap.why());
    assertTrue(kg(swap, "GRAIN") < 1 && kg(swap, "LOW") > 5, swap.toString());
  }

  @Test
  void theSameRequestGivesTheSameAnswerBitForBit() {
    var ration = List.of(Serving.ofForage(HIGH, 10), bucket(balancer("BAL"), 0.5, 2));
    var reach = List.of(controlled("BAG", 6, 0.4), lot("A", 9, 1), lot("B", 8, 1.3));
    var request = request(horse(480), ration, reach, nscLimit(10, 1.645));

    var first = RemedySearch.search(request);

    assertEquals(first.toString(), RemedySearch.search(request).toString());
    assertEquals(first, RemedySearch.search(request));
  }

  @Test
  void anItemWithoutTheAskedAnalysisIsNeverAdded() {
    var unknown =
        new Candidate(
            "UNTESTED",
            "",
            "UNTESTED",
            CandidateKind.LOT,
            "grass-hay",
            "long-stem",
            true,
            false,
            0.88,
            new java.util.TreeMap<>(),
            new java.util.TreeMap<>(),
            Stock.UNKNOWN,
            Label.NONE);

    var found =
        RemedySearch.search(
            request(
                horse(500),
                List.of(Serving.ofForage(HIGH, 10)),
                List.of(unknown),
                nscLimit(10, 1.645)));

    assertTrue(found.stream().noneMatch(Remedy::isEnough), found.toString());
    assertTrue(found.stream().noneMatch(r -> kg(r, "UNTESTED") > 0), found.toString());
  }

  @Test
  void controlledForageThatIsAlreadyFedCountsInTheShare() {
    var bag = controlled("BAG", 6, 0.4);
    var ration = List.of(Serving.ofForage(HIGH, 8), Serving.ofForage(bag, 2));

    var found = RemedySearch.search(request(horse(500), ration, List.of(bag), nscLimit(10, 0)));

    double target = 8 * 0.88 + 2 * 0.9;
    for (Remedy r : of(found, RemedyKind.CONTROLLED)) {
      assertEquals(target, dm(r, "BAG") + dm(r, "HIGH"), 0.3, r.why());
    }
    assertEquals(0.5, dm(found.get(0), "BAG") / target, 0.06, found.get(0).why());
  }

  @Test
  void controlledForageAndAnotherLotTogetherWhereNeitherLasts() {
    var ration = List.of(Serving.ofForage(lot("VERY", 18, 1), 10));
    var bag = Yard.with(controlled("BAG", 6, 0.4), stock(120, 0));
    var few = Yard.with(lot("FEW", 6, 0.6), stock(105, 0));

    var found =
        RemedySearch.search(request(horse(500), ration, List.of(bag, few), nscLimit(12, 0.8)));

    var both = found.get(0);
    assertTrue(both.isEnough(), found.toString());
    assertEquals(RemedyKind.CONTROLLED, both.kind());
    assertTrue(kg(both, "BAG") <= 4 && kg(both, "BAG") > 0, both.why());
    assertTrue(kg(both, "FEW") <= 3.5 && kg(both, "FEW") > 0, both.why());
  }

  @Test
  void twoRowsOfOneItemAreOneItem() {
    var ration = List.of(Serving.ofForage(HIGH, 6), Serving.ofForage(HIGH, 4));

    var swap =
        of(
                RemedySearch.search(
                    request(horse(500), ration, List.of(lot("LOW", 6, 0.5)), nscLimit(10, 1.645))),
                RemedyKind.SWAP)
            .get(0);

    assertEquals(2, swap.items().size());
    assertEquals(10, swap.items().get(0).nowKg(), 0);
    assertEquals(10, kg(swap, "LOW"), 1e-9);
  }

  @Test
  void potassiumIsKeptDownForHyppAsAnyOtherLimit() {
    var hay = potassium(lot("HAY", 9, 0), 2.0);
    var pulp =
        potassium(
            Yard.item(
                "BAG",
                CandidateKind.FEED,
                "controlled-forage",
                "pellets",
                true,
                0.9,
                9,
                0,
                Yard.fullRate(1.5, 2)),
            0.4);
    var limit = new DietLimit("k", "k", "potassium", 1.1, true, 0, true);

    var found =
        RemedySearch.search(
            request(horse(500, "hypp"), List.of(Serving.ofForage(hay, 10)), List.of(pulp), limit));

    // share p of dry matter with (1 - p) 2.0 + p 0.4 = 1.1: p = 0.9 / 1.6, mass balance
    assertEquals(0.5625, dm(found.get(0), "BAG") / 8.8, 0.06, found.get(0).why());
    assertTrue(found.get(0).isEnough());
  }

  private static Candidate potassium(Candidate c, double k) {
    var contents = new java.util.TreeMap<>(c.contents());
    contents.put("k", new Content(k, 0));
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
        contents,
        c.nutrientsPerKgDm(),
        c.stock(),
        c.label());
  }

  @Test
  void aRationBelowTheFloorIsBroughtUpToIt() {
    var hay = lot("LOW", 7, 0.8);
    var ration = List.of(Serving.ofForage(hay, 5));

    var found = RemedySearch.search(request(horse(500), ration, List.of(hay), nscLimit(10, 1.645)));

    var more = found.get(0);
    assertTrue(more.isEnough(), more.why());
    // floor of the test's intake: 1.25 % of 500 kg = 6.25 kg of dry matter = 7.1 kg of hay
    assertEquals(7.5, kg(more, "LOW"), 1e-9);
    assertTrue(more.why().contains("with more dry matter than today"), more.why());
  }
}
