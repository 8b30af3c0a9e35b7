package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RationAmountsTest {
  private static final LocalDate DAY = Horses.DAY;
  private static final Map<String, Foodstuff> FOODS =
      Map.of(
          "L1", Foods.of("L1", "grass-hay").dm(90).lot(),
          "L2", Foods.of("L2", "grass-hay").dm(60).lot(),
          "L3", Foods.of("L3", "grass-hay").dm(80).lot(),
          "F1", Foods.of("F1", "concentrate").dm(88).feed());

  private static RationAmounts amounts(
      Horse horse, List<WeighedMeasure> measures, RationItem... items) {
    return RationAmounts.of(
        horse,
        Rows.ration(items),
        (id, batch) -> Optional.ofNullable(FOODS.get(id)),
        measures,
        DAY,
        Foods.STANDARDS);
  }

  private static Horse horse() {
    return Horses.adult(500).build();
  }

  private static double kg(RationItem item, WeighedMeasure... measures) {
    return amounts(horse(), List.of(measures), item).portions().get(0).kgAsFed();
  }

  private static WeighedMeasure flake(String client, double kg, LocalDate on) {
    return new WeighedMeasure(client, "L1", "flake", kg, Optional.of(on));
  }

  @Test
  void poundsKilogramsAndPercentOfBodyWeightBecomeKgAsFed() {
    assertEquals(8, kg(Rows.item("L1", 8, "kg")));
    assertEquals(20 * 0.45359237, kg(Rows.item("L1", 20, "lb")), 1e-12);
    assertEquals(7.5, kg(Rows.item("L1", 1.5, "pct_bw")), 1e-12);
  }

  @Test
  void aMeasureWeighsWhatItWeighedLastAtThatClient() {
    RationItem four = Rows.item("L1", 4, "flake");
    WeighedMeasure old = flake("c1", 1.5, DAY.minusDays(60));
    WeighedMeasure now = flake("c1", 2.0, DAY.minusDays(2));
    WeighedMeasure later = flake("c1", 9.0, DAY.plusDays(1));
    WeighedMeasure other = flake("c2", 7.0, DAY);
    assertEquals(8, kg(four, old, now, later, other));
    assertEquals(8, kg(four, other, later, now, old));
  }

  @Test
  void aMeasureForEveryClientCountsOnlyWhereTheClientHasNone() {
    RationItem two = Rows.item("L1", 2, "bale");
    WeighedMeasure any = new WeighedMeasure("", "L1", "bale", 20, Optional.empty());
    assertEquals(40, kg(two, any));
    WeighedMeasure own = new WeighedMeasure("c1", "L1", "bale", 18, Optional.of(DAY));
    assertEquals(36, kg(two, any, own));
  }

  @Test
  void aMeasureNeverWeighedIsAProblemThatNamesClientItemAndMeasure() {
    RationAmounts amounts = amounts(horse(), List.of(), Rows.item("L1", 2, "net"));
    assertFalse(amounts.isComplete());
    AmountProblem problem = amounts.problems().get(0);
    assertEquals("measure-not-weighed", problem.code());
    assertEquals("a net of L1 was never weighed at c1: weigh one and enter it", problem.words());
  }

  @Test
  void whatCannotBeWeighedIsNamedWithItsPlaceInTheRegister() {
    RationItem net =
        new RationItem("L1", "", 2, "net", true, java.util.OptionalInt.empty(), "dry", 48);
    AmountProblem problem = amounts(horse(), List.of(), net).problems().get(0);
    assertEquals(
        "rations.csv, row 48, column \"unit\": a net of L1 was never weighed at c1: weigh one and"
            + " enter it",
        problem.words());
  }

  @Test
  void anUnknownItemOrUnitIsAProblemAndTheRestIsKept() {
    RationAmounts amounts =
        amounts(
            horse(),
            List.of(),
            Rows.item("X9", 2, "kg"),
            Rows.item("L1", 2, "bucket"),
            Rows.item("F1", 1, "kg"));
    assertEquals(
        List.of("unknown-item", "unknown-unit"),
        amounts.problems().stream().map(AmountProblem::code).toList());
    assertEquals(1, amounts.portions().size());
  }

  @Test
  void adLibFillsUpToTheAssumedIntakeWithAWideUncertainty() {
    RationAmounts amounts =
        amounts(horse(), List.of(), Rows.item("F1", 2, "kg"), Rows.item("L1", 0, "ad-lib"));
    Portion hay = amounts.portions().get(1);
    IntakeRule rule = Foods.STANDARDS.intakeRule(horse());
    assertEquals(rule.adlib() / 100 * 500, 1.76 + hay.kgDm(), 1e-9);
    assertTrue(hay.kgU() > 0);
  }

  @Test
  void theNewestRationNotAfterTheDayIsInForce() {
    Ration old = new Ration("h1", DAY.minusDays(90), List.of());
    Ration now = new Ration("h1", DAY, List.of());
    Ration planned = new Ration("h1", DAY.plusDays(1), List.of());
    List<Ration> all = List.of(planned, old, now);
    assertEquals(Optional.of(now), Rations.inForce(all, DAY));
    assertEquals(Optional.empty(), Rations.inForce(all, DAY.minusDays(91)));
    assertEquals(List.of(planned), Rations.planned(all, DAY));
  }

  private static ComingRation coming(List<Portion> portions, Delivery... deliveries) {
    return ComingRation.of(
        "c1",
        portions,
        List.of(deliveries),
        id -> Optional.ofNullable(FOODS.get(id)),
        DAY,
        Foods.STANDARDS);
  }

  private static List<Portion> hay(double kg) {
    return List.of(Portion.of(java.util.Objects.requireNonNull(FOODS.get("L1")), kg, true));
  }

  @Test
  void aDeliveryTakesThePlaceOfTheLotAtEqualDryMatter() {
    ComingRation coming = coming(hay(6), Rows.delivery("L2", "L1", Optional.of(DAY.plusDays(14))));
    assertTrue(coming.isChanged());
    assertEquals("L2", coming.portions().get(0).food().id());
    assertEquals(9, coming.portions().get(0).kgAsFed(), 1e-12);
    assertEquals(5.4, coming.portions().get(0).kgDm(), 1e-12);
  }

  @Test
  void aDeliveryThatOpensLaterOrIsFinishedOrForAnotherClientDoesNot() {
    Delivery late = Rows.delivery("L2", "L1", Optional.of(DAY.plusDays(15)));
    assertFalse(coming(hay(6), late).isChanged());
    Delivery d = Rows.delivery("L2", "L1", Optional.of(DAY));
    Delivery finished =
        new Delivery(
            d.lotId(),
            d.clientId(),
            d.kg(),
            d.deliveredOn(),
            d.replaces(),
            d.opensOn(),
            d.openedOn(),
            Optional.of(DAY));
    assertFalse(coming(hay(6), finished).isChanged());
    Delivery other =
        new Delivery(
            d.lotId(),
            "c2",
            d.kg(),
            d.deliveredOn(),
            d.replaces(),
            d.opensOn(),
            d.openedOn(),
            d.finishedOn());
    assertFalse(coming(hay(6), other).isChanged());
  }

  @Test
  void aBlankOpeningCountsAndAsks() {
    ComingRation coming = coming(hay(6), Rows.delivery("L2", "L1", Optional.empty()));
    assertTrue(coming.isChanged());
    assertFalse(coming.replacements().get(0).isOpeningKnown());
  }

  @Test
  void deliveriesThatFollowEachOtherAreAppliedInOrderOfOpeningWhateverTheirOrder() {
    Delivery first = Rows.delivery("L2", "L1", Optional.of(DAY.plusDays(1)));
    Delivery second = Rows.delivery("L3", "L2", Optional.of(DAY.plusDays(9)));
    for (ComingRation coming :
        List.of(coming(hay(6), first, second), coming(hay(6), second, first))) {
      assertEquals("L3", coming.portions().get(0).food().id());
      assertEquals(5.4, coming.portions().get(0).kgDm(), 1e-12);
    }
  }

  @Test
  void aLotThatReplacesInACircleComesToAnEnd() {
    Delivery there = Rows.delivery("L2", "L1", Optional.of(DAY));
    Delivery back = Rows.delivery("L1", "L2", Optional.of(DAY));
    assertEquals(1, coming(hay(6), there, back).portions().size());
  }

  @Test
  void aNewLotWhoseDryMatterNobodyKnowsIsNamed() {
    ComingRation coming = coming(hay(6), Rows.delivery("L9", "L1", Optional.of(DAY)));
    assertEquals(List.of("L9"), coming.withoutValue());
    assertEquals("L1", coming.portions().get(0).food().id());
  }
}
