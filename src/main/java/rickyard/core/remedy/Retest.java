package rickyard.core.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rickyard.core.quantity.Chance;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Normal;

/**
 * A second test as a proposal: where every binding limit that is not cleared is still open, and one
 * test may settle all of them with a chance worth its cost.
 */
final class Retest {
  /** Tests that differ by more than this times the uncertainty of the difference clear nothing. */
  private static final double AGREE = 2;

  private final RemedyRequest request;

  Retest(RemedyRequest request) {
    this.request = request;
  }

  /**
   * The proposal's sentence.
   *
   * @param today what the diet code says of the ration without a change
   * @return empty where no test alone may settle it
   */
  Optional<String> words(CheckedDiet today) {
    List<CheckedLimit> uncleared = today.uncleared();
    boolean isOpen = !uncleared.isEmpty() && uncleared.stream().allMatch(CheckedLimit::isOpen);
    if (!isOpen || !today.obstacles().isEmpty()) {
      return Optional.empty();
    }
    CheckedLimit first = uncleared.get(0);
    return uncleared.stream().anyMatch(l -> l.word().equals("cannot-judge"))
        ? Optional.of(firstTest(first))
        : second(uncleared, first);
  }

  /** Hay of which nothing is known has to be tested at all. */
  private String firstTest(CheckedLimit limit) {
    String lots =
        request.ration().stream()
            .map(Serving::item)
            .filter(c -> c.kind() == CandidateKind.LOT && !request.isKnown(c))
            .map(Candidate::name)
            .distinct()
            .collect(Collectors.joining(" and "));
    String what = find(limit).map(DietLimit::words).orElse(limit.words());
    return (lots.isEmpty() ? "A second test" : "A test of " + lots + " for " + what)
        + " may settle it: the evidence does not bound it ("
        + Figures.figure(limit)
        + ").";
  }

  private Optional<String> second(List<CheckedLimit> uncleared, CheckedLimit first) {
    Optional<Serving> lot = leastCertain(first);
    OptionalDouble chance =
        lot.isEmpty()
            ? OptionalDouble.empty()
            : uncleared.stream().mapToDouble(l -> chance(l, lot.get())).min();
    if (chance.isEmpty() || chance.getAsDouble() < request.settings().leastRetestChance()) {
      return Optional.empty();
    }
    String side =
        first.word().equals("borderline-under")
            ? "it lies under the limit, but by less than the guard band"
            : "it lies over the limit, but by less than the guard band";
    return Optional.of(
        "A second test of "
            + lot.get().item().name()
            + " may settle it, with a chance of "
            + Chance.words(chance.getAsDouble())
            + " that both together clear it: "
            + side
            + " ("
            + Figures.position(first)
            + ")"
            + neededU(first)
            + ".");
  }

  /** The lot whose uncertainty weighs most in the whole diet. */
  private Optional<Serving> leastCertain(CheckedLimit limit) {
    return request.ration().stream()
        .filter(a -> a.item().kind() == CandidateKind.LOT && part(limit, a) > 0)
        .max(
            Comparator.<Serving>comparingDouble(a -> part(limit, a))
                .thenComparing(Serving::item, Candidate.BY_KEY.reversed()));
  }

  /** What an item's uncertainty makes of the whole diet's. */
  private double part(CheckedLimit limit, Serving serving) {
    double all = request.ration().stream().mapToDouble(Serving::dmKg).sum();
    double u =
        find(limit)
            .flatMap(l -> serving.item().findContent(l.quantity()))
            .map(Content::u)
            .orElse(0.0);
    return all > 0 ? serving.dmKg() / all * u : 0;
  }

  private Optional<DietLimit> find(CheckedLimit limit) {
    return request.dietLimits().stream().filter(l -> l.id().equals(limit.limitId())).findFirst();
  }

  /**
   * Chance that a second test of the same kind agrees with the first and both together clear the
   * limit: the part p of the lot in the diet's uncertainty u becomes p/√2, the mean moves by p/√2
   * times a standard normal.
   */
  @Cites(source = "own-derivation", locator = "docs/methods.md, the chance of a retest")
  private double chance(CheckedLimit limit, Serving lot) {
    Optional<DietLimit> bound = find(limit);
    double part = part(limit, lot);
    if (bound.isEmpty() || limit.value().isEmpty() || part <= 0) {
      return 0;
    }
    double u = limit.u().orElse(0);
    double after = StrictMath.sqrt(Math.max(0, u * u - part * part / 2));
    double sign = bound.get().isMaximum() ? 1 : -1;
    double room = sign * (limit.limit() - limit.value().getAsDouble()) - bound.get().z() * after;
    double k = room * StrictMath.sqrt(2) / part;
    return k <= -AGREE ? 0 : Normal.cdf(Math.min(AGREE, k)) - Normal.cdf(-AGREE);
  }

  private String neededU(CheckedLimit limit) {
    double z = find(limit).map(DietLimit::z).orElse(0.0);
    double margin = limit.limit() - limit.value().orElse(limit.limit());
    return z > 0 && margin > 0 && limit.word().equals("borderline-under")
        ? "; at this value it clears with a standard uncertainty of "
            + Figures.rounded(margin / z)
            + " or less"
        : "";
  }
}
