package rickyard.core.season;

import static java.util.Objects.requireNonNull;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A laboratory by the name that its reports print. Case, spaces and invisible characters do not
 * tell two apart; anything else does.
 *
 * @param key the name for comparing
 * @param name as printed
 */
public record Laboratory(String key, String name) implements Comparable<Laboratory> {
  private static final Pattern INVISIBLE = Pattern.compile("\\p{Cf}+");
  private static final Pattern SPACES = Pattern.compile("[\\p{Z}\\p{Cc}]+");

  public Laboratory {
    requireNonNull(key, "key");
    requireNonNull(name, "name");
  }

  /** The laboratory of a printed name. */
  public static Laboratory of(String printed) {
    return new Laboratory(key(printed), printed);
  }

  /** A name for comparing; empty where nothing visible is printed. */
  static String key(String printed) {
    String plain = Normalizer.normalize(printed, Normalizer.Form.NFKC);
    String visible = INVISIBLE.matcher(plain).replaceAll("");
    return SPACES.matcher(visible).replaceAll(" ").strip().toLowerCase(Locale.ROOT);
  }

  public boolean isNamed() {
    return !key.isEmpty();
  }

  @Override
  public int compareTo(Laboratory other) {
    int byKey = key.compareTo(other.key);
    return byKey != 0 ? byKey : name.compareTo(other.name);
  }
}
