package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.intake.interpret.Figure.Form;
import rickyard.intake.interpret.Finding.Said;

/** A table with a column for each analyte and a row for each sample. */
final class WideTable {
  private static final int LOOK_AHEAD = 5;
  private final Dictionary dictionary;
  private final Line head;
  private final List<Line> above;
  private final List<Line> marks = new ArrayList<>();
  private final boolean certain;

  /** The pieces of the head by column, where columns are certain. */
  private final Map<Integer, Piece> byColumn = new HashMap<>();

  /** What stands over a column beside its head, from the first row of figures on. */
  private final Map<Integer, Meaning> columnMarks = new HashMap<>();

  private boolean begun;
  private SortedMap<String, String> lastFields = new TreeMap<>();
  private boolean named;

  private WideTable(Dictionary dictionary, List<Line> above, Line head, boolean certain) {
    this.dictionary = dictionary;
    this.above = List.copyOf(above);
    this.head = head;
    this.certain = certain;
    head.pieces().forEach(p -> byColumn.putIfAbsent(p.cell().column(), p));
    if (certain && !this.above.isEmpty()) {
      Line last = this.above.get(this.above.size() - 1);
      if (fieldsBeside(last, head)) {
        last.pieces().stream()
            .filter(p -> p.field().filter(f -> f.value().isEmpty()).isPresent())
            .forEach(p -> byColumn.putIfAbsent(p.cell().column(), p));
      }
    }
  }

  static WideTable under(Dictionary dictionary, List<Line> above, Line head, boolean certain) {
    return new WideTable(
        dictionary, above.subList(Math.max(0, above.size() - 2), above.size()), head, certain);
  }

  /** Whether a line is the head of such a table: analytes side by side, figures below them. */
  static boolean isHead(Line line, List<Line> below, boolean certain) {
    List<Piece> labels = line.pieces().stream().filter(Piece::isLabel).toList();
    if (line.hasFigure() || labels.isEmpty() || (line.isItem() && labels.size() < 3)) {
      return false;
    }
    if (line.pieces().stream().anyMatch(p -> p.heading().has(Kind.ROLE, "analyte"))) {
      return false;
    }
    long codes = labels.stream().map(p -> p.label().get().code()).distinct().count();
    boolean named =
        line.pieces().stream()
            .anyMatch(
                p ->
                    p.field()
                        .filter(f -> f.value().isEmpty() && Header.OF_SAMPLE.contains(f.field()))
                        .isPresent());
    boolean basisBeside =
        codes == 1
            && labels.get(0).label().get().code().equals("DM")
            && line.pieces().stream().anyMatch(p -> !p.isLabel() && p.mark().basis().isPresent());
    if ((codes < 2 && !named) || basisBeside) {
      return false;
    }
    return below.stream()
        .limit(LOOK_AHEAD)
        .filter(Line::hasFigure)
        .findFirst()
        .filter(next -> hasFigureUnder(next, labels, certain))
        .isPresent();
  }

  private static boolean hasFigureUnder(Line line, List<Piece> labels, boolean certain) {
    return line.pieces().stream()
        .filter(Piece::isFigure)
        .anyMatch(p -> Columns.over(labels, p.cell(), certain).isPresent());
  }

  /** Whether a line belongs to the table: a row of figures or a row of units and bases. */
  boolean takes(Line line) {
    return isMarks(line) || isData(line);
  }

  private boolean isMarks(Line line) {
    return !begun
        && line.pieces().stream().anyMatch(Piece::isMark)
        && line.pieces().stream()
            .allMatch(
                p ->
                    p.isMark()
                        || p.isHeadingWord()
                        || (over(p).filter(Piece::isLabel).isEmpty() && !p.isFigure()));
  }

