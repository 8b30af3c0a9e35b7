package rickyard.core.remedy;

/** Whether an item is hay of a lot or a feed from a bag. */
public enum CandidateKind {
  LOT,
  FEED
}
