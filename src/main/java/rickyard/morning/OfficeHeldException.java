package rickyard.morning;

/** Another run holds the office. Exit status 3. */
public final class OfficeHeldException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public OfficeHeldException(String message) {
    super(message);
  }
}
