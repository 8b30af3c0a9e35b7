package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;

/** A need with its bracket and with what other sources say; and what table rows may hold. */
class RequirementTest {
  private static final Source SOURCE = new Source("t.csv", 1, "assumed", "", Standing.ASSUMED);

  private static Requirement bracket(Nutrient nutrient, double low, double high) {
    return new Requirement(
        nutrient,
        OptionalDouble.empty(),
        Optional.of(new Requirement.Bracket(low, high)),
        List.of(),
        Standing.ASSUMED,
        "no value is known",
        "");
  }

  /** ± 10 g: two of them are taken off before a nutrient counts as assured. */
  private static Amount about(double best) {
    return new Amount(best, best, best, 10, best + 20, Origin.REPORTED, List.of());
  }

  @Test
  void asMuchAsTheUpperEndIsEnoughAndLessThanTheLowerIsShort() {
    Requirement chloride = bracket(Nutrient.CL, 50, 80);

    assertEquals(OptionalDouble.of(80), chloride.heldAgainst(about(100)));
    assertEquals(OptionalDouble.empty(), chloride.heldAgainst(about(99)));
    assertEquals(OptionalDouble.empty(), chloride.heldAgainst(about(50)));
    assertEquals(OptionalDouble.of(50), chloride.heldAgainst(about(49)));
  }

  @Test
  void energyIsHeldAgainstItsBracketByItsBestValue() {
    Requirement energy = bracket(Nutrient.DE, 50, 80);

    assertEquals(OptionalDouble.of(80), energy.heldAgainst(about(80)));
    assertEquals(OptionalDouble.empty(), energy.heldAgainst(about(79)));
  }

  @Test
  void theEndsOfABracketMayMeetAndBeNothing() {
    assertEquals(0, new Requirement.Bracket(0, 0).high());
    assertThrows(IllegalArgumentException.class, () -> new Requirement.Bracket(1, 0.9));
    assertThrows(IllegalArgumentException.class, () -> new Requirement.Bracket(-0.1, 1));
  }

  @Test
  void nothingMayBeNeededAndLessThanNothingMayNot() {
    assertEquals(OptionalDouble.of(0), Requirement.sum(Nutrient.CU, List.of()).perDay());
    assertThrows(
        IllegalArgumentException.class,
        () -> Requirement.sum(Nutrient.CU, List.of(part(-1, 1, List.of()))));
  }

  private static Requirement.Part part(double coefficient, double scale, List<OtherValue> others) {
    return new Requirement.Part(
        coefficient, scale, Driver.BW, 200, coefficient * scale * 200, SOURCE, others);
  }

  private static OtherValue other(double value) {
    return new OtherValue(value, true, "another book", SOURCE);
  }

  /** A donkey of 200 kg, 0.75 of a horse's energy: 0.0333 is 4.995 Mcal, 0.0363 is 5.445. */
  @Test
  void anotherSourcesCoefficientIsScaledAsTheOneInForce() {
    Requirement energy =
        Requirement.sum(
            Nutrient.DE,
            List.of(part(0.0333, 0.75, List.of(other(0.0363))), part(0.01, 1, List.of())));

    assertEquals(6.995, energy.perDay().orElseThrow(), 1e-9);
    assertEquals(7.445, energy.others().get(0).perDay(), 1e-9);
  }

  /** One in a thousand million is the same number, two are not. */
  @Test
  void aBillionthPartIsNoOtherValue() {
    assertEquals(List.of(), OtherValue.said(1e9, List.of(other(999_999_999))));
    assertEquals(1, OtherValue.said(1e9, List.of(other(999_999_998))).size());
    assertEquals(List.of(), OtherValue.said(0, List.of(other(0))));
  }

