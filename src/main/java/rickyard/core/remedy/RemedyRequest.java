package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Everything that the search for one horse may know.
 *
 * @param horse facts of the horse
 * @param ration what it is to be fed: the ration whose diet does not clear
 * @param present the ration that it is still fed where {@code ration} follows a new delivery and
 *     the old forage is still there; empty otherwise
 * @param reach lots and feeds that can be had, those of the ration too or not
 * @param dietLimits binding limits of the whole diet, with their guard factors
 * @param mealLimits binding limits of a bucket meal
 * @param intake how much it may eat
 * @param needs nutrients to be met if possible
 * @param units unit of the scale
 * @param settings the office's choices
 * @param check the diet code
 */
public record RemedyRequest(
    HorseFacts horse,
    List<Serving> ration,
    List<Serving> present,
    List<Candidate> reach,
    List<DietLimit> dietLimits,
    List<MealLimit> mealLimits,
    IntakeRange intake,
    List<NutrientNeed> needs,
    MassUnit units,
    RemedySettings settings,
    DietCheck check) {

  public RemedyRequest {
    requireNonNull(horse, "horse");
    ration = merged(ration);
    present = merged(present);
    reach = reach.stream().sorted(Candidate.BY_KEY).toList();
    dietLimits = List.copyOf(dietLimits);
    mealLimits = List.copyOf(mealLimits);
    requireNonNull(intake, "intake");
    needs = List.copyOf(needs);
    requireNonNull(units, "units");
    requireNonNull(settings, "settings");
    requireNonNull(check, "check");
  }

  /** Each item once for each way of feeding, in the order of its first serving. */
  private static List<Serving> merged(List<Serving> servings) {
    Map<String, Serving> byKey = new LinkedHashMap<>();
    for (Serving s : servings) {
      byKey.merge(
          s.item().key() + (s.fedAsForage() ? "\u0000forage" : "\u0000bucket"),
          s,
          (a, b) -> a.withKg(a.kg() + b.kg()));
    }
    return List.copyOf(byKey.values());
  }

  ScaleSteps steps() {
    return settings.steps(units);
  }

  /** Dry matter of the item in the ration today, fed the same way, kg per day. */
  double todayDmKg(FreeItem item) {
    DoubleSummaryStatistics sum = new DoubleSummaryStatistics();
    for (Serving a : ration) {
      if (item.isOf(a)) {
        sum.accept(a.dmKg());
      }
    }
    return sum.getSum();
  }

  double todayKg(Candidate item) {
    DoubleSummaryStatistics sum = new DoubleSummaryStatistics();
    for (Serving a : ration) {
      if (a.item().isSameAs(item)) {
        sum.accept(a.kg());
      }
    }
    return sum.getSum();
  }

  /** Kg of dry matter per day taken away from today's ration or added to it. */
  double changeDmKg(List<Serving> then) {
    SortedMap<String, Double> byKey = negativeDmKg();
    then.forEach(a -> byKey.merge(a.item().key(), a.dmKg(), Double::sum));
    return byKey.values().stream().mapToDouble(Math::abs).sum();
  }

  /** The ration taken away: dry matter of each item below zero, by key. */
  SortedMap<String, Double> negativeDmKg() {
    SortedMap<String, Double> byKey = new TreeMap<>();
    ration.forEach(a -> byKey.merge(a.item().key(), -a.dmKg(), Double::sum));
    return byKey;
  }

  /** Cost per day of what has a price. */
  static double costPerDay(List<Serving> then) {
    return then.stream().mapToDouble(a -> a.kg() * a.item().stock().pricePerKg().orElse(0)).sum();
  }

  /** The forage that a proposal replaces: hay of lots, or all forage where no lot is fed. */
  List<Serving> replaceable() {
    List<Serving> forage = ration.stream().filter(a -> a.fedAsForage() && a.kg() > 0).toList();
    List<Serving> lots = forage.stream().filter(a -> a.item().kind() == CandidateKind.LOT).toList();
    return lots.isEmpty() ? forage : lots;
  }

  /** Whether the item has every content that a limit of the diet asks for. */
  boolean isKnown(Candidate item) {
    return dietLimits.stream()
        .noneMatch(l -> l.isAskedWhenMissing() && item.findContent(l.quantity()).isEmpty());
  }

  /** Whether the horse can chew the item without trouble. */
  boolean canChew(Candidate item) {
    return !horse.conditions().contains("dental")
        || !item.isForage()
        || settings.chewableForms().contains(item.form());
  }
}
