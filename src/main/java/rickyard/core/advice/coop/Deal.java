package rickyard.core.advice.coop;

import java.util.List;
import rickyard.core.remedy.share.Pile;
import rickyard.core.remedy.share.Sharing;

/** A sharing with all that it was made of. */
record Deal(
    List<Eater> eaters, Store store, List<Pile> piles, Sharing sharing, List<String> notes) {
  Deal {
    eaters = List.copyOf(eaters);
    piles = List.copyOf(piles);
    notes = List.copyOf(notes);
  }

  /** Whether each rank goes short of as little as in another deal, to a few kilograms. */
  boolean isAsGoodAs(Deal other) {
    return eaters.stream()
        .map(Eater::rank)
        .distinct()
        .allMatch(rank -> shortGrams(rank) <= other.shortGrams(rank) + SAME_GRAMS);
  }

  /** What a rank lacks may differ by what rounding to the scale makes. */
  private static final long SAME_GRAMS = 5000;

  private long shortGrams(int rank) {
    return eaters.stream()
        .filter(e -> e.rank() == rank)
        .mapToLong(e -> sharing.shortGrams().getOrDefault(e.id(), 0L))
        .sum();
  }
}
