package rickyard.core.judgement;

/** What a limit is held against. */
public enum LimitSubject {
  /** A lot as the only forage. */
  LOT("lot"),
  /** All that a horse is fed in a day. */
  DIET("diet"),
  /** One meal from the bucket; never long forage. */
  BUCKET_MEAL("bucket-meal");

  private final String code;

  LimitSubject(String code) {
    this.code = code;
  }

  public String code() {
    return code;
  }
}
