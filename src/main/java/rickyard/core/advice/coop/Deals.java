package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.judgement.Word;
import rickyard.core.remedy.share.Allotment;
import rickyard.core.remedy.share.Need;
import rickyard.core.remedy.share.Pile;
import rickyard.core.remedy.share.ShareProblem;
import rickyard.core.remedy.share.Sharer;

/**
 * Deals hay out so that it says what people are told wherever there is enough: first everybody
 * keeps to the first proposal, then who would go short is set free, and where the most sensitive
 * would still lack more than they must, all are.
 */
final class Deals {
  private static final Set<String> OVER = Set.of(Word.EXCEEDS.code(), Word.BORDERLINE_OVER.code());

  private final CoOpContext context;
  private final LotStandings standings;

  /** Lots by eater. */
  private final Map<String, Set<String>> forbidden = new HashMap<>();

  Deals(CoOpContext context, LotStandings standings) {
    this.context = context;
    this.standings = standings;
  }

  Deal best() {
    Deal told = deal(Set.of());
    if (told.sharing().shortGrams().isEmpty()) {
      return told;
    }
    Set<String> all = context.advice().stream().map(HorseAdvice::horse).collect(Collectors.toSet());
    Deal free = deal(all);
    if (told.isAsGoodAs(free)) {
      return told;
    }
    Deal some = deal(lacking(told));
    return some.isAsGoodAs(free) ? some : free;
  }

  private static SortedSet<String> lacking(Deal deal) {
    return deal.eaters().stream()
        .filter(e -> deal.sharing().shortGrams().containsKey(e.id()))
        .flatMap(e -> e.horses().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** No horse is dealt hay on which its whole diet is over a limit: it is dealt again without. */
  private Deal deal(Set<String> free) {
    Eaters found = new Eaters(context, standings, free);
    while (true) {
      Deal deal = deal(found);
      if (!forbids(deal)) {
        return deal;
      }
    }
  }

  private Deal deal(Eaters found) {
    List<Eater> eaters = found.eaters().stream().map(this::allowed).toList();
    Store store = new Store(context, eaters);
    List<Pile> piles = store.piles();
    List<Need> needs = eaters.stream().map(e -> e.need(context.horizonDays())).toList();
    List<String> notes =
        new ArrayList<>(Stream.concat(found.notes().stream(), store.notes().stream()).toList());
    return new Deal(eaters, store, piles, Sharer.share(new ShareProblem(needs, piles)), notes);
  }

  private Eater allowed(Eater eater) {
    Set<String> not = forbidden.getOrDefault(eater.id(), Set.of());
    return not.isEmpty()
        ? eater
        : eater.withMay(
            eater.may().stream()
                .filter(lot -> !not.contains(lot))
                .collect(Collectors.toUnmodifiableSet()));
  }

  /** Notes what must not be dealt again; whether there was anything. */
  private boolean forbids(Deal deal) {
    boolean any = false;
    for (Eater eater : deal.eaters()) {
      if (!eater.group().isEmpty() && !eater.mixed()) {
        for (String lot : lots(deal.sharing().allotments(), eater)) {
          any |= isOver(eater, lot) && forbid(eater, lot);
        }
      }
    }
    return any;
  }

  private boolean forbid(Eater eater, String lot) {
    return forbidden.computeIfAbsent(eater.id(), e -> new HashSet<>()).add(lot);
  }

  private static SortedSet<String> lots(Collection<Allotment> allotments, Eater eater) {
    return allotments.stream()
        .filter(a -> a.need().equals(eater.id()))
        .map(Allotment::lot)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private boolean isOver(Eater eater, String lot) {
    return eater.members().stream()
        .map(m -> new HayTried(context, m).verdict(lot))
        .anyMatch(OVER::contains);
  }
}
