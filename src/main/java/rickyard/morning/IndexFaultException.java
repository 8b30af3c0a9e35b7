package rickyard.morning;

/** What the database says cannot be right; making it again from originals and journal helps. */
final class IndexFaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  IndexFaultException(String what) {
    super(what);
  }

  IndexFaultException(String what, Throwable cause) {
    super(what, cause);
  }
}
