package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import rickyard.core.quantity.Cites;

/**
 * What labels say of amounts in the bucket: none of a feed, or a dose between least and most, the
 * balancer's pro rata to what fortified forage leaves open. An amount that is fed today and stays
 * is not asked about.
 */
final class LabelDoses {
  private static final double NOTHING_KG = 1e-6;

  private final RemedyRequest request;

  LabelDoses(RemedyRequest request) {
    this.request = request;
  }

  /**
   * A balancer's amount on the scale: the nearest step, or one beside it where only that lies
   * inside the label's dose; also where the amount is on the scale already and misses the dose.
   */
  @Cites(source = "common-practice", locator = "balancer for what the fortified forage leaves open")
  double weighedKg(Candidate balancer, double kg, List<Serving> ration) {
    double nearest = request.steps().nearestKg(kg);
    ScaleSteps steps = request.steps();
    double[] tried = {
      nearest,
      steps.neighbourKg(kg, 1),
      steps.neighbourKg(kg, 0),
      steps.neighbourKg(nearest, -1),
      steps.neighbourKg(nearest, 1)
    };
    for (double step : tried) {
      if (isWithin(balancer, step, ration)) {
        return step;
      }
    }
    return nearest;
  }

  private boolean isWithin(Candidate item, double kg, List<Serving> ration) {
    double share = share(item, ration);
    return kg >= share * leastKg(item) - NOTHING_KG && kg <= share * mostKg(item) + NOTHING_KG;
  }

  /** A balancer's only figure is its dose; that of another feed is the end that it is given as. */
  double leastKg(Candidate item) {
    boolean isGiven = item.isBalancer() || item.label().doseLowKg().isPresent();
    return isGiven ? item.label().leastDoseKg(bodyWeightKg()) : 0;
  }

  private double mostKg(Candidate item) {
    boolean isGiven = item.isBalancer() || item.label().doseHighKg().isPresent();
    return isGiven ? item.label().mostDoseKg(bodyWeightKg()) : Double.POSITIVE_INFINITY;
  }

  private double share(Candidate item, List<Serving> ration) {
    return item.isBalancer() ? 1 - FortifiedShare.of(ration, bodyWeightKg()) : 1;
  }

  private double bodyWeightKg() {
    return request.horse().bodyWeightKg();
  }

  /** What a label has against the changed amounts of a ration, in plain words. */
  List<String> against(List<Serving> ration) {
    List<String> words = new ArrayList<>();
    for (Serving a : ration) {
      boolean isOther = Math.abs(a.kg() - request.todayKg(a.item())) > NOTHING_KG;
      boolean fits =
          isWithin(a.item(), a.kg(), ration)
              || (a.item().isBalancer() && a.kg() == weighedKg(a.item(), a.kg(), ration));
      if (!a.item().isForage() && isOther && !fits) {
        words.add("a dose of " + a.item().name() + " that its label does not give");
      }
    }
    return words;
  }
}
