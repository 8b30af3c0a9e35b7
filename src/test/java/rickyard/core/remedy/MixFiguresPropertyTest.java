package rickyard.core.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The figures that the search works out from arrays are those of the ration itself, bit for bit.
 */
class MixFiguresPropertyTest {
  private static final int SUPPORTS = 400;
  private static final int CHOICES = 20;

  @Test
  void aScoreIsThatOfTheRation() {
    for (long seed = 0; seed < SUPPORTS; seed++) {
      RandomSupport support = new RandomSupport(seed);
      MixFigures figures = new MixFigures(support.request(), support.spec());
      Random random = new Random(seed);
      for (int i = 0; i < CHOICES; i++) {
        double[] dmKg = choice(support, random);
        String where = "seed " + seed + ", choice " + i;
        assertEquals(score(support.request(), support.spec(), dmKg), figures.score(dmKg), 0, where);
        assertEquals(missing(support, dmKg), figures.missing(dmKg), 0, where);
        assertEquals(isInRange(support, dmKg), figures.isInIntakeRange(dmKg), where);
      }
    }
  }

  /** Amounts as they come, some of them none, some what is fed today. */
  private static double[] choice(RandomSupport support, Random random) {
    return support.spec().free().stream()
        .mapToDouble(
            f ->
                switch (random.nextInt(4)) {
                  case 0 -> 0;
                  case 1 -> support.request().todayDmKg(f);
                  default -> 9 * random.nextDouble();
                })
        .toArray();
  }

  private static double score(RemedyRequest request, MixSpec spec, double[] dmKg) {
    RemedySettings settings = request.settings();
    List<Serving> ration = spec.ration(dmKg);
    double score =
        settings.changeWeight() * request.changeDmKg(ration)
            + settings.costWeight() * RemedyRequest.costPerDay(ration);
    if (spec.freeForageDmKg().isPresent()) {
      double forage = 0;
      for (int i = 0; i < dmKg.length; i++) {
        forage += spec.free().get(i).isForage() ? dmKg[i] : 0;
      }
      score += settings.targetWeight() * Math.abs(forage - spec.freeForageDmKg().getAsDouble());
    }
    return spec.hasWishes() ? score + missing(request, ration) : score;
  }

  private static double missing(RandomSupport support, double[] dmKg) {
    return missing(support.request(), support.spec().ration(dmKg));
  }

  private static double missing(RemedyRequest request, List<Serving> ration) {
    double sum = 0;
    for (NutrientNeed need : request.needs()) {
      double supply =
          ration.stream().mapToDouble(a -> a.dmKg() * a.item().nutrient(need.code())).sum();
      sum += Math.max(0, need.perDay() - supply) / need.perDay();
    }
    return request.settings().shortfallWeight() * sum;
  }

  /** Where the energy of every item that may be fed is known it stays within its band. */
  private static boolean hasItsEnergy(RandomSupport support, List<Serving> ration) {
    boolean isKnown =
        support.spec().free().stream()
                .allMatch(f -> f.item().contents().containsKey(EnergyBand.QUANTITY))
            && support.spec().fixed().stream()
                .allMatch(a -> a.item().contents().containsKey(EnergyBand.QUANTITY));
    double mcal = 0;
    for (Serving a : ration) {
      mcal += isKnown ? a.dmKg() * a.item().contents().get(EnergyBand.QUANTITY).value() : 0;
    }
    EnergyBand band =
        support.request().intake().energy().orElse(new EnergyBand(0, Double.POSITIVE_INFINITY));
    return !isKnown || (mcal >= band.leastMcal() && mcal <= band.mostMcal());
  }

  private static boolean isInRange(RandomSupport support, double[] dmKg) {
    List<Serving> ration = support.spec().ration(dmKg);
    double dm = ration.stream().mapToDouble(Serving::dmKg).sum();
    double forage = MixModel.forageDm(ration);
    double straw = ration.stream().filter(a -> a.item().isStraw()).mapToDouble(Serving::dmKg).sum();
    IntakeRange intake = support.request().intake();
    return dm >= intake.floorKgDm()
        && dm <= intake.ceilingKgDm()
        && forage >= intake.forageFloorKgDm()
        && straw <= intake.maxStrawShare() * forage
        && hasItsEnergy(support, ration);
  }
}
