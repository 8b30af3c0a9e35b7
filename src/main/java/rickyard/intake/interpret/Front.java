package rickyard.intake.interpret;

import java.util.EnumSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.ReportStatus;

/** What the report says of itself: laboratory, number, revision, standing, method, dates. */
final class Front {
  private static final int LONGEST_NOTE = 15;
  private static final int LONGEST_SENTENCE = 40;
  private static final int LONGEST_STAMP = 6;
  private static final int LETTERHEAD_LINES = 10;
  private static final Set<Kind> IN_NOTE =
      EnumSet.of(Kind.STATUS, Kind.FILLER, Kind.SUBJECT, Kind.NOT, Kind.FIELD);
  private final Dictionary dictionary;
  private final SortedMap<String, String> fields = new TreeMap<>();
  private final NavigableSet<ReportStatus> statuses = new TreeSet<>();
  private String letterhead = "";
  private int linesSeen;

  Front(Dictionary dictionary) {
    this.dictionary = dictionary;
  }

  void note(String field, String value) {
    fields.putIfAbsent(field, value);
  }

  String field(String name) {
    return fields.getOrDefault(name, "");
  }

  /** Looks at a line for the report's standing and the laboratory's name. */
  void see(Line line) {
    linesSeen++;
    if (line.isItem()) {
      return;
    }
    line.pieces().forEach(this::standing);
    replaced(line.text());
    if (letterhead.isEmpty() && linesSeen <= LETTERHEAD_LINES && line.page() == 1) {
      line.pieces().stream()
          .filter(this::isLetterhead)
          .findFirst()
          .ifPresent(p -> letterhead = p.text());
    }
  }

  private boolean isLetterhead(Piece piece) {
    Meaning meaning = dictionary.read(piece.text(), EnumSet.of(Kind.LETTERHEAD));
    return meaning.has(Kind.LETTERHEAD)
        && !meaning.unknown().isEmpty()
        && meaning.words().size() <= 8
        && piece.field().isEmpty();
  }

  private void standing(Piece piece) {
    Meaning meaning = dictionary.read(piece.text(), IN_NOTE);
    int words = meaning.words().size();
    if (!meaning.has(Kind.STATUS) || meaning.has(Kind.NOT) || words > LONGEST_NOTE) {
      return;
    }
    for (String status : meaning.all(Kind.STATUS)) {
      boolean stamp = words <= LONGEST_STAMP && meaning.unknown().size() <= 2;
      if (stamp || status.equals("preliminary") || status.equals("amended")) {
        status(status).ifPresent(statuses::add);
      }
    }
  }

  private void replaced(String text) {
    Meaning meaning = dictionary.read(text, EnumSet.of(Kind.FIELD));
    if (!meaning.has(Kind.FIELD, "replaces") || fields.containsKey("replaces")) {
      return;
    }
    String[] words = text.split("[\\s:;,()]+", LONGEST_SENTENCE);
    boolean seen = false;
    for (int n = 1; n <= words.length; n++) {
      String head = String.join(" ", List.of(words).subList(0, n));
      seen = seen || dictionary.read(head, EnumSet.of(Kind.FIELD)).has(Kind.FIELD, "replaces");
      if (seen && words[n - 1].matches(".*[0-9].*")) {
        fields.put("replaces", words[n - 1].replaceFirst("\\.$", ""));
        return;
      }
    }
  }

  private static Optional<ReportStatus> status(String word) {
    for (ReportStatus status : ReportStatus.values()) {
      if (status.code().equals(word)) {
        return Optional.of(status);
      }
    }
    return Optional.empty();
  }

  String lab() {
    return field("lab").isEmpty() ? letterhead : field("lab");
  }

  /** The standing: the gravest that the page names. */
  ReportStatus status() {
    if (statuses.contains(ReportStatus.WITHDRAWN)) {
      return ReportStatus.WITHDRAWN;
    }
    if (statuses.contains(ReportStatus.PRELIMINARY)) {
      return ReportStatus.PRELIMINARY;
    }
    boolean amended =
        statuses.contains(ReportStatus.AMENDED) || !field("replaces").isEmpty() || revision() > 0;
    return amended ? ReportStatus.AMENDED : ReportStatus.FINAL;
  }

  /** The revision as a number; 0 for a first issue or where none is printed. */
  int revision() {
    String digits = field("revision").replaceAll("[^0-9].*$", "");
    return digits.isEmpty() || digits.length() > 4 ? 0 : Integer.parseInt(digits);
  }
}
