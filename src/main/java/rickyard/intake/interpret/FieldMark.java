package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A cell that names a field of the report's head.
 *
 * @param field which one
 * @param value the value in the same cell; empty if it stands elsewhere
 * @param marked whether a colon or the like stands between them
 */
record FieldMark(String field, String value, boolean marked) {
  private static final Set<Kind> KINDS = EnumSet.of(Kind.FIELD);
  private static final Pattern LAST_BRACKET = Pattern.compile("\\s*\\([^()]*\\)\\s*$");
  private static final Pattern BLANK = Pattern.compile("\\s+");

  /** Names of a sample, the strongest first: 'Lot / sample' is a lot. */
  private static final List<String> NAMES = List.of("lot", "sample", "lab_no", "description");

  FieldMark {
    requireNonNull(field, "field");
    requireNonNull(value, "value");
  }

  /** The field in a text, if it begins with one. */
  static Optional<FieldMark> read(Dictionary dictionary, String text) {
    int colon = colon(text);
    if (colon >= 0) {
      Optional<String> field = name(dictionary, text.substring(0, colon));
      return field.map(f -> new FieldMark(f, text.substring(colon + 1).strip(), true));
    }
    Optional<String> whole = name(dictionary, text);
    if (whole.isPresent()) {
      return whole.map(f -> new FieldMark(f, "", false));
    }
    return prefixed(dictionary, text);
  }

  private static int colon(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ':' || c == '=' || c == '\uFF1A') {
        return i;
      }
    }
    return -1;
  }

  private static Optional<FieldMark> prefixed(Dictionary dictionary, String text) {
    String[] parts = BLANK.split(text, -1);
    for (int n = Math.min(parts.length - 1, 6); n >= 1; n--) {
      String head = String.join(" ", java.util.Arrays.asList(parts).subList(0, n));
      Optional<String> field = name(dictionary, head);
      if (field.isPresent()) {
        String value = String.join(" ", java.util.Arrays.asList(parts).subList(n, parts.length));
        return Optional.of(new FieldMark(field.get(), value, false));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> name(Dictionary dictionary, String text) {
    String plain = text.replace('#', ' ');
    String bare = plain.indexOf('(') < 0 ? plain : LAST_BRACKET.matcher(plain).replaceFirst("");
    Meaning meaning = dictionary.read(bare, KINDS);
    if (!meaning.isWhole()) {
      return Optional.empty();
    }
    List<String> named = meaning.all(Kind.FIELD);
    boolean namesOnly = named.size() > 1 && NAMES.containsAll(named);
    return namesOnly
        ? NAMES.stream().filter(named::contains).findFirst()
        : meaning.only(Kind.FIELD);
  }
}
