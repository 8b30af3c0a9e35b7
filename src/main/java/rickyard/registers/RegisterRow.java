package rickyard.registers;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rickyard.core.quantity.Pound;
import rickyard.tables.TableProblem;

/**
 * One row of a register; gives its cells typed and collects what is wrong with them. A cell that
 * cannot be understood comes out as if it were blank, and the row is bad.
 */
final class RegisterRow {
  private static final int LONGEST_CELL = 10_000;
  private static final int LONGEST_KEY = 200;
  private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern MONTH = Pattern.compile("[0-9]{4}-[0-9]{2}");

  private final RegisterTable table;
  private final RegisterTable.Line line;
  private final List<TableProblem> problems = new ArrayList<>();

  RegisterRow(RegisterTable table, RegisterTable.Line line) {
    this.table = table;
    this.line = line;
    checkCells();
  }

  private void checkCells() {
    List<String> cells = line.cells();
    int wanted = table.header().size();
    boolean tooMany = cells.stream().skip(wanted).anyMatch(c -> !c.isEmpty());
    if (cells.size() < wanted || tooMany) {
      problems.add(problem("", "cell-count", wanted + " cells", cells.size() + " cells"));
    }
    for (int i = 0; i < Math.min(wanted, cells.size()); i++) {
      if (cells.get(i).length() > LONGEST_CELL) {
        String expected = "at most " + LONGEST_CELL + " characters";
        problems.add(problem(table.header().get(i), "too-long", expected, cells.get(i)));
      }
    }
  }

  int number() {
    return line.number();
  }

  String file() {
    return table.file();
  }

  boolean has(String column) {
    return table.has(column);
  }

  boolean isBad() {
    return !problems.isEmpty();
  }

  List<TableProblem> problems() {
    return List.copyOf(problems);
  }

  /** The cell's text; empty where it is blank or the column is absent. */
  String text(String column) {
    OptionalInt at = table.position(column);
    boolean there = at.isPresent() && at.getAsInt() < line.cells().size();
    return there ? line.cells().get(at.getAsInt()) : "";
  }

  /** The cell's text, which must not be blank. */
  String required(String column) {
    String cell = text(column);
    if (cell.isEmpty()) {
      wrong(column, "blank", "a value");
    }
    return cell;
  }

  /** A key: short, not blank, without control characters. */
  String key(String column) {
    String cell = required(column);
    return keyText(column, cell);
  }

  /** A key that may be blank. */
  String optionalKey(String column) {
    return keyText(column, text(column));
  }

  private String keyText(String column, String cell) {
    if (cell.length() > LONGEST_KEY || cell.chars().anyMatch(Character::isISOControl)) {
      wrong(column, "not-a-key", "at most " + LONGEST_KEY + " characters on one line");
    }
    return cell;
  }

