package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rickyard.intake.grid.Cell;

/** The lines over a table: headings, and lines that give a field of the sample for each column. */
final class Header {
  /** Fields that tell one sample from another. */
  static final Set<String> OF_SAMPLE =
      Set.of("lot", "sample", "description", "lab_no", "batch", "material", "sampled", "cores");

  private final Dictionary dictionary;
  private final List<Line> lines;
  private final List<Line> fieldLines;
  private final Optional<Line> captions;
  private final boolean certain;

  /** Names of samples in each heading line. */
  private final List<List<Piece>> names;

  private final boolean byColumn;

  private final Map<Integer, Heading> known = new HashMap<>();

  /**
   * The head of a table.
   *
   * @param lines heading lines from top to bottom; the last one stands directly over the columns
   * @param fieldLines lines such as 'Lot | A | B'
   * @param captions words under the names of samples that say more of each; empty if none
   * @param certain whether columns are certain
   */
  Header(
      Dictionary dictionary,
      List<Line> lines,
      List<Line> fieldLines,
      Optional<Line> captions,
      boolean certain) {
    this.captions = captions;
    this.dictionary = dictionary;
    this.lines = List.copyOf(lines);
    this.fieldLines = List.copyOf(fieldLines);
    this.certain = certain;
    this.names = this.lines.stream().map(BareNames::in).toList();
    this.byColumn = certain && this.lines.stream().noneMatch(Header::isPairs);
  }

  static Header none(Dictionary dictionary, boolean certain) {
    return new Header(dictionary, List.of(), List.of(), Optional.empty(), certain);
  }

  boolean isNone() {
    return lines.isEmpty() && fieldLines.isEmpty();
  }

  /** Whether the number of a column alone decides what stands over a cell. */
  boolean isByColumn() {
    return byColumn;
  }

  /** What stands over a cell, whatever else stands in its row. */
  Heading over(Cell cell) {
    return over(cell, List.of());
  }

  /** What stands over a cell of a row. */
  Heading over(Cell cell, List<Piece> row) {
    if (!byColumn) {
      return find(cell, row);
    }
    Heading heading = known.get(cell.column());
    if (heading == null) {
      heading = find(cell, row);
      known.put(cell.column(), heading);
    }
    return heading;
  }

  private Heading find(Cell cell, List<Piece> row) {
    List<Piece> over = new ArrayList<>();
    SortedMap<String, String> fields = new TreeMap<>();
    for (int i = 0; i < lines.size(); i++) {
      List<Piece> pieces = lines.get(i).pieces();
      if (isPairs(lines.get(i))) {
        pair(pieces, cell, fields);
        continue;
      }
      Optional<Piece> piece =
          i == lines.size() - 1
              ? Columns.over(pieces, cell, row, certain)
              : Columns.spanning(pieces, cell, certain);
      List<Piece> ofLine = names.get(i);
      piece.ifPresent(p -> add(p, ofLine.contains(p), over, fields));
    }
    for (Line line : fieldLines) {
      String field = line.pieces().get(0).field().map(FieldMark::field).orElse("");
      List<Piece> values = line.pieces().subList(1, line.pieces().size());
      Optional<Piece> value =
          isGapped(line)
              ? Columns.over(values, cell, certain)
              : Columns.spanning(values, cell, certain);
      value.ifPresent(p -> name(field, p.text(), fields));
    }
    if (fields.containsKey("sample")) {
      captions
          .flatMap(line -> Columns.over(line.pieces(), cell, certain))
          .ifPresent(p -> fields.putIfAbsent("description", p.text()));
    }
    String text = over.stream().map(Piece::text).collect(Collectors.joining(" "));
    String said = over.stream().map(Piece::said).collect(Collectors.joining(" "));
    return new Heading(text, dictionary.read(said, Dictionary.IN_HEADING), fields);
  }

  /** A column that has a number over it and a name besides is known by both. */
  private static void name(String field, String value, SortedMap<String, String> fields) {
    String before = fields.getOrDefault(field, value);
    if (field.equals("sample") && !before.equals(value)) {
      fields.putIfAbsent("lab_no", before);
    }
    fields.put(field, value);
  }

  /** Whether another field has more values: a column without one must not take its neighbour's. */
  private boolean isGapped(Line line) {
    return fieldLines.stream().anyMatch(other -> other.pieces().size() > line.pieces().size());
  }

  /** 'Sample | A | | Sample | B': the same field side by side, each with its value beside it. */
  static boolean isPairs(Line line) {
    List<Piece> pieces = line.pieces();
    if (pieces.size() < 4 || pieces.size() % 2 != 0) {
      return false;
    }
    String field = pieces.get(0).field().map(FieldMark::field).orElse("");
    for (int i = 0; i < pieces.size(); i += 2) {
      Optional<FieldMark> name = pieces.get(i).field().filter(f -> f.value().isEmpty());
      boolean value = pieces.get(i + 1).field().isEmpty() && !pieces.get(i + 1).isHeadingWord();
      if (name.filter(f -> f.field().equals(field)).isEmpty() || !value) {
        return false;
      }
    }
    return OF_SAMPLE.contains(field);
  }

  /** The pair of the block that a cell stands in: the last one that begins left of it. */
  private static void pair(List<Piece> pieces, Cell cell, SortedMap<String, String> fields) {
    for (int i = 0; i < pieces.size(); i += 2) {
      boolean begun = i == 0 || pieces.get(i).cell().left() < cell.right();
      if (begun) {
        fields.put(
            pieces.get(i).field().map(FieldMark::field).orElse("sample"), pieces.get(i + 1).text());
      }
    }
  }

  private static void add(
      Piece piece, boolean name, List<Piece> over, SortedMap<String, String> fields) {
    if (name) {
      fields.put("sample", piece.text());
      return;
    }
    Optional<FieldMark> field =
        piece.field().filter(f -> !f.value().isEmpty() && OF_SAMPLE.contains(f.field()));
    if (field.isPresent()) {
      fields.put(field.get().field(), field.get().value());
    } else {
      over.add(piece);
    }
  }

  /**
   * The result column next to the left of the heading over a cell, if no other cell is under it.
   */
  Optional<Heading> freeResultBeside(Cell cell, List<Piece> others) {
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    List<Piece> last = lines.get(lines.size() - 1).pieces();
    Optional<Piece> over = Columns.over(last, cell, certain);
    int at = over.map(last::indexOf).orElse(0);
    if (at < 1) {
      return Optional.empty();
    }
    Cell beside = last.get(at - 1).cell();
    boolean free = others.stream().noneMatch(o -> o.cell().overlap(beside) > 0);
    return Optional.of(over(beside)).filter(h -> free && h.isResult());
  }

  /** Whether any of its columns is known to hold results. */
  boolean hasResults() {
    return lines.stream()
        .flatMap(line -> line.pieces().stream())
        .anyMatch(piece -> over(piece.cell()).isResult());
  }
}
