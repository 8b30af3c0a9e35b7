package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import rickyard.core.quantity.Cites;

/**
 * What a changed ration needs besides: a balancer for what the fortified forage leaves open, salt,
 * vitamin E, a source of protein. Each is added only where the diet code finds it short, a feed is
 * in reach, and the ration stays as clear as it was.
 */
final class Completion {
  private static final String SODIUM = "NA";
  private static final String VITAMIN_E = "VIT_E";
  private static final String LYSINE = "LYS";
  private static final String PROTEIN = "CP";

  private final RemedyRequest request;

  Completion(RemedyRequest request) {
    this.request = request;
  }

  /** The draft with what it lacks. */
  Draft of(Draft draft) {
    Draft balanced = withBalancer(draft);
    Draft salted = withDose(balanced, SODIUM, "salt");
    Draft oiled = withDose(salted, VITAMIN_E, "supplement");
    return withProtein(withProtein(oiled, LYSINE), PROTEIN);
  }

  @Cites(source = "common-practice", locator = "balancer for what the fortified forage leaves open")
  private Draft withBalancer(Draft draft) {
    double bodyWeight = request.horse().bodyWeightKg();
    double share = FortifiedShare.of(draft.ration(), bodyWeight);
    boolean hasOne = draft.ration().stream().anyMatch(a -> a.item().isBalancer());
    if (share <= 0 || share >= 1 || hasOne || draft.diet().shortfalls().isEmpty()) {
      return draft;
    }
    return request.reach().stream()
        .filter(Candidate::isBalancer)
        .filter(c -> c.label().mostDoseKg(bodyWeight) < Double.POSITIVE_INFINITY)
        .findFirst()
        .map(c -> with(draft, c, (1 - share) * FortifiedShare.fullDoseKg(c, 0, 0, bodyWeight)))
        .orElse(draft);
  }

  /** Lysine and protein come from a feed whose label says how much of it may be given. */
  private Draft withProtein(Draft draft, String nutrient) {
    return withDose(draft, nutrient, c -> c.role().equals("supplement") && c.label().hasDose());
  }

  private Draft withDose(Draft draft, String nutrient, String role) {
    return withDose(draft, nutrient, c -> c.role().equals(role));
  }

  private Draft withDose(Draft draft, String nutrient, Predicate<Candidate> isSource) {
    double missing = draft.diet().shortfalls().getOrDefault(nutrient, 0.0);
    Optional<Candidate> feed =
        request.reach().stream()
            .filter(c -> isSource.test(c) && c.nutrient(nutrient) > 0)
            .min(
                Comparator.<Candidate>comparingDouble(c -> -c.nutrient(nutrient))
                    .thenComparing(Candidate.BY_KEY));
    if (missing <= 0 || feed.isEmpty()) {
      return draft;
    }
    Candidate c = feed.get();
    double bodyWeight = request.horse().bodyWeightKg();
    double kg = missing / c.nutrient(nutrient) / c.dryMatterFraction();
    double total = Math.max(kg + draft.kgOf(c), c.label().leastDoseKg(bodyWeight));
    return with(draft, c, Math.min(total, c.label().mostDoseKg(bodyWeight)));
  }

  /** The draft with an item at an amount rounded up, if it stays as clear as it was. */
  private Draft with(Draft draft, Candidate item, double kg) {
    double most = item.label().mostDoseKg(request.horse().bodyWeightKg());
    double up = request.steps().neighbourKg(kg, 1);
    boolean isExact = Math.abs(request.steps().neighbourKg(kg, 0) - kg) < 1e-9;
    double weighed = isExact || up > most ? request.steps().neighbourKg(kg, 0) : up;
    if (weighed <= draft.kgOf(item)) {
      return draft;
    }
    List<Serving> ration = new ArrayList<>(draft.ration());
    Optional<Serving> already = ration.stream().filter(a -> a.item().isSameAs(item)).findFirst();
    already.ifPresent(ration::remove);
    ration.add(already.orElse(Serving.ofBucket(item, 0)).withKg(weighed));
    CheckedDiet diet = new Workbench(request).checked(ration);
    boolean isAsClear =
        diet.obstacles().size() <= draft.diet().obstacles().size()
            && diet.uncleared().size() <= draft.diet().uncleared().size();
    return isAsClear ? new Draft(ration, draft.added(), diet, draft.score(), draft.ideal()) : draft;
  }
}
