package rickyard.core.judgement;

/** The words of a verdict, the worst last. */
public enum Word {
  /** No limit applies. */
  NO_LIMIT("no-limit"),
  /** Within the limit by at least the guard band. */
  CLEARS("clears"),
  /** Within the limit, by less than the guard band: not cleared. */
  BORDERLINE_UNDER("borderline-under"),
  /** The evidence does not bound it: not cleared. */
  CANNOT_JUDGE("cannot-judge"),
  /** Beyond the limit by less than the guard band: not cleared. */
  BORDERLINE_OVER("borderline-over"),
  /** Beyond the limit by at least the guard band. */
  EXCEEDS("exceeds");

  private final String code;

  Word(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }

  /** Whether it may be fed as far as this limit goes. */
  public boolean isCleared() {
    return this == CLEARS || this == NO_LIMIT;
  }
}
