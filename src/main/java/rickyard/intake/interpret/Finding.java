package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;

/**
 * A figure of one analyte, with all that the page says of its unit and basis, nearest first.
 *
 * @param label the analyte
 * @param figure the figure
 * @param raw the cell's text
 * @param place where it stands
 * @param units units said by the cell, the column, the row, the section, the page; where several
 *     are said, the nearest comes first
 * @param bases bases said in the same order
 * @param rawUnit the unit as printed; empty if none
 * @param method nir, wet or calc; empty if not said
 * @param limit the detection limit of the row, if one is printed
 * @param trouble stable code of what is wrong with its column; empty if nothing is
 */
record Finding(
    Label label,
    Figure figure,
    String raw,
    Place place,
    List<Said<Unit>> units,
    List<Said<String>> bases,
    String rawUnit,
    Optional<String> method,
    Optional<Figure> limit,
    String trouble) {

  /**
   * Something said, and from how near: 0 the cell, 1 the column, 2 the row, 3 and more the page.
   */
  record Said<T>(T what, int from) {
    Said {
      requireNonNull(what, "what");
    }
  }

  Finding {
    requireNonNull(label, "label");
    units = List.copyOf(units);
    bases = List.copyOf(bases);
  }

  /** The same figure under another analyte's rule. */
  Finding as(AnalyteRule rule) {
    Label other = new Label(rule, label.unit(), label.basis(), label.method(), label.ratio());
    return new Finding(other, figure, raw, place, units, bases, rawUnit, method, limit, trouble);
  }

  /** The same figure with its unit or basis settled by the figures themselves. */
  Finding with(List<Said<Unit>> newUnits, List<Said<String>> newBases, String newTrouble) {
    return new Finding(
        label, figure, raw, place, newUnits, newBases, rawUnit, method, limit, newTrouble);
  }

  String code() {
    return label.code();
  }
}
