package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** What must hold for every value, uncertainty and limit. Seeded; the seed is in each message. */
class DecisionRulePropertyTest {
  private static final long SEED = 20261101L;

  private interface Case {
    void check(Random random, String message);
  }

  private static void times(Case one) {
    Random random = new Random(SEED);
    for (int i = 0; i < 20_000; i++) {
      one.check(random, "seed " + SEED + ", case " + i);
    }
  }

  private static Limit limit(Random random) {
    OptionalDouble risk =
        random.nextInt(4) == 0
            ? OptionalDouble.empty()
            : OptionalDouble.of(0.001 + 0.499 * random.nextDouble());
    return Limits.nsc(1 + 20 * random.nextDouble(), risk);
  }

  private static Word word(double y, double u, Limit limit) {
    return DecisionRule.find(Limits.percent(y, u), limit).word();
  }

  @Test
  void moreSugarNeverImprovesAVerdict() {
    times(
        (random, message) -> {
          Limit limit = limit(random);
          double u = 3 * random.nextDouble();
          double y = 25 * random.nextDouble();
          double more = y + 5 * random.nextDouble();
          assertTrue(word(y, u, limit).compareTo(word(more, u, limit)) <= 0, message);
        });
  }

  @Test
  void aWiderUncertaintyNeverClearsWhatWasNotCleared() {
    times(
        (random, message) -> {
          Limit limit = limit(random);
          double y = 25 * random.nextDouble();
          double u = 3 * random.nextDouble();
          double wider = u + 3 * random.nextDouble();
          if (word(y, u, limit) != Word.CLEARS) {
            assertFalse(word(y, wider, limit) == Word.CLEARS, message);
          }
        });
  }

  @Test
  void clearsExactlyWhenTheChanceIsWithinTheRisk() {
    times(
        (random, message) -> {
          Limit limit = limit(random);
          double y = 25 * random.nextDouble();
          double u = 0.05 + 3 * random.nextDouble();
          Finding found = DecisionRule.find(Limits.percent(y, u), limit);
          double accepted = limit.risk().orElse(0.5);
          double chance = found.chanceWrong().orElseThrow();
          if (Math.abs(chance - accepted) > 1e-9) {
            assertEquals(chance < accepted, found.word() == Word.CLEARS, message);
          }
        });
  }

  @Test
  void theWordDoesNotDependOnTheUnit() {
    Unit[] units = {Unit.PERCENT, Unit.G_PER_KG, Unit.MG_PER_KG, Unit.G_PER_LB, Unit.UG_PER_KG};
    times(
        (random, message) -> {
          Limit limit = limit(random);
          Measured value = Limits.percent(25 * random.nextDouble(), 3 * random.nextDouble());
          Unit unit = units[random.nextInt(units.length)];
          assertEquals(
              DecisionRule.find(value, limit).word(),
              DecisionRule.find(value.in(unit), limit).word(),
              message + " " + unit);
        });
  }

  @Test
  void theAsFedFigureWithItsDryMatterGivesTheSameWordAsTheDryMatterFigure() {
    times(
        (random, message) -> {
          Limit limit = limit(random);
          double dm = 35 + 60 * random.nextDouble();
          double y = 25 * random.nextDouble();
          double u = 3 * random.nextDouble();
          Evidence said = Limits.SAID;
          Measured asFed =
              Measured.of(Unit.PERCENT, Basis.AS_FED, y * dm / 100, 0, u * dm / 100, said);
          Measured dryMatter = Measured.of(Unit.PERCENT, Basis.AS_FED, dm, 0, 0, said);
          assertEquals(
              word(y, u, limit),
              DecisionRule.find(asFed.toDryMatter(dryMatter), limit).word(),
              message);
        });
  }

  @Test
  void aLowerBoundIsNeverKinderThanTheFigureItBounds() {
    times(
        (random, message) -> {
          Limit limit = limit(random);
          double y = 25 * random.nextDouble();
          double u = 3 * random.nextDouble();
          Measured bound = Measured.atLeast(Unit.PERCENT, Basis.DRY_MATTER, y, u, Limits.SAID);
          Word open = DecisionRule.find(bound, limit).word();
          assertEquals(word(y, u, limit) == Word.EXCEEDS, open == Word.EXCEEDS, message);
          assertFalse(open.isCleared(), message);
        });
  }
}