  private boolean isData(Line line) {
    boolean figure = false;
    for (Piece piece : line.pieces()) {
      figure |= piece.isFigure() && over(piece).filter(Piece::isLabel).isPresent();
    }
    if (!figure) {
      return false;
    }
    boolean label =
        line.pieces().stream()
            .anyMatch(
                p ->
                    p.isLabel()
                        && !p.isFigure()
                        && !p.isMark()
                        && over(p).filter(o -> !o.isLabel()).isEmpty()
                        && p.cell().left() > line.pieces().get(0).cell().left());
    return !label;
  }

  /** Whether a line names fields of a sample over columns in which the head says nothing. */
  static boolean fieldsBeside(Line line, Line head) {
    return line.pieces().stream()
        .filter(p -> p.field().filter(f -> f.value().isEmpty()).isPresent())
        .filter(p -> p.field().filter(f -> Header.OF_SAMPLE.contains(f.field())).isPresent())
        .anyMatch(p -> Columns.over(head.pieces(), p.cell(), true).isEmpty());
  }

  /** Whether a column says the standing of each row. */
  boolean hasStandings() {
    return byColumn.values().stream()
        .anyMatch(p -> p.field().filter(f -> f.field().equals("status")).isPresent());
  }

  private Optional<Piece> over(Piece piece) {
    return certain
        ? Optional.ofNullable(byColumn.get(piece.cell().column()))
        : Columns.over(head.pieces(), piece.cell(), false);
  }

  /** Takes a row. */
  void read(Line line, int at, Section section, RowReader rows) {
    read(line, at, section, rows, Optional.empty());
  }

  /**
   * Takes a row; a name that stands alone in the line below belongs to it if the names of this
   * table stand half-way between two rows.
   */
  void read(Line line, int at, Section section, RowReader rows, Optional<Line> next) {
    if (isMarks(line)) {
      marks.add(line);
      return;
    }
    begun = true;
    boolean foreign =
        line.pieces().stream()
            .anyMatch(
                p ->
                    !p.isFigure() && over(p).filter(Piece::isLabel).isEmpty() && beginsWithRole(p));
    if (foreign || section.foreign()) {
      return;
    }
    SortedMap<String, String> fields = fields(line);
    Optional<String> basis = rowBasis(line);
    boolean namesNone =
        fields.keySet().stream()
            .noneMatch(f -> f.equals("lot") || f.equals("sample") || f.equals("lab_no"));
    Optional<SortedMap<String, String>> between =
        namesNone && basis.isPresent() && !named ? next.flatMap(this::loneName) : Optional.empty();
    if (between.isPresent()) {
      fields.putAll(between.get());
      named = true;
    } else if (namesNone && basis.isPresent()) {
      fields.putAll(lastFields);
      named = false;
    } else {
      named = false;
    }
    lastFields = fields;
    Optional<SampleDraft> sample = Optional.empty();
    for (Piece piece : line.pieces()) {
      Optional<Piece> over = over(piece).filter(Piece::isLabel);
      if (over.isPresent() && piece.result().filter(f -> f.form() != Form.ABSENT).isPresent()) {
        sample = sample.or(() -> Optional.of(rows.samples().withFields(fields)));
        sample.get().add(finding(line, piece, over.get(), at, section, basis, rows));
      }
    }
  }

  /** 'Detection limit', 'Mean of the season'; not a sample that is called BH-64 N. */
  private static boolean beginsWithRole(Piece piece) {
    List<Phrase> phrases = piece.heading().phrases();
    if (phrases.isEmpty() || phrases.get(0).kind() != Kind.ROLE) {
      return false;
    }
    List<String> first = phrases.get(0).words();
    return piece.heading().words().subList(0, first.size()).equals(first);
  }

  /** A line that holds nothing but the name of a sample, under the heading that says so. */
  private Optional<SortedMap<String, String>> loneName(Line line) {
    if (line.pieces().size() != 1 || line.pieces().get(0).isFigure()) {
      return Optional.empty();
    }
    SortedMap<String, String> named = fields(line);
    return named.isEmpty() ? Optional.empty() : Optional.of(named);
  }

