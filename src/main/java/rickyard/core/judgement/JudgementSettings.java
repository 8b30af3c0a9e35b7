package rickyard.core.judgement;

import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Single numbers and choices of the judging of lots, as {@code config/judgement-settings.csv} gives
 * them.
 *
 * @param nfcAllowance how far WSC + starch may lie over NFC by difference, in points of % DM, at
 *     least 0
 * @param mostCores more cores than this nobody takes; at least 1
 * @param adviceCores the number of cores that the sampling texts ask for, at least 1
 * @param sensitivity the correlation of the errors of WSC and starch that is shown beside the
 *     chosen one, in [-1, 1]
 * @param regions codes of the hazards that the office's region is known for; empty if it has not
 *     said
 */
public record JudgementSettings(
    double nfcAllowance,
    int mostCores,
    int adviceCores,
    double sensitivity,
    SortedSet<String> regions) {

  public JudgementSettings {
    if (!(nfcAllowance >= 0)
        || mostCores < 1
        || adviceCores < 1
        || !(sensitivity * sensitivity <= 1)) {
      throw new IllegalArgumentException("settings of the judging are out of range");
    }
    regions = Collections.unmodifiableSortedSet(new TreeSet<>(regions));
  }

  /** Whether the office has said what its region is known for. */
  public boolean isRegionKnown() {
    return !regions.isEmpty();
  }

  /** Whether the office's region is known for one of these hazards. */
  public boolean isRegionOf(Set<String> hazards) {
    return hazards.stream().anyMatch(regions::contains);
  }
}
