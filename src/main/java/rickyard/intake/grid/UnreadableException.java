package rickyard.intake.grid;

import static java.util.Objects.requireNonNull;

/** Ends the reading of one document; {@link DocumentReader} turns it into a plain reason. */
public final class UnreadableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String code;

  /**
   * A reason to stop reading.
   *
   * @param code stable code
   * @param reason a plain sentence that says what to do
   */
  public UnreadableException(String code, String reason) {
    super(requireNonNull(reason, "reason"), null, false, false);
    this.code = requireNonNull(code, "code");
  }

  public String code() {
    return code;
  }

  /** This reason as the outcome of a document of some kind. */
  public Opened.Unreadable of(String kind) {
    return new Opened.Unreadable(kind, code, String.valueOf(getMessage()));
  }
}
