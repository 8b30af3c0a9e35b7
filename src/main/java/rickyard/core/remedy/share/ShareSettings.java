package rickyard.core.remedy.share;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The office's choices for sharing, from {@code config/share.csv}.
 *
 * @param ranks place of each group in the order of sensitivity, the first served at the lowest; a
 *     group that is not in it comes after all that are
 * @param retestCores cores of the retest that is thought of, at least 1
 * @param retestsShown most retests that are listed
 */
public record ShareSettings(SortedMap<String, Integer> ranks, int retestCores, int retestsShown) {

  public ShareSettings {
    ranks = Collections.unmodifiableSortedMap(new TreeMap<>(ranks));
    if (retestCores < 1 || retestsShown < 0) {
      throw new IllegalArgumentException("cores must be >= 1 and retests shown >= 0");
    }
  }

  /** The place of a group. */
  public int rank(String group) {
    return ranks.getOrDefault(group, lastRank());
  }

  /** The place of groups that the table does not name. */
  private int lastRank() {
    return ranks.values().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
  }

  /** The place of horses that need no cleared hay: after all others. */
  public int rankOfOthers() {
    return lastRank() + 1;
  }
}