  /** A number in [low, high]. */
  OptionalDouble number(String column, double low, double high, String range) {
    String cell = text(column);
    if (cell.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble value = table.mark().parse(cell);
    if (value.isEmpty()) {
      wrong(column, "not-a-number", table.mark().expected());
    } else if (!(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
      wrong(column, "out-of-range", range);
      return OptionalDouble.empty();
    }
    return value;
  }

  /** A number above 0. */
  OptionalDouble positive(String column) {
    return number(column, Double.MIN_VALUE, 1e9, "a number above 0");
  }

  /** A number from 0. */
  OptionalDouble notNegative(String column) {
    return number(column, 0, 1e9, "a number not below 0");
  }

  /** A whole number in [low, high]. */
  OptionalInt whole(String column, int low, int high) {
    String range = "a whole number from " + low + " to " + high;
    OptionalDouble value = number(column, low, high, range);
    if (value.isPresent() && value.getAsDouble() != Math.rint(value.getAsDouble())) {
      wrong(column, "out-of-range", range);
      return OptionalInt.empty();
    }
    return value.isPresent() ? OptionalInt.of((int) value.getAsDouble()) : OptionalInt.empty();
  }

  /**
   * A weight from the column {@code base_kg} or {@code base_lb}, whichever the file has, in kg.
   *
   * @param base name without the unit; empty where the column is called {@code kg} or {@code lb}
   * @param zeroToo whether 0 is a weight
   * @param highKg most that is believed, kg
   */
  OptionalDouble mass(String base, boolean zeroToo, double highKg) {
    String column = massColumn(base);
    boolean pounds = column.endsWith("lb");
    double perKg = pounds ? Pound.KG : 1;
    String range =
        (zeroToo ? "a weight from 0 to " : "a weight above 0 to ")
            + Math.round(highKg / perKg)
            + (pounds ? " lb" : " kg");
    OptionalDouble value = number(column, zeroToo ? 0 : Double.MIN_VALUE, highKg / perKg, range);
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * perKg) : value;
  }

  /** The column that holds a weight in this file. */
  String massColumn(String base) {
    String stem = base.isEmpty() ? "" : base + "_";
    return table.has(stem + "lb") ? stem + "lb" : stem + "kg";
  }

  /** A day, written as yyyy-MM-dd. */
  Optional<LocalDate> day(String column) {
    String cell = text(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      if (DAY.matcher(cell).matches()) {
        return Optional.of(LocalDate.parse(cell));
      }
    } catch (DateTimeException e) {
      // no such day; the same sentence as for any other wrong cell follows
    }
    wrong(column, "not-a-date", "YYYY-MM-DD");
    return Optional.empty();
  }

  /** A day that cannot lie after {@code asOf}. */
  Optional<LocalDate> pastDay(String column, LocalDate asOf) {
    Optional<LocalDate> day = day(column);
    if (day.isPresent() && day.get().isAfter(asOf)) {
      wrong(column, "in-the-future", "a day not after " + asOf);
    }
    return day;
  }

  /** A month, written as yyyy-MM. */
  Optional<YearMonth> month(String column) {
    String cell = text(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      if (MONTH.matcher(cell).matches()) {
        return Optional.of(YearMonth.parse(cell));
      }
    } catch (DateTimeException e) {
      // no such month; the same sentence as for any other wrong cell follows
    }
    wrong(column, "not-a-month", "YYYY-MM");
    return Optional.empty();
  }

  /** One of a closed list of words, in any case; empty where blank. */
  <T> Optional<T> choice(String column, T[] choices, Function<T, String> code) {
    String cell = text(column).toLowerCase(Locale.ROOT);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> found = Arrays.stream(choices).filter(c -> code.apply(c).equals(cell)).findFirst();
    if (found.isEmpty()) {
      wrong(column, "unknown-word", oneOf(Arrays.stream(choices).map(code).toList()));
    }
    return found;
  }

  /** One of a closed list of words, in lower case; empty where blank. */
  String word(String column, List<String> choices) {
    return choice(column, choices.toArray(new String[0]), w -> w).orElse("");
  }

  /** One of a closed list of words that must be there. */
  String requiredWord(String column, List<String> choices) {
    if (text(column).isEmpty()) {
      wrong(column, "blank", oneOf(choices));
    }
    return word(column, choices);
  }

  /** Yes or no; blank is no. */
  boolean yes(String column) {
    return word(column, List.of("yes", "no")).equals("yes");
  }

  static String oneOf(List<String> words) {
    return words.stream()
        .filter(w -> !w.isEmpty())
        .collect(Collectors.joining(", ", "one of ", ""));
  }

  /** Notes that a cell is wrong. */
  void wrong(String column, String code, String expected) {
    problems.add(problem(column, code, expected, text(column)));
  }

  /** A problem of this row that is not added to it. */
  TableProblem problem(String column, String code, String expected, String found) {
    return new TableProblem(table.file(), line.number(), column, code, expected, found);
  }
}
