package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;

/** A seeded support of one to four items with all that can bind it. */
final class RandomSupport {
  private static final List<String> QUANTITIES = List.of("nsc_wsc", "k", "se");
  private static final List<Double> FACTORS = List.of(0.0, 0.8416, 1.2816, 1.6449, 1.96, 2.0);
  private static final List<String> NEEDS = List.of("CP", "CA", "ZN", "DE");

  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private final Random random;
  private final RemedyRequest request;
  private final MixSpec spec;

  RandomSupport(long seed) {
    // Seeds that follow each other give nearly the same first draw of a power of two.
    this.random = new Random(seed * SPREAD);
    double bodyWeight = between(120, 700);
    List<Serving> ration = new ArrayList<>();
    List<FreeItem> free = new ArrayList<>();
    int count = 1 + random.nextInt(MixSpec.MOST);
    double forage = 0;
    for (int i = 0; i < count; i++) {
      boolean isForage = i == 0 || random.nextInt(4) > 0;
      Candidate item = item("F" + i, isForage);
      double most =
          random.nextInt(3) == 0 ? between(0.004, 0.02) * bodyWeight : Double.POSITIVE_INFINITY;
      double today =
          random.nextInt(2) == 0 ? between(0.002, isForage ? 0.018 : 0.004) * bodyWeight : 0;
      if (today > 0) {
        ration.add(serving(item, today, isForage));
      }
      if (!isForage) {
        most = Math.min(most, random.nextBoolean() ? Math.max(today, 0.001) : 0.006 * bodyWeight);
      }
      double least = random.nextInt(6) == 0 ? Math.min(most, 0.001 * bodyWeight) : 0;
      free.add(new FreeItem(item, isForage, meals(isForage), least, most));
      forage += isForage ? today : 0;
    }
    List<Serving> fixed = new ArrayList<>();
    for (int i = 0; i < random.nextInt(4); i++) {
      boolean isForage = random.nextInt(3) == 0;
      double dm = between(0.0005, isForage ? 0.006 : 0.002) * bodyWeight;
      fixed.add(serving(item("X" + i, isForage), dm, isForage));
    }
    ration.addAll(fixed);
    boolean hasTarget = random.nextInt(3) > 0;
    double target =
        forage > 0 && random.nextBoolean() ? forage : between(0.012, 0.022) * bodyWeight;
    this.spec =
        new MixSpec(
            free,
            fixed,
            hasTarget ? OptionalDouble.of(target) : OptionalDouble.empty(),
            random.nextBoolean());
    this.request = request(bodyWeight, ration, free);
  }

  RemedyRequest request() {
    return request;
  }

  MixSpec spec() {
    return spec;
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private OptionalInt meals(boolean isForage) {
    return isForage || random.nextBoolean()
        ? OptionalInt.empty()
        : OptionalInt.of(1 + random.nextInt(3));
  }

  private Serving serving(Candidate item, double dm, boolean isForage) {
    return new Serving(item, dm / item.dryMatterFraction(), isForage, meals(isForage));
  }

  private Candidate item(String id, boolean isForage) {
    TreeMap<String, Content> contents = new TreeMap<>();
    if (random.nextInt(20) > 0) {
      contents.put(
          "nsc_wsc",
          new Content(isForage ? between(3, 17) : between(3, 50), between(0, isForage ? 2 : 3)));
    }
    if (random.nextInt(4) > 0) {
      contents.put("k", new Content(between(0.4, 2.4), between(0, 0.2)));
    }
    if (random.nextInt(4) > 0) {
      contents.put(
          "se", new Content(between(0.02, random.nextInt(6) == 0 ? 3 : 0.5), between(0, 0.1)));
    }
    TreeMap<String, Double> nutrients = new TreeMap<>();
    nutrients.put("CP", between(30, 200));
    nutrients.put("CA", between(1, 12));
    nutrients.put("ZN", between(10, 120));
    nutrients.put("DE", between(1.6, 3.2));
    if (random.nextInt(12) > 0) {
      contents.put("energy", new Content(nutrients.get("DE"), 0));
    }
    boolean isStraw = isForage && random.nextInt(7) == 0;
    Candidate made =
        Yard.item(
            id,
            random.nextInt(3) == 0 ? CandidateKind.FEED : CandidateKind.LOT,
            isForage ? (isStraw ? "straw" : "grass-hay") : "concentrate",
            "chopped",
            isForage,
            between(0.55, 0.93),
            8,
            1,
            Label.NONE);
    Stock stock =
        random.nextBoolean()
            ? Stock.UNKNOWN
            : new Stock(
                OptionalDouble.empty(),
                0,
                OptionalDouble.empty(),
                OptionalDouble.of(between(0.1, 0.8)));
    return new Candidate(
        made.id(),
        "",
        made.name(),
        made.kind(),
        made.role(),
        made.form(),
        made.isForage(),
        made.isStraw(),
        made.dryMatterFraction(),
        contents,
        nutrients,
        stock,
        made.label());
  }

  private RemedyRequest request(double bodyWeight, List<Serving> ration, List<FreeItem> free) {
    List<DietLimit> limits = new ArrayList<>();
    for (String quantity : QUANTITIES) {
      if (quantity.equals("nsc_wsc") || random.nextInt(3) == 0) {
        double value =
            switch (quantity) {
              case "k" -> between(0.9, 1.6);
              case "se" -> between(0.3, 2);
              default -> between(7, 13);
            };
        boolean isMaximum = quantity.equals("nsc_wsc") || random.nextInt(5) > 0;
        double z = FACTORS.get(random.nextInt(FACTORS.size()));
        boolean isAsked = quantity.equals("nsc_wsc");
        limits.add(
            new DietLimit(
                quantity,
                quantity,
                quantity,
                isMaximum ? value : value / 4,
                isMaximum,
                z,
                isAsked));
      }
    }
    List<MealLimit> meals =
        random.nextBoolean()
            ? List.of()
            : List.of(
                new MealLimit(
                    "meal",
                    "nsc_wsc",
                    "NSC",
                    between(0.1, 0.6) * bodyWeight,
                    FACTORS.get(random.nextInt(FACTORS.size()))));
    List<NutrientNeed> needs = new ArrayList<>();
    double[] perKg = {1.3, 0.04, 0.8, 0.033};
    for (int k = 0; k < NEEDS.size(); k++) {
      needs.add(new NutrientNeed(NEEDS.get(k), perKg[k] * bodyWeight * between(0.7, 1.5)));
    }
    IntakeRange usual = Yard.intake(bodyWeight);
    IntakeRange intake =
        new IntakeRange(
            usual.floorKgDm(),
            usual.ceilingKgDm(),
            usual.forageFloorKgDm(),
            usual.maxStrawShare(),
            band(bodyWeight));
    HorseFacts horse = Yard.horse(bodyWeight);
    return new RemedyRequest(
        horse,
        ration,
        List.of(),
        free.stream().map(FreeItem::item).toList(),
        limits,
        meals,
        intake,
        needs,
        MassUnit.KG,
        Yard.SETTINGS,
        new PlainCheck(horse, limits, meals, intake, needs));
  }

  private Optional<EnergyBand> band(double bodyWeight) {
    double need = 0.0333 * bodyWeight * between(0.9, 1.3);
    double least = random.nextInt(3) == 0 ? 0 : need * between(0.75, 1);
    double most = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : need * between(1, 1.3);
    return random.nextInt(3) == 0 ? Optional.empty() : Optional.of(new EnergyBand(least, most));
  }
}
