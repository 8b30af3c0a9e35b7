package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/** Proposals that change the forage: another lot, a share of controlled forage, a blend of two. */
final class ForageProposals {
  private final RemedyRequest request;
  private final Workbench bench;
  private final boolean freesBucket;
  private final Map<String, Optional<Draft>> leastShares = new HashMap<>();

  /**
   * @param freesBucket whether bucket feeds may become less at the same time
   */
  ForageProposals(RemedyRequest request, boolean freesBucket) {
    this.request = request;
    this.bench = new Workbench(request);
    this.freesBucket = freesBucket;
  }

  /** The best swap of all replaceable forage, or of one item of it, for one lot. */
  Optional<Draft> swap() {
    List<Draft> drafts = new ArrayList<>();
    for (List<Serving> replaced : replacedSets()) {
      for (Candidate lot : lots()) {
        if (!isAsToday(replaced, lot) && !lot.isStraw()) {
          drafts.add(swapFor(replaced, lot));
        }
      }
    }
    return first(drafts);
  }

  /** Whether nothing would change; the same hay in another amount is a change. */
  private boolean isAsToday(List<Serving> replaced, Candidate lot) {
    return replaced.size() == 1
        && replaced.get(0).item().isSameAs(lot)
        && Math.abs(target(replaced) - replaced.get(0).dmKg()) < 1e-9;
  }

  private List<List<Serving>> replacedSets() {
    List<Serving> all = request.replaceable();
    List<List<Serving>> sets = new ArrayList<>();
    if (!all.isEmpty()) {
      sets.add(all);
    }
    if (all.size() > 1) {
      all.forEach(a -> sets.add(List.of(a)));
    }
    return sets;
  }

  private Draft swapFor(List<Serving> replaced, Candidate lot) {
    double target = target(replaced);
    MixSpec spec = spec(List.of(free(lot, 0)), replaced, target, true);
    return bench.best(spec).orElseGet(() -> bench.nearest(spec, wholeOf(spec, target)));
  }

  /** The new lot for all of the forage, the rest as today: what is shown where it is not enough. */
  private double[] wholeOf(MixSpec spec, double target) {
    double[] x = new double[spec.free().size()];
    x[0] = target;
    for (int i = 1; i < x.length; i++) {
      x[i] = request.todayDmKg(spec.free().get(i));
    }
    return x;
  }

  /** The best blend of two lots that are both fed. */
  Optional<Draft> blend() {
    List<Candidate> pool = pool();
    List<Serving> replaced = request.replaceable();
    List<Draft> drafts = new ArrayList<>();
    for (int i = 0; i < pool.size() && !replaced.isEmpty(); i++) {
      for (int j = i + 1; j < pool.size(); j++) {
        Candidate a = pool.get(i);
        Candidate b = pool.get(j);
        bench
            .best(spec(List.of(portion(a), portion(b)), replaced, target(replaced), true))
            .filter(d -> d.kgOf(a) > 0 && d.kgOf(b) > 0)
            .ifPresent(drafts::add);
      }
    }
    return first(drafts).filter(d -> d.diet().isEnough());
  }

  /** Lots of the ration and in reach, each once, the lowest first where there are too many. */
  private List<Candidate> pool() {
    SortedMap<String, Candidate> byKey = new TreeMap<>();
    request.replaceable().forEach(a -> byKey.put(a.item().key(), a.item()));
    lots().forEach(c -> byKey.putIfAbsent(c.key(), c));
    int most = request.settings().largestPool();
    if (byKey.size() <= most) {
      return List.copyOf(byKey.values());
    }
    return byKey.values().stream()
        .sorted(Comparator.comparingDouble(this::upperEnd).thenComparing(Candidate.BY_KEY))
        .limit(most)
        .sorted(Candidate.BY_KEY)
        .toList();
  }

  private double upperEnd(Candidate item) {
    return request.dietLimits().stream()
        .filter(DietLimit::isMaximum)
        .mapToDouble(
            l ->
                item.findContent(l.quantity())
                    .map(c -> (c.value() + l.z() * c.u()) / Math.max(1e-9, l.value()))
                    .orElse(l.isAskedWhenMissing() ? Double.POSITIVE_INFINITY : 0))
        .max()
        .orElse(0);
  }

  private List<Candidate> lots() {
    return request.reach().stream()
        .filter(c -> c.kind() == CandidateKind.LOT && c.isForage())
        .filter(request::isKnown)
        .toList();
  }

  List<Candidate> controlled() {
    return request.reach().stream()
        .filter(Candidate::isControlled)
        .filter(request::isKnown)
        .toList();
  }

  /** The least share of a controlled forage that clears with the guard band. */
  Optional<Draft> leastShare(Candidate controlled) {
    return leastShares.computeIfAbsent(controlled.key(), key -> leastShare(controlled, List.of()));
  }

  /**
   * The least change with a controlled forage and one more item in reach, for where neither alone
   * is enough or lasts.
   */
  Optional<Draft> leastShareWithOneMore(Candidate controlled) {
    List<Draft> drafts = new ArrayList<>();
    List<Candidate> others = new ArrayList<>(lots());
    others.addAll(controlled());
    for (Candidate other : others) {
      boolean isFed = request.todayKg(other) > 0;
      if (!isFed && !other.isSameAs(controlled)) {
        leastShare(controlled, List.of(other)).ifPresent(drafts::add);
      }
    }
    return first(drafts);
  }

