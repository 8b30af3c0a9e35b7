package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Optional;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;

/**
 * One analyte's figure as a report prints it, and what it says in canonical units.
 *
 * @param analyte what was analysed
 * @param raw the cell's text, untouched
 * @param rawUnit the unit as printed, empty if the page gives none
 * @param rawBasis the basis as printed or implied: af, dm or none; empty if undecided
 * @param method how it was obtained
 * @param place where the cell stands
 * @param value in the analyte's canonical unit; its basis is the printed one (an as-fed figure is
 *     not yet converted); {@code u} holds rounding only. Empty for a figure that could not be
 *     settled, with {@code doubt} saying why
 * @param doubt stable code of the question that this reading waits for, empty if there is none
 * @param unit the unit decided, where a value is missing for another reason
 * @param bare what only lacks its basis: the figure in the canonical unit, its basis written as
 *     none; empty where there is a value, or more is open
 */
public record Reading(
    AnalyteCode analyte,
    String raw,
    String rawUnit,
    String rawBasis,
    Method method,
    Place place,
    Optional<Measured> value,
    String doubt,
    Optional<Unit> unit,
    Optional<Measured> bare)
    implements Serializable {

  public Reading {
    requireNonNull(analyte, "analyte");
    requireNonNull(raw, "raw");
    requireNonNull(rawUnit, "rawUnit");
    requireNonNull(rawBasis, "rawBasis");
    requireNonNull(method, "method");
    requireNonNull(place, "place");
    requireNonNull(doubt, "doubt");
    requireNonNull(unit, "unit");
    requireNonNull(bare, "bare");
    if (value.isEmpty() && doubt.isEmpty()) {
      throw new IllegalArgumentException("a reading without a value must say why: " + place);
    }
  }

  /** A reading that has its value, or lacks more than its basis. */
  public Reading(
      AnalyteCode analyte,
      String raw,
      String rawUnit,
      String rawBasis,
      Method method,
      Place place,
      Optional<Measured> value,
      String doubt) {
    this(
        analyte,
        raw,
        rawUnit,
        rawBasis,
        method,
        place,
        value,
        doubt,
        Optional.empty(),
        Optional.empty());
  }

  /** The reading with a value, or with the reason why there is none. */
  Reading with(AnalyteCode code, String basis, Optional<Measured> newValue, String newDoubt) {
    return new Reading(code, raw, rawUnit, basis, method, place, newValue, newDoubt, unit, bare);
  }

  /** Whether the figure may be used: it has a value and no open doubt. */
  public boolean isSettled() {
    return value.isPresent() && doubt.isEmpty();
  }
}
