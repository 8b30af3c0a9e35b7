package rickyard.morning;

/** The command cannot be carried out as given; the message says what to change. Exit status 2. */
public final class UsageException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public UsageException(String message) {
    super(message);
  }
}
