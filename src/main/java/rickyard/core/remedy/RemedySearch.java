package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Finds the smallest changes that put a diet right, by kind.
 *
 * <p>Each kind tries its supports one by one: a small linear program, then the neighbouring steps
 * of the scale, each checked by the diet code. The same request gives the same answer bit for bit.
 * Soaking is never counted on.
 */
public final class RemedySearch {
  private final RemedyRequest request;
  private final Completion completion;

  private RemedySearch(RemedyRequest request) {
    this.request = request;
    this.completion = new Completion(request);
  }

  /**
   * The proposals for one horse, best first: what is enough by least change, those first that newly
   * lack nothing by reports, then what is shown as not enough, then a retest; {@code none} stands
   * alone where nothing is enough.
   *
   * @return empty if the ration is enough as it is
   */
  public static List<Remedy> search(RemedyRequest request) {
    CheckedDiet today = request.check().check(request.ration());
    return today.isEnough() ? List.of() : new RemedySearch(request).proposals(today);
  }

  private List<Remedy> proposals(CheckedDiet today) {
    List<Remedy> found = new ArrayList<>();
    hold().ifPresent(found::add);
    found.addAll(forage(false));
    bucket().ifPresent(found::add);
    boolean isBucketOpen = !BucketProposals.offenders(request).isEmpty();
    if (isBucketOpen
        && found.stream().noneMatch(r -> r.isEnough() && r.kind() != RemedyKind.HOLD)) {
      found.addAll(
          forage(true).stream().filter(Remedy::isEnough).filter(r -> isNew(r, found)).toList());
    }
    found.removeIf(r -> r.kind() == RemedyKind.BLEND && !isWorthMixing(r, found));
    retest(today).ifPresent(found::add);
    if (found.stream().noneMatch(r -> r.isEnough() && r.kind() != RemedyKind.HOLD)) {
      found.addAll(controlledWithOneMore());
    }
    boolean isAnyEnough = found.stream().anyMatch(Remedy::isEnough);
    if (!isAnyEnough) {
      found.add(withoutRation(RemedyKind.NONE, new Conflict(request).sentence(nearest(found))));
    }
    return found.stream()
        .filter(r -> r.isEnough() || isShownWhenNotEnough(r, isAnyEnough))
        .sorted(order())
        .toList();
  }

  /**
   * Mixing at every feeding is work: where one lot is enough it must spare a part of today's forage
   * and of the change.
   */
  private boolean isWorthMixing(Remedy blend, List<Remedy> found) {
    boolean keepsSome =
        blend.then().stream().anyMatch(a -> a.fedAsForage() && request.todayKg(a.item()) > 0);
    return found.stream()
        .filter(r -> r.kind() == RemedyKind.SWAP && r.isEnough())
        .allMatch(r -> keepsSome && blend.change() < r.change() - 1e-6);
  }

  /** A share that is not enough is shown as such; another lot only where nothing is enough. */
  private static boolean isShownWhenNotEnough(Remedy r, boolean isAnyEnough) {
    return r.kind() != RemedyKind.SWAP || !isAnyEnough;
  }

  /** Why the proposal that comes nearest is not enough; empty if there is none. */
  private static String nearest(List<Remedy> found) {
    return found.stream()
        .filter(r -> r.diet().isPresent())
        .min(
            Comparator.comparingDouble(
                r ->
                    r.diet()
                        .flatMap(CheckedDiet::leading)
                        .map(l -> l.pOver().orElse(1))
                        .orElse(1.0)))
        .map(Remedy::why)
        .orElse("");
  }

  private static boolean isNew(Remedy remedy, List<Remedy> found) {
    return found.stream().noneMatch(r -> r.then().equals(remedy.then()));
  }

  private Comparator<Remedy> order() {
    return Comparator.<Remedy, Boolean>comparing(r -> !r.isEnough())
        .thenComparing(r -> r.kind() != RemedyKind.HOLD)
        .thenComparing(r -> r.kind() == RemedyKind.NONE)
        .thenComparing(r -> !isChewable(r))
        .thenComparing(r -> r.kind() != RemedyKind.RETEST)
        .thenComparing(r -> r.diet().stream().anyMatch(d -> !d.newlyShort().isEmpty()))
        .thenComparingDouble(Remedy::change)
        .thenComparing(Remedy::kind)
        .thenComparingDouble(r -> RemedyRequest.costPerDay(r.then()));
  }

  private boolean isChewable(Remedy remedy) {
    return remedy.then().stream()
        .filter(a -> request.todayKg(a.item()) <= 0)
        .allMatch(a -> request.canChew(a.item()));
  }

