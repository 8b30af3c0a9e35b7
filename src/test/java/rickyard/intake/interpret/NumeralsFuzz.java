package rickyard.intake.interpret;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rickyard.fuzz.Oracle;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;

/** Any text as a figure, a date or a name: no failure, and never a digit that is not printed. */
class NumeralsFuzz {

  @DictionaryEntries({
    "9.4", "1,200", "1.200", "1 234", "<", ">", "\\xE2\\x89\\xA4", "\\xC2\\xB1", "+/-", "x10^3",
    "e3", "E-12", "(a)", "*", "to", "..", "\\xC2\\xA0", "\\xD9\\xA3", "\\xEF\\xBC\\x94", "NaN",
    "Infinity", "0x1p3", "d", "% DM", "g/kg", "mg/kg", "ND", "trace", "2026-03-11", "11.03.2026",
    "3/4/26", "March", "12 mars 2026", "st", "de ", "WSC", "NSC", "Starch", "l0.4", "1O"
  })
  @FuzzTest(maxDuration = "30m")
  void anyText(FuzzedDataProvider data) {
    Dialect dialect = data.pickValue(Dialect.values());
    Dates.Order order = data.pickValue(Dates.Order.values());
    boolean certain = data.consumeBoolean();
    String raw = data.consumeRemainingAsString();
    String text = CellText.plain(raw);
    Oracle.soon(
        () -> {
          figure(raw, dialect, certain);
          figure(text, dialect, certain);
          dates(raw, order);
          Dates.order(List.of(raw, text));
          Dialect.of(List.of(raw, text));
          if (!text.isEmpty()) {
            piece(text, dialect, certain);
          }
        });
  }

  private static void piece(String text, Dialect dialect, boolean certain) {
    Cell cell = new Cell(text, 0, 99, 1);
    Grid grid =
        new Grid(
            Grid.Kind.TABLE,
            List.of(new Page(1, "", List.of(new Row(1, 1, List.of(cell))))),
            List.of());
    Legend legend = Legend.of(Oracle.dictionary(), grid);
    ColumnKey key = ColumnKey.of(Oracle.dictionary(), grid);
    Piece piece =
        Piece.of(new Piece.Reading(Oracle.dictionary(), dialect, legend, key, certain), cell);
    piece.figure().filter(Figure::hasNumber).ifPresent(f -> printed(text, f, dialect));
  }

  private static void figure(String text, Dialect dialect, boolean certain) {
    Optional<Figure> figure = Numerals.read(text, dialect, certain);
    figure.filter(Figure::hasNumber).ifPresent(f -> printed(text, f, dialect));
    figure
        .map(Figure::proposal)
        .ifPresent(p -> Oracle.require(p.chars().noneMatch(c -> c > 0x2FF), "proposal " + p));
  }

  /** The value has the digits that stand at the head of the text, and the mark where it stands. */
  private static void printed(String text, Figure figure, Dialect dialect) {
    String head = head(text.strip());
    String digits = head.replaceAll("[^0-9]", "");
    Oracle.require(!digits.isEmpty(), "a value without a digit: '" + text + "'");
    Oracle.require(
        figure.number().unscaledValue().equals(new BigInteger(digits)),
        "'" + text + "' printed " + digits + ", read " + figure.number());
    Oracle.require(figure.number().signum() >= 0, "below nothing: '" + text + "'");
    char mark = dialect == Dialect.COMMA ? ',' : '.';
    int at = head.lastIndexOf(mark);
    int decimals = at < 0 ? 0 : head.length() - at - 1;
    String tail = text.strip().substring(text.strip().indexOf(head) + head.length());
    if (!tail.matches("(?s)(?:[eE]|\\s?[x\u00D7*\u00B7]\\s?10).*")) {
      Oracle.require(
          figure.number().scale() == decimals,
          "'" + text + "' as " + dialect + " read " + figure.number());
    }
  }

  /** The number at the head of a text by a way of our own: digits, marks between digits, gaps. */
  private static String head(String text) {
    int from = 0;
    while (from < text.length() && !isDigit(text, from) && !isMark(text, from)) {
      from++;
    }
    int at = from;
    boolean marked = false;
    while (at < text.length()) {
      boolean mark = isMark(text, at) && isDigit(text, at + 1);
      boolean gap = !marked && at - from <= 3 + 4 * 20 && isThousandsGap(text, from, at);
      if (!isDigit(text, at) && !mark && !gap) {
        break;
      }
      marked |= mark;
      at++;
    }
    return text.substring(from, at);
  }

  private static boolean isThousandsGap(String text, int from, int at) {
    boolean sign = "\u00A0\u202F\u2009'\u2019 ".indexOf(text.charAt(at)) >= 0;
    int group = 0;
    for (int back = at - 1; back >= from && isDigit(text, back); back--) {
      group++;
    }
    boolean first = at - group == from;
    return sign
        && (first ? group >= 1 && group <= 3 : group == 3)
        && isDigit(text, at + 1)
        && isDigit(text, at + 2)
        && isDigit(text, at + 3)
        && !isDigit(text, at + 4);
  }

  private static boolean isDigit(String text, int at) {
    return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
  }

  private static boolean isMark(String text, int at) {
    return (text.charAt(at) == '.' || text.charAt(at) == ',') && isDigit(text, at + 1);
  }

  /** A day has a year that is printed, in full or by its last two digits. */
  private static void dates(String text, Dates.Order order) {
    for (LocalDate day : Dates.read(text, order)) {
      String year = String.valueOf(10_000 + day.getYear()).substring(3);
      Oracle.require(text.contains(year), "'" + text + "' read as " + day);
      Oracle.require(
          text.contains(String.valueOf(day.getDayOfMonth())), "'" + text + "' read as " + day);
    }
  }
}
