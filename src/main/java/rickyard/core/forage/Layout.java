package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A laboratory's page by its own words: what stays the same from one report to the next. It holds
 * no figure, number, date, sample or client.
 *
 * @param lab the laboratory's name as printed, in lower case; empty if the page gives none
 * @param headings the headings over the first table of results from left to right, names of
 *     analytes left out; empty for a listing without headings
 * @param more headings of further tables
 * @param fields names of the fields of the head as printed
 * @param lines one for each analyte, in the order of the page
 */
public record Layout(
    String lab,
    List<LayoutHeading> headings,
    SortedSet<LayoutHeading> more,
    SortedSet<String> fields,
    List<LayoutLine> lines)
    implements Serializable {
  /** A page of endless lines must not make the journal endless. */
  private static final int MOST_LINES = 200;

  public Layout {
    requireNonNull(lab, "lab");
    headings = List.copyOf(headings);
    more = Collections.unmodifiableSortedSet(new TreeSet<>(more));
    fields = Collections.unmodifiableSortedSet(new TreeSet<>(fields));
    lines = List.copyOf(lines);
    if (lines.size() > MOST_LINES) {
      lines = List.copyOf(lines.subList(0, MOST_LINES));
    }
  }

  /** Of a report whose layout nobody described. */
  public static Layout none() {
    return new Layout("", List.of(), new TreeSet<>(), new TreeSet<>(), List.of());
  }

  public boolean isNone() {
    return lines.isEmpty();
  }

  /**
   * Whether the page names its laboratory. Without a name the same words may come from two
   * laboratories: such a layout is shown, but nothing is concluded from it.
   */
  public boolean isNamed() {
    return !lab.isEmpty();
  }

  /**
   * What identifies it: the laboratory's name and the headings of its first table; the names of its
   * fields where it has neither. Figures and the choice of analytes play no part.
   */
  public String id() {
    List<String> parts = new ArrayList<>(List.of("layout", lab));
    headings.forEach(h -> parts.add(h.words()));
    if (lab.isEmpty() && headings.isEmpty()) {
      parts.addAll(fields);
    }
    return "L-" + QuestionId.digest(parts.toArray(String[]::new));
  }

  /** Laboratory and id, for a person. */
  public String name() {
    return (lab.isEmpty() ? "a laboratory without a name" : lab) + " (" + id() + ")";
  }

  Optional<LayoutLine> find(String analyte) {
    return lines.stream().filter(l -> l.analyte().equals(analyte)).findFirst();
  }

  /** The same layout with what another report of it prints besides. */
  Layout with(Layout other) {
    Map<String, LayoutLine> all = new LinkedHashMap<>();
    lines.forEach(l -> all.put(l.analyte(), l));
    other.lines.forEach(l -> all.merge(l.analyte(), l, LayoutLine::with));
    SortedSet<LayoutHeading> headingsBesides = new TreeSet<>(more);
    headingsBesides.addAll(other.more);
    SortedSet<String> allFields = new TreeSet<>(fields);
    allFields.addAll(other.fields);
    return new Layout(lab, other.headings, headingsBesides, allFields, List.copyOf(all.values()));
  }
}
