package rickyard.ledger;

/** The ledger cannot be used; the message is a plain sentence for a person. */
public final class LedgerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public LedgerException(String message) {
    super(message);
  }

  public LedgerException(String message, Throwable cause) {
    super(message, cause);
  }
}
