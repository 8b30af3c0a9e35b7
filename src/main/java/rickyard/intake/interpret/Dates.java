package rickyard.intake.interpret;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The dates of a report: written with a month's name or year first they speak for themselves; two
 * numbers and a year are read in the order that all dates of the report allow, else not at all.
 */
final class Dates {
  private static final Pattern ISO =
      Pattern.compile("([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})(?![0-9]).*");
  private static final Pattern NUMBERS =
      Pattern.compile("([0-9]{1,2})([-/.])\\s?([0-9]{1,2})[-/.]\\s?([0-9]{4}|[0-9]{2})(?![0-9]).*");
  private static final Pattern DAY_NAME =
      Pattern.compile(
          "(?:\\p{L}+,?\\s+)?([0-9]{1,2})(?:st|nd|rd|th|er|\\.)?[\\s-]+(?:de\\s+)?(\\p{L}+)\\.?,?[\\s-]+(?:de\\s+)?([0-9]{4}|[0-9]{2})(?![0-9]).*");
  private static final Pattern NAME_DAY =
      Pattern.compile(
          "(?:\\p{L}+,\\s+)?(\\p{L}+)\\.?\\s+([0-9]{1,2})(?:st|nd|rd|th)?,?\\s+([0-9]{4})(?![0-9]).*");
  private static final Map<String, Integer> MONTHS = months();

  private Dates() {}

  private static Map<String, Integer> months() {
    Map<String, Integer> months = new TreeMap<>();
    List<String> names =
        List.of(
            "jan january januar janvier enero janvr ene januari gennaio gen",
            "feb february februar fevrier febrero fev fevr februari febbraio feb",
            "mar march marz mars marzo maart mrz",
            "apr april avril abril avr abr aprile",
            "may mai mayo mei maj maggio mag",
            "jun june juni juin junio giugno giu",
            "jul july juli juillet julio juil luglio lug",
            "aug august aout agosto ago augustus augusti",
            "sep sept september septembre septiembre settembre set",
            "oct october oktober octobre octubre okt ottobre ott",
            "nov november novembre noviembre",
            "dec december dezember decembre diciembre dez dic dicembre");
    for (int m = 0; m < 12; m++) {
      for (String name : names.get(m).split(" ", -1)) {
        months.put(name, m + 1);
      }
    }
    return months;
  }

  /** How a report orders day and month where both are numbers. */
  enum Order {
    DAY_FIRST,
    MONTH_FIRST,
    UNKNOWN
  }

  /** The order that all dates of a report allow. */
  static Order order(List<String> dates) {
    boolean dayFirst = false;
    boolean monthFirst = false;
    for (String date : dates) {
      Matcher match = NUMBERS.matcher(date.strip());
      if (match.matches()) {
        dayFirst |= Integer.parseInt(match.group(1)) > 12 || match.group(2).equals(".");
        monthFirst |= Integer.parseInt(match.group(3)) > 12;
      }
    }
    if (dayFirst == monthFirst) {
      return Order.UNKNOWN;
    }
    return dayFirst ? Order.DAY_FIRST : Order.MONTH_FIRST;
  }

  /** The days that a text may mean: none if it is no possible date, two if the order is open. */
  static List<LocalDate> read(String text, Order order) {
    String date = text.strip();
    Matcher iso = ISO.matcher(date);
    if (iso.matches()) {
      return day(iso.group(1), number(iso.group(2)), number(iso.group(3))).stream().toList();
    }
    Matcher numbers = NUMBERS.matcher(date);
    if (numbers.matches()) {
      return inOrder(numbers.group(4), number(numbers.group(1)), number(numbers.group(3)), order);
    }
    Matcher dayName = DAY_NAME.matcher(date);
    if (dayName.matches()) {
      return day(dayName.group(3), month(dayName.group(2)), number(dayName.group(1))).stream()
          .toList();
    }
    Matcher nameDay = NAME_DAY.matcher(date);
    if (nameDay.matches()) {
      return day(nameDay.group(3), month(nameDay.group(1)), number(nameDay.group(2))).stream()
          .toList();
    }
    return List.of();
  }

  private static List<LocalDate> inOrder(String year, int first, int second, Order order) {
    List<LocalDate> days = new ArrayList<>();
    if (order != Order.MONTH_FIRST) {
      day(year, second, first).ifPresent(days::add);
    }
    if (order != Order.DAY_FIRST) {
      day(year, first, second).filter(d -> !days.contains(d)).ifPresent(days::add);
    }
    return List.copyOf(days);
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }

  private static int month(String name) {
    String plain = String.join("", Words.of(name)).toLowerCase(Locale.ROOT);
    return MONTHS.getOrDefault(plain, 0);
  }

  private static Optional<LocalDate> day(String year, int month, int day) {
    try {
      int y = Integer.parseInt(year);
      return Optional.of(LocalDate.of(year.length() == 2 ? 2000 + y : y, month, day));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
