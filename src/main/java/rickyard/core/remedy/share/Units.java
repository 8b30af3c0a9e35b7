package rickyard.core.remedy.share;

/** The optimiser's unit: a tenth of a kilogram of dry matter; needs round up, piles round down. */
final class Units {
  static final long GRAMS = 100;

  private Units() {}

  static long needed(Need need) {
    return -Math.floorDiv(-need.grams(), GRAMS);
  }

  static long there(Pile pile) {
    return pile.grams() / GRAMS;
  }
}
