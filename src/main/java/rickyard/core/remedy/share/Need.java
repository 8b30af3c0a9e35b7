package rickyard.core.remedy.share;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Hay that one horse, or a herd on one bale, must have until the horizon.
 *
 * @param id of the horse or herd
 * @param client whose it is; a pile of a client is only for its own horses
 * @param rank who comes first where there is too little, the most sensitive at the lowest number
 * @param limited whether it needs cleared hay; others move only where they must
 * @param grams dry matter until the horizon, at least 0
 * @param may lots that it may be given; needs that may be given the same share one set, since a
 *     network has thousands of lots
 * @param now lots that it is fed as things stand
 */
public record Need(
    String id,
    String client,
    int rank,
    boolean limited,
    long grams,
    Set<String> may,
    SortedSet<String> now) {

  public Need {
    requireNonNull(id, "id");
    requireNonNull(client, "client");
    may = Set.copyOf(may);
    now = Collections.unmodifiableSortedSet(new TreeSet<>(now));
    if (grams < 0) {
      throw new IllegalArgumentException("a need must be >= 0 g, was " + grams);
    }
  }

  /** The same need with other lots that it may be given. */
  public Need withMay(Set<String> lots) {
    return new Need(id, client, rank, limited, grams, lots, now);
  }
}
