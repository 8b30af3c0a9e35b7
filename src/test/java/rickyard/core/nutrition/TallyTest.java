package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Sums over items, and amounts, portions and lines made of them; contents in %, grams a day. */
class TallyTest {
  private static final Evidence ASSUMED = new Evidence.Assumed("typical-values.csv", "row");

  private static Measured percent(double value, double u) {
    return Measured.of(Unit.PERCENT, Basis.DRY_MATTER, value, 0, u, Foods.reported("x"));
  }

  private static Measured below(double x, Evidence evidence) {
    return Measured.below(Unit.PERCENT, Basis.DRY_MATTER, x, 0, evidence);
  }

  private static Tally grams() {
    return new Tally(Unit.PERCENT, 10);
  }

  /** 2 kg of 10 ± 0.5 %: 200 g ± 10 g; 0.2 kg more or less of it: 20 g; together root 500. */
  @Test
  void theErrorsOfContentAndAmountAddAsSquares() {
    Tally tally = grams();
    tally.add(2, 0.2, percent(10, 0.5));

    Amount total = tally.total();
    assertEquals(200, total.best(), 1e-9);
    assertEquals(Math.sqrt(500), total.u(), 1e-9);
    assertEquals(200 + 2 * Math.sqrt(500), total.ceiling(), 1e-9);
  }

  @Test
  void nothingOfAnItemIsNothingUnlessItsAmountIsInDoubt() {
    Tally doubt = grams();
    doubt.add(0, 0.5, percent(10, 0));
    Tally none = grams();
    none.add(0, 0, Measured.of(Unit.PERCENT, Basis.DRY_MATTER, 10, 0, 1, ASSUMED));

    assertEquals(50, doubt.total().u(), 1e-9);
    assertEquals(Amount.exact(0), none.total(), "what is not fed assumes nothing");
  }

  /** '&lt;4 %' in 2 kg: 40 g at best, up to 80 g. */
  @Test
  void aReportedBoundCountsAtItsUpperEndAgainstACeilingAndAnAssumedOneAtItsBest() {
    Tally reported = grams();
    reported.add(2, 0, below(4, Foods.reported("<4")));
    Tally assumed = grams();
    assumed.add(2, 0, below(4, ASSUMED));

    assertEquals(List.of(0.0, 40.0, 80.0), ends(reported));
    assertEquals(80, reported.total().ceiling());
    assertEquals(List.of(0.0, 40.0, 80.0), ends(assumed));
    assertEquals(40, assumed.total().ceiling());
  }

  @Test
  void whatIsOpenAboveStaysOpenAndCountsAtItsBestAgainstACeiling() {
    Tally open = grams();
    open.add(2, 0, Measured.atLeast(Unit.PERCENT, Basis.DRY_MATTER, 4, 0, Foods.reported(">4")));

    assertEquals(List.of(80.0, 80.0, Double.POSITIVE_INFINITY), ends(open));
    assertEquals(80, open.total().ceiling());
  }

  private static List<Double> ends(Tally tally) {
    Amount total = tally.total();
    return List.of(total.lower(), total.best(), total.upper());
  }

  @Test
  void whatIsUnknownIsNamedInOrder() {
    Tally tally = grams();
    tally.addUnknown("straw");
    tally.add(2, 0, percent(10, 0));
    tally.addUnknown("balancer");

    assertEquals(List.of("balancer", "straw"), tally.total().missing());
    assertEquals(Double.POSITIVE_INFINITY, tally.total().upper());
  }

  @Test
  void anAmountPerKilogramOfBodyWeightIsDividedInAllItsParts() {
    Amount day = new Amount(1000, 900, 1200, 50, 1300, Origin.PART_ASSUMED, List.of("x"));

    assertEquals(
        new Amount(2, 1.8, 2.4, 0.1, 2.6, Origin.PART_ASSUMED, List.of("x")), day.per(500));
  }

  /** 10 kg of 90 ± 2 %: 0.2 kg; with 0.5 kg ± that is 0.45 kg of dry matter, root 0.2425. */
  @Test
  void aPortionIsAsUncertainAsItsAmountAndItsDryMatter() {
    Foodstuff hay = Foods.of("a", "grass-hay").dm(90, 2).lot();

    assertEquals(0.2, Portion.of(hay, 10, true).kgDmU(), 1e-12);
    assertEquals(
        Math.sqrt(0.2425), new Portion(hay, 10, 0.5, true, OptionalInt.empty()).kgDmU(), 1e-12);
  }

  @Test
  void aPortionIsGivenInOneMealAtLeast() {
    Foodstuff hay = Foods.of("a", "grass-hay").lot();

    assertEquals(1, new Portion(hay, 1, 0, false, OptionalInt.of(1)).meals().getAsInt());
    assertEquals(
        "meals must be at least 1, were 0",
        assertThrows(
                IllegalArgumentException.class,
                () -> new Portion(hay, 1, 0, false, OptionalInt.of(0)))
            .getMessage());
  }

  /** One in a thousand million is a tie, two are not. */
  @Test
  void aBillionthPartIsNoShortage() {
    assertEquals(NutrientStatus.MEETS, line(999_999_999).status());
    assertEquals(NutrientStatus.BELOW, line(999_999_998).status());
  }

  private static NutrientLine line(double supply) {
    return NutrientLine.of(
        Nutrient.VIT_A,
        Amount.exact(supply),
        OptionalDouble.of(1e9),
        OptionalDouble.empty(),
        false);
  }

  @Test
  void aNeedOfNothingHasNoPercentage() {
    NutrientLine none =
        NutrientLine.of(
            Nutrient.CU, Amount.exact(90), OptionalDouble.of(0), OptionalDouble.empty(), false);

    assertEquals(OptionalDouble.empty(), none.percentOfRequirement());
    assertEquals(NutrientStatus.MEETS, none.status());
  }
}
