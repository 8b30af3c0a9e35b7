package rickyard.core.remedy.share;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What there is and who needs it; order of input does not count.
 *
 * @param needs by rank, then id
 * @param piles by lot, then client
 */
public record ShareProblem(List<Need> needs, List<Pile> piles) {

  public ShareProblem {
    needs =
        needs.stream().sorted(Comparator.comparingInt(Need::rank).thenComparing(Need::id)).toList();
    piles =
        piles.stream().sorted(Comparator.comparing(Pile::lot).thenComparing(Pile::client)).toList();
    Set<String> ids = new HashSet<>();
    needs.forEach(n -> requireNew(ids, n.id()));
    Set<List<String>> places = new HashSet<>();
    piles.forEach(p -> requireNew(places, List.of(p.lot(), p.client())));
  }

  private static <T> void requireNew(Set<T> seen, T key) {
    if (!seen.add(key)) {
      throw new IllegalArgumentException("twice in one problem: " + key);
    }
  }
}
