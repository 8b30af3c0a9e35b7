package rickyard.core.forage;

/** Where a sample stands, as {@code analyses.csv} writes it. */
public enum Standing {
  /** Its values count now. */
  IN_FORCE("in-force"),
  /** A newer revision, a withdrawal or a combined analysis took its place. */
  SUPERSEDED("superseded"),
  /** Its values are disputed or were left out by a person: nothing may rest on them. */
  QUARANTINED("quarantined"),
  /** It waits for an answer. */
  QUESTION("question"),
  /** The same values stand in another file that counts. */
  DUPLICATE("duplicate");

  private final String code;

  Standing(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
