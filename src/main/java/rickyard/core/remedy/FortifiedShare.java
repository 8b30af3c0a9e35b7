package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import rickyard.core.quantity.Cites;

/** How much of a whole ration's vitamins and minerals the fortified forage brings. */
final class FortifiedShare {
  private FortifiedShare() {}

  /**
   * Share covered by fortified complete forage: {@code r = min(1, rate / max(full low, min(full
   * high, all forage fed)))}, rates in % of body weight as fed; several of them add up.
   *
   * @param ration what is fed
   * @param bodyWeightKg body weight, kg, above 0
   * @return in [0, 1]
   */
  @Cites(
      source = "common-practice",
      locator = "a fortified whole ration covers its share of the full rate")
  static double of(List<Serving> ration, double bodyWeightKg) {
    double forage =
        ration.stream()
            .filter(a -> a.item().isForage())
            .mapToDouble(a -> ratePercent(a.kg(), bodyWeightKg))
            .sum();
    double share = 0;
    for (Serving a : ration) {
      if (a.item().isFortified()) {
        Label label = a.item().label();
        double full =
            Math.max(
                label.fullRateLow().orElseThrow(),
                Math.min(label.fullRateHigh().orElseThrow(), forage));
        share += ratePercent(a.kg(), bodyWeightKg) / full;
      }
    }
    return Math.min(1, share);
  }

  private static double ratePercent(double kg, double bodyWeightKg) {
    return 100 * kg / bodyWeightKg;
  }

  /**
   * The ration with its balancers at {@code (1 − r)} of their full dose; unchanged while the share
   * is what it is today.
   */
  @Cites(source = "common-practice", locator = "balancer for what the fortified forage leaves open")
  static List<Serving> withBalancers(RemedyRequest request, List<Serving> ration) {
    double bodyWeight = request.horse().bodyWeightKg();
    double before = of(request.ration(), bodyWeight);
    double after = of(ration, bodyWeight);
    if (Math.abs(after - before) < 1e-12) {
      return ration;
    }
    List<Serving> adjusted = new ArrayList<>();
    for (Serving a : ration) {
      double today = request.todayKg(a.item());
      adjusted.add(
          a.item().isBalancer() && today > 0
              ? a.withKg((1 - after) * fullDoseKg(a.item(), today, before, bodyWeight))
              : a);
    }
    return adjusted;
  }

  /** What the horse would get without fortified forage: today's amount, kept inside the label. */
  static double fullDoseKg(
      Candidate balancer, double todayKg, double shareToday, double bodyWeightKg) {
    double least = balancer.label().leastDoseKg(bodyWeightKg);
    double most = balancer.label().mostDoseKg(bodyWeightKg);
    if (todayKg <= 0 || shareToday >= 1) {
      return most == Double.POSITIVE_INFINITY ? todayKg : (least + most) / 2;
    }
    return Math.max(least, Math.min(most, todayKg / (1 - shareToday)));
  }
}
