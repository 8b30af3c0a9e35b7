package rickyard.core.forage;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The answers that a question takes: its choices as they stand, or in place of a choice in angle
 * brackets a number, a day or a lot of one's own. A question without choices takes any words.
 */
public final class Choices {
  public static final String LEAVE_OUT = "leave out";
  public static final String AS_PRINTED = "as printed";
  public static final String AS_READ = "as read";

  /** Any number, with its unit where that is another one than the printed one. */
  public static final String NUMBER = "<number>";

  /** Any day, written YYYY-MM-DD. */
  public static final String DAY = "<YYYY-MM-DD>";

  /** Any lot of the register of lots. */
  public static final String LOT = "<lot>";

  static final String IGNORE_DATE = "ignore the date";
  static final String SWAPPED = "swapped";
  static final String DECIMAL_MARK = "decimal mark";
  static final String THOUSANDS_MARK = "thousands mark";

  private static final Pattern A_NUMBER =
      Pattern.compile("[<≤]?\\s*[0-9]+([.,][0-9]+)?(\\s*\\D*)?");

  private Choices() {}

  /**
   * What an answer means as one of the choices.
   *
   * @param choices of the question, in order
   * @param proposed the one that 'yes' stands for, empty if none
   * @param said what the person wrote
   * @return the choice, or the person's own number, day or lot; empty if it is none of them
   */
  public static Optional<String> find(List<String> choices, String proposed, String said) {
    String words = said.strip();
    if (words.isEmpty() || choices.isEmpty()) {
      return words.isEmpty() ? Optional.empty() : Optional.of(words);
    }
    Optional<String> exact = choices.stream().filter(words::equals).findFirst();
    if (exact.isPresent() && !isOwn(words)) {
      return exact;
    }
    List<String> alike = choices.stream().filter(c -> plain(c).equals(plain(words))).toList();
    if (alike.size() == 1 && !isOwn(alike.get(0))) {
      return Optional.of(alike.get(0));
    }
    return shortWord(choices, proposed, words).or(() -> own(choices, words));
  }

  /** Whether a choice stands for words of one's own. */
  public static boolean isOwn(String choice) {
    return choice.startsWith("<") && choice.endsWith(">");
  }

  private static Optional<String> shortWord(List<String> choices, String proposed, String words) {
    String low = plain(words);
    if (low.equals("yes")) {
      return proposed.isEmpty()
          ? choices.stream().filter(c -> c.equals(AS_PRINTED) || c.equals(AS_READ)).findFirst()
          : Optional.of(proposed);
    }
    return low.equals("no")
        ? choices.stream().filter(LEAVE_OUT::equals).findFirst()
        : Optional.empty();
  }

  private static Optional<String> own(List<String> choices, String words) {
    boolean fits =
        (choices.contains(NUMBER) && A_NUMBER.matcher(words).matches())
            || (choices.contains(DAY) && day(words).isPresent())
            || choices.contains(LOT);
    return fits ? Optional.of(words) : Optional.empty();
  }

  static Optional<LocalDate> day(String words) {
    try {
      return Optional.of(LocalDate.parse(words));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Without case, spaces and the usual short forms. */
  private static String plain(String words) {
    String low = words.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
    return switch (low.replace(" ", "").replace("-", "")) {
      case "af", "asreceived", "assampled", "fresh", "asfed" -> "as fed";
      case "dm", "dry", "drybasis", "drymatter" -> "dry matter";
      case "wsc+starch" -> "nsc_wsc";
      case "esc+starch" -> "nsc_esc";
      case "no3n" -> "no3_n";
      case "leaveout" -> LEAVE_OUT;
      default -> low;
    };
  }
}