  @Test
  void aRuleBeyondTheTablesIsForItsNutrientOnly() {
    Scope lactation = Scope.of("lactation", "*", 7, 9);
    LifeStage late = new LifeStage("lactation", "", 8, "");
    OutsideRule chloride = rule(lactation, Optional.of(Nutrient.CL));

    assertTrue(chloride.holds(Nutrient.CL, late));
    assertFalse(chloride.holds(Nutrient.CA, late));
    assertFalse(chloride.holds(Nutrient.CL, new LifeStage("lactation", "", 10, "")));
    assertTrue(rule(lactation, Optional.empty()).holds(Nutrient.CA, late));
  }

  private static OutsideRule rule(Scope scope, Optional<Nutrient> nutrient) {
    return new OutsideRule(
        scope,
        nutrient,
        OutsideRule.Kind.NONE,
        Optional.empty(),
        Optional.empty(),
        "there is none",
        SOURCE);
  }

  private static String note(Horses horse, String code) {
    Requirements needs = Requirements.of(horse.build(), Horses.DAY, Foods.STANDARDS);
    return RequirementNotes.of(horse.build(), needs, Foods.STANDARDS).stream()
        .filter(n -> n.code().equals(code))
        .map(DietNote::words)
        .findFirst()
        .orElse("");
  }

  @Test
  void aGapOfOneNutrientNamesItAndAGapOfAllDoesNot() {
    Horses foal = Horses.adult(243).mature(500).status(HorseStatus.GROWING, Level.NONE).aged(8);
    Horses late = Horses.adult(500).status(HorseStatus.LACTATING, Level.NONE).month(8);

    assertEquals(
        "no figure of CL: no value for chloride is known between 6 and 12 months",
        note(foal, "needs-enclosed"));
    assertTrue(
        note(late, "needs-enclosed")
            .startsWith("no figure: no value is published after month 6 of lactation"),
        note(late, "needs-enclosed"));
    assertEquals("", note(foal, "beyond-tables"));
  }

  @Test
  void aToleranceIsMoreThanNothing() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Tolerance(AnalyteCode.SE, 0, false, true, SOURCE, List.of()));
  }

  @Test
  void aTypicalValueMayBeNothingForCertain() {
    assertEquals(0, new TypicalValue("salt", AnalyteCode.CA, 0, 0, false, SOURCE).mean());
    assertThrows(
        IllegalArgumentException.class,
        () -> new TypicalValue("salt", AnalyteCode.CA, -0.1, 0, false, SOURCE));
    assertThrows(
        IllegalArgumentException.class,
        () -> new TypicalValue("salt", AnalyteCode.CA, 0, -0.1, false, SOURCE));
  }

  @Test
  void emptyWordsOfAListAreNone() {
    TreeMap<String, Settings.Setting> rows = new TreeMap<>();
    rows.put("list", new Settings.Setting("list", " sick ;; colic;", 0, SOURCE, List.of()));

    assertEquals(List.of("sick", "colic"), new Settings(rows).words("list"));
  }

  /** Whatever the order of the rows, an analyte's own comes before that of every other one. */
  @Test
  void theRuleOfAnAnalyteComesBeforeThatOfAll() {
    FeedingStandards s = Foods.STANDARDS;
    List<KindRule> reversed = new ArrayList<>(s.kinds());
    Collections.reverse(reversed);
    for (List<KindRule> kinds : List.of(s.kinds(), reversed)) {
      FeedingStandards standards =
          new FeedingStandards(
              s.requirements(),
              s.energy(),
              s.typicalValues(),
              s.roles(),
              s.highValues(),
              s.tolerances(),
              s.intakeRules(),
              kinds,
              s.settings());
      // 0.4 points for sugars of a batch, 5 % of anything else
      assertEquals(0.4, u(standards, AnalyteCode.WSC));
      assertEquals(1, u(standards, AnalyteCode.CP), 1e-12);
    }
  }

  private static double u(FeedingStandards standards, AnalyteCode code) {
    return standards
        .ofKind(code, Unit.PERCENT, Basis.DRY_MATTER, 20, 0.05, "batch", Foods.reported("20"))
        .u();
  }
}
