package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.Judge;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.Word;
import rickyard.core.quantity.Measured;
import rickyard.tables.JudgementTables;

/** What must hold of every ration; the seed is the repetition and stands in each message. */
class DietPropertyTest {
  private static final List<String> ROLES =
      List.of("grass-hay", "legume-hay", "straw", "haylage", "concentrate", "balancer", "salt");
  private static final List<AnalyteCode> ANALYTES =
      List.of(
          AnalyteCode.WSC,
          AnalyteCode.STARCH,
          AnalyteCode.CP,
          AnalyteCode.CA,
          AnalyteCode.P,
          AnalyteCode.CU,
          AnalyteCode.SE,
          AnalyteCode.VIT_E);

  private static List<Portion> ration(Random random) {
    List<Portion> portions = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      String role = ROLES.get(random.nextInt(ROLES.size()));
      Foods made = Foods.of("i" + i, role).dm(40 + 60 * random.nextDouble(), random.nextDouble());
      for (AnalyteCode code : ANALYTES) {
        if (random.nextInt(4) > 0) {
          made.with(code, 20 * random.nextDouble(), random.nextDouble());
        }
      }
      boolean isLot = role.endsWith("hay") || role.equals("straw") || role.equals("haylage");
      portions.add(
          new Portion(
              isLot ? made.lot() : made.feed(),
              5 * random.nextDouble(),
              0,
              isLot,
              OptionalInt.of(1 + random.nextInt(4))));
    }
    return portions;
  }

  private static Diet diet(Horse horse, List<Portion> portions) {
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);
    return Diet.evaluate(horse, portions, needs, Foods.STANDARDS);
  }

  private static Horse horse() {
    return Horses.adult(500).build();
  }

  private static void assertSame(Diet a, Diet b, String seed) {
    for (Nutrient nutrient : Nutrient.values()) {
      NutrientLine x = a.line(nutrient);
      NutrientLine y = b.line(nutrient);
      double scale = 1e-9 * Math.max(1, Math.abs(x.supply().best()));
      assertEquals(x.supply().best(), y.supply().best(), scale, seed + nutrient);
      assertEquals(x.supply().u(), y.supply().u(), scale, seed + nutrient);
      assertEquals(x.status(), y.status(), seed + nutrient);
    }
    assertEquals(a.contents().keySet(), b.contents().keySet(), seed);
    a.contents()
        .forEach(
            (code, value) -> {
              Measured other = b.content(code).orElseThrow();
              assertEquals(value.best(), other.best(), 1e-9, seed + code);
              assertEquals(value.u(), other.u(), 1e-9, seed + code);
              assertEquals(value.upper(), other.upper(), 1e-9, seed + code);
            });
  }

  @RepeatedTest(50)
  void theOrderOfTheItemsChangesNothing(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Portion> portions = ration(random);
    List<Portion> shuffled = new ArrayList<>(portions);
    Collections.shuffle(shuffled, random);
    assertSame(
        diet(horse(), portions), diet(horse(), shuffled), "seed " + info.getCurrentRepetition());
  }

  @RepeatedTest(50)
  void splittingAPortionChangesNothing(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Portion> portions = ration(random);
    List<Portion> split = new ArrayList<>(portions);
    Portion first = split.remove(0);
    double part = random.nextDouble();
    split.add(first.withKg(first.kgAsFed() * part));
    split.add(first.withKg(first.kgAsFed() * (1 - part)));
    assertSame(
        diet(horse(), portions), diet(horse(), split), "seed " + info.getCurrentRepetition());
  }

  @RepeatedTest(50)
  void dryMatterAndNutrientsAreConserved(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Portion> portions = ration(random);
    Diet diet = diet(horse(), portions);
    String seed = "seed " + info.getCurrentRepetition();
    double kg = portions.stream().mapToDouble(Portion::kgDm).sum();
    assertEquals(kg, diet.line(Nutrient.DM).supply().best(), 1e-9, seed);
    assertEquals(1, diet.items().stream().mapToDouble(DietItem::share).sum(), 1e-9, seed);
    double copper =
        portions.stream()
            .mapToDouble(
                p -> p.kgDm() * p.food().find(AnalyteCode.CU).map(Measured::best).orElse(0.0))
            .sum();
    assertEquals(copper, diet.line(Nutrient.CU).supply().best(), 1e-9, seed);
    // the mean lies between the lowest and the highest content where all are known
    diet.content(AnalyteCode.NSC_WSC)
        .filter(Measured::isBoundedAbove)
        .ifPresent(
            nsc -> {
              assertEquals(
                  nsc.best() * kg * 10, diet.gramsPerDay(AnalyteCode.NSC_WSC).best(), 1e-6, seed);
              assertTrue(nsc.low() <= nsc.best() && nsc.best() <= nsc.high(), seed);
            });
  }

  @RepeatedTest(50)
  void everyNutrientIsTheSumOfItsItemsWithItsUncertainty(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Portion> portions = ration(random);
    Diet diet = diet(horse(), portions);
    for (Nutrient nutrient : Nutrient.values()) {
      if (!nutrient.isSummed()) {
        continue;
      }
      double sum = 0;
      double variance = 0;
      boolean isComplete = true;
      for (Portion p : portions) {
        Measured c = p.food().find(nutrient.analyte()).orElse(null);
        isComplete &= c != null || p.kgDm() == 0;
        if (c != null) {
          double kgU = Math.hypot(p.kgU() * dm(p), p.kgAsFed() * p.food().dryMatter().u() / 100);
          sum += p.kgAsFed() * dm(p) * c.best() * nutrient.perKg();
          variance += Math.pow(p.kgAsFed() * dm(p) * c.u() * nutrient.perKg(), 2);
          variance += Math.pow(c.best() * kgU * nutrient.perKg(), 2);
        }
      }
      Amount supply = diet.line(nutrient).supply();
      String seed = "seed " + info.getCurrentRepetition() + " " + nutrient;
      assertEquals(sum, supply.best(), 1e-9 * Math.max(1, sum), seed);
      assertEquals(Math.sqrt(variance), supply.u(), 1e-9 * Math.max(1, sum), seed);
      assertEquals(isComplete, supply.isComplete(), seed);
      assertEquals(isComplete, Double.isFinite(supply.high()), seed);
    }
    double dmVariance =
        portions.stream()
            .mapToDouble(
                p ->
                    Math.pow(p.kgU() * dm(p), 2)
                        + Math.pow(p.kgAsFed() * p.food().dryMatter().u() / 100, 2))
            .sum();
    assertEquals(Math.sqrt(dmVariance), diet.line(Nutrient.DM).supply().u(), 1e-9);
  }

  private static double dm(Portion portion) {
    return portion.food().dryMatter().best() / 100;
  }

  /** A ration of hays with sugars, one of them ad lib: its amount is not known well. */
  private static List<Foods> hays(Random random) {
    List<Foods> hays = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(3); i++) {
      Foods made = Foods.of("i" + i, "grass-hay").dm(80 + 15 * random.nextDouble());
      made.with(AnalyteCode.WSC, 3 + 14 * random.nextDouble(), 0.2 + 2 * random.nextDouble());
      if (random.nextInt(5) > 0) {
        made.with(AnalyteCode.STARCH, 3 * random.nextDouble(), random.nextDouble());
      }
      hays.add(made);
    }
    return hays;
  }

  private static List<Portion> portions(List<Foods> hays, List<Double> kg, double adLibU) {
    List<Portion> portions = new ArrayList<>();
    for (int i = 0; i < hays.size(); i++) {
      double u = i == 0 ? adLibU : 0;
      portions.add(new Portion(hays.get(i).lot(), kg.get(i), u, true, OptionalInt.empty()));
    }
    return portions;
  }

  @RepeatedTest(200)
  void moreSugarInAnItemNeverImprovesAVerdict(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Foods> hays = hays(random);
    List<Double> kg = hays.stream().map(h -> 4 * random.nextDouble()).toList();
    double adLibU = random.nextBoolean() ? 3 * random.nextDouble() : 0;
    Diet before = diet(horse(), portions(hays, kg, adLibU));
    Foods raised = hays.get(random.nextInt(hays.size()));
    raised.with(
        AnalyteCode.WSC,
        raised.analysis().find(AnalyteCode.WSC).orElseThrow().best() + 3 * random.nextDouble(),
        raised.analysis().find(AnalyteCode.WSC).orElseThrow().u());
    Diet after = diet(horse(), portions(hays, kg, adLibU));
    for (Limit limit : LIMITS) {
      Word was = Judge.judge(limit, before.content(limit.analyte()), "").word();
      Word is = Judge.judge(limit, after.content(limit.analyte()), "").word();
      String seed = "seed " + info.getCurrentRepetition() + " " + limit.id() + " " + was + " " + is;
      assertTrue(was.isCleared() || !is.isCleared(), seed);
      assertTrue(was != Word.BORDERLINE_OVER || is != Word.BORDERLINE_UNDER, seed);
      // where amounts were weighed the order is whole; a doubtful amount of richer hay widens u
      assertTrue(adLibU > 0 || was.compareTo(is) <= 0 || is == Word.CANNOT_JUDGE, seed);
    }
  }

  private static final List<Limit> LIMITS =
      JudgementTables.load(Optional.empty()).limits().stream()
          .filter(l -> l.subject() == LimitSubject.DIET && l.quantity().startsWith("nsc"))
          .toList();

  @RepeatedTest(30)
  void aWiderUncertaintyNeverClears(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Foods> hays = hays(random);
    List<Double> kg = hays.stream().map(h -> 4 * random.nextDouble()).toList();
    Diet before = diet(horse(), portions(hays, kg, 0));
    Foods wider = hays.get(0);
    Measured wsc = wider.analysis().find(AnalyteCode.WSC).orElseThrow();
    wider.with(AnalyteCode.WSC, wsc.best(), wsc.u() * (1 + random.nextDouble()));
    Diet after = diet(horse(), portions(hays, kg, random.nextDouble()));
    for (Limit limit : LIMITS) {
      boolean was = Judge.judge(limit, before.content(limit.analyte()), "").word().isCleared();
      boolean is = Judge.judge(limit, after.content(limit.analyte()), "").word().isCleared();
      assertTrue(was || !is, "seed " + info.getCurrentRepetition() + " " + limit.id());
    }
  }

  @RepeatedTest(20)
  void aWholeDietIsTheSameInPoundsAndInKilograms(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Portion> portions = ration(random);
    Map<String, Foodstuff> foods = new TreeMap<>();
    List<RationItem> kg = new ArrayList<>();
    List<RationItem> lb = new ArrayList<>();
    for (Portion p : portions) {
      foods.put(p.food().id(), p.food());
      kg.add(item(p, p.kgAsFed(), "kg"));
      lb.add(item(p, p.kgAsFed() / 0.45359237, "lb"));
    }
    Diet one = diet(horse(), amounts(foods, kg));
    Diet two = diet(horse(), amounts(foods, lb));
    String seed = "seed " + info.getCurrentRepetition();
    assertSame(one, two, seed);
    assertEquals(one.intake().floor(), two.intake().floor(), seed);
    assertEquals(one.bucketMeal().kgAsFed(), two.bucketMeal().kgAsFed(), 1e-9, seed);
  }

  private static RationItem item(Portion p, double amount, String unit) {
    return new RationItem(p.food().id(), "", amount, unit, p.asForage(), p.meals(), "dry");
  }

  private static List<Portion> amounts(Map<String, Foodstuff> foods, List<RationItem> items) {
    return RationAmounts.of(
            horse(),
            Rows.ration(items.toArray(RationItem[]::new)),
            (id, batch) -> java.util.Optional.ofNullable(foods.get(id)),
            List.of(),
            Horses.DAY,
            Foods.STANDARDS)
        .portions();
  }

  @RepeatedTest(50)
  void moreOfAnythingNeverSuppliesLess(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    List<Portion> portions = ration(random);
    List<Portion> more = new ArrayList<>(portions);
    Portion first = more.remove(0);
    more.add(0, first.withKg(first.kgAsFed() * (1 + random.nextDouble())));
    Diet before = diet(horse(), portions);
    Diet after = diet(horse(), more);
    for (Nutrient nutrient : Nutrient.values()) {
      if (nutrient.isSummed() || nutrient == Nutrient.DM) {
        assertTrue(
            after.line(nutrient).supply().best() >= before.line(nutrient).supply().best() - 1e-12,
            "seed " + info.getCurrentRepetition() + " " + nutrient);
      }
    }
  }

  @RepeatedTest(20)
  void twiceTheHorseOnTwiceTheRationStandsTheSame(RepetitionInfo info) {
    List<Portion> portions = ration(new Random(info.getCurrentRepetition()));
    List<Portion> twice = portions.stream().map(p -> p.withKg(2 * p.kgAsFed())).toList();
    Diet one = diet(Horses.adult(400).build(), portions);
    Diet two = diet(Horses.adult(800).build(), twice);
    for (Nutrient nutrient : Nutrient.values()) {
      assertEquals(
          one.line(nutrient).status(),
          two.line(nutrient).status(),
          "seed " + info.getCurrentRepetition() + " " + nutrient);
    }
    assertEquals(one.intake().floor(), two.intake().floor());
  }

  @RepeatedTest(20)
  void poundsAndKilogramsLeadToTheSameRation(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    double kg = 10 * random.nextDouble();
    Foodstuff food = Foods.of("a", "grass-hay").lot();
    assertEquals(
        amount(food, Rows.item("a", kg, "kg")),
        amount(food, Rows.item("a", kg / 0.45359237, "lb")),
        1e-12 * kg,
        "seed " + info.getCurrentRepetition());
  }

  private static double amount(Foodstuff food, RationItem item) {
    return RationAmounts.of(
            horse(),
            Rows.ration(item),
            (id, batch) -> java.util.Optional.of(food),
            List.of(),
            Horses.DAY,
            Foods.STANDARDS)
        .portions()
        .get(0)
        .kgAsFed();
  }
}
