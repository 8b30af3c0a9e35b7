package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Locale;

/**
 * How much a horse is given, both as fed and as dry matter, and how its forage stands against the
 * floors.
 *
 * @param kgAsFed kg as fed per day
 * @param kgDm kg dry matter per day
 * @param forageKgAsFed kg of forage as fed per day
 * @param forageKgDm kg dry matter of forage per day
 * @param strawKgDm kg dry matter of straw per day, part of the forage
 * @param bodyWeightKg the register's body weight
 * @param judgedWeightKg the low end of it, against which floors are held
 * @param rule the floors
 * @param floor how the forage stands
 */
public record Intake(
    double kgAsFed,
    double kgDm,
    double forageKgAsFed,
    double forageKgDm,
    double strawKgDm,
    double bodyWeightKg,
    double judgedWeightKg,
    IntakeRule rule,
    Floor floor) {

  public Intake {
    requireNonNull(rule, "rule");
    requireNonNull(floor, "floor");
  }

  static Intake of(List<Portion> portions, Horse horse, FeedingStandards standards) {
    double asFed = 0;
    double dm = 0;
    double forageAsFed = 0;
    double forage = 0;
    double straw = 0;
    for (Portion portion : portions) {
      asFed += portion.kgAsFed();
      dm += portion.kgDm();
      forageAsFed += portion.food().isForage() ? portion.kgAsFed() : 0;
      forage += portion.food().isForage() ? portion.kgDm() : 0;
      straw += portion.food().isStraw() ? portion.kgDm() : 0;
    }
    double judged = standards.settings().lowEndKg(horse);
    IntakeRule rule = standards.intakeRule(horse);
    Floor floor = floor(100 * forage / judged, rule, horse.vetPlan());
    return new Intake(
        asFed, dm, forageAsFed, forage, straw, horse.bodyWeightKg(), judged, rule, floor);
  }

  /** Where a forage share of the body weight stands; equal to a floor is above it. */
  private static Floor floor(double percent, IntakeRule rule, boolean hasVetPlan) {
    double judged = percent * (1 + 1e-9);
    if (judged < rule.refuseBelow()) {
      return Floor.REFUSE;
    }
    if (judged < rule.vetBelow()) {
      return hasVetPlan ? Floor.WARN : Floor.NEEDS_VET_PLAN;
    }
    return judged < rule.warnBelow().orElse(0) ? Floor.WARN : Floor.FINE;
  }

  /** Total as fed, % of body weight. */
  public double asFedPercentOfWeight() {
    return 100 * kgAsFed / bodyWeightKg;
  }

  /** Total dry matter, % of body weight. */
  public double dmPercentOfWeight() {
    return 100 * kgDm / bodyWeightKg;
  }

  /** Total dry matter, % of the low end of the body weight: what the usual ceiling sees. */
  public double dmPercentOfJudgedWeight() {
    return 100 * kgDm / judgedWeightKg;
  }

  /** Dry matter of forage, % of body weight. */
  public double foragePercentOfWeight() {
    return 100 * forageKgDm / bodyWeightKg;
  }

  /** Dry matter of forage, % of the low end of the body weight: what the floors see. */
  public double foragePercentOfJudgedWeight() {
    return 100 * forageKgDm / judgedWeightKg;
  }

  /** Forage as fed, % of the low end of the body weight: a label's word for it, never a floor. */
  public double forageAsFedPercentOfJudgedWeight() {
    return 100 * forageKgAsFed / judgedWeightKg;
  }

  /** Share of forage in the dry matter, 0 to 1; 0 for an empty diet. */
  public double forageShare() {
    return kgDm > 0 ? forageKgDm / kgDm : 0;
  }

  /** Share of straw in the dry matter of forage, 0 to 1; 0 without forage. */
  public double strawShareOfForage() {
    return forageKgDm > 0 ? strawKgDm / forageKgDm : 0;
  }

  /** Whether straw passes the hard cap of the type. */
  public boolean isStrawOverHardCap() {
    return 100 * strawShareOfForage() > rule.strawHardPercent() * (1 + 1e-9);
  }

  /** Whether straw passes the usual cap of the type. */
  public boolean isStrawOverUsualCap() {
    return 100 * strawShareOfForage() > rule.strawUsualPercent() * (1 + 1e-9);
  }

  /** One sentence on the floor, on both bases: 1.5 % as fed is less as dry matter. */
  public String words() {
    String now =
        String.format(
            Locale.ROOT,
            "forage makes %.2f %% of body weight as dry matter (%.2f %% as fed)",
            foragePercentOfJudgedWeight(),
            forageAsFedPercentOfJudgedWeight());
    String line =
        switch (floor) {
          case FINE -> "at or above the floor of " + percent(rule.firstFloor()) + " as dry matter";
          case WARN -> "below the floor of " + percent(rule.firstFloor()) + " as dry matter";
          case NEEDS_VET_PLAN ->
              "below " + percent(rule.vetBelow()) + ": only with a vet plan, and none is on record";
          case REFUSE -> "below " + percent(rule.refuseBelow()) + ": too little to be proposed";
        };
    return now + ", " + line;
  }

  private static String percent(double value) {
    return String.format(Locale.ROOT, "%.2f %%", value);
  }
}
