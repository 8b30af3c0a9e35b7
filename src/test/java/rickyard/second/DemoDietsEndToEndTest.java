package rickyard.second;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;
import rickyard.morning.Morning;
import rickyard.morning.OfficeFolders;
import rickyard.morning.Options;
import rickyard.morning.Progress;

/**
 * The demo's morning, recomputed from its registers, its analyses.csv and the tables alone: every
 * line of every horse's diet before and after, every verdict on a lot, and how each horse stands.
 */
class DemoDietsEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  /** Values of analyses.csv are printed with six decimals: what follows from them is no better. */
  private static final double PRINTED = 2e-5;

  @TempDir Path folder;

  private final Books books = new Books();
  private final Differences differences = new Differences();

  @Test
  void dietsAndVerdictsOfTheDemoFollowFromRegistersAnalysesAndTables() throws IOException {
    Path office = folder.resolve("office");
    BuiltJar.copy(Path.of("fixtures", "office"), office);
    Options options = new Options("kg", new TreeSet<>(List.of("data")));
    Path out =
        new Morning(OfficeFolders.of(office), options, 2, Progress.silent(), ledger -> {})
            .run(Optional.of(DAY), DAY)
            .out();
    DemoOffice demo = new DemoOffice(books, office.resolve("registers"), out, DAY);
    compareDiets(demo, Csv.read(out.resolve("diets.csv")));
    int lots = compareVerdicts(demo, Csv.read(out.resolve("verdicts.csv")));
    compareHorses(demo, Csv.read(out.resolve("horses.csv")));
    differences.assertNone();
    assertTrue(lots > 25, "compared the verdicts of " + lots + " lots");
  }

  private void compareDiets(DemoOffice demo, List<Map<String, String>> rows) {
    Map<String, Map<String, Line>> made = new HashMap<>();
    int compared = 0;
    for (Map<String, String> row : rows) {
      String when = row.get("when");
      if (when.equals("remedy")) {
        continue;
      }
      String diet = row.get("horse") + " " + when;
      Line line =
          made.computeIfAbsent(diet, d -> demo.diet(row.get("horse"), when.equals("after")).lines())
              .get(row.get("nutrient"));
      compare(diet + " " + row.get("nutrient"), row, line);
      compared++;
    }
    // of a horse that a vet must see first no kilograms are written, so no dry matter either
    long vetFirst =
        demo.horses().values().stream().filter(DemoDietsEndToEndTest::isVetFirst).count();
    assertEquals(2 * (24L * demo.horses().size() - vetFirst), compared);
  }

  private static boolean isVetFirst(Map<String, String> horse) {
    return horse.get("conditions").contains("laminitis-acute")
        && !horse.get("vet_plan").equals("yes");
  }

  private void compare(String what, Map<String, String> row, Line line) {
    // a sum of which nothing but zeros is known is shown as unknown
    boolean isKnown = line.isKnown() && !(line.supply() == 0 && Double.isInfinite(line.high()));
    double scale = Double.isFinite(line.high()) ? line.high() : line.supply();
    near(what + " supply", row.get("supply"), isKnown ? line.supply() : Double.NaN, scale);
    near(what + " low", row.get("low"), isKnown ? line.low() : Double.NaN, scale);
    double high = isKnown && Double.isFinite(line.high()) ? line.high() : Double.NaN;
    near(what + " high", row.get("high"), high, scale);
    double need = line.requirement().orElse(Double.NaN);
    near(what + " need", row.get("requirement"), need, need);
    double percent = isKnown ? line.percentOfRequirement().orElse(Double.NaN) : Double.NaN;
    near(what + " pct", row.get("pct_of_requirement"), percent, percent);
    double max = line.maxTolerable().orElse(Double.NaN);
    near(what + " max", row.get("max_tolerable"), max, max);
    differences.word(what + " status", row.get("status"), line.status());
    if (isKnown) {
      differences.word(what + " origin", row.get("origin"), line.origin());
    }
  }

  private void near(String what, String cell, double second, double scale) {
    differences.near(what, Csv.number(cell), second, PRINTED * Math.abs(scale) + 1e-6);
  }

  private int compareVerdicts(DemoOffice demo, List<Map<String, String>> rows) {
    SortedMap<String, SortedMap<String, Map<String, String>>> byLot = new TreeMap<>();
    rows.forEach(
        r -> byLot.computeIfAbsent(r.get("lot"), l -> new TreeMap<>()).put(r.get("limit_id"), r));
    int lots = 0;
    for (Map<String, String> lot : demo.lots()) {
      String id = lot.get("lot_id");
      boolean isDry = !lot.get("material").equals("haylage");
      SortedMap<String, LotRuling> second =
          LotRuling.all(books, demo.withSums(demo.contents(id, "")), isDry);
      SortedMap<String, Map<String, String>> first = byLot.getOrDefault(id, new TreeMap<>());
      differences.word(id + " limits", first.keySet().toString(), second.keySet().toString());
      second.forEach(
          (limit, ruling) -> {
            if (first.containsKey(limit)) {
              compare(id + " " + limit, first.get(limit), ruling);
            }
          });
      lots++;
    }
    return lots;
  }

  private void compare(String what, Map<String, String> row, LotRuling second) {
    differences.word(what, row.get("verdict"), second.ruling().word());
    double p = second.ruling().pOver().orElse(Double.NaN);
    differences.near(what + " p", Csv.number(row.get("p_over")), p, 1e-4 * p + 1e-9);
    if (second.value().isPresent() && !row.get("value").isEmpty()) {
      Num v = second.value().get();
      near(what + " value", row.get("value"), v.best(), v.best());
      near(what + " low", row.get("low"), v.low(), v.best());
      near(what + " high", row.get("high"), v.isBounded() ? v.high() : Double.NaN, v.best());
      near(what + " u", row.get("u"), v.u(), v.best());
    }
  }

  private void compareHorses(DemoOffice demo, List<Map<String, String>> rows) {
    for (Map<String, String> row : rows) {
      String horse = row.get("horse");
      Mixture mixture = demo.mixture(horse, true);
      double kg = Double.parseDouble(demo.horses().get(horse).get("body_weight_kg"));
      double dm = isVetFirst(demo.horses().get(horse)) ? Double.NaN : mixture.totalDm();
      near(horse + " dm", row.get("dm_kg"), dm, dm);
      double percent = 100 * mixture.totalDm() / kg;
      near(horse + " dm pct", row.get("dm_pct_bw"), percent, percent);
      double nsc =
          mixture.content("NSC_WSC").filter(Num::isBounded).map(Num::best).orElse(Double.NaN);
      near(horse + " nsc", row.get("nsc_wsc_pct_dm"), nsc, nsc);
      if (!demo.horses().get(horse).getOrDefault("herd", "").isEmpty()) {
        continue; // a shared bale's verdict comes in, which is not computed here
      }
      SortedMap<String, LotRuling> after = demo.rulings(horse, true);
      differences.word(horse + " after", row.get("verdict_after"), DemoOffice.worst(after));
      String before = DemoOffice.worst(demo.rulings(horse, false));
      differences.word(horse + " before", row.get("verdict_before"), before);
      LotRuling named = after.get(row.get("limit_id"));
      if (named != null) {
        double p = named.ruling().pOver().orElse(Double.NaN);
        differences.near(horse + " p", Csv.number(row.get("p_over")), p, 1e-4 * p + 1e-9);
        double u = named.value().map(Num::u).orElse(Double.NaN);
        near(horse + " u", row.get("u"), u, u);
      }
    }
  }
}
