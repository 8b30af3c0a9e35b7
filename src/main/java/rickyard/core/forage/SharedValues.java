package rickyard.core.forage;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.quantity.Measured;

/**
 * Keeps one of several equal values for all documents of a morning: the lines of a laboratory's
 * layout, its words and codes are the same in each of its reports, and thousands of reports are in
 * hand at once. It forgets all when it is full and keeps no long text, so that its size has a
 * bound. Several threads may ask at once.
 */
public final class SharedValues {
  /** Longer texts, hashes among them, are seldom met twice. */
  private static final int LONGEST = 60;

  private final Remembered<Object, Object> known = Remembered.same();

  /** The value itself, or an equal one that was given before; only values that never change. */
  public Object one(Object value) {
    return isOften(value) ? known.of(value) : value;
  }

  /** The same for the numbers of rows: most figures of a table were printed before. */
  public @Nullable Double number(@Nullable Double value) {
    return value == null ? null : (Double) known.of(value);
  }

  private static boolean isOften(Object value) {
    if (value instanceof String text) {
      return text.length() <= LONGEST;
    }
    if (value instanceof Optional<?> optional) {
      return optional.isPresent() && !(optional.get() instanceof Measured);
    }
    return value instanceof AnalyteCode
        || value instanceof LayoutLine
        || value instanceof LayoutHeading
        || value instanceof Layout
        || value instanceof Check
        || value instanceof LocalDate;
  }
}
