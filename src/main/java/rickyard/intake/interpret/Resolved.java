package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Method;
import rickyard.core.forage.Reading;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * A finding with its unit and basis decided, or the reason why they are not.
 *
 * @param finding the figure as found
 * @param basis af, dm or none; empty if undecided
 * @param value the value in the canonical unit; empty if it has none
 * @param trouble stable code of what is in the way; empty if nothing is
 * @param unit the unit decided, also where there is no value
 * @param bare the figure in the canonical unit where only its basis is open
 * @param others the figures that are printed for the analyte where they contradict each other
 */
record Resolved(
    Finding finding,
    String basis,
    Optional<Measured> value,
    String trouble,
    Optional<Unit> unit,
    Optional<Measured> bare,
    List<String> others) {

  Resolved(Finding finding, String basis, Optional<Measured> value, String trouble) {
    this(finding, basis, value, trouble, Optional.empty(), Optional.empty(), List.of());
  }

  Resolved {
    requireNonNull(finding, "finding");
    requireNonNull(basis, "basis");
    requireNonNull(value, "value");
    requireNonNull(trouble, "trouble");
    requireNonNull(unit, "unit");
    requireNonNull(bare, "bare");
    others = List.copyOf(others);
  }

  Resolved withTrouble(String newTrouble) {
    return new Resolved(finding, basis, value, newTrouble, unit, bare, others);
  }

  Resolved withUnit(Optional<Unit> newUnit) {
    return new Resolved(finding, basis, value, trouble, newUnit, bare, others);
  }

  Resolved withBare(Measured newBare) {
    return new Resolved(finding, basis, value, trouble, unit, Optional.of(newBare), others);
  }

  /** Printed several times with other figures: which ones. */
  Resolved amongOthers(List<Resolved> same) {
    List<String> printed =
        same.stream().filter(r -> r.value().isPresent()).map(Resolved::printed).distinct().toList();
    return new Resolved(finding, basis, value, trouble, unit, bare, printed);
  }

  /** The figure as a person would write it, with its unit. */
  private String printed() {
    Figure figure = finding.figure();
    String below = figure.form() == Figure.Form.BELOW ? "<" : "";
    return (below + figure.number().toPlainString() + " " + unit.map(Unit::code).orElse(""))
        .strip();
  }

  /** The reading; {@code fallback} is the method that the report gives for all. */
  Reading toReading(Method fallback) {
    return new Reading(
        code(),
        finding.raw(),
        finding.rawUnit(),
        basis,
        finding.method().map(Resolved::method).orElse(fallback),
        finding.place(),
        value,
        trouble,
        unit,
        bare);
  }

  static Method method(String word) {
    for (Method method : Method.values()) {
      if (method.code().equals(word)) {
        return method;
      }
    }
    return Method.UNKNOWN;
  }

  /** The figure named in full: an open name settled, its label now that of {@code rule}. */
  Resolved as(AnalyteRule rule) {
    return new Resolved(finding.as(rule), basis, value, trouble, unit, bare, others);
  }

  AnalyteCode code() {
    return finding.label().rule().analyte().code();
  }
}
