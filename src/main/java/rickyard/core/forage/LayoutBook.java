package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The layouts remembered from earlier mornings: those of reports that were read without a question,
 * or whose questions are answered.
 *
 * @param layouts by id
 * @param accepted the layout's id by document, for every report that it was remembered from; such a
 *     report is never held against the book again, so that a better reader reopens nothing
 */
public record LayoutBook(SortedMap<String, Layout> layouts, SortedMap<String, String> accepted) {
  private static final int DOCUMENT_SHOWN = 16;

  public LayoutBook {
    requireNonNull(layouts, "layouts");
    requireNonNull(accepted, "accepted");
    layouts = Collections.unmodifiableSortedMap(new TreeMap<>(layouts));
    accepted = Collections.unmodifiableSortedMap(new TreeMap<>(accepted));
  }

  /** Nothing remembered. */
  public static LayoutBook empty() {
    return new LayoutBook(new TreeMap<>(), new TreeMap<>());
  }

  private static String key(String document) {
    return document.substring(0, Math.min(DOCUMENT_SHOWN, document.length()));
  }

  boolean isAccepted(String document) {
    return accepted.containsKey(key(document));
  }

  /**
   * The book with these reports added, in any order.
   *
   * @param reports documents with their layouts
   */
  LayoutBook with(Map<String, Layout> reports) {
    SortedMap<String, Layout> all = new TreeMap<>(layouts);
    SortedMap<String, String> documents = new TreeMap<>(accepted);
    new TreeMap<>(reports)
        .forEach(
            (document, layout) -> {
              if (!layout.isNone()) {
                all.merge(layout.id(), layout, Layout::with);
                documents.put(key(document), layout.id());
              }
            });
    return new LayoutBook(all, documents);
  }

  /** The book after a morning: with every report of which nothing is open. */
  public LayoutBook after(List<LayoutSeen> seen) {
    SortedMap<String, Layout> reports = new TreeMap<>();
    seen.stream()
        .filter(LayoutSeen::remembered)
        .forEach(s -> reports.put(s.document(), s.layout()));
    return with(reports);
  }

  Optional<Layout> find(String id) {
    return Optional.ofNullable(layouts.get(id));
  }

  /**
   * The remembered layout of the same laboratory that differs least; empty if none is akin: another
   * kind of document of the laboratory is a new layout, not a change of the old one.
   */
  Optional<Layout> nearest(Layout now) {
    return layouts.values().stream()
        .filter(known -> now.isNamed() && known.lab().equals(now.lab()))
        .filter(known -> LayoutDrift.isAkin(known, now))
        .min(
            Comparator.<Layout>comparingInt(known -> weight(LayoutDrift.between(known, now)))
                .thenComparing(Layout::id));
  }

  private static int weight(List<LayoutChange> changes) {
    return changes.stream().mapToInt(c -> c.isGrave() ? 100 : 1).sum();
  }
}
