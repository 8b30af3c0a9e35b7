package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;

/**
 * One relation between figures of a report that was tried.
 *
 * @param identity which relation, for example {@code moisture + DM = 100}
 * @param kind exact, order or soft
 * @param holds whether it holds within the rounding of the printed figures
 * @param analytes the analytes it touches
 * @param words the arithmetic with its numbers, in one line
 */
public record Check(
    String identity, Kind kind, boolean holds, List<AnalyteCode> analytes, String words)
    implements Serializable {

  /** How much a broken relation says. */
  public enum Kind {
    /** Arithmetic: a break is an error of copying, unit or basis. */
    EXACT,
    /** Physics: a break is almost surely an error. */
    ORDER,
    /** Experience: a break asks for confirmation. */
    SOFT
  }

  public Check {
    requireNonNull(identity, "identity");
    requireNonNull(kind, "kind");
    analytes = List.copyOf(analytes);
    requireNonNull(words, "words");
  }
}
