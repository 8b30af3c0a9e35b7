package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * How the layout of one document stands to what is remembered.
 *
 * @param document SHA-256 of its bytes
 * @param layout its layout
 * @param state new, known, changed, or none for a page that has none
 * @param notes what differs, what was misread before, which answers were used for it: one sentence
 *     each
 * @param remembered whether it is remembered from now on: nothing about it is open
 */
public record LayoutSeen(
    String document, Layout layout, String state, List<String> notes, boolean remembered) {

  public LayoutSeen {
    requireNonNull(document, "document");
    requireNonNull(layout, "layout");
    requireNonNull(state, "state");
    notes = List.copyOf(notes);
  }
}
