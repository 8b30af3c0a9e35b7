package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Which ids a label is near to. Of a long register only those are compared that may be: what they
 * share with the label is looked up.
 */
final class NearLabels {
  private static final Pattern SIGN = Pattern.compile("[^\\p{L}\\p{N}]");
  private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern BORDER = Pattern.compile("(?<=[0-9])(?=[A-Z])|(?<=[A-Z])(?=[0-9])");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s,;:()]+");

  /** Beyond this an id is always compared: its shortened forms would fill the memory. */
  private static final int LONG = 60;

  private final List<String> longIds = new ArrayList<>();
  private int longest;
  private final NavigableMap<String, List<String>> byPlain = new TreeMap<>();
  private final Map<List<String>, List<String>> byParts = new HashMap<>();
  private final Map<String, List<String>> byWord = new HashMap<>();
  private final Map<String, List<String>> byShortened = new HashMap<>();

  NearLabels(Collection<String> ids) {
    for (String id : ids) {
      String plain = plain(id);
      longest = Math.max(longest, plain.length());
      if (plain.length() >= LONG) {
        longIds.add(id);
      }
      put(byPlain, plain, id);
      put(byParts, sortedParts(id), id);
      put(byWord, id.toUpperCase(Locale.ROOT).strip(), id);
      shortened(plain).forEach(s -> put(byShortened, s, id));
    }
  }

  private static <K> void put(Map<K, List<String>> map, K key, String id) {
    map.computeIfAbsent(key, k -> new ArrayList<>(1)).add(id);
  }

  /** The ids that may be near a label: all that are, and a few more. */
  SortedSet<String> among(String label) {
    SortedSet<String> found = new TreeSet<>();
    String plain = plain(label);
    if (plain.isEmpty()) {
      return found;
    }
    found.addAll(longIds);
    for (int end = 1; end <= Math.min(longest, plain.length()); end++) {
      found.addAll(byPlain.getOrDefault(plain.substring(0, end), List.of()));
    }
    byPlain.subMap(plain, true, plain + Character.MAX_VALUE, true).values().forEach(found::addAll);
    found.addAll(byParts.getOrDefault(sortedParts(label), List.of()));
    words(label).forEach(word -> found.addAll(byWord.getOrDefault(word, List.of())));
    shortened(plain).forEach(s -> found.addAll(byShortened.getOrDefault(s, List.of())));
    return found;
  }

  /** A text and what is left of it without one of its characters: one slip leaves one in common. */
  private static SortedSet<String> shortened(String plain) {
    SortedSet<String> all = new TreeSet<>();
    all.add(plain);
    for (int at = 0; at < plain.length() && plain.length() <= LONG; at++) {
      all.add(plain.substring(0, at) + plain.substring(at + 1));
    }
    return all;
  }

  private static List<String> words(String label) {
    return List.of(BETWEEN_WORDS.split(label.toUpperCase(Locale.ROOT).strip(), -1));
  }

  static Optional<Integer> nearOrSame(String a, String b) {
    return a.equals(b) ? Optional.of(0) : near(a, b);
  }

  /** How near two labels are: 1 the same but for spelling, 2 one holds the other, 3 one slip. */
  static Optional<Integer> near(String label, String id) {
    String a = plain(label);
    String b = plain(id);
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.empty();
    }
    if (a.equals(b)) {
      return Optional.of(1);
    }
    if (sortedParts(label).equals(sortedParts(id))
        || holds(label, id)
        || a.startsWith(b)
        || b.startsWith(a)) {
      return Optional.of(2);
    }
    boolean longEnough = Math.min(a.length(), b.length()) >= 3;
    return longEnough && isOneSlip(a, b) ? Optional.of(3) : Optional.empty();
  }

  private static String plain(String text) {
    return SIGN.matcher(text.toUpperCase(Locale.ROOT))
        .replaceAll("")
        .replace('O', '0')
        .replace('I', '1')
        .replace('L', '1')
        .replace('S', '5')
        .replace('B', '8')
        .replace('Z', '2');
  }

  /** Letters and digits in any order: 2N and N2 are near. */
  private static List<String> sortedParts(String text) {
    String apart = BORDER.matcher(text.toUpperCase(Locale.ROOT)).replaceAll(" ");
    String spaced = SIGNS.matcher(apart).replaceAll(" ").strip();
    return Arrays.stream(spaced.split(" ", -1)).sorted().toList();
  }

  /** Whether the words of one stand among the words of the other. */
  private static boolean holds(String label, String id) {
    return words(label).contains(id.toUpperCase(Locale.ROOT).strip());
  }

  /** One character more, less or other, or two neighbours exchanged. */
  private static boolean isOneSlip(String a, String b) {
    int i = 0;
    while (i < Math.min(a.length(), b.length()) && a.charAt(i) == b.charAt(i)) {
      i++;
    }
    String restA = a.substring(i);
    String restB = b.substring(i);
    if (restA.isEmpty() || restB.isEmpty()) {
      return restA.length() + restB.length() <= 1;
    }
    boolean exchanged =
        restA.length() > 1
            && restB.length() > 1
            && restA.charAt(0) == restB.charAt(1)
            && restA.charAt(1) == restB.charAt(0)
            && restA.substring(2).equals(restB.substring(2));
    return exchanged
        || restA.substring(1).equals(restB.substring(1))
        || restA.substring(1).equals(restB)
        || restB.substring(1).equals(restA);
  }
}
