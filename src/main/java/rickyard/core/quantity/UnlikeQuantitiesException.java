package rickyard.core.quantity;

/** Two quantities of unlike unit or basis were put together: a bug, never a matter of the data. */
public final class UnlikeQuantitiesException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public UnlikeQuantitiesException(String message) {
    super(message);
  }
}
