package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A row of field names with their values in the row or rows beneath: 'Lot | Material' over 'A-1 |
 * grass hay'.
 *
 * @param names the row of names
 * @param values the rows beneath, at least one
 * @param certain whether columns are certain
 */
record FieldBlock(Line names, List<Line> values, boolean certain) {
  private static final int MOST_WORDS = 5;

  FieldBlock {
    values = List.copyOf(values);
  }

  /** The block whose names stand in line {@code at}. */
  static Optional<FieldBlock> at(List<Line> lines, int at, boolean certain) {
    Line names = lines.get(at);
    if (!isNames(names)) {
      return Optional.empty();
    }
    List<Line> values = new ArrayList<>();
    for (Line line : lines.subList(at + 1, lines.size())) {
      if (line.page() != names.page() || !isValues(line, names, certain)) {
        break;
      }
      values.add(line);
    }
    return values.isEmpty()
        ? Optional.empty()
        : Optional.of(new FieldBlock(names, values, certain));
  }

  /** Two or more bare names side by side, and nothing that only a table of results has. */
  private static boolean isNames(Line line) {
    List<Piece> pieces = line.pieces();
    if (pieces.size() < 2 || !isBareName(pieces.get(0)) || !isBareName(pieces.get(1))) {
      return false;
    }
    long bare = pieces.stream().filter(FieldBlock::isBareName).count();
    return 2 * bare > pieces.size()
        && pieces.stream().noneMatch(p -> p.isLabel() || isOfTable(p) || p.isFigure());
  }

  private static boolean isBareName(Piece piece) {
    return piece.field().filter(f -> f.value().isEmpty()).isPresent();
  }

  private static boolean isOfTable(Piece piece) {
    return piece.heading().isWhole()
        && (piece.heading().has(Kind.ROLE, "analyte")
            || piece.heading().has(Kind.ROLE, "result")
            || piece.heading().has(Kind.ROLE, "unit"));
  }

  private static boolean isValues(Line line, Line names, boolean certain) {
    boolean under =
        line.pieces().stream()
            .allMatch(p -> Columns.over(names.pieces(), p.cell(), certain).isPresent());
    return under
        && !line.isItem()
        && line.pieces().size() * 2 >= names.pieces().size()
        && line.pieces().stream()
            .noneMatch(
                p ->
                    isBareName(p)
                        || isOfTable(p)
                        || p.field().filter(FieldMark::marked).isPresent()
                        || p.heading().words().size() > MOST_WORDS + 3);
  }

  /** The fields of one row of values. */
  SortedMap<String, String> fields(Line row) {
    SortedMap<String, String> fields = new TreeMap<>();
    for (Piece piece : row.pieces()) {
      Columns.over(names.pieces(), piece.cell(), certain)
          .filter(FieldBlock::isBareName)
          .flatMap(Piece::field)
          .ifPresent(f -> fields.merge(f.field(), piece.text(), (a, b) -> a + " " + b));
    }
    return fields;
  }
}
