package rickyard.core.nutrition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Unit;
import rickyard.tables.NutritionTables;

/**
 * Every row of {@code reference/requirement-checks.csv} beside what Rickyard makes of it, with the
 * exceptions of {@code reference/requirement-exceptions.csv}.
 */
public final class RequirementChecks {
  private static final FeedingStandards STANDARDS = NutritionTables.load().standards();
  private static final List<String> LIVES =
      List.of("maintenance", "work", "gestation", "lactation", "growth", "stallion");

  /**
   * A row beside our value.
   *
   * @param row the row
   * @param got our value in the row's unit; empty where Rickyard has no such thing
   * @param exception why it need not agree, if it is listed
   */
  public record Check(CheckRow row, Optional<Double> got, Optional<Listed> exception) {
    /** Coefficients are printed to four digits: that much of the last half digit is theirs. */
    private static final double DIGITS = 0.02;

    /**
     * Whether nothing excuses it; a mismatch that the reference names and ours has not is settled.
     */
    public boolean mustAgree() {
      return exception.map(e -> e.kind().equals("settled")).orElse(true);
    }

    public boolean agrees() {
      return got.isPresent() && off() <= row.tolerance() * (1 + DIGITS) + 1e-9;
    }

    /** Agrees only with the little that is left to the digits of the coefficients. */
    public boolean isAtTheEdge() {
      return agrees() && off() > row.tolerance() + 1e-9;
    }

    private double off() {
      return Math.abs(got.orElseThrow() - row.number());
    }
  }

  /**
   * A listed exception.
   *
   * @param kind source, recall, disagree, not-held or settled
   * @param reason why
   */
  public record Listed(String kind, String reason) {}

  private RequirementChecks() {}

  public static List<Check> all() {
    Map<String, Listed> exceptions = exceptions();
    return CheckRow.all().stream()
        .map(row -> new Check(row, ours(row), Optional.ofNullable(exceptions.get(row.key()))))
        .toList();
  }

  static Map<String, Listed> exceptions() {
    return CheckRow.read("requirement-exceptions.csv").stream()
        .collect(
            Collectors.toMap(CheckRow::keyOf, r -> new Listed(r.get("kind"), r.get("reason"))));
  }

  private static Optional<Double> ours(CheckRow row) {
    return switch (row.group()) {
      case "maximum_tolerable" -> Optional.of(tolerated(row));
      case "intake" -> intake(row);
      case "coefficient" -> Optional.of(perKg(row));
      case "ratio" -> Optional.of(ratio(row));
      case "measured_maintenance" -> Optional.of(need(row, Horses.adult(row.currentKg())));
      case "any" -> Optional.of(need(row, mare(500, 11)));
      case "unit" -> Optional.of(Unit.MCAL_PER_KG.convert(1, Unit.MJ_PER_KG));
      case "birth" -> Optional.of(parameter("growth_birth_pct"));
      default -> LIVES.contains(row.group()) ? life(row) : Optional.empty();
    };
  }

  private static Optional<Double> life(CheckRow row) {
    if (row.isNutrient()) {
      double unit = row.unit().equals("lb/d") ? 453.59237 : 1;
      return Optional.of(need(row, CheckedHorses.of(row, STANDARDS)) / unit);
    }
    if (!row.group().equals("growth")) {
      return Optional.empty();
    }
    int age = CheckedHorses.age(row);
    Function<Boolean, Double> curve =
        isWeight ->
            isWeight
                ? Growth.weightKg(row.matureKg(), age, STANDARDS.requirements())
                : Growth.dailyGainKg(row.matureKg(), age, STANDARDS.requirements());
    return Optional.of(curve.apply(row.nutrient().equals("body_weight")));
  }

  private static Requirements needs(Horses horse) {
    return Requirements.of(horse.build(), Horses.DAY, STANDARDS);
  }

  private static double need(CheckRow row, Horses horse) {
    return needs(horse).perDay(row.knownNutrient()).orElseThrow();
  }

  private static Horses mare(double kg, int month) {
    return Horses.adult(kg).mature(kg).status(HorseStatus.PREGNANT, Level.NONE).month(month);
  }

  private static double parameter(String name) {
    return STANDARDS
        .requirements()
        .getParameter(name, new LifeStage("growth", "untrained", 12, ""));
  }

  private static double tolerated(CheckRow row) {
    String name = row.nutrient();
    if (name.equals("NaCl")) {
      // sodium chloride is 2.54213 times its sodium; the table holds sodium to two decimals
      return Math.round(100 * level("NA") * 2.54213) / 100.0;
    }
    double level = level(name.toUpperCase(java.util.Locale.ROOT).replace("VITAMIN_", "VIT_"));
    // printed per day: 20 mg are 2 mg/kg of the 10 kg that a 1000-lb horse eats
    return row.unit().equals("mg/d") ? 10 * level : level;
  }

  private static double level(String code) {
    return STANDARDS.findTolerance(new AnalyteCode(code)).orElseThrow().max();
  }

  /** Floors and the usual ceiling; recommendations and targets are not in the tables. */
  private static Optional<Double> intake(CheckRow row) {
    IntakeRule horse = STANDARDS.intakeRule(Horses.adult(500).build());
    double pony = row.currentKg() * horse.vetBelow() / 100;
    return switch (row.detail()) {
      case "forage minimum, low end of recommendation" ->
          Optional.of(horse.warnBelow().orElseThrow());
      case "average maximum total DM, high end" -> Optional.of(horse.usualMax());
      case "forage minimum even in hard work" -> Optional.of(horse.vetBelow());
      case "absolute floor, dieting under veterinary supervision only" ->
          Optional.of(horse.refuseBelow());
      case "forage minimum 1.25% BW" -> Optional.of(pony);
      case "forage minimum 1.25% BW as fed at 90% DM" -> Optional.of(pony / 0.9);
      case "forage minimum 1.25% BW as fed at 70% DM" -> Optional.of(pony / 0.7);
      case "forage minimum 1.25% BW as fed at 50% DM" -> Optional.of(pony / 0.5);
      default -> Optional.empty();
    };
  }

  private static double perKg(CheckRow row) {
    Requirements needs = needs(CheckedHorses.stage(row.detail()));
    Nutrient nutrient = row.knownNutrient();
    double need = needs.perDay(nutrient).orElseThrow();
    return switch (row.unit()) {
      case "% of CP" -> 100 * need / needs.perDay(Nutrient.CP).orElseThrow();
      case "kcal/kg BW/d" -> 1000 * need / 500;
      // vitamin E is printed in mg, 1 mg of the acetate being 1 IU
      case "mg/kg BW/d" -> (nutrient.unit().equals("g") ? 1000 : 1) * need / 500;
      case "g/kg BW/d", "IU/kg BW/d" -> need / 500;
      case "mg/kg DM" -> need / (500 * 0.025);
      default -> throw new IllegalArgumentException(row.unit());
    };
  }

  private static double ratio(CheckRow row) {
    if (row.nutrient().equals("Ca:P")) {
      return STANDARDS.settings().number("ca_p_warn_below");
    }
    String[] words = row.detail().split(" ", -1);
    Horses before =
        words[4].equals("month") ? mare(500, Integer.parseInt(words[5])) : Horses.adult(500);
    return 100 * (need(row, mare(500, Integer.parseInt(words[2]))) / need(row, before) - 1);
  }
}
