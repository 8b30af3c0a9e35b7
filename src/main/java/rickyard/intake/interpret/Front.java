package rickyard.intake.interpret;

import java.util.Comparator;
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
  private static final int LONG_TEXT = 110;
  private static final int LETTERHEAD_LINES = 10;
  private static final Set<Kind> IN_NOTE =
      EnumSet.of(Kind.STATUS, Kind.FILLER, Kind.SUBJECT, Kind.NOT, Kind.FIELD);
  private final Dictionary dictionary;
  private final SortedMap<String, String> fields = new TreeMap<>();
  private final NavigableSet<String> torn = new TreeSet<>();
  private final NavigableSet<ReportStatus> statuses = new TreeSet<>();
  private final Memo<List<ReportStatus>> standings = new Memo<>(this::standings);
  private String letterhead = "";
  private String firstLine = "";
  private int linesSeen;

  Front(Dictionary dictionary) {
    this.dictionary = dictionary;
  }

  void note(String field, String value) {
    // 'Report: 19.06.2026' says when it was written.
    boolean day =
        field.equals("report_no")
            && value.matches("(?s).*[0-9]{4}.*")
            && !Dates.read(value, Dates.Order.UNKNOWN).isEmpty();
    fields.putIfAbsent(day ? "reported" : field, value);
  }

  /**
   * Takes a field that a table repeats in each row; rows that contradict each other say nothing.
   */
  void column(String field, String value) {
    if (!value.equals(fields.getOrDefault(field, value))) {
      torn.add(field);
    } else {
      fields.put(field, value);
    }
  }

  String field(String name) {
    return torn.contains(name) ? "" : fields.getOrDefault(name, "");
  }

  /** Looks at a line for the report's standing and the laboratory's name. */
  void see(Line line) {
    linesSeen++;
    if (line.isItem() || (linesSeen > LETTERHEAD_LINES && line.isSilent())) {
      return;
    }
    line.pieces().forEach(p -> standing(p.text()));
    line.pieces().forEach(this::numbered);
    if (linesSeen == 1 && looksLikeAName(line.pieces().get(0))) {
      firstLine = line.pieces().get(0).text();
    }
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

  /** The first words of a page, where they are neither field, analyte nor heading. */
  private boolean looksLikeAName(Piece piece) {
    Meaning heading = piece.heading();
    return piece.field().isEmpty()
        && !piece.isLabel()
        && !piece.isFigure()
        && !piece.isHeadingWord()
        && heading.words().size() >= 2
        && heading.words().size() <= 8
        && !dictionary.read(piece.text(), IN_NOTE).has(Kind.STATUS)
        && piece.text().chars().noneMatch(c -> c >= '0' && c <= '9');
  }

  /** 'Amended, revision 2': a revision named inside another cell. */
  private void numbered(Piece piece) {
    List<String> words = Words.of(piece.text());
    for (int i = 0; i + 1 < words.size() && words.size() <= LONGEST_NOTE; i++) {
      boolean revision =
          dictionary
              .read(List.of(words.get(i)), EnumSet.of(Kind.FIELD))
              .has(Kind.FIELD, "revision");
      if (revision && words.get(i + 1).matches("[0-9]{1,2}") && !words.get(i).equals("issue")) {
        fields.putIfAbsent("revision", words.get(i + 1));
      }
    }
  }

  private void standing(String text) {
    statuses.addAll(standings.of(text));
  }

  private List<ReportStatus> standings(String text) {
    List<String> sentences = text.length() > LONG_TEXT ? Sentences.split(text) : List.of();
    if (sentences.size() > 1) {
      return sentences.stream().flatMap(s -> standings(s).stream()).distinct().toList();
    }
    Meaning meaning = dictionary.read(text, IN_NOTE);
    int words = meaning.words().size();
    if (words <= LONGEST_SENTENCE && saysPreliminary(meaning)) {
      return List.of(ReportStatus.PRELIMINARY);
    }
    if (!meaning.has(Kind.STATUS) || meaning.has(Kind.NOT) || words > LONGEST_NOTE) {
      return List.of();
    }
    boolean stamp = words <= LONGEST_STAMP && meaning.unknown().size() <= 2;
    return meaning.all(Kind.STATUS).stream()
        .filter(s -> stamp || s.equals("preliminary") || s.equals("amended"))
        .flatMap(s -> status(s).stream())
        .toList();
  }

  /** 'Below are the preliminary figures for your hay': a sentence, not a stamp. */
  private static boolean saysPreliminary(Meaning meaning) {
    return !meaning.has(Kind.NOT)
        && !meaning.has(Kind.FIELD, "replaces")
        && meaning.phrases().stream()
            .anyMatch(
                p ->
                    p.kind() == Kind.STATUS
                        && p.meaning().equals("preliminary")
                        && p.words().size() >= 2);
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
    if (!field("lab").isEmpty()) {
      return field("lab");
    }
    return letterhead.isEmpty() ? firstLine : letterhead;
  }

  /** What the rows of a table say of their samples, where all say the same. */
  void standing(List<ReportStatus> ofSamples) {
    boolean one = ofSamples.stream().distinct().count() == 1;
    if (one || ofSamples.contains(ReportStatus.WITHDRAWN)) {
      statuses.addAll(ofSamples);
    }
  }

  /** The standing of a sample whose row says another, graver one than the page. */
  Optional<ReportStatus> own(String word) {
    return standings.of(word).stream()
        .max(Comparator.comparing(Front::gravity))
        .filter(s -> gravity(s) > gravity(status()));
  }

  private static int gravity(ReportStatus status) {
    return switch (status) {
      case FINAL -> 0;
      case AMENDED -> 1;
      case PRELIMINARY -> 2;
      case WITHDRAWN -> 3;
    };
  }

  /** The standings that the rows of a table name; a row that names none is final. */
  List<ReportStatus> ofRows(List<String> words) {
    return words.stream()
        .map(
            w ->
                standings.of(w).stream()
                    .max(Comparator.comparing(Front::gravity))
                    .orElse(ReportStatus.FINAL))
        .toList();
  }

  /** The standing: the gravest that the page names. */
  ReportStatus status() {
    if (statuses.contains(ReportStatus.WITHDRAWN)) {
      return ReportStatus.WITHDRAWN;
    }
    if (statuses.contains(ReportStatus.PRELIMINARY)) {
      return ReportStatus.PRELIMINARY;
    }
    return isAmended() || revision() > 0 ? ReportStatus.AMENDED : ReportStatus.FINAL;
  }

  /** The revision as a number; 0 for a first issue, 1 for one that is amended without a number. */
  int revision() {
    String digits = field("revision").replaceAll("[^0-9].*$", "");
    if (digits.isEmpty() || digits.length() > 4) {
      return isAmended() ? 1 : 0;
    }
    return Integer.parseInt(digits);
  }

  private boolean isAmended() {
    return statuses.contains(ReportStatus.AMENDED) || !field("replaces").isEmpty();
  }
}
