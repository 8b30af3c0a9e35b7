package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A changed ration that was checked by the same diet code.
 *
 * @param rank from 1, best first
 * @param kind hold, retest, swap, blend, controlled, bucket or none
 * @param enough whether the changed diet clears every limit that stops or asks for a change
 * @param why one sentence: what changes and why it is enough, or why it is not
 * @param items the whole changed ration, unchanged items too
 * @param diet the changed diet; null for a proposal that changes no ration (retest, none)
 * @param unclearedDays so many first days of its changeover are not cleared yet
 */
public record Proposal(
    int rank,
    String kind,
    boolean enough,
    String why,
    List<ProposalItem> items,
    @Nullable DietSummary diet,
    int unclearedDays)
    implements Serializable {
  /** A proposal every day of which is as good as the last. */
  public Proposal(
      int rank,
      String kind,
      boolean enough,
      String why,
      List<ProposalItem> items,
      @Nullable DietSummary diet) {
    this(rank, kind, enough, why, items, diet, 0);
  }

  public Proposal {
    requireNonNull(kind, "kind");
    requireNonNull(why, "why");
    items = List.copyOf(items);
  }
}
