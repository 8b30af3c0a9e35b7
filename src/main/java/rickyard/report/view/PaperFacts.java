package rickyard.report.view;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What sheets and letters need besides the morning.
 *
 * @param languages language by client; a client without one has none in the register
 * @param servings how each item of a horse's ration is given, by horse and item
 * @param unopened lots that a client has and has not opened, with the day planned for it, by client
 *     and lot; an empty text where no day is planned
 * @param templates the office's own templates and texts, by name
 * @param size of the paper
 * @param advisers the mail address of each adviser that has one, by key
 */
public record PaperFacts(
    SortedMap<String, String> languages,
    SortedMap<String, SortedMap<String, Serving>> servings,
    SortedMap<String, SortedMap<String, String>> unopened,
    SortedMap<String, String> templates,
    PaperSize size,
    SortedMap<String, String> advisers) {
  public PaperFacts {
    advisers = sorted(advisers);
    unopened = sorted(unopened);
    languages = sorted(languages);
    servings = sorted(servings);
    templates = sorted(templates);
  }

  /** The same where no adviser has an address. */
  public PaperFacts(
      SortedMap<String, String> languages,
      SortedMap<String, SortedMap<String, Serving>> servings,
      SortedMap<String, SortedMap<String, String>> unopened,
      SortedMap<String, String> templates,
      PaperSize size) {
    this(languages, servings, unopened, templates, size, new TreeMap<>());
  }

  /** Nothing known, nothing changed, A4. */
  public static PaperFacts none() {
    return new PaperFacts(
        new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), PaperSize.A4);
  }

  /** How the items of a horse's ration are given, by item. */
  public Map<String, Serving> servings(String horse) {
    return servings.getOrDefault(horse, Collections.emptySortedMap());
  }

  /** The day on which a client means to open a lot that is still shut, empty if it named none. */
  public Optional<String> opening(String client, String lot) {
    return Optional.ofNullable(
        unopened.getOrDefault(client, Collections.emptySortedMap()).get(lot));
  }

  private static <T> SortedMap<String, T> sorted(Map<String, T> map) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(map));
  }
}
