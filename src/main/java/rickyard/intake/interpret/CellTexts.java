package rickyard.intake.interpret;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import rickyard.intake.grid.Cell;

/**
 * What the text of a cell is by the dictionary alone, whatever document it stands in. It is
 * remembered from one document to the next: laboratories print the same words each time. Several
 * threads may ask at once.
 */
final class CellTexts {
  private static final int LONGEST_SPLIT = 80;
  private static final Pattern BETWEEN =
      Pattern.compile(
          "\\s+[\u00B7\u2022|]\\s+|\\s+[\u2013\u2014]\\s+|\\s+-\\s+(?=\\p{Lu})|;\\s+(?=\\p{L})");

  private final Dictionary dictionary;
  private final Memo<Optional<Label>> labels;
  private final Memo<Optional<FieldMark>> fields;
  private final Memo<Boolean> whole;
  private final Memo<Boolean> undivided;
  private final Memo<Boolean> figures;
  private final Map<Kept, Memo<Piece>> pieces = new ConcurrentHashMap<>();

  /** What decides a piece where the report has neither legend nor key of its own. */
  private record Kept(Dialect dialect, boolean certain, Cell.Nature nature) {}

  CellTexts(Dictionary dictionary) {
    this.dictionary = dictionary;
    this.labels = new Memo<>(text -> Label.read(dictionary, text));
    this.fields = new Memo<>(text -> FieldMark.read(dictionary, text));
    this.whole = new Memo<>(text -> !hasBorder(text) || label(text).isPresent());
    this.undivided = new Memo<>(this::readUndivided);
    this.figures = new Memo<>(this::readFigure);
  }

  Dictionary dictionary() {
    return dictionary;
  }

  /** The analyte's name that it is, {@link Label#read}. */
  Optional<Label> label(String text) {
    return labels.of(text);
  }

  /** The field of the head that it names, {@link FieldMark#read}. */
  Optional<FieldMark> field(String text) {
    return fields.of(text);
  }

  /** Whether it is one label, or holds no place at which it could be divided. */
  boolean isWhole(String text) {
    return text.length() > LONGEST_SPLIT || whole.of(text);
  }

  /** Whether a cell with this text is one piece, whatever stands beside it. */
  boolean isUndivided(String text) {
    return undivided.of(text);
  }

  /** Whether it is a figure, in whichever way its decimal mark is written. */
  boolean isFigure(String text) {
    return figures.of(text);
  }

  /** The marks between fields in a row: 'Report 77 · Sampled 3 May 2026'. */
  static Pattern between() {
    return BETWEEN;
  }

  /** The pieces of one nature as they are read in a document. */
  Memo<Piece> pieces(Piece.Reading reading, Cell.Nature nature) {
    return reading.hasOwnWords()
        ? read(reading, nature)
        : pieces.computeIfAbsent(
            new Kept(reading.dialect(), reading.certain(), nature), kept -> read(reading, nature));
  }

  private static Memo<Piece> read(Piece.Reading reading, Cell.Nature nature) {
    return new Memo<>(text -> Piece.of(reading, new Cell(text, 0, 1, 1, nature)));
  }

  private boolean readUndivided(String text) {
    return isWhole(text) && !BETWEEN.matcher(text).find();
  }

  private boolean readFigure(String text) {
    return Numerals.read(text, Dialect.OPEN, true)
        .filter(f -> dictionary.read(f.rest(), Dictionary.IN_MARK).unknown().isEmpty())
        .isPresent();
  }

  private static boolean hasBorder(String text) {
    for (int at = 1; at < text.length(); at++) {
      if (isBorder(text.charAt(at))) {
        return true;
      }
    }
    return false;
  }

  /** Whether a label may end before this character. */
  static boolean isBorder(char c) {
    return c == ' ' || c == ':' || c == '=';
  }
}
