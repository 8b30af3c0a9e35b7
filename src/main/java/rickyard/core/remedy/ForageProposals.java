package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
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
    for (List<Amount> replaced : replacedSets()) {
      for (Candidate lot : lots()) {
        boolean isAlready = replaced.size() == 1 && replaced.get(0).item().isSameAs(lot);
        if (!isAlready && !lot.isStraw()) {
          drafts.add(swapFor(replaced, lot));
        }
      }
    }
    return first(drafts);
  }

  private List<List<Amount>> replacedSets() {
    List<Amount> all = request.replaceable();
    List<List<Amount>> sets = new ArrayList<>();
    if (!all.isEmpty()) {
      sets.add(all);
    }
    if (all.size() > 1) {
      all.forEach(a -> sets.add(List.of(a)));
    }
    return sets;
  }

  private Draft swapFor(List<Amount> replaced, Candidate lot) {
    double target = target(replaced);
    MixSpec spec = spec(List.of(free(lot, 0)), replaced, target, true);
    return bench.best(spec).orElseGet(() -> bench.nearest(spec, wholeOf(spec, target)));
  }

  /** The new lot for all of the forage, the rest as today: what is shown where it is not enough. */
  private double[] wholeOf(MixSpec spec, double target) {
    double[] x = new double[spec.free().size()];
    x[0] = target;
    for (int i = 1; i < x.length; i++) {
      x[i] = request.todayDmKg(spec.free().get(i).item());
    }
    return x;
  }

  /** The best blend of two lots that are both fed. */
  Optional<Draft> blend() {
    List<Candidate> pool = pool();
    List<Amount> replaced = request.replaceable();
    List<Draft> drafts = new ArrayList<>();
    for (int i = 0; i < pool.size() && !replaced.isEmpty(); i++) {
      for (int j = i + 1; j < pool.size(); j++) {
        Candidate a = pool.get(i);
        Candidate b = pool.get(j);
        bench
            .best(spec(List.of(free(a, 0), free(b, 0)), replaced, target(replaced), true))
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
                    .orElse(Double.POSITIVE_INFINITY))
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
    List<Amount> replaced = largest(request.replaceable());
    if (replaced.isEmpty()) {
      return Optional.empty();
    }
    List<FreeItem> free = new ArrayList<>();
    free.add(free(controlled, 0));
    for (Amount a : replaced) {
      if (!a.item().isSameAs(controlled)) {
        free.add(new FreeItem(a.item(), true, a.meals(), 0, a.dmKg()));
      }
    }
    return bench
        .best(spec(free, replaced, target(replaced), false))
        .filter(d -> d.kgOf(controlled) > request.todayKg(controlled));
  }

  /** A given share of the forage dry matter as controlled forage, the rest as today pro rata. */
  Optional<Draft> share(Candidate controlled, double share) {
    List<Amount> replaced = largest(request.replaceable());
    if (replaced.isEmpty()) {
      return Optional.empty();
    }
    double target = target(replaced);
    double today = replaced.stream().mapToDouble(Amount::dmKg).sum();
    List<FreeItem> free = new ArrayList<>(List.of(free(controlled, 0)));
    List<Double> dm = new ArrayList<>(List.of(controlledDm(controlled, share, target)));
    for (Amount a : replaced) {
      if (!a.item().isSameAs(controlled)) {
        free.add(new FreeItem(a.item(), true, a.meals(), 0, Double.POSITIVE_INFINITY));
        dm.add((1 - share) * target * a.dmKg() / today);
      }
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

  /** As many items of the forage as a support has room for beside the new one. */
  private static List<Amount> largest(List<Amount> forage) {
    return forage.stream()
        .sorted(
            Comparator.comparingDouble(Amount::dmKg).reversed().thenComparing(a -> a.item().key()))
        .limit(MixSpec.MOST - 1L)
        .toList();
  }

  private FreeItem free(Candidate item, double leastDmKg) {
    double kg =
        Math.min(
            item.label().mostAsWholeRationKg(request.horse().bodyWeightKg()),
            item.stock().mostKgPerDay(request.settings().stockHorizonDays()));
    return new FreeItem(item, true, OptionalInt.empty(), leastDmKg, kg * item.dryMatterFraction());
  }

  private MixSpec spec(
      List<FreeItem> forage, List<Amount> replaced, double target, boolean hasWishes) {
    List<FreeItem> free = new ArrayList<>(forage);
    if (freesBucket) {
      BucketProposals.offenders(request).stream()
          .limit(MixSpec.MOST - (long) forage.size())
          .forEach(a -> free.add(new FreeItem(a.item(), false, a.meals(), 0, a.dmKg())));
    }
    return new MixSpec(free, without(replaced, free), OptionalDouble.of(target), hasWishes);
  }

  /** The ration without what is replaced and without what is free. */
  private List<Amount> without(List<Amount> replaced, List<FreeItem> free) {
    return request.ration().stream()
        .filter(a -> !replaced.contains(a))
        .filter(a -> free.stream().noneMatch(f -> f.item().isSameAs(a.item())))
        .toList();
  }

  /** Equal dry matter, moved into the intake range where today's ration is outside of it. */
  private double target(List<Amount> replaced) {
    IntakeRange intake = request.intake();
    double all = request.ration().stream().mapToDouble(Amount::dmKg).sum();
    double missing =
        Math.max(
            intake.floorKgDm() - all,
            intake.forageFloorKgDm() - MixModel.forageDm(request.ration()));
    double change = missing > 0 ? missing : Math.min(0, intake.ceilingKgDm() - all);
    return Math.max(0, replaced.stream().mapToDouble(Amount::dmKg).sum() + change);
  }

  private static Optional<Draft> first(List<Draft> drafts) {
    return drafts.isEmpty()
        ? Optional.empty()
        : Optional.of(Collections.min(drafts, Draft.BEST_FIRST));
  }
}
