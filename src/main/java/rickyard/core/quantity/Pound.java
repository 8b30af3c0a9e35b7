package rickyard.core.quantity;

/** The international pound. */
public final class Pound {
  /** 1 lb in kilograms, exact by definition. */
  public static final double KG = 0.45359237;

  private Pound() {}
}
