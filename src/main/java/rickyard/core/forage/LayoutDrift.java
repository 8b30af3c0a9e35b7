package rickyard.core.forage;

import static rickyard.core.forage.LayoutChange.Touches.COLUMN;
import static rickyard.core.forage.LayoutChange.Touches.UNIT;
import static rickyard.core.forage.LayoutChange.Touches.WORDS;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The difference between two layouts of one laboratory.
 *
 * <p>An analyte that comes or goes is none. A heading under another name that says the same, or a
 * column that is no longer printed, is shown; what gives a figure another basis, unit or column is
 * grave.
 */
final class LayoutDrift {
  private final Layout known;
  private final Layout now;
  private final List<LayoutChange> changes = new ArrayList<>();

  private LayoutDrift(Layout known, Layout now) {
    this.known = known;
    this.now = now;
  }

  /** What differs in {@code now}, in the order of the page. */
  static List<LayoutChange> between(Layout known, Layout now) {
    LayoutDrift drift = new LayoutDrift(known, now);
    drift.headings();
    drift.lines();
    return List.copyOf(drift.changes);
  }

  /** Whether one may have become the other: as many columns, or half of the headings the same. */
  static boolean isAkin(Layout known, Layout now) {
    int most = Math.max(known.headings().size(), now.headings().size());
    int same = known.headings().size() - without(known.headings(), now.headings()).size();
    return known.headings().size() == now.headings().size() || 2 * same >= most;
  }

  private void headings() {
    List<LayoutHeading> gone = without(known.headings(), now.headings());
    List<LayoutHeading> come = without(now.headings(), known.headings());
    for (LayoutHeading heading : List.copyOf(gone)) {
      int at = known.headings().indexOf(heading);
      if (at < now.headings().size() && come.remove(now.headings().get(at))) {
        renamed(heading, now.headings().get(at));
        gone.remove(heading);
      }
    }
    gone.forEach(h -> shown("column " + quoted(h) + " is not printed"));
    come.forEach(h -> shown("column " + quoted(h) + " is new"));
    moved();
  }

  /** By their words: what the reader makes of the same words is no matter of the page. */
  private static List<LayoutHeading> without(List<LayoutHeading> all, List<LayoutHeading> other) {
    return new ArrayList<>(
        all.stream()
            .filter(h -> other.stream().noneMatch(o -> o.words().equals(h.words())))
            .toList());
  }

  private void renamed(LayoutHeading before, LayoutHeading after) {
    String words = "heading " + quoted(before) + " is now " + quoted(after);
    changes.add(new LayoutChange(words, before.contradicts(after) ? COLUMN : WORDS));
  }

  /** Columns that both have, in another order. */
  private void moved() {
    List<LayoutHeading> before = new ArrayList<>(known.headings());
    before.removeAll(without(known.headings(), now.headings()));
    List<LayoutHeading> after = new ArrayList<>(now.headings());
    after.removeAll(without(now.headings(), known.headings()));
    for (int i = 0; i < Math.min(before.size(), after.size()); i++) {
      if (!before.get(i).words().equals(after.get(i).words())) {
        String words =
            "column " + quoted(after.get(i)) + " stands where " + quoted(before.get(i)) + " was";
        changes.add(new LayoutChange(words, COLUMN));
      }
    }
  }

  private void lines() {
    Map<String, List<String>> units = new LinkedHashMap<>();
    Map<String, List<String>> bases = new LinkedHashMap<>();
    for (LayoutLine line : now.lines()) {
      known
          .find(line.analyte())
          .ifPresent(
              before -> {
                labels(before, line);
                note(units, line, difference(before.units(), line.units()));
                note(bases, line, basis(difference(before.bases(), line.bases())));
              });
    }
    units.forEach((words, of) -> changes.add(new LayoutChange(line("unit", of, words), UNIT)));
    bases.forEach((words, of) -> changes.add(new LayoutChange(line("basis", of, words), COLUMN)));
  }

  private void labels(LayoutLine before, LayoutLine after) {
    for (String label : after.labels()) {
      if (!before.labels().contains(label)) {
        shown(
            "\""
                + label
                + "\" ("
                + after.analyte()
                + ") was \""
                + String.join("\", \"", before.labels())
                + "\"");
      }
    }
  }

  private static void note(Map<String, List<String>> into, LayoutLine line, String difference) {
    if (!difference.isEmpty()) {
      into.computeIfAbsent(difference, d -> new ArrayList<>()).add(line.analyte());
    }
  }

  /** 'is g/kg, was %'; empty where nothing is said that was not said before. */
  private static String difference(SortedSet<String> before, SortedSet<String> after) {
    SortedSet<String> come = new TreeSet<>(after);
    come.removeAll(before);
    come.remove("");
    SortedSet<String> said = new TreeSet<>(before);
    said.remove("");
    return come.isEmpty() || said.isEmpty()
        ? ""
        : "is " + String.join(" and ", come) + ", was " + String.join(" and ", said);
  }

  private static String basis(String difference) {
    return difference.replaceAll("\\baf\\b", "as fed").replaceAll("\\bdm\\b", "dry matter");
  }

  private static String quoted(LayoutHeading heading) {
    return "\"" + heading.words() + "\"";
  }

  private void shown(String words) {
    changes.add(new LayoutChange(words, WORDS));
  }

  private static String line(String what, List<String> analytes, String words) {
    return what + " of " + String.join(", ", analytes) + " " + words;
  }
}
