package rickyard.intake.interpret;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Names of samples that stand over their columns without a word that says so: '| A-1 | A-2 | A-3'.
 *
 * <p>Only what looks like a number of a sample counts: it holds a digit, or is one capital letter,
 * no word of it is known, and its neighbours are of the same make. A heading of words that nobody
 * knows stays a question.
 */
final class BareNames {
  private static final int LONGEST = 24;
  private static final int MOST_WORDS = 3;
  private static final int LONG_NUMBER = 5;

  private BareNames() {}

  /** The pieces of a heading line that name samples; empty if the line names none. */
  static List<Piece> in(Line line) {
    List<Piece> names = line.pieces().stream().filter(BareNames::isName).toList();
    Set<String> texts =
        names.stream().map(Piece::text).collect(Collectors.toCollection(HashSet::new));
    Set<String> makes = names.stream().map(BareNames::make).collect(Collectors.toSet());
    boolean othersKnown =
        line.pieces().stream().filter(p -> !names.contains(p)).allMatch(BareNames::isOfTable);
    boolean ofTable =
        names.stream().noneMatch(BareNames::looksLikeARange)
            || line.pieces().stream().anyMatch(BareNames::headsNames);
    return names.size() >= 2
            && texts.size() == names.size()
            && makes.size() == 1
            && othersKnown
            && ofTable
        ? names
        : List.of();
  }

  /** '26-771' is a range, too; it names a sample only beside a heading such as 'Parameter'. */
  private static boolean looksLikeARange(Piece piece) {
    return piece.text().strip().matches("[0-9]{2,4}-[0-9]{3,6}");
  }

  private static boolean headsNames(Piece piece) {
    return piece.heading().isWhole() && piece.heading().has(Kind.ROLE, "analyte");
  }

  /**
   * Whether a line says more of the samples that a heading line names: words under two names or
   * more, nothing under a heading that is no name but one that holds no results.
   */
  static boolean areCaptions(Line line, Line heading, boolean certain) {
    List<Piece> names = in(heading);
    long under = 0;
    for (Piece piece : line.pieces()) {
      Optional<Piece> over = Columns.over(heading.pieces(), piece.cell(), certain);
      boolean aside = over.filter(o -> o.heading().has(Kind.ROLE, "foreign")).isPresent();
      if (!isWords(piece) || !(aside || over.filter(names::contains).isPresent())) {
        return false;
      }
      under += aside ? 0 : 1;
    }
    return under >= 2;
  }

  private static boolean isWords(Piece piece) {
    return !piece.isFigure()
        && !piece.isLabel()
        && !piece.isMark()
        && !piece.isHeadingWord()
        && piece.field().isEmpty();
  }

  /** Whether a line holds nothing but names that stand over figures of the next row. */
  static boolean areOver(Line line, Line below, boolean certain) {
    List<Piece> names = in(line);
    if (names.isEmpty() || names.size() != line.pieces().size()) {
      return false;
    }
    Set<Piece> met = new HashSet<>();
    for (Piece piece : below.pieces()) {
      if (piece.isFigure() && !piece.isLabel()) {
        Optional<Piece> over = Columns.over(names, piece.cell(), certain);
        if (over.isEmpty() || !met.add(over.get())) {
          return false;
        }
      }
    }
    return met.size() >= 2;
  }

  private static boolean isOfTable(Piece piece) {
    return piece.heading().isWhole()
        || piece.field().isPresent()
        || piece.heading().has(Kind.ROLE, "foreign");
  }

  private static boolean isName(Piece piece) {
    String text = piece.text().strip();
    boolean shaped = text.chars().anyMatch(c -> c >= '0' && c <= '9') || text.matches("[A-Z]");
    boolean number = text.matches("[0-9]+") && text.length() < LONG_NUMBER;
    return shaped
        && !number
        && text.length() <= LONGEST
        && piece.heading().words().size() <= MOST_WORDS
        && !piece.isLabel()
        && !piece.isHeadingWord()
        && piece.field().isEmpty()
        && !piece.isMark()
        && (!piece.isFigure() || text.matches("[0-9]{5,}") || looksLikeARange(piece))
        && (text.matches("[A-Z]") || !piece.heading().isWhole());
  }

  /** Letters and digits without their values: A-12 and B-7 are of one make. */
  private static String make(Piece piece) {
    return piece.text().strip().replaceAll("\\p{L}+", "A").replaceAll("[0-9]+", "9");
  }
}
