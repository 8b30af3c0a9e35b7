package rickyard.core.remedy;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a choice of amounts of one support comes to: the search asks it many thousand times, so
 * whatever does not hang on the choice is worked out once.
 *
 * <p>Items that are not fed are left out of every sum, so that a figure is the same bit for bit as
 * over the ration itself.
 */
final class MixFigures {
  private static final double NOTHING_KG = 1e-9;

  private final RemedyRequest request;
  private final MixSpec spec;
  private final Candidate[] items;
  private final boolean[] isForage;
  private final double[] fixedKg;
  private final int[] place;
  private final double[] today;
  private final boolean[] isToday;
  private final double[] price;
  private final double[] needs;
  private final double[][] perKgDm;
  private final Optional<EnergyBand> energy;

  MixFigures(RemedyRequest request, MixSpec spec) {
    this.request = request;
    this.spec = spec;
    List<FreeItem> free = spec.free();
    int count = free.size() + spec.fixed().size();
    items = new Candidate[count];
    isForage = new boolean[count];
    fixedKg = new double[count];
    price = new double[count];
    for (int i = 0; i < count; i++) {
      boolean isFree = i < free.size();
      items[i] = isFree ? free.get(i).item() : fixed(i).item();
      isForage[i] = isFree && free.get(i).isForage();
      fixedKg[i] = isFree ? 0 : fixed(i).kg();
      price[i] = items[i].stock().pricePerKg().orElse(0);
    }
    SortedMap<String, Double> ration = request.negativeDmKg();
    SortedMap<String, Integer> places = places(ration);
    place = new int[count];
    for (int i = 0; i < count; i++) {
      place[i] = places.getOrDefault(items[i].key(), 0);
    }
    today = new double[places.size()];
    isToday = new boolean[places.size()];
    ration.forEach(
        (key, dm) -> {
          today[places.getOrDefault(key, 0)] = dm;
          isToday[places.getOrDefault(key, 0)] = true;
        });
    energy = request.intake().energy().filter(band -> EnergyBand.isKnown(spec));
    needs = request.needs().stream().mapToDouble(NutrientNeed::perDay).toArray();
    perKgDm = new double[needs.length][count];
    for (int n = 0; n < needs.length; n++) {
      for (int i = 0; i < count; i++) {
        perKgDm[n][i] = items[i].nutrient(request.needs().get(n).code());
      }
    }
  }

  private Serving fixed(int i) {
    return spec.fixed().get(i - spec.free().size());
  }

  /** The place of each item among all that are fed today or may be, in the order of their keys. */
  private SortedMap<String, Integer> places(SortedMap<String, Double> ration) {
    SortedMap<String, Integer> places = new TreeMap<>();
    ration.keySet().forEach(key -> places.put(key, 0));
    for (Candidate item : items) {
      places.put(item.key(), 0);
    }
    int next = 0;
    for (var entry : places.entrySet()) {
      entry.setValue(next++);
    }
    return places;
  }

  /** Kg as fed of each item, the free ones first. */
  private double[] kg(double[] dmKg) {
    double[] kg = fixedKg.clone();
    for (int i = 0; i < spec.free().size(); i++) {
      kg[i] = Math.max(0, dmKg[i]) / items[i].dryMatterFraction();
    }
    return kg;
  }

  /** Dry matter of each item; of those that are not fed 0. */
  private double[] dm(double[] kg) {
    double[] dm = new double[kg.length];
    for (int i = 0; i < dm.length; i++) {
      dm[i] = kg[i] * items[i].dryMatterFraction();
    }
    return dm;
  }

  /** What a choice costs in the sense of the objective, the distance from the target included. */
  double score(double[] dmKg) {
    RemedySettings settings = request.settings();
    double[] kg = kg(dmKg);
    double[] dm = dm(kg);
    double score =
        settings.changeWeight() * change(kg, dm) + settings.costWeight() * costPerDay(kg);
    if (spec.freeForageDmKg().isPresent()) {
      double forage = 0;
      for (int i = 0; i < dmKg.length; i++) {
        forage += isForage[i] ? dmKg[i] : 0;
      }
      score += settings.targetWeight() * Math.abs(forage - spec.freeForageDmKg().getAsDouble());
    }
    return spec.hasWishes() ? score + missing(kg, dm) : score;
  }

  /** As {@link RemedyRequest#changeDmKg}. */
  private double change(double[] kg, double[] dm) {
    double[] sums = today.clone();
    boolean[] isIn = isToday.clone();
    for (int i = 0; i < kg.length; i++) {
      if (kg[i] > 0) {
        sums[place[i]] = isIn[place[i]] ? sums[place[i]] + dm[i] : dm[i];
        isIn[place[i]] = true;
      }
    }
    DoubleSummaryStatistics sum = new DoubleSummaryStatistics();
    for (int i = 0; i < sums.length; i++) {
      if (isIn[i]) {
        sum.accept(Math.abs(sums[i]));
      }
    }
    return sum.getSum();
  }

  private double costPerDay(double[] kg) {
    DoubleSummaryStatistics sum = new DoubleSummaryStatistics();
    for (int i = 0; i < kg.length; i++) {
      if (kg[i] > 0) {
        sum.accept(kg[i] * price[i]);
      }
    }
    return sum.getSum();
  }

  /** What is missing of all needs at a choice of amounts, in the sense of the objective. */
  double missing(double[] dmKg) {
    double[] kg = kg(dmKg);
    return missing(kg, dm(kg));
  }

  private double missing(double[] kg, double[] dm) {
    double sum = 0;
    for (int n = 0; n < needs.length; n++) {
      DoubleSummaryStatistics supply = new DoubleSummaryStatistics();
      for (int i = 0; i < kg.length; i++) {
        if (kg[i] > 0) {
          supply.accept(dm[i] * perKgDm[n][i]);
        }
      }
      sum += Math.max(0, needs[n] - supply.getSum()) / needs[n];
    }
    return request.settings().shortfallWeight() * sum;
  }

  /** Whether a choice of amounts keeps floors, ceiling, the share of straw and the energy. */
  boolean isInIntakeRange(double[] dmKg) {
    double[] dm = dm(kg(dmKg));
    double all = 0;
    double forage = 0;
    double straw = 0;
    for (int i = 0; i < dm.length; i++) {
      all += dm[i];
      forage += items[i].isForage() ? dm[i] : 0;
      straw += items[i].isStraw() ? dm[i] : 0;
    }
    IntakeRange intake = request.intake();
    return all >= intake.floorKgDm() - NOTHING_KG
        && all <= intake.ceilingKgDm() + NOTHING_KG
        && forage >= intake.forageFloorKgDm() - NOTHING_KG
        && straw <= intake.maxStrawShare() * forage + NOTHING_KG
        && energy.stream().allMatch(band -> band.holds(EnergyBand.of(spec.ration(dmKg))));
  }
}
