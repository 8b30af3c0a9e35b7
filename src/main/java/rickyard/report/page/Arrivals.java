package rickyard.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.Counts;
import rickyard.report.view.MorningView;
import rickyard.report.view.OutcomeRow;

/** What arrived and how it was counted. */
public final class Arrivals {
  /** One file, or one part of a container. */
  public record Entry(
      String file, boolean part, String about, String outcome, String reason, String layout) {}

  private static final String NO_ANALYSIS = "no-analytes";

  private Arrivals() {}

  /** Every file but those known from an earlier morning, which are only counted. */
  static Listed<Entry> of(MorningView view) {
    // Where nothing is remembered yet everything is new, and saying so of each file says nothing.
    boolean remembers =
        view.outcomes().stream()
            .map(OutcomeRow::layoutNote)
            .anyMatch(note -> note.startsWith("known") || note.startsWith("changed"));
    List<OutcomeRow> listed =
        view.outcomes().stream().filter(row -> !row.outcome().equals("known")).toList();
    return Listed.first(listed, row -> entry(row, remembers), "outcomes.csv");
  }

  private static Entry entry(OutcomeRow row, boolean remembers) {
    List<String> about = new ArrayList<>();
    about.add(Harmless.line(row.kind()));
    about.add(Harmless.line(row.lab()));
    if (!row.reportNo().isBlank()) {
      String revision = row.revision() > 1 ? ", revision " + row.revision() : "";
      about.add("report " + Harmless.line(row.reportNo()) + revision);
    }
    if (row.samples() > 0) {
      about.add(Shown.count(row.samples(), "sample", "samples"));
    }
    about.removeIf(String::isBlank);
    boolean part = !row.part().isBlank();
    return new Entry(
        Harmless.line(part ? row.part() : row.file()),
        part,
        String.join(" · ", about),
        Words.of("outcome", row.outcome()),
        Plain.sentence(row.reason()),
        layout(row, remembers));
  }

  /** What is to be said of the layout; nothing of one that is known and raised nothing. */
  private static String layout(OutcomeRow row, boolean remembers) {
    String note = row.layoutNote();
    boolean silent = note.isEmpty() || note.equals("known") || (note.equals("new") && !remembers);
    return silent ? "" : Plain.sentence("Layout " + row.layout() + ": " + row.layoutNote());
  }

  /** The files by outcome, in one sentence; what is no report is not called unreadable. */
  static String sentence(MorningView view) {
    int foreign =
        (int)
            view.outcomes().stream()
                .filter(row -> row.part().isBlank() && row.outcome().equals("refused"))
                .filter(row -> row.reasonCode().equals(NO_ANALYSIS))
                .count();
    return sentence(view.counts(), Math.min(foreign, view.counts().refused()));
  }

  private static String sentence(Counts counts, int foreign) {
    if (counts.files() == 0) {
      return "Nothing arrived.";
    }
    List<String> parts = new ArrayList<>();
    add(parts, counts.accepted(), "read");
    add(
        parts,
        counts.question(),
        counts.question() == 1 ? "waits for an answer" : "wait for an answer");
    add(parts, counts.duplicate(), "came twice");
    add(parts, counts.superseded(), "replaced by a newer revision");
    add(parts, counts.refused() - foreign, "could not be read");
    add(parts, foreign, foreign == 1 ? "holds no analysis" : "hold no analysis");
    add(parts, counts.known(), "known from an earlier morning");
    return Shown.count(counts.files(), "file", "files")
        + " came: "
        + String.join(", ", parts)
        + ".";
  }

  private static void add(List<String> parts, int number, String words) {
    if (number > 0) {
      parts.add(number + " " + words);
    }
  }

  /** Where the counts and the rows do not add up; nobody may trust such a page. */
  static List<String> contradictions(MorningView view) {
    Counts counts = view.counts();
    Map<String, Integer> rows = new TreeMap<>();
    for (OutcomeRow row : view.outcomes()) {
      rows.merge(row.part().isBlank() ? row.outcome() : "part", 1, Integer::sum);
    }
    List<String> wrong = new ArrayList<>();
    int sum =
        counts.accepted()
            + counts.question()
            + counts.duplicate()
            + counts.superseded()
            + counts.refused()
            + counts.known();
    if (sum != counts.files()) {
      wrong.add("The outcomes add up to " + sum + ", but " + counts.files() + " files came.");
    }
    check(wrong, "accepted", counts.accepted(), rows);
    check(wrong, "question", counts.question(), rows);
    check(wrong, "duplicate", counts.duplicate(), rows);
    check(wrong, "superseded", counts.superseded(), rows);
    check(wrong, "refused", counts.refused(), rows);
    check(wrong, "known", counts.known(), rows);
    check(wrong, "part", counts.parts(), rows);
    return wrong;
  }

  private static void check(
      List<String> wrong, String outcome, int counted, Map<String, Integer> rows) {
    int listed = rows.getOrDefault(outcome, 0);
    if (listed != counted) {
      wrong.add("Counted as " + outcome + ": " + counted + ", but " + listed + " are listed.");
    }
  }
}
