package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import rickyard.core.forage.Analyte;
import rickyard.core.quantity.Unit;

/**
 * How the reader treats one analyte: a row of {@code config/analytes.csv}.
 *
 * @param analyte code, name, canonical unit and basis
 * @param use whether its figures are taken
 * @param units the units in which it is printed, canonical one first
 * @param ceiling the largest figure that can be true, in the canonical unit on dry matter (or in
 *     itself); above it the unit or the line is wrong
 * @param usualLow the smallest figure that is usual in a forage, same unit and basis; outside the
 *     usual range a person is asked, nothing is refused
 * @param usualHigh the largest usual figure; infinite where none is set
 * @param openFor for an open name such as 'NSC': the codes it may stand for; else empty
 */
public record AnalyteRule(
    Analyte analyte,
    Use use,
    List<Unit> units,
    double ceiling,
    double usualLow,
    double usualHigh,
    List<String> openFor)
    implements Serializable {

  /** Whether a figure is taken. */
  public enum Use {
    /** A value of the sample. */
    VALUE,
    /** A name that must be settled first. */
    OPEN,
    /** Known, never a value of the sample: ruminant energy, bare DE. */
    LEAVE
  }

  public AnalyteRule {
    requireNonNull(analyte, "analyte");
    requireNonNull(use, "use");
    units = List.copyOf(units);
    openFor = List.copyOf(openFor);
    if (units.isEmpty() || !units.contains(analyte.unit())) {
      throw new IllegalArgumentException("the canonical unit must be among the units: " + analyte);
    }
    if (!(usualLow >= 0 && usualLow <= usualHigh)) {
      throw new IllegalArgumentException("usual range out of order: " + analyte);
    }
    if (!(ceiling > 0)) {
      throw new IllegalArgumentException("ceiling must be positive, was " + ceiling);
    }
  }
}