  private SortedMap<String, String> fields(Line line) {
    SortedMap<String, String> fields = new TreeMap<>();
    for (Piece piece : line.pieces()) {
      Optional<Piece> over = over(piece);
      Optional<String> field =
          over.flatMap(Piece::field).filter(f -> f.value().isEmpty()).map(FieldMark::field);
      if (field.filter(Header.OF_SAMPLE::contains).isPresent()) {
        fields.put(field.get(), piece.text());
      } else if (field.filter("status"::equals).isPresent()) {
        fields.put(SampleWriter.STANDING, piece.text());
      } else if (over.isEmpty()
          && !piece.isFigure()
          && !piece.isMark()
          && piece.equals(line.pieces().get(0))) {
        fields.put(
            "sample",
            piece
                .field()
                .filter(f -> !f.value().isEmpty())
                .map(FieldMark::value)
                .orElse(piece.text()));
      }
    }
    boolean words =
        fields.getOrDefault("description", "0").chars().noneMatch(c -> c >= '0' && c <= '9');
    if (words && fields.containsKey("lab_no") && !fields.containsKey("lot")) {
      // A column of numbers names the rows better than a column of words about them.
      fields.putIfAbsent("sample", fields.get("lab_no"));
    }
    return fields;
  }

  private Optional<String> rowBasis(Line line) {
    List<String> said =
        line.pieces().stream()
            .filter(p -> !p.isFigure() && over(p).filter(Piece::isLabel).isEmpty() && p.isMark())
            .map(p -> p.mark().basis())
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }

  private Finding finding(
      Line line,
      Piece piece,
      Piece over,
      int at,
      Section section,
      Optional<String> rowBasis,
      RowReader rows) {
    Label label = over.label().orElseThrow();
    Meaning column = columnMarks(piece);
    List<Said<Unit>> units = new ArrayList<>();
    List<Said<String>> bases = new ArrayList<>();
    RowReader.say(units, piece.tail().only(Kind.UNIT).flatMap(Unit::findByCode), 0);
    RowReader.say(bases, piece.tail().basis(), 0);
    RowReader.say(units, label.unit(), 1);
    RowReader.say(units, column.only(Kind.UNIT).flatMap(Unit::findByCode), 1);
    RowReader.say(bases, label.basis(), 1);
    RowReader.say(bases, column.basis(), 1);
    RowReader.say(bases, rowBasis, 1);
    RowReader.say(bases, section.basis(), 3);
    RowReader.say(units, section.unit(), 3);
    rows.sayPage(label.code(), at, units, bases);
    boolean ratio = label.ratio() || column.has(Kind.RATIO);
    String rawUnit =
        piece.tail().has(Kind.UNIT)
            ? piece.figure().orElseThrow().rest()
            : units.stream().findFirst().map(u -> u.what().code()).orElse("");
    return new Finding(
        label.with(ratio),
        piece.result().orElseThrow(),
        piece.text(),
        new Place(rows.document(), line.page(), line.row(), over.text()),
        rows.sameUnits(units),
        rows.sameBases(bases),
        rawUnit,
        label.method().or(() -> column.only(Kind.METHOD)),
        Optional.empty(),
        piece.trouble());
  }

  private Meaning columnMarks(Piece piece) {
    Meaning known = certain ? columnMarks.get(piece.cell().column()) : null;
    if (known == null) {
      known = findMarks(piece);
      columnMarks.put(piece.cell().column(), known);
    }
    return known;
  }

  private Meaning findMarks(Piece piece) {
    List<String> texts = new ArrayList<>();
    for (Line line : above) {
      Columns.spanning(line.pieces(), piece.cell(), certain)
          .filter(Piece::isMark)
          .ifPresent(p -> texts.add(p.text()));
    }
    for (Line line : marks) {
      Columns.over(line.pieces(), piece.cell(), certain)
          .filter(Piece::isMark)
          .ifPresent(p -> texts.add(p.text()));
    }
    return dictionary.read(String.join(" ", texts), Dictionary.IN_MARK);
  }
}
