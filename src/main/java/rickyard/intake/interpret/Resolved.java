package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Method;
import rickyard.core.forage.Reading;
import rickyard.core.quantity.Measured;

/**
 * A finding with its unit and basis decided, or the reason why they are not.
 *
 * @param finding the figure as found
 * @param basis af, dm or none; empty if undecided
 * @param value the value in the canonical unit; empty if it has none
 * @param trouble stable code of what is in the way; empty if nothing is
 */
record Resolved(Finding finding, String basis, Optional<Measured> value, String trouble) {

  Resolved {
    requireNonNull(finding, "finding");
    requireNonNull(basis, "basis");
    requireNonNull(value, "value");
    requireNonNull(trouble, "trouble");
  }

  Resolved withTrouble(String newTrouble) {
    return new Resolved(finding, basis, value, newTrouble);
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
        trouble);
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
    return new Resolved(finding.as(rule), basis, value, trouble);
  }

  AnalyteCode code() {
    return finding.label().rule().analyte().code();
  }
}
