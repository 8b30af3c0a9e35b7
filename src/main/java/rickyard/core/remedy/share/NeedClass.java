package rickyard.core.remedy.share;

import java.util.BitSet;
import java.util.List;

/**
 * Needs that only their ids and amounts tell apart: the optimiser sees them as one.
 *
 * @param rank who comes first
 * @param limited whether it needs cleared hay
 * @param open piles for anybody that it may have, by place in the problem
 * @param own piles of its client that it may have
 * @param now piles of either kind that it is fed now
 * @param needs the members, by id
 */
record NeedClass(int rank, boolean limited, BitSet open, BitSet own, BitSet now, List<Need> needs) {

  long units() {
    return needs.stream().mapToLong(Units::needed).sum();
  }

  /** Piles that have an arc of their own: what it is fed now, and what its client has. */
  BitSet direct() {
    BitSet direct = (BitSet) own.clone();
    direct.or(now);
    return direct;
  }
}