  private Optional<Remedy> hold() {
    if (request.present().isEmpty()) {
      return Optional.empty();
    }
    CheckedDiet diet = request.check().check(request.present());
    Draft draft = new Draft(request.present(), List.of(), diet, 0, 0);
    List<RemedyItem> items = RemedyItems.of(request.present(), draft.ration(), request.settings());
    return diet.isEnough()
        ? Optional.of(
            new Remedy(
                RemedyKind.HOLD,
                items,
                draft.ration(),
                true,
                Reasons.hold(request, draft, items) + Unweighed.words(items),
                Optional.of(diet),
                0))
        : Optional.empty();
  }

  private List<Remedy> forage(boolean freesBucket) {
    ForageProposals forage = new ForageProposals(request, freesBucket);
    List<Remedy> found = new ArrayList<>();
    forage
        .swap()
        .map(completion::of)
        .ifPresent(d -> found.add(remedy(RemedyKind.SWAP, d, Reasons.swap(request, d))));
    found.addAll(controlled(forage, freesBucket));
    forage
        .blend()
        .map(completion::of)
        .ifPresent(d -> found.add(remedy(RemedyKind.BLEND, d, Reasons.mix(request, d))));
    return found;
  }

  /** The controlled forage with the best least share; its shown shares too. */
  private List<Remedy> controlled(ForageProposals forage, boolean freesBucket) {
    List<Remedy> found = new ArrayList<>();
    Optional<Candidate> best = bestControlled(forage);
    if (best.isEmpty()) {
      return found;
    }
    Candidate item = best.get();
    forage
        .leastShare(item)
        .map(completion::of)
        .filter(d -> d.diet().isEnough())
        .ifPresent(d -> addControlled(found, d, Reasons.leastShare(request, d, item)));
    if (!freesBucket) {
      for (double share : request.settings().controlledShares()) {
        forage
            .share(item, share)
            .map(completion::of)
            .ifPresent(d -> addControlled(found, d, Reasons.givenShare(request, d, item, share)));
      }
    }
    return found;
  }

  private void addControlled(List<Remedy> found, Draft draft, String why) {
    Remedy remedy = remedy(RemedyKind.CONTROLLED, draft, why);
    if (isNew(remedy, found)) {
      found.add(remedy);
    }
  }

  /** A controlled forage together with one more item, where neither alone is enough. */
  private List<Remedy> controlledWithOneMore() {
    ForageProposals forage = new ForageProposals(request, false);
    return forage.controlled().stream()
        .flatMap(c -> forage.leastShareWithOneMore(c).stream())
        .filter(d -> d.diet().isEnough())
        .min(Draft.BEST_FIRST)
        .map(completion::of)
        .map(d -> remedy(RemedyKind.CONTROLLED, d, Reasons.mix(request, d)))
        .stream()
        .toList();
  }

  private Optional<Candidate> bestControlled(ForageProposals forage) {
    SortedMap<String, Draft> drafts = new TreeMap<>();
    for (Candidate c : forage.controlled()) {
      forage
          .leastShare(c)
          .filter(d -> d.diet().isEnough())
          .or(() -> forage.share(c, 1))
          .ifPresent(d -> drafts.put(c.key(), d));
    }
    return forage.controlled().stream()
        .filter(c -> drafts.containsKey(c.key()))
        .min(
            Comparator.<Candidate, Boolean>comparing(c -> !request.canChew(c))
                .thenComparing(c -> drafts.get(c.key()), Draft.BEST_FIRST)
                .thenComparing(Candidate.BY_KEY));
  }

  private Optional<Remedy> bucket() {
    return new BucketProposals(request)
        .best()
        .map(completion::of)
        .map(d -> remedy(RemedyKind.BUCKET, d, Reasons.bucket(d, request)));
  }

  private Optional<Remedy> retest(CheckedDiet today) {
    return new Retest(request).words(today).map(why -> withoutRation(RemedyKind.RETEST, why));
  }

  private static Remedy withoutRation(RemedyKind kind, String why) {
    return new Remedy(kind, List.of(), List.of(), false, why, Optional.empty(), 0);
  }

  private Remedy remedy(RemedyKind kind, Draft draft, String why) {
    List<RemedyItem> items = RemedyItems.of(request.ration(), draft.ration(), request.settings());
    return new Remedy(
        kind,
        items,
        draft.ration(),
        draft.diet().isEnough(),
        why + Unweighed.words(items),
        Optional.of(draft.diet()),
        request.changeDmKg(draft.ration()));
  }
}
