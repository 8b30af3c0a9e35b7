package rickyard.core.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import rickyard.core.quantity.Cites;
import rickyard.core.remedy.Workbench.Exact;

/**
 * Holds the optimiser to portions that a person troubles to weigh out: of each free item none, or
 * at least its least portion.
 */
final class Portions {
  private static final double NOTHING_KG = 1e-6;

  private final RemedyRequest request;
  private final LabelDoses doses;

  Portions(RemedyRequest request) {
    this.request = request;
    this.doses = new LabelDoses(request);
  }

  /**
   * The best of a support in practical portions. An amount that is too small is tried both ways,
   * without the item and with its least portion.
   *
   * @param optimum what the optimiser makes of a support
   */
  Optional<Exact> best(MixSpec spec, Function<MixSpec, Optional<Exact>> optimum) {
    Optional<Exact> found = optimum.apply(spec);
    OptionalInt small = found.map(e -> firstTooSmall(spec, e.dmKg())).orElseGet(OptionalInt::empty);
    if (small.isEmpty()) {
      return found;
    }
    int i = small.getAsInt();
    FreeItem item = spec.free().get(i);
    return Stream.of(
            spec.with(i, item.between(0, 0)),
            spec.with(i, item.between(leastDmKg(item), item.mostDmKg())))
        .flatMap(s -> best(s, optimum).stream())
        .min(Comparator.comparingDouble(this::score));
  }

  private double score(Exact exact) {
    return new MixFigures(request, exact.spec()).score(exact.dmKg());
  }

  private OptionalInt firstTooSmall(MixSpec spec, double[] dmKg) {
    List<FreeItem> free = spec.free();
    for (int i = 0; i < dmKg.length; i++) {
      if (!isPractical(free.get(i), dmKg[i])) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether an amount is none, what is fed today, or at least the item's least portion. */
  boolean isPractical(FreeItem item, double dmKg) {
    return dmKg <= NOTHING_KG
        || dmKg >= leastDmKg(item) - NOTHING_KG
        || Math.abs(dmKg - request.todayDmKg(item)) <= NOTHING_KG;
  }

  /** Least portion, kg of dry matter; a portion that is fed today is never too small. */
  @Cites(source = "common-practice", locator = "least portion that a person weighs out")
  double leastDmKg(FreeItem item) {
    double today = request.todayDmKg(item);
    double portion = leastKg(item.item(), item.fedAsForage()) * item.item().dryMatterFraction();
    double least = today > 0 ? Math.min(today, portion) : portion;
    return Math.max(least, item.leastDmKg());
  }

  /** Least portion, kg as fed: no less than its label's, of a balancer pro rata. */
  double leastKg(Candidate item, boolean fedAsForage) {
    double portion =
        request
            .settings()
            .leastPortions()
            .kg(item.role(), fedAsForage, request.horse().bodyWeightKg());
    boolean hasDose = !fedAsForage && !item.isBalancer();
    return hasDose ? Math.max(portion, doses.leastKg(item)) : portion;
  }
}
