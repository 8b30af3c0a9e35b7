package rickyard.core.quantity;

/** What kind of thing a unit counts; only units of one dimension convert into each other. */
public enum Dimension {
  /** Mass of a part per mass of feed. */
  MASS_SHARE,
  /** Energy per mass of feed. */
  ENERGY_DENSITY,
  /** Vitamin activity (international units) per mass of feed. */
  ACTIVITY,
  /** Colony-forming units per mass of feed. */
  COUNT,
  /** A bare number: index, ratio, pH. */
  NUMBER
}
