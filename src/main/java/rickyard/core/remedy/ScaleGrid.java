package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All weighable amounts of a support that score better than what is known already: the free items
 * one after the other, left off as soon as what is chosen costs too much.
 *
 * <p>A support with more of them than {@link #MOST_LOOKS} is not gone through: what lies beside the
 * optimum is then all that was tried.
 */
final class ScaleGrid {
  /** Amounts that are looked at in one support. */
  static final int MOST_LOOKS = 20_000;

  private static final int ROUNDS = 3;
  private static final double NOTHING_KG = 1e-6;
  private static final double TIE = 1e-9;

  private final RemedyRequest request;
  private final MixSpec spec;
  private final MixModel model;
  private final MixFigures figures;
  private final Portions portions;
  private final int count;
  private final List<List<Amount>> amounts = new ArrayList<>();
  private final double[] chosen;
  private final double[] mostForageLeft;
  private final List<Found> found = new ArrayList<>();
  private double leastMissing;
  private int looks;

  /** A weighable amount of an item, kg of dry matter, and what it costs in the objective. */
  private record Amount(double dmKg, double price) {}

  /** A choice of amounts that is better, with its score. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Found(double[] dmKg, double score) {}

  ScaleGrid(RemedyRequest request, MixSpec spec, MixModel model, MixFigures figures) {
    this.request = request;
    this.spec = spec;
    this.model = model;
    this.figures = figures;
    this.portions = new Portions(request);
    this.count = spec.free().size();
    this.chosen = new double[count];
    this.mostForageLeft = new double[count + 1];
  }

  /**
   * The weighable amounts with a lower score that keep every row and the intake range, the best
   * first.
   *
   * @param score of what is known already
   */
  List<double[]> better(double score) {
    double budget = score - priceOfTheRest();
    bound(budget);
    for (int i = count - 1; i >= 0; i--) {
      boolean isForage = spec.free().get(i).isForage();
      double most = amounts.get(i).stream().mapToDouble(Amount::dmKg).max().orElse(0);
      mostForageLeft[i] = mostForageLeft[i + 1] + (isForage ? most : 0);
    }
    choose(0, 0, budget - leastMissing, score);
    found.sort(Comparator.comparingDouble(Found::score));
    return looks > MOST_LOOKS ? List.of() : found.stream().map(Found::dmKg).toList();
  }

  /** Amounts that the budget allows; the most of each bounds what must stay missing, and so on. */
  private void bound(double budget) {
    for (int round = 0; round < ROUNDS; round++) {
      amounts.clear();
      double[] most = new double[count];
      for (int i = 0; i < count; i++) {
        amounts.add(within(spec.free().get(i), budget - leastMissing));
        most[i] = amounts.get(i).stream().mapToDouble(Amount::dmKg).max().orElse(0);
      }
      leastMissing = spec.hasWishes() ? figures.missing(most) : 0;
    }
  }

  /** What the fixed items cost, and what is replaced: part of every score. */
  private double priceOfTheRest() {
    double[] today = spec.free().stream().mapToDouble(request::todayDmKg).toArray();
    RemedySettings settings = request.settings();
    return settings.changeWeight() * request.changeDmKg(spec.ration(today))
        + settings.costWeight() * RemedyRequest.costPerDay(spec.fixed());
  }

  private double price(FreeItem item, double dmKg) {
    RemedySettings settings = request.settings();
    double perKg = item.item().stock().pricePerKg().orElse(0) / item.item().dryMatterFraction();
    return settings.changeWeight() * Math.abs(dmKg - request.todayDmKg(item))
        + settings.costWeight() * perKg * dmKg;
  }

  /**
   * The steps of the scale between the bounds of an item, and what is fed today; cheapest first.
   */
  private List<Amount> within(FreeItem item, double budget) {
    double fraction = item.item().dryMatterFraction();
    double today = request.todayDmKg(item);
    double reach = Math.max(0, budget / request.settings().changeWeight());
    double most = Math.min(item.mostDmKg(), today + reach);
    double least = Math.max(item.leastDmKg(), today - reach);
    List<Amount> own = new ArrayList<>();
    double kg = request.steps().neighbourKg(least / fraction, 0);
    while (kg * fraction <= most + NOTHING_KG && own.size() <= MOST_LOOKS) {
      if (kg * fraction >= least - NOTHING_KG && portions.isPractical(item, kg * fraction)) {
        own.add(new Amount(kg * fraction, price(item, kg * fraction)));
      }
      kg = request.steps().neighbourKg(kg, 1);
    }
    boolean isWithin = today >= least - NOTHING_KG && today <= most + NOTHING_KG;
    if (isWithin && own.stream().noneMatch(a -> Math.abs(a.dmKg() - today) < NOTHING_KG)) {
      own.add(new Amount(today, price(item, today)));
    }
    own.sort(Comparator.comparingDouble(Amount::price));
    return own;
  }

  private void choose(int place, double forage, double budget, double score) {
    if (target(place, forage) > budget - TIE) {
      return;
    }
    if (place == count) {
      keep(score);
      return;
    }
    boolean isForage = spec.free().get(place).isForage();
    for (Amount amount : amounts.get(place)) {
      if (amount.price() > budget - TIE || ++looks > MOST_LOOKS) {
        return;
      }
      chosen[place] = amount.dmKg();
      double sum = forage + (isForage ? amount.dmKg() : 0);
      choose(place + 1, sum, budget - amount.price(), score);
    }
  }

  /** The least that the distance from the target can still cost. */
  private double target(int place, double forage) {
    if (spec.freeForageDmKg().isEmpty()) {
      return 0;
    }
    double target = spec.freeForageDmKg().getAsDouble();
    double away = Math.max(forage - target, target - forage - mostForageLeft[place]);
    return request.settings().targetWeight() * Math.max(0, away);
  }

  private void keep(double score) {
    if (!model.isMet(chosen) || !figures.isInIntakeRange(chosen)) {
      return;
    }
    double own = figures.score(chosen);
    if (own < score - TIE) {
      found.add(new Found(chosen.clone(), own));
    }
  }
}
