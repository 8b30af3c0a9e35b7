package rickyard.core.advice.due;

/** Why somebody has to come back. */
public enum FollowUpKind {
  /** A lot is to be tested, or tested again. */
  RETEST("retest"),
  /** Hay runs out; other hay takes its time. */
  STOCK("stock"),
  /** A body weight is old or was never taken. */
  WEIGHT("weight"),
  /** A question waits for an answer. */
  QUESTION("question"),
  /** A bagged feed comes to its end. */
  SHELF_LIFE("shelf-life"),
  /** A client was told, or a remedy began: look whether it holds. */
  RECHECK("recheck"),
  /** A horse travels: what it is fed there has to be raised before. */
  TRIP("trip");

  private final String code;

  FollowUpKind(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
