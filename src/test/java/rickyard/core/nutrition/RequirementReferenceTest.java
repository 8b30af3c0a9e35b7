package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rickyard.core.forage.AnalyteCode;
import rickyard.tables.NutritionTables;

/**
 * Holds requirements against the rows of {@code reference/requirement-checks.csv}. Values are the
 * sources', never ours. Rows tagged KNOWN MISMATCH or [E] (computed from the same equation) are no
 * oracles; the counts of what is left out and why are asserted.
 */
class RequirementReferenceTest {
  private static final FeedingStandards STANDARDS = NutritionTables.load().standards();
  private static final Map<String, Nutrient> NUTRIENTS = nutrients();

  private static Map<String, Nutrient> nutrients() {
    Map<String, Nutrient> names = new TreeMap<>();
    for (Nutrient nutrient : Nutrient.values()) {
      names.put(nutrient.code().toLowerCase(Locale.ROOT), nutrient);
    }
    names.put("lysine", Nutrient.LYS);
    names.put("vitamin_a", Nutrient.VIT_A);
    names.put("vitamin_d", Nutrient.VIT_D);
    names.put("vitamin_e", Nutrient.VIT_E);
    return names;
  }

  static List<CSVRecord> rows() {
    InputStream in =
        RequirementReferenceTest.class.getResourceAsStream("/reference/requirement-checks.csv");
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
    try (CSVParser parser =
        CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static boolean isMismatch(CSVRecord row) {
    return row.get("source").contains("KNOWN MISMATCH");
  }

  static boolean isComputed(CSVRecord row) {
    return row.get("source").contains("[E]");
  }

  /** Rows that give a need of a horse per day, and so can be held against the requirements. */
  static boolean isDailyNeed(CSVRecord row) {
    return List.of("maintenance", "work", "gestation", "lactation", "growth", "stallion")
            .contains(row.get("class"))
        && NUTRIENTS.containsKey(row.get("nutrient").toLowerCase(Locale.ROOT));
  }

  static Stream<CSVRecord> oracles() {
    return rows().stream().filter(r -> !isMismatch(r) && !isComputed(r) && isDailyNeed(r));
  }

  static Stream<CSVRecord> pins() {
    return rows().stream().filter(r -> !isMismatch(r) && isComputed(r) && isDailyNeed(r));
  }

  @ParameterizedTest
  @MethodSource("oracles")
  void agreesWithThePublishedOrRecalledValueAtItsPrintedRounding(CSVRecord row) {
    assertAgrees(row);
  }

  /** These prove nothing about the source; they hold that no coefficient changes unseen. */
  @ParameterizedTest
  @MethodSource("pins")
  void staysWhereTheTablesPutIt(CSVRecord row) {
    assertAgrees(row);
  }

  private static void assertAgrees(CSVRecord row) {
    Nutrient nutrient = nutrient(row);
    OptionalDouble found = Requirements.of(horse(row), Horses.DAY, STANDARDS).perDay(nutrient);
    double expected = Double.parseDouble(row.get("value"));
    double got = found.orElseThrow(() -> new AssertionError("no requirement for " + row));
    double unit = row.get("unit").equals("lb/d") ? 453.59237 : 1;
    // a hundredth or so of the half digit: the coefficients are printed to four digits
    double tolerance = Double.parseDouble(row.get("tolerance")) * 1.02 + 1e-9;
    assertEquals(expected, got / unit, tolerance, row::toString);
  }

  private static Nutrient nutrient(CSVRecord row) {
    return requireNonNull(NUTRIENTS.get(row.get("nutrient").toLowerCase(Locale.ROOT)));
  }

  private static Horse horse(CSVRecord row) {
    String detail = row.get("detail");
    double mature = number(row.get("mature_bw_kg"), 500);
    Horses made = Horses.adult(number(row.get("current_bw_kg"), mature)).mature(mature);
    return switch (row.get("class")) {
      case "maintenance" -> made.status(HorseStatus.MAINTENANCE, maintenance(detail)).build();
      case "work" -> made.status(HorseStatus.WORK, work(detail)).build();
      case "stallion" ->
          made.status(
                  HorseStatus.STALLION,
                  detail.equals("breeding") ? Level.BREEDING : Level.NON_BREEDING)
              .build();
      case "gestation" ->
          made.status(HorseStatus.PREGNANT, Level.NONE)
              .month(detail.equals("<5") ? 4 : Integer.parseInt(detail))
              .build();
      case "lactation" ->
          made.status(HorseStatus.LACTATING, Level.NONE).month(Integer.parseInt(detail)).build();
      default -> growing(detail, mature);
    };
  }

  /** Young horses weigh what the curve says: the rows print that weight rounded. */
  private static Horse growing(String detail, double mature) {
    int age = Integer.parseInt(detail.substring(0, detail.indexOf(' ')));
    double kg = Growth.weightKg(mature, age, STANDARDS.requirements());
    int comma = detail.indexOf(',');
    Level level =
        comma < 0 ? Level.NONE : work(detail.substring(comma + 2).replace(" exercise", ""));
    return Horses.adult(kg).mature(mature).aged(age).status(HorseStatus.GROWING, level).build();
  }

  private static Level maintenance(String detail) {
    return detail.startsWith("minimum")
        ? Level.LOW
        : detail.startsWith("elevated") ? Level.ELEVATED : Level.AVERAGE;
  }

  private static Level work(String detail) {
    return switch (detail) {
      case "light" -> Level.LIGHT;
      case "moderate" -> Level.MODERATE;
      case "heavy" -> Level.HEAVY;
      case "very heavy" -> Level.VERY_HEAVY;
      default -> throw new IllegalArgumentException(detail);
    };
  }

  private static double number(String cell, double otherwise) {
    return cell.isEmpty() ? otherwise : Double.parseDouble(cell);
  }

  @Test
  void theTableHoldsAsManyRowsOfEachKindAsWhenItWasRead() {
    List<CSVRecord> all = rows();
    assertEquals(1060, all.size());
    assertEquals(17, all.stream().filter(RequirementReferenceTest::isMismatch).count());
    assertEquals(599, all.stream().filter(r -> isComputed(r) && !isMismatch(r)).count());
    assertEquals(352, oracles().count(), "rows held against the requirements");
    assertEquals(589, pins().count(), "rows computed from the same equations");
    assertEquals(32, coefficients().count(), "needs per kg");
    assertEquals(10, steps().count(), "steps of gestation");
    List<String> rest =
        all.stream()
            .filter(r -> !isMismatch(r) && !isDailyNeed(r))
            .filter(r -> !r.get("class").matches("coefficient|intake|maximum_tolerable|growth"))
            .filter(r -> !r.get("detail").startsWith("gestation month"))
            .map(r -> r.get("class") + " " + r.get("nutrient"))
            .toList();
    assertEquals(
        List.of(
            "any vitamin_A",
            "measured_maintenance DE",
            "unit energy",
            "gestation body_weight",
            "birth body_weight",
            "ratio Ca:P"),
        rest);
  }

  static Stream<CSVRecord> coefficients() {
    return rows().stream().filter(r -> r.get("class").equals("coefficient") && !isMismatch(r));
  }

  /** Needs per kg of body weight as printed; a 500-kg horse stands for all. */
  @ParameterizedTest
  @MethodSource("coefficients")
  void needsPerKgAgreeWithThePrintedOnes(CSVRecord row) {
    Requirements needs = Requirements.of(stage(row.get("detail")).build(), Horses.DAY, STANDARDS);
    Nutrient nutrient = nutrient(row);
    double need = needs.perDay(nutrient).orElseThrow();
    double got =
        switch (row.get("unit")) {
          case "% of CP" -> 100 * need / needs.perDay(Nutrient.CP).orElseThrow();
          case "kcal/kg BW/d" -> 1000 * need / 500;
          case "mg/kg BW/d" -> (nutrient.unit().equals("g") ? 1000 : 1) * need / 500;
          case "g/kg BW/d", "IU/kg BW/d" -> need / 500;
          default -> throw new IllegalArgumentException(row.get("unit"));
        };
    assertEquals(Double.parseDouble(row.get("value")), got, 1e-9, row::toString);
  }

  private static Horses stage(String detail) {
    Horses made = Horses.adult(500).mature(500);
    return switch (detail) {
      case "maintenance minimum" -> made.status(HorseStatus.MAINTENANCE, Level.LOW);
      case "maintenance average", "maintenance" -> made;
      case "maintenance elevated" -> made.status(HorseStatus.MAINTENANCE, Level.ELEVATED);
      case "light work" -> made.status(HorseStatus.WORK, Level.LIGHT);
      case "moderate work" -> made.status(HorseStatus.WORK, Level.MODERATE);
      case "heavy work" -> made.status(HorseStatus.WORK, Level.HEAVY);
      case "work, upper end of printed range" -> made.status(HorseStatus.WORK, Level.VERY_HEAVY);
      case "lactation" -> made.status(HorseStatus.LACTATING, Level.NONE).month(1);
      default -> throw new IllegalArgumentException(detail);
    };
  }

  static Stream<CSVRecord> steps() {
    return rows().stream()
        .filter(r -> r.get("detail").startsWith("gestation month") && !isMismatch(r));
  }

  /** Percent increases from month to month of gestation, or over a mare that is not in foal. */
  @ParameterizedTest
  @MethodSource("steps")
  void gestationStepsAgreeWithThePrintedPercentages(CSVRecord row) {
    String[] words = row.get("detail").split(" ", -1);
    Nutrient nutrient = nutrient(row);
    Horses before = words[4].equals("month") ? mare(Integer.parseInt(words[5])) : Horses.adult(500);
    double from = need(before, nutrient);
    double to = need(mare(Integer.parseInt(words[2])), nutrient);
    assertEquals(
        Double.parseDouble(row.get("value")),
        100 * (to / from - 1),
        Double.parseDouble(row.get("tolerance")),
        row::toString);
  }

  private static Horses mare(int month) {
    return Horses.adult(500).mature(500).status(HorseStatus.PREGNANT, Level.NONE).month(month);
  }

  private static double need(Horses horse, Nutrient nutrient) {
    return Requirements.of(horse.build(), Horses.DAY, STANDARDS).perDay(nutrient).orElseThrow();
  }

  /** Intake rules of the tables are those that the rows print. */
  @Test
  void intakeFloorsAreThePrintedOnes() {
    IntakeRule rule = STANDARDS.intakeRule(Horses.adult(500).build());
    assertEquals(printed("forage minimum, low end"), rule.warnBelow().orElseThrow());
    assertEquals(printed("forage minimum even in hard work"), rule.vetBelow());
    assertEquals(printed("absolute floor"), rule.refuseBelow());
    assertEquals(printed("average maximum total DM, high end"), rule.usualMax());
  }

  private static double printed(String detail) {
    return rows().stream()
        .filter(r -> r.get("class").equals("intake") && r.get("detail").startsWith(detail))
        .mapToDouble(r -> Double.parseDouble(r.get("value")))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theGrowthCurveGivesTheRecalledWeightsAndGains() {
    int held = 0;
    for (CSVRecord row : rows()) {
      boolean isWeight = row.get("nutrient").equals("body_weight");
      if (!row.get("class").equals("growth") || !(isWeight || row.get("nutrient").equals("ADG"))) {
        continue;
      }
      String detail = row.get("detail");
      int age = Integer.parseInt(detail.substring(0, detail.indexOf(' ')));
      double mature = Double.parseDouble(row.get("mature_bw_kg"));
      double got =
          isWeight
              ? Growth.weightKg(mature, age, STANDARDS.requirements())
              : Growth.dailyGainKg(mature, age, STANDARDS.requirements());
      assertEquals(
          Double.parseDouble(row.get("value")),
          got,
          Double.parseDouble(row.get("tolerance")) + 1e-9,
          row::toString);
      held++;
    }
    assertEquals(20, held);
  }

  @Test
  void maximumTolerableLevelsAreThoseOfTheTable() {
    List<String> differing = new ArrayList<>();
    for (CSVRecord row : rows()) {
      if (!row.get("class").equals("maximum_tolerable") || row.get("nutrient").equals("NaCl")) {
        continue;
      }
      String name = row.get("nutrient").toUpperCase(Locale.ROOT);
      AnalyteCode code = new AnalyteCode(name.replace("VITAMIN_", "VIT_"));
      double max = STANDARDS.findTolerance(code).orElseThrow().max();
      if (row.get("unit").equals("mg/d")) {
        continue;
      }
      if (max != Double.parseDouble(row.get("value"))) {
        differing.add(name + " " + row.get("value") + ", " + row.get("status"));
      }
    }
    // 5 mg/kg selenium is printed for cattle only; the tables use the older horse value of 2
    assertEquals(List.of("SE 5, verified", "SE 5, memory"), differing);
  }
}
