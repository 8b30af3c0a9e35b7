package rickyard.post;

/** Hands messages to a server. */
public interface Carrier extends AutoCloseable {

  /**
   * Hands over one message; when it returns, the server has taken it.
   *
   * @param message what goes
   * @throws RefusedException if the server certainly did not take it
   * @throws InDoubtException if it cannot be known
   */
  void carry(Message message) throws RefusedException, InDoubtException;

  @Override
  void close();

  /** The server did not take the message. */
  final class RefusedException extends Exception {
    private static final long serialVersionUID = 1L;
    private final boolean isOfAll;

    /**
     * A refusal.
     *
     * @param message why, in the server's words
     * @param isOfAll whether the next message would fare the same
     */
    public RefusedException(String message, boolean isOfAll, Throwable cause) {
      super(message, cause);
      this.isOfAll = isOfAll;
    }

    boolean isOfAll() {
      return isOfAll;
    }
  }

  /** The connection broke after the message may have been taken. */
  final class InDoubtException extends Exception {
    private static final long serialVersionUID = 1L;

    public InDoubtException(String message, Throwable cause) {
      super(message, cause);
    }
  }
}
