package rickyard.core.forage;

import java.util.Comparator;
import rickyard.core.quantity.Measured;

/**
 * One settled reading brought to the basis of the analysis, before laboratory and sampling errors.
 */
record Figure(Measured value, Method method, int place) {

  /** Wet chemistry before NIR, bounded before open, the finer printed before the coarser. */
  static final Comparator<Figure> PREFERENCE =
      Comparator.<Figure>comparingInt(f -> f.method() == Method.WET ? 0 : 1)
          .thenComparing(f -> !f.value().isBoundedAbove())
          .thenComparingDouble(f -> f.value().u())
          .thenComparingInt(Figure::place);

  /** Whether two figures of one analyte can both be right within their rounding. */
  boolean agreesWith(Figure other) {
    if ((method == Method.WET) != (other.method == Method.WET)) {
      return true;
    }
    double slack = 1e-9 * Math.max(value.best(), other.value.best());
    return value.low() <= other.value.high() + slack && other.value.low() <= value.high() + slack;
  }
}
