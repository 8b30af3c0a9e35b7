package rickyard.core.forage;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * A printed figure read again once a person has said what was missing.
 *
 * <p>Strict: ASCII digits and one decimal mark; a comma before three digits may mean thousands and
 * is not read.
 */
final class RawFigure {
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<below>[<≤])?\\s*(?<whole>[0-9]+)(?:(?<mark>[.,])(?<part>[0-9]+))?(?<rest>.*)");
  private static final double ROOT3 = StrictMath.sqrt(3);

  private RawFigure() {}

  static Optional<Measured> read(String raw, Unit unit, Basis basis, Evidence evidence) {
    Matcher found = FIGURE.matcher(raw.strip());
    if (!found.matches() || !isPlain(found)) {
      return Optional.empty();
    }
    String part = found.group("part") == null ? "" : found.group("part");
    double number = Double.parseDouble(found.group("whole") + (part.isEmpty() ? "" : "." + part));
    if (found.group("below") != null) {
      return Optional.of(Measured.below(unit, basis, number, number / 2 / ROOT3, evidence));
    }
    double half = 0.5 * StrictMath.pow(10, -part.length());
    return Optional.of(Measured.of(unit, basis, number, half, half / ROOT3, evidence));
  }

  private static boolean isPlain(Matcher found) {
    String rest = found.group("rest");
    boolean more = !rest.isEmpty() && rest.strip().matches(".*[0-9].*");
    boolean thousands = ",".equals(found.group("mark")) && found.group("part").length() == 3;
    return !more && !thousands;
  }

  /** The printed number with a decimal point, once a person has said what its marks are. */
  static String pointed(String raw, boolean decimal) {
    String text = raw.strip().replaceAll("(?<=[0-9])[\\s\u00a0\u202f'](?=[0-9])", "");
    if (!decimal) {
      return text.replaceAll("(?<=[0-9])[.,](?=[0-9])", "");
    }
    int last = Math.max(text.lastIndexOf(','), text.lastIndexOf('.'));
    return last < 0
        ? text
        : text.substring(0, last).replaceAll("(?<=[0-9])[.,](?=[0-9])", "")
            + "."
            + text.substring(last + 1);
  }

  /** The unit behind a number of a person's own. */
  static Optional<Unit> unitBehind(String said) {
    Matcher found = FIGURE.matcher(said.strip());
    return found.matches() ? unit(found.group("rest")) : Optional.empty();
  }

  /** The unit that a printed text names, basis words aside. */
  static Optional<Unit> unit(String text) {
    String bare =
        text.toLowerCase(Locale.ROOT)
            .replaceAll("\\b(dm|af|dry matter|as fed|as received)\\b", "")
            .replaceAll("[\\s()]", "");
    return switch (bare) {
      case "ppm" -> Optional.of(Unit.MG_PER_KG);
      case "ppb", "µg/kg", "μg/kg" -> Optional.of(Unit.UG_PER_KG);
      case "pct", "percent" -> Optional.of(Unit.PERCENT);
      case "" -> Optional.empty();
      default -> {
        for (Unit unit : Unit.values()) {
          if (unit.code().toLowerCase(Locale.ROOT).equals(bare)) {
            yield Optional.of(unit);
          }
        }
        yield Optional.empty();
      }
    };
  }

  /** The basis that an answer or a printed word names. */
  static Optional<Basis> basis(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "af", "as fed", "as-fed", "as received", "as sampled", "fresh" ->
          Optional.of(Basis.AS_FED);
      case "dm", "dry matter", "dry", "dry-matter", "100 % dry", "dry basis" ->
          Optional.of(Basis.DRY_MATTER);
      case "none" -> Optional.of(Basis.NONE);
      default -> Optional.empty();
    };
  }
}
