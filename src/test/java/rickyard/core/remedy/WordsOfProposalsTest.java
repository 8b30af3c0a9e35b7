package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What proposals say of what they could not weigh, of tests and of ways out. */
class WordsOfProposalsTest {
  private static final Stock NO_PRICE =
      new Stock(OptionalDouble.of(5000), 0, OptionalDouble.of(20), OptionalDouble.empty());
  private static final Stock ALL_KNOWN =
      new Stock(OptionalDouble.of(5000), 0, OptionalDouble.of(20), OptionalDouble.of(0.2));

  private static List<Remedy> search(Candidate old, Candidate... reach) {
    return RemedySearch.search(
        Yard.request(
            Yard.horse(500),
            List.of(Serving.ofForage(old, 10)),
            List.of(reach),
            Yard.nscLimit(10, 1.645)));
  }

  private static Remedy first(List<Remedy> found, RemedyKind kind) {
    return found.stream().filter(r -> r.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void missingPricesStocksAndRatesAreNamedAndTheProposalIsStillMade() {
    Candidate old = Yard.with(Yard.lot("OLD", 12, 1), NO_PRICE);
    Candidate bag =
        Yard.item(
            "BAG",
            CandidateKind.FEED,
            "controlled-forage",
            "chopped",
            true,
            0.9,
            6,
            0.4,
            Label.NONE);

    Remedy swap = first(search(old, Yard.lot("LOW", 7, 0.8)), RemedyKind.SWAP);
    Remedy share = first(search(old, bag), RemedyKind.CONTROLLED);

    assertTrue(swap.isEnough() && share.isEnough());
    assertTrue(
        swap.why()
            .endsWith(" Not weighed: no price on record for LOW; no stock on record for LOW."),
        swap.why());
    assertTrue(
        share
            .why()
            .endsWith(
                " Not weighed: no price on record for OLD, BAG; no label rate on record for BAG."),
        share.why());
  }

  @Test
  void whereEverythingIsKnownNothingIsSaidToBeMissing() {
    Candidate old = Yard.with(Yard.lot("OLD", 12, 1), ALL_KNOWN);

    Remedy swap =
        first(search(old, Yard.with(Yard.lot("LOW", 7, 0.8), ALL_KNOWN)), RemedyKind.SWAP);

    assertFalse(swap.why().contains("Not weighed"), swap.why());
  }

  /** k = (10 - 1.645*1/√2 - 9.5)*√2/1 = -0.938; Φ(-0.938) - Φ(-2) = 0.174 - 0.023 = 15 %. */
  @Test
  void aSecondTestIsProposedWithItsChance() {
    Remedy retest = first(search(Yard.lot("OLD", 9.5, 1)), RemedyKind.RETEST);

    assertEquals(
        "A second test of OLD may settle it, with a chance of 15 % that both together clear it: it"
            + " lies under the limit, but by less than the guard band (NSC (WSC + starch) 9.50 %"
            + " DM against 10, chance of being over 31 %); at this value it clears with a standard"
            + " uncertainty of 0.30 or less.",
        retest.why());
  }

  @Test
  void aTestThatCanHardlySettleItIsNotProposed() {
    List<Remedy> found = search(Yard.lot("OLD", 11, 1));

    assertTrue(found.stream().noneMatch(r -> r.kind() == RemedyKind.RETEST), found.toString());
  }

  @Test
  void whereNothingIsEnoughTheWaysOutAreNamed() {
    Candidate untested = without(Yard.lot("UNTESTED", 0, 0));
    Candidate near = Yard.lot("NEAR", 9.5, 1);
    Candidate few =
        Yard.with(
            Yard.lot("FEW", 6, 0.5),
            new Stock(OptionalDouble.of(9), 0, OptionalDouble.of(20), OptionalDouble.of(0.2)));

    String why = first(search(Yard.lot("OLD", 14, 1), untested, near, few), RemedyKind.NONE).why();

    // 10 kg a day less 9/30 kg a day for 30 days are 291 kg; 10 - 1.645*1 is 8.36.
    assertTrue(
        why.endsWith(
            " What would open the way: a test of UNTESTED; a second test of NEAR; 291 kg more of"
                + " FEW for 30 days; a forage in place of the hay with NSC (WSC + starch) of at"
                + " most 8.36 (% of dry matter, tested to 10 % of the limit)."),
        why);
  }

  /** A mixture that keeps nothing of today's hay spares nothing where one lot is enough. */
  @Test
  void noMixtureIsProposedThatChangesAsMuchAsOneLot() {
    Candidate unknown = without(Yard.lot("UNKNOWN", 0, 0));

    List<Remedy> found = search(unknown, Yard.lot("A", 6, 0.8), Yard.lot("B", 7, 0.8));

    assertTrue(found.stream().anyMatch(r -> r.kind() == RemedyKind.SWAP && r.isEnough()));
    assertTrue(found.stream().noneMatch(r -> r.kind() == RemedyKind.BLEND), found.toString());
  }

  /** Hay of which there is not enough for the horizon is no part of a changed forage. */
  @Test
  void theOldHayInAMixtureLastsForTheHorizonToo() {
    Candidate old =
        Yard.with(
            Yard.lot("OLD", 12, 0.5),
            new Stock(OptionalDouble.of(60), 0, OptionalDouble.empty(), OptionalDouble.empty()));

    List<Remedy> found = search(old, Yard.lot("LOW", 6, 0.5), Yard.controlled("BAG", 6, 0.4));

    for (Remedy remedy : found) {
      double kg =
          remedy.then().stream().filter(a -> a.item().isSameAs(old)).mapToDouble(Serving::kg).sum();
      assertTrue(!remedy.isEnough() || kg <= 2 + 1e-9, remedy.why());
    }
    assertTrue(found.stream().anyMatch(Remedy::isEnough));
  }

  @Test
  void lysineComesFromASourceWhoseLabelSaysHowMuch() {
    Candidate old = Yard.with(Yard.lot("OLD", 12, 1), java.util.Map.of("LYS", 2.0));
    Candidate low = Yard.with(Yard.lot("LOW", 7, 0.8), java.util.Map.of("LYS", 2.0));
    Candidate meal =
        Yard.with(
            Yard.item(
                "MEAL",
                CandidateKind.FEED,
                "supplement",
                "meal",
                false,
                0.9,
                4,
                0.4,
                Yard.dose(0.1, 0.5)),
            java.util.Map.of("LYS", 15.0));
    var request =
        Yard.request(
            Yard.horse(500),
            List.of(Serving.ofForage(old, 10)),
            List.of(low, meal),
            List.of(Yard.nscLimit(10, 1.645)),
            List.of(),
            List.of(new NutrientNeed("LYS", 22)),
            MassUnit.KG);

    Remedy swap = first(RemedySearch.search(request), RemedyKind.SWAP);

    // 22 - 8.8*2 = 4.4 g are missing: 4.4/15/0.9 = 0.326 kg, weighed up to 0.34
    assertEquals(
        0.34,
        swap.then().stream()
            .filter(a -> a.item().id().equals("MEAL"))
            .mapToDouble(Serving::kg)
            .sum(),
        1e-9);
    assertTrue(swap.why().contains("with MEAL"), swap.why());
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
