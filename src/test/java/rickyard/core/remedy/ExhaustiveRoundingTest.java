package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * What comes off the workbench against every weighable ration of the support: supports of one to
 * four items on scales so coarse that all of them can be tried.
 */
class ExhaustiveRoundingTest {
  private static final long SEED = 52_000;
  private static final int CASES = Integer.getInteger("rickyard.grids", 150);
  private static final double TIE = 1e-9;
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  /** A request on a coarse scale and one support of it. */
  private record Case(RemedyRequest request, MixSpec spec) {}

  private static double between(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private static RemedySettings coarse(double size) {
    RemedySettings s = Yard.SETTINGS;
    ScaleSteps steps =
        new ScaleSteps(
            MassUnit.KG,
            List.of(
                new ScaleSteps.Step(1, size / 2),
                new ScaleSteps.Step(Double.POSITIVE_INFINITY, size)));
    return new RemedySettings(
        s.changeWeight(),
        s.targetWeight(),
        s.shortfallWeight(),
        s.costWeight(),
        steps,
        s.lbSteps(),
        s.controlledShares(),
        s.stockHorizonDays(),
        s.monthDays(),
        s.largestPool(),
        s.largestNumberOfChecks(),
        s.chewableForms(),
        s.changeoverDays(),
        s.changeoverShares(),
        new LeastPortions(
            new TreeMap<>(java.util.Map.of(LeastPortions.FORAGE, 0.0, LeastPortions.OTHER, 0.0))),
        s.leastRetestChance(),
        s.assumedRelativeU());
  }

  private static Candidate item(Random random, String id, boolean isForage) {
    Candidate made =
        Yard.item(
            id,
            isForage ? CandidateKind.LOT : CandidateKind.FEED,
            isForage ? "grass-hay" : "concentrate",
            "chopped",
            isForage,
            between(random, 0.6, 0.92),
            isForage ? between(random, 4, 16) : between(random, 8, 40),
            between(random, 0.2, 1.8),
            Label.NONE);
    Stock stock =
        random.nextBoolean()
            ? Stock.UNKNOWN
            : new Stock(
                OptionalDouble.empty(),
                0,
                OptionalDouble.empty(),
                OptionalDouble.of(between(random, 0.1, 0.6)));
    TreeMap<String, Double> nutrients = new TreeMap<>();
    nutrients.put("CP", between(random, 40, 180));
    nutrients.put("CA", between(random, 2, 10));
    return withEnergy(Yard.with(Yard.with(made, stock), nutrients), between(random, 1.7, 3));
  }

  private static Candidate withEnergy(Candidate c, double mcalPerKgDm) {
    TreeMap<String, Content> contents = new TreeMap<>(c.contents());
    contents.put(EnergyBand.QUANTITY, new Content(mcalPerKgDm, 0));
    return new Candidate(
        c.id(),
        c.batch(),
        c.name(),
        c.kind(),
        c.role(),
        c.form(),
        c.isForage(),
        c.isStraw(),
        c.dryMatterFraction(),
        contents,
        c.nutrientsPerKgDm(),
        c.stock(),
        c.label());
  }

  private static IntakeRange intake(Random random, double bodyWeight) {
    IntakeRange usual = Yard.intake(bodyWeight);
    double need = 0.0333 * bodyWeight;
    EnergyBand band =
        new EnergyBand(need * between(random, 0.7, 1), need * between(random, 1, 1.4));
    return new IntakeRange(
        usual.floorKgDm(),
        usual.ceilingKgDm(),
        usual.forageFloorKgDm(),
        usual.maxStrawShare(),
        random.nextBoolean() ? Optional.of(band) : Optional.empty());
  }

  private static Case draw(long seed) {
    // Seeds that follow each other give nearly the same first draw of a power of two.
    Random random = new Random(seed * SPREAD);
    int count = 1 + random.nextInt(MixSpec.MOST);
    double bodyWeight = between(random, 180, 350);
    List<Serving> ration = new ArrayList<>();
    List<FreeItem> free = new ArrayList<>();
    double target = between(random, 0.013, 0.019) * bodyWeight;
    for (int i = 0; i < count; i++) {
      boolean isForage = i < 2 || random.nextBoolean();
      Candidate item = item(random, "F" + i, isForage);
      boolean isFed = i == 0 || random.nextInt(3) == 0;
      double today = isFed ? (isForage ? target / (i + 1) : 0.003 * bodyWeight) : 0;
      if (isFed) {
        double kg = today / item.dryMatterFraction();
        ration.add(isForage ? Serving.ofForage(item, kg) : Serving.ofBucket(item, kg));
      }
      double most = isForage ? Double.POSITIVE_INFINITY : Math.max(today, 0.004 * bodyWeight);
      free.add(new FreeItem(item, isForage, OptionalInt.empty(), 0, most));
    }
    boolean hasTarget = random.nextInt(4) > 0;
    List<NutrientNeed> needs =
        List.of(
            new NutrientNeed("CP", between(random, 0.9, 1.8) * bodyWeight),
            new NutrientNeed("CA", between(random, 0.03, 0.1) * bodyWeight));
    List<DietLimit> limits =
        List.of(Yard.nscLimit(between(random, 7, 12), random.nextBoolean() ? 1.6449 : 0.8416));
    List<MealLimit> meals =
        random.nextBoolean()
            ? List.of()
            : List.of(new MealLimit("meal", Yard.NSC, "NSC", 0.2 * bodyWeight, 0));
    HorseFacts horse = Yard.horse(bodyWeight);
    IntakeRange intake = intake(random, bodyWeight);
    RemedyRequest request =
        new RemedyRequest(
            horse,
            ration,
            List.of(),
            free.stream().map(FreeItem::item).toList(),
            limits,
            meals,
            intake,
            needs,
            MassUnit.KG,
            coarse(count > 3 ? 1.0 : 0.5),
            new PlainCheck(horse, limits, meals, intake, needs));
    OptionalDouble sum = hasTarget ? OptionalDouble.of(target) : OptionalDouble.empty();
    return new Case(request, new MixSpec(free, List.of(), sum, random.nextBoolean()));
  }

  /** Every weighable amount that an item may have, kg as fed, and what is fed today. */
  private static List<Double> amounts(RemedyRequest request, FreeItem f) {
    List<Double> amounts = new ArrayList<>();
    double most =
        Math.min(f.mostDmKg(), request.intake().ceilingKgDm()) / f.item().dryMatterFraction();
    double step = request.steps().steps().get(0).size();
    double large = request.steps().steps().get(1).size();
    for (int k = 0; k * step < 1; k++) {
      amounts.add(k * step);
    }
    for (int k = (int) Math.ceil(1 / large); k * large <= most + 1e-9; k++) {
      amounts.add(k * large);
    }
    amounts.removeIf(kg -> kg > most + 1e-9);
    double today = request.todayKg(f.item());
    if (today > 0 && today <= most + 1e-9 && !amounts.contains(today)) {
      amounts.add(today);
    }
    return amounts;
  }

  /** The objective: change, cost, what the forage differs from its target, what is missing. */
  private static double score(Case c, double[] kg) {
    RemedySettings s = c.request().settings();
    double score = 0;
    double forage = 0;
    double[] given = new double[c.request().needs().size()];
    for (int i = 0; i < kg.length; i++) {
      FreeItem f = c.spec().free().get(i);
      double dm = kg[i] * f.item().dryMatterFraction();
      double today = c.request().todayKg(f.item()) * f.item().dryMatterFraction();
      score += s.changeWeight() * Math.abs(dm - today);
      score += s.costWeight() * kg[i] * f.item().stock().pricePerKg().orElse(0);
      forage += f.fedAsForage() ? dm : 0;
      for (int k = 0; k < given.length; k++) {
        given[k] += dm * f.item().nutrient(c.request().needs().get(k).code());
      }
    }
    if (c.spec().freeForageDmKg().isPresent()) {
      score += s.targetWeight() * Math.abs(forage - c.spec().freeForageDmKg().getAsDouble());
    }
    for (int k = 0; k < given.length && c.spec().hasWishes(); k++) {
      double need = c.request().needs().get(k).perDay();
      score += s.shortfallWeight() * Math.max(0, need - given[k]) / need;
    }
    return score;
  }

  private static List<Serving> ration(Case c, double[] kg) {
    List<Serving> ration = new ArrayList<>();
    for (int i = 0; i < kg.length; i++) {
      FreeItem f = c.spec().free().get(i);
      if (kg[i] > 0) {
        ration.add(new Serving(f.item(), kg[i], f.fedAsForage(), f.meals()));
      }
    }
    return ration;
  }

  /** The least score of all weighable rations that are enough. */
  private static OptionalDouble best(
      Case c, List<List<Double>> amounts, int place, double[] kg, OptionalDouble bound) {
    if (place == kg.length) {
      double score = score(c, kg);
      boolean isWorse = bound.isPresent() && score >= bound.getAsDouble();
      return !isWorse && c.request().check().check(ration(c, kg)).isEnough()
          ? OptionalDouble.of(score)
          : bound;
    }
    OptionalDouble found = bound;
    for (double amount : amounts.get(place)) {
      kg[place] = amount;
      found = best(c, amounts, place + 1, kg, found);
    }
    return found;
  }

  @Test
  void noWeighableRationIsBetterThanTheOneFound() {
    List<String> wrong = new ArrayList<>();
    int[] enough = new int[MixSpec.MOST + 1];
    for (int i = 0; i < CASES; i++) {
      Case c = draw(SEED + i);
      List<List<Double>> amounts =
          c.spec().free().stream().map(f -> amounts(c.request(), f)).toList();
      OptionalDouble all = best(c, amounts, 0, new double[amounts.size()], OptionalDouble.empty());
      Optional<Draft> found = new Workbench(c.request()).best(c.spec());
      boolean isFound = found.filter(d -> d.diet().isEnough()).isPresent();
      String name = "seed " + (SEED + i) + " of " + c.spec().free().size() + ": ";
      if (isFound != all.isPresent()) {
        wrong.add(name + "found " + isFound + ", exists " + all);
      } else if (isFound) {
        enough[c.spec().free().size()]++;
        double score = found.get().score();
        if (Math.abs(score - all.getAsDouble()) > TIE * Math.max(1, score)) {
          wrong.add(name + score + ", best " + all.getAsDouble());
        }
      }
    }
    assertEquals(List.of(), wrong, () -> wrong.size() + " of " + CASES);
    assertTrue(
        enough[3] >= CASES / 50 && enough[4] >= CASES / 50,
        () -> java.util.Arrays.toString(enough));
  }
}
