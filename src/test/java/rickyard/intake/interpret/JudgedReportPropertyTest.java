package rickyard.intake.interpret;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Report;
import rickyard.core.forage.Subject;
import rickyard.core.judgement.LotJudge;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;
import rickyard.core.quantity.Measured;
import rickyard.tables.JudgementTables;
import rickyard.tables.UncertaintyTable;

/**
 * One hay printed in any unit and on any basis is judged alike: from the printed table through the
 * reader to the verdicts. Seeded; the seed is in each message.
 */
class JudgedReportPropertyTest {
  private static final long SEED = 20261126L;
  private static final int HAYS = 300;
  private static final JudgementTables TABLES = JudgementTables.load(Optional.empty());
  private static final AnalysisMaker MAKER =
      new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties());

  private record Printed(String unit, double factor) {}

  private static final List<Printed> SHARES =
      List.of(new Printed("%", 1), new Printed("g/kg", 10), new Printed("g/lb", 4.5359237));
  private static final List<Printed> TRACES =
      List.of(new Printed("mg/kg", 1), new Printed("ppm", 1), new Printed("mg/lb", 0.45359237));
  private static final List<Printed> ENERGY =
      List.of(
          new Printed("Mcal/kg", 1),
          new Printed("Mcal/lb", 0.45359237),
          new Printed("MJ/kg", 4.184));
  private static final List<Printed> NITROGEN =
      List.of(new Printed("mg/kg", 1), new Printed("ppm", 1), new Printed("%", 1e-4));
  private static final List<Printed> SELENIUM =
      List.of(
          new Printed("mg/kg", 1),
          new Printed("ppm", 1),
          new Printed("ppb", 1000),
          new Printed("ug/kg", 1000));

  private static final Map<String, List<Printed>> UNITS = new LinkedHashMap<>();

  static {
    UNITS.put("Crude protein", SHARES);
    UNITS.put("WSC", SHARES);
    UNITS.put("ESC", SHARES);
    UNITS.put("Starch", SHARES);
    UNITS.put("Potassium", SHARES);
    UNITS.put("Iron", TRACES);
    UNITS.put("Selenium", SELENIUM);
    UNITS.put("Nitrate nitrogen", NITROGEN);
    UNITS.put("Horse DE", ENERGY);
  }

  /** True contents on dry matter, in % and mg/kg, Mcal/kg for energy. */
  private static Map<String, Double> hay(Random random) {
    Map<String, Double> hay = new LinkedHashMap<>();
    double wsc = 4 + 12 * random.nextDouble();
    hay.put("Crude protein", 7 + 6 * random.nextDouble());
    hay.put("WSC", wsc);
    hay.put("ESC", wsc * (0.4 + 0.4 * random.nextDouble()));
    hay.put("Starch", 0.5 + 3 * random.nextDouble());
    hay.put("Potassium", 0.8 + 2 * random.nextDouble());
    hay.put("Iron", 60 + 700 * random.nextDouble());
    hay.put("Selenium", 0.05 + 2.5 * random.nextDouble());
    hay.put("Nitrate nitrogen", 100 + 5000 * random.nextDouble());
    hay.put("Horse DE", 1.7 + 0.6 * random.nextDouble());
    return hay;
  }

  /** A table with one column; seven significant digits, so that rounding decides nothing. */
  private static String table(
      Map<String, Double> hay, double dm, boolean asFed, boolean moisture, Random random) {
    List<String> rows = new ArrayList<>();
    hay.forEach(
        (name, value) -> {
          List<Printed> units = UNITS.get(name);
          Printed unit = units.get(random.nextInt(units.size()));
          double printed = value * unit.factor() * (asFed ? dm / 100 : 1);
          rows.add(name + "|" + unit.unit() + "|" + digits(printed));
        });
    Collections.shuffle(rows, random);
    String water = moisture ? "Moisture|%|" + digits(100 - dm) : "Dry matter|%|" + digits(dm);
    return "Lot|N2\nAll results on "
        + (asFed ? "an as fed basis" : "a dry matter basis")
        + "\nTest|Unit|Result\n"
        + water
        + "\n"
        + String.join("\n", rows);
  }

  private static String digits(double value) {
    int whole = (int) Math.floor(Math.log10(value)) + 1;
    return BigDecimal.valueOf(value)
        .setScale(Math.max(0, 7 - whole), RoundingMode.HALF_UP)
        .toPlainString();
  }

  private static AccountedAnalysis analysis(String table) {
    Report report = Readings.report(Grids.table(table));
    assertEquals(1, report.samples().size(), table);
    return MAKER.make(
        report.samples().get(0), new Subject("N2", "", MaterialClass.GRASS, OptionalInt.of(12)));
  }

  private static Map<String, Verdict> judged(AccountedAnalysis analysis) {
    return LotJudge.judge(analysis, TABLES.lotRules()).stream()
        .collect(Collectors.toMap(v -> v.limit().id(), v -> v, (a, b) -> a, TreeMap::new));
  }

  @Test
  void anyUnitGivesTheSameVerdicts() {
    Random random = new Random(SEED);
    for (int i = 0; i < HAYS; i++) {
      Map<String, Double> hay = hay(random);
      double dm = 82 + 10 * random.nextDouble();
      Map<String, Verdict> one = judged(analysis(table(hay, dm, false, false, random)));
      String other = table(hay, dm, false, true, random);
      String message = "seed " + SEED + ", hay " + i + "\n" + other;
      Map<String, Verdict> again = judged(analysis(other));

      assertEquals(one.keySet(), again.keySet(), message);
      one.forEach(
          (limit, verdict) -> {
            if (isClearOfEdges(verdict)) {
              assertEquals(verdict.word(), again.get(limit).word(), message + "\n" + limit);
            }
          });
    }
  }

  /**
   * An as-fed report carries the error of its dry matter besides, so that it may say 'borderline'
   * where the other is certain, never the other way: it clears and condemns nothing more.
   */
  @Test
  void theAsFedReportGivesTheSameValuesAndNoBolderVerdicts() {
    Random random = new Random(SEED + 1);
    int same = 0;
    int all = 0;
    for (int i = 0; i < HAYS; i++) {
      Map<String, Double> hay = hay(random);
      double dm = 82 + 10 * random.nextDouble();
      AccountedAnalysis dry = analysis(table(hay, dm, false, false, random));
      String printed = table(hay, dm, true, random.nextBoolean(), random);
      AccountedAnalysis fed = analysis(printed);
      String message = "seed " + (SEED + 1) + ", hay " + i + "\n" + printed;

      sameValues(dry, fed, message);
      Map<String, Verdict> expected = judged(dry);
      Map<String, Verdict> found = judged(fed);
      assertEquals(expected.keySet(), found.keySet(), message);
      for (Map.Entry<String, Verdict> entry : expected.entrySet()) {
        Word word = found.get(entry.getKey()).word();
        all++;
        same += word == entry.getValue().word() ? 1 : 0;
        if (isClearOfEdges(entry.getValue())) {
          boolean isBolder = word == Word.CLEARS || word == Word.EXCEEDS;
          assertTrue(
              word == entry.getValue().word() || !isBolder,
              message + "\n" + entry.getKey() + " " + entry.getValue().word() + " -> " + word);
        }
      }
    }
    assertTrue(same > 0.98 * all, same + " of " + all);
  }

  private static void sameValues(AccountedAnalysis dry, AccountedAnalysis fed, String message) {
    assertEquals(dry.analysis().contents().keySet(), fed.analysis().contents().keySet(), message);
    dry.analysis()
        .contents()
        .forEach(
            (code, value) -> {
              Measured other = fed.analysis().find(code).orElseThrow();
              assertEquals(value.best(), other.best(), 2e-6 * value.best(), message + code);
              assertTrue(other.u() >= value.u() * (1 - 1e-6), message + code);
            });
  }

  /** Not within rounding of where the word changes. */
  private static boolean isClearOfEdges(Verdict verdict) {
    Measured v = verdict.value().orElseThrow();
    double w = verdict.limit().guardFactor() * v.u();
    double limit = verdict.limit().value();
    return List.of(limit - w, limit, limit + w).stream()
        .allMatch(edge -> Math.abs(v.upper() - edge) > 1e-4 * limit);
  }

  /** Without NO3 or NO3-N, or without a basis, nitrate is asked and never judged. */
  @ParameterizedTest
  @CsvSource({
    "Nitrate, ppm, All results on a dry matter basis, false",
    "Nitrate, %, All results on a dry matter basis, false",
    "Nitrate nitrogen, ppm, Thank you for your order, false",
    "Nitrate nitrogen, ppm, All results on a dry matter basis, true",
    "NO3-N, ppm, All results on a dry matter basis, true",
    "Nitrate (as N), mg/kg, All results on a dry matter basis, true"
  })
  void nitrateIsJudgedOnlyWhereFormAndBasisAreSaid(
      String name, String unit, String sentence, boolean isJudged) {
    AccountedAnalysis made =
        analysis(
            "Lot|N2\n"
                + sentence
                + "\nTest|Unit|Result\nWSC|%|9.4\nStarch|%|1.2\n"
                + name
                + "|"
                + unit
                + "|"
                + (unit.equals("%") ? "0.35" : "3500"));

    assertEquals(isJudged, judged(made).containsKey("all-nitrate-lot-3390"));
    assertEquals(isJudged, made.analysis().find(AnalyteCode.NO3_N).isPresent());
  }

  @ParameterizedTest
  @CsvSource({"1.2E6, exceeds", "'1,100,000', exceeds", "6.5 x 10^5, clears", "400000, clears"})
  void mouldIsReadInPowersOfTen(String printed, String word) {
    AccountedAnalysis made =
        analysis(
            "Lot|N2\nAll results on an as fed basis\nTest|Unit|Result\nDry matter|%|88\nWSC|%|8.4\n"
                + "Mould count|CFU/g|"
                + printed);

    assertEquals(word, judged(made).get("all-mould-lot-1m").word().code());
  }
}
