package rickyard.core.remedy;

/** Kinds of proposals, in the order in which equals are shown. */
public enum RemedyKind {
  /** Stay on the present forage while it clears. */
  HOLD("hold"),
  /** Another forage as it is. */
  SWAP("swap"),
  /** Analysed forage from the bag for a share of the hay. */
  CONTROLLED("controlled"),
  /** Two lots mixed at every feeding. */
  BLEND("blend"),
  /** Less of a bucket feed, none of it, or another one. */
  BUCKET("bucket"),
  /** A second test may settle it. */
  RETEST("retest"),
  /** Nothing in reach is enough: what stands in the way. */
  NONE("none");

  private final String code;

  RemedyKind(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
