package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import rickyard.core.quantity.Unit;
import rickyard.intake.grid.Cell;
import rickyard.intake.interpret.Figure.Form;

/**
 * A cell with everything it may be; which of these it is depends on its neighbours.
 *
 * @param cell the cell
 * @param said its text, or what the report's own key says that it stands for as a heading
 * @param label the analyte it names, if it does and nothing else
 * @param mark what it says of unit, basis and method
 * @param heading what it says as the heading of a column
 * @param figure the figure it is, if it is one
 * @param tail what stands behind the figure: unit, basis, method
 * @param field the field of the head that it names, if it does
 * @param voice what it may say beyond itself
 */
record Piece(
    Cell cell,
    String said,
    Optional<Label> label,
    Meaning mark,
    Meaning heading,
    Optional<Figure> figure,
    Meaning tail,
    Optional<FieldMark> field,
    Voice voice) {

  private static final Set<Kind> QUALIFIERS = EnumSet.of(Kind.QUALIFIER);
  private static final Set<Kind> ROLES = EnumSet.of(Kind.ROLE);

  Piece {
    requireNonNull(cell, "cell");
  }

  static Piece of(Reading reading, Cell cell) {
    Dictionary dictionary = reading.dictionary();
    String text = cell.text();
    Optional<Figure> figure =
        switch (cell.nature()) {
          case PRINTED -> figure(reading, text);
          case STORED, COMPUTED -> figure(reading.as(Dialect.POINT), text);
          case RESHAPED -> Optional.of(Figure.troubled("shown-otherwise", "", ""));
          case FAILED -> Optional.of(Figure.troubled("error-in-cell", "", ""));
          case DATED -> Optional.empty();
        };
    String rest = figure.map(Figure::rest).orElse("");
    String said = reading.key().said(text);
    return new Piece(
        cell,
        said,
        Label.read(dictionary, text),
        dictionary.read(text, Dictionary.IN_MARK),
        dictionary.read(said, Dictionary.IN_HEADING),
        figure,
        dictionary.read(rest, Dictionary.IN_MARK),
        FieldMark.read(dictionary, text),
        dictionary.voice(text));
  }

  /**
   * What the cells of one document are read with.
   *
   * @param dictionary the words
   * @param dialect its decimal mark
   * @param legend what it says its marks stand for
   * @param key what it says its columns stand for
   * @param certain whether columns are certain
   */
  record Reading(
      Dictionary dictionary, Dialect dialect, Legend legend, ColumnKey key, boolean certain) {
    /** Whether it says itself what some of its words mean. */
    boolean hasOwnWords() {
      return !legend.isEmpty() || !key.isEmpty();
    }

    Reading as(Dialect other) {
      return new Reading(dictionary, other, legend, key, certain);
    }
  }

  /** The same text in another place. */
  Piece at(Cell other) {
    return new Piece(other, said, label, mark, heading, figure, tail, field, voice);
  }

  private static Optional<Figure> figure(Reading reading, String text) {
    Dictionary dictionary = reading.dictionary();
    Optional<Figure> read = Numerals.read(text, reading.dialect(), reading.certain());
    if (read.isPresent()) {
      Meaning rest = dictionary.read(read.get().rest(), Dictionary.IN_MARK);
      return rest.unknown().isEmpty() ? read : Optional.empty();
    }
    Meaning word = dictionary.read(text, QUALIFIERS);
    if (word.isWhole() && word.phrases().size() == 1) {
      String meaning = reading.legend().meaning(text).orElse(word.phrases().get(0).meaning());
      return Optional.of(Figure.word(form(meaning)));
    }
    boolean underLimit = text.startsWith("<") && dictionary.read(text, ROLES).has(Kind.ROLE, "lod");
    return underLimit ? Optional.of(Figure.word(Form.NOT_DETECTED)) : Optional.empty();
  }

  private static Form form(String word) {
    return switch (word) {
      case "nd" -> Form.NOT_DETECTED;
      case "trace" -> Form.TRACE;
      default -> Form.ABSENT;
    };
  }

  String text() {
    return cell.text();
  }

  /** The room of the number alone where a unit stands behind it: '6.8 %' may reach under 'Unit'. */
  Cell resultCell() {
    int rest = figure.map(f -> f.rest().length()).orElse(0);
    int all = cell.text().length();
    if (rest == 0 || rest >= all) {
      return cell;
    }
    double right = cell.left() + (cell.right() - cell.left()) * (all - rest) / all;
    return new Cell(cell.text(), cell.left(), right, cell.column(), cell.nature());
  }

  /** What stands here if the column holds results: there a day is a figure that got lost. */
  Optional<Figure> result() {
    return cell.nature() == Cell.Nature.DATED
        ? Optional.of(Figure.troubled("date-in-result", "", ""))
        : figure;
  }

  /** Why a figure in this cell must wait although it can be read; empty if nothing is wrong. */
  String trouble() {
    return cell.nature() == Cell.Nature.COMPUTED ? "formula-in-result" : "";
  }

  boolean isFigure() {
    return figure.isPresent();
  }

  /** An analyte's name and not a figure: 'NA' may be both. */
  boolean isLabel() {
    return label.isPresent();
  }

  /** Nothing but unit, basis or method. */
  boolean isMark() {
    return mark.isWhole()
        && (mark.has(Kind.UNIT)
            || mark.has(Kind.RATIO)
            || mark.has(Kind.BASIS)
            || mark.has(Kind.STATEMENT)
            || mark.has(Kind.METHOD));
  }

  /** Whether it says something that only the heading of a column would. */
  boolean isHeadingWord() {
    boolean mark =
        heading.has(Kind.UNIT)
            || heading.has(Kind.BASIS)
            || heading.has(Kind.STATEMENT)
            || heading.has(Kind.FIELD)
            || heading.has(Kind.METHOD);
    return heading.has(Kind.ROLE) || (heading.isWhole() && mark);
  }

  Optional<Unit> unitOfMark() {
    return mark.only(Kind.UNIT).flatMap(Unit::findByCode);
  }
}
