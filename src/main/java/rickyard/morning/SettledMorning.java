package rickyard.morning;

import rickyard.core.forage.InForce;
import rickyard.core.forage.Settled;

/**
 * What was in hand and how it was settled.
 *
 * @param files everything in hand
 * @param settled what belongs to what and counts now
 */
record SettledMorning(FilesInHand files, Settled settled) {

  String words() {
    long analysed = settled.inForce().stream().filter(i -> i.analysis().isPresent()).count();
    return Words.count(settled.samples().size(), "sample")
        + ", "
        + Words.count((int) analysed, "lot")
        + " or batches with an analysis in force, "
        + Words.count(settled.questions().size(), "question");
  }

  /** Whether an entry is about a lot rather than a batch of a feed. */
  static boolean isLot(InForce entry) {
    return entry.batch().isEmpty();
  }
}
