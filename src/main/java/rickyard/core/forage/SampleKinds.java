package rickyard.core.forage;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What reports call a sample, by word: hay and its kin, or something that is never judged as hay.
 *
 * <p>Words are compared whole, without case and accents. Where a description holds words of both
 * ('grain hay', 'pasture hay') it is a forage in store.
 */
public final class SampleKinds {
  /** Dry hay. */
  public static final String HAY = "hay";

  private static final List<String> STORED = List.of(HAY, "haylage", "straw");

  private final SortedMap<List<String>, String> byWords;

  private SampleKinds(SortedMap<List<String>, String> byWords) {
    this.byWords = byWords;
  }

  /** No words at all: every sample counts as forage. */
  public static SampleKinds none() {
    return of(Map.of());
  }

  /**
   * Kinds by the words for them.
   *
   * @param words phrase to kind: hay, haylage, straw, or a word for what is set apart
   */
  public static SampleKinds of(Map<String, String> words) {
    SortedMap<List<String>, String> byWords =
        new TreeMap<>((a, b) -> String.join(" ", a).compareTo(String.join(" ", b)));
    words.forEach((phrase, kind) -> byWords.put(split(phrase), kind));
    return new SampleKinds(Collections.unmodifiableSortedMap(byWords));
  }

  private static List<String> split(String text) {
    String plain =
        Normalizer.normalize(text, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", " ")
            .strip();
    return List.of(plain.split(" ", -1));
  }

  /** The kind that a description names; empty if no word of it is known. */
  public Optional<String> find(String description) {
    List<String> words = split(description);
    List<String> found = new ArrayList<>();
    byWords.forEach(
        (phrase, kind) -> {
          if (Collections.indexOfSubList(words, phrase) >= 0) {
            found.add(kind);
          }
        });
    Optional<String> stored =
        STORED.stream().filter(k -> !k.equals(HAY) && found.contains(k)).findFirst();
    if (stored.isPresent() || found.contains(HAY)) {
      return Optional.of(stored.orElse(HAY));
    }
    return found.stream().findFirst();
  }

  /** Whether a kind is stored forage that limits of lots are made for. */
  static boolean isStored(String kind) {
    return STORED.contains(kind);
  }
}