  private Optional<Draft> leastShare(Candidate controlled, List<Candidate> others) {
    List<FreeItem> free = new ArrayList<>();
    free.add(free(controlled, 0));
    others.forEach(other -> free.add(free(other, 0)));
    List<Serving> replaced = replacedBy(controlled, MixSpec.MOST - free.size());
    if (replaced.isEmpty()) {
      return Optional.empty();
    }
    for (Serving a : replaced) {
      if (!a.item().isSameAs(controlled)) {
        free.add(
            new FreeItem(a.item(), true, a.meals(), 0, Math.min(a.dmKg(), lastingDm(a.item()))));
      }
    }
    return bench
        .best(spec(free, replaced, target(replaced), false))
        .filter(d -> d.kgOf(controlled) > request.todayKg(controlled))
        .filter(d -> others.stream().allMatch(other -> d.kgOf(other) > 0));
  }

  /**
   * The largest items of the replaceable forage, and the controlled one where it is fed already.
   */
  private List<Serving> replacedBy(Candidate controlled, int most) {
    List<Serving> replaced =
        new ArrayList<>(
            request.replaceable().stream()
                .filter(a -> !a.item().isSameAs(controlled))
                .sorted(
                    Comparator.comparingDouble(Serving::dmKg)
                        .reversed()
                        .thenComparing(a -> a.item().key()))
                .limit(most)
                .toList());
    request.ration().stream()
        .filter(a -> a.fedAsForage() && a.item().isSameAs(controlled))
        .forEach(replaced::add);
    return replaced;
  }

  /** A given share of the forage dry matter as controlled forage, the rest as today pro rata. */
  Optional<Draft> share(Candidate controlled, double share) {
    List<Serving> replaced = replacedBy(controlled, MixSpec.MOST - 1);
    List<Serving> rest = replaced.stream().filter(a -> !a.item().isSameAs(controlled)).toList();
    if (rest.isEmpty()) {
      return Optional.empty();
    }
    double target = target(replaced);
    double today = rest.stream().mapToDouble(Serving::dmKg).sum();
    List<FreeItem> free = new ArrayList<>(List.of(free(controlled, 0)));
    List<Double> dm = new ArrayList<>(List.of(controlledDm(controlled, share, target)));
    for (Serving a : rest) {
      free.add(new FreeItem(a.item(), true, a.meals(), 0, Double.POSITIVE_INFINITY));
      dm.add((1 - share) * target * a.dmKg() / today);
    }
    MixSpec spec = new MixSpec(free, without(replaced, free), OptionalDouble.of(target), false);
    return Optional.of(bench.nearest(spec, dm.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  /** As a whole ration the amount keeps inside the label's full rate. */
  private double controlledDm(Candidate item, double share, double target) {
    double bodyWeight = request.horse().bodyWeightKg();
    double kg = share * target / item.dryMatterFraction();
    boolean isWholeForage =
        share >= 1 && MixModel.forageDm(without(request.replaceable(), List.of())) <= 0;
    if (isWholeForage) {
      kg = Math.max(kg, item.label().leastAsWholeRationKg(bodyWeight));
    }
    return Math.min(kg, item.label().mostAsWholeRationKg(bodyWeight)) * item.dryMatterFraction();
  }

  /** An item of a blend: a practical portion of it at least. */
  private FreeItem portion(Candidate item) {
    return free(item, new Portions(request).leastDmKg(free(item, 0)));
  }

  private FreeItem free(Candidate item, double leastDmKg) {
    double label =
        item.label().mostAsWholeRationKg(request.horse().bodyWeightKg()) * item.dryMatterFraction();
    return new FreeItem(
        item, true, OptionalInt.empty(), leastDmKg, Math.min(label, lastingDm(item)));
  }

  /** Dry matter per day with which the stock lasts for the horizon. */
  private double lastingDm(Candidate item) {
    return item.stock().mostKgPerDay(request.settings().stockHorizonDays())
        * item.dryMatterFraction();
  }

  private MixSpec spec(
      List<FreeItem> forage, List<Serving> replaced, double target, boolean hasWishes) {
    List<FreeItem> free = new ArrayList<>(forage);
    if (freesBucket) {
      BucketProposals.offenders(request).stream()
          .limit(MixSpec.MOST - (long) forage.size())
          .forEach(a -> free.add(new FreeItem(a.item(), false, a.meals(), 0, a.dmKg())));
    }
    return new MixSpec(free, without(replaced, free), OptionalDouble.of(target), hasWishes);
  }

  /** The ration without what is replaced and without what is free. */
  private List<Serving> without(List<Serving> replaced, List<FreeItem> free) {
    return request.ration().stream()
        .filter(a -> !replaced.contains(a))
        .filter(a -> free.stream().noneMatch(f -> f.isOf(a)))
        .toList();
  }

  /** Equal dry matter, moved into the intake range where today's ration is outside of it. */
  private double target(List<Serving> replaced) {
    IntakeRange intake = request.intake();
    double all = request.ration().stream().mapToDouble(Serving::dmKg).sum();
    double missing =
        Math.max(
            intake.floorKgDm() - all,
            intake.forageFloorKgDm() - MixModel.forageDm(request.ration()));
    double change = missing > 0 ? missing : Math.min(0, intake.ceilingKgDm() - all);
    return Math.max(0, replaced.stream().mapToDouble(Serving::dmKg).sum() + change);
  }

  private static Optional<Draft> first(List<Draft> drafts) {
    return drafts.isEmpty()
        ? Optional.empty()
        : Optional.of(Collections.min(drafts, Draft.BEST_FIRST));
  }
}
