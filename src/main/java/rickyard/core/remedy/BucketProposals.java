package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Proposals that change the bucket only: less of a feed, none of it, or another one. */
final class BucketProposals {
  private static final Set<String> KEPT = Set.of("salt", "supplement");

  private final RemedyRequest request;
  private final Workbench bench;

  BucketProposals(RemedyRequest request) {
    this.request = request;
    this.bench = new Workbench(request);
  }

  /** Bucket feeds that may become less: all but balancers, salt and supplements. */
  static List<Serving> offenders(RemedyRequest request) {
    return changeable(request).stream().filter(a -> !a.item().isBalancer()).toList();
  }

  private static List<Serving> changeable(RemedyRequest request) {
    return request.ration().stream()
        .filter(a -> !a.fedAsForage() && a.kg() > 0 && !KEPT.contains(a.item().role()))
        .toList();
  }

  Optional<Draft> best() {
    List<Draft> drafts = new ArrayList<>();
    List<Serving> all = changeable(request);
    for (Serving a : all) {
      less(List.of(a)).ifPresent(drafts::add);
      drafts.addAll(swaps(a));
    }
    if (all.size() > 1 && all.size() <= MixSpec.MOST) {
      less(all).ifPresent(drafts::add);
    }
    return drafts.stream()
        .filter(d -> d.diet().isEnough())
        .collect(
            java.util.stream.Collectors.collectingAndThen(
                java.util.stream.Collectors.toList(),
                found ->
                    found.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Collections.min(found, Draft.BEST_FIRST))));
  }

  private Optional<Draft> less(List<Serving> items) {
    List<FreeItem> free = new ArrayList<>();
    for (Serving a : items) {
      free.add(new FreeItem(a.item(), false, a.meals(), least(a), a.dmKg()));
    }
    return bench.best(new MixSpec(free, rest(items), OptionalDouble.empty(), true));
  }

  /** A balancer keeps its label's least dose; any other feed may go altogether. */
  private double least(Serving a) {
    return a.item().isBalancer() ? Math.min(a.dmKg(), leastDoseDm(a.item())) : 0;
  }

  private double leastDoseDm(Candidate item) {
    return item.label().leastDoseKg(request.horse().bodyWeightKg()) * item.dryMatterFraction();
  }

  private List<Draft> swaps(Serving gone) {
    List<Draft> drafts = new ArrayList<>();
    for (Candidate other : request.reach()) {
      boolean isFed = request.ration().stream().anyMatch(a -> a.item().isSameAs(other));
      if (!isFed && other.role().equals(gone.item().role())) {
        drafts.addAll(swap(gone, other).stream().toList());
      }
    }
    return drafts;
  }

  private Optional<Draft> swap(Serving gone, Candidate other) {
    Stock stock = other.stock();
    double most =
        other.dryMatterFraction()
            * Math.min(
                stock.mostKgPerDay(request.settings().stockHorizonDays()),
                other.label().mostDoseKg(request.horse().bodyWeightKg()));
    double least = gone.item().isBalancer() ? leastDoseDm(other) : Math.min(most, gone.dmKg());
    FreeItem free = new FreeItem(other, false, gone.meals(), least, most);
    return bench.best(
        new MixSpec(List.of(free), rest(List.of(gone)), OptionalDouble.empty(), true));
  }

  private List<Serving> rest(List<Serving> gone) {
    return request.ration().stream().filter(a -> !gone.contains(a)).toList();
  }
}
