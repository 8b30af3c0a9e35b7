package rickyard.intake.grid.book;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.intake.grid.Cell.Nature;
import rickyard.intake.grid.CellText;

/**
 * A stored number with what its cell shows around it.
 *
 * <p>The cell shows {@code 7} for 7.456, {@code 9.4%} for 0.094, {@code <0.5} for 0.5. What counts
 * is the number with all its digits, in the sign and unit that the cell shows. A cell that shows
 * another number than it holds (in thousands, as a fraction, as a word) is {@link Nature#RESHAPED}:
 * a person must say which one counts.
 *
 * @param text what a person reads, with all digits
 * @param nature stored or reshaped
 */
record Shown(String text, Nature nature) {
  private static final Pattern DIGITS =
      Pattern.compile(
          "(?:[0-9](?:[0-9.,'\\u00A0\\u202F\\u2009 ]*[0-9])?|[.,][0-9]+)(?:[eE][+-]?[0-9]{1,3})?");
  private static final double SLACK = 1e-9;

  Shown {
    requireNonNull(text, "text");
    requireNonNull(nature, "nature");
  }

  /**
   * Puts a number into the words of its display.
   *
   * @param stored the number as stored
   * @param display what the cell shows
   * @return empty where the cell shows nothing
   */
  static Optional<Shown> of(BigDecimal stored, String display) {
    String seen = CellText.plain(display);
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    Matcher match = DIGITS.matcher(seen);
    if (!match.find() || !Plain.fits(stored)) {
      return Optional.of(reshaped(stored));
    }
    String before = seen.substring(0, match.start()).strip();
    String digits = match.group();
    String after = seen.substring(match.end()).strip();
    if (match.find()) {
      return Optional.of(reshaped(stored));
    }
    boolean percent = after.startsWith("%");
    BigDecimal meant = percent ? stored.movePointRight(2) : stored;
    boolean same = readings(digits).stream().anyMatch(r -> r.rounds(meant.abs()));
    return Optional.of(
        same ? new Shown(worded(before, meant, after), Nature.STORED) : reshaped(stored));
  }

  /** A number whose cell shows it as it is. */
  static Shown plain(BigDecimal stored) {
    return Plain.fits(stored) ? new Shown(stored.toPlainString(), Nature.STORED) : reshaped(stored);
  }

  /** A number whose cell shows another one: what it holds is quoted to whoever must decide. */
  static Shown reshaped(BigDecimal stored) {
    String digits = Plain.fits(stored) ? stored.toPlainString() : stored.toString();
    return new Shown(digits, Nature.RESHAPED);
  }

  private static String worded(String before, BigDecimal meant, String after) {
    boolean bracketed = before.endsWith("(") && after.startsWith(")");
    String head = bracketed ? before.substring(0, before.length() - 1) : before;
    String tail = bracketed ? after.substring(1) : after;
    String sign = meant.signum() < 0 ? "-" : "";
    String bare = head.replace("-", "").replace("\u2212", "");
    // Units stand apart from their number, a per-cent sign close to it.
    String gap = tail.isEmpty() || tail.startsWith("%") ? "" : " ";
    return CellText.plain(bare + sign + meant.abs().toPlainString() + gap + tail);
  }

  /** A display read with one decimal mark: its number and half of its last digit. */
  private record AsRead(double number, double half) {
    boolean rounds(BigDecimal stored) {
      double exact = stored.doubleValue();
      return Math.abs(exact - number) <= half * (1 + 1e-6) + SLACK * Math.abs(exact);
    }
  }

  private static List<AsRead> readings(String digits) {
    String bare = digits.replaceAll("['\\u00A0\\u202F\\u2009 ]", "");
    List<AsRead> all = new ArrayList<>();
    for (String each : List.of(bare.replace(",", ""), bare.replace(".", "").replace(',', '.'))) {
      try {
        BigDecimal number = new BigDecimal(each);
        double half = 0.5 * StrictMath.pow(10, -number.scale());
        all.add(new AsRead(number.doubleValue(), half));
      } catch (NumberFormatException twoMarks) {
        // Not a number with this decimal mark.
      }
    }
    return all;
  }
}
