package rickyard.intake.interpret;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A sample named in the middle of a sentence: 'the results of sample TH-7 (grass hay)'. Weak
 * evidence: it counts where nothing else names the sample, and only an exact lot is ever taken.
 */
final class ProseName {
  private static final Set<String> NAMES = Set.of("lot", "sample");
  private static final int MOST_WORDS = 4;

  private ProseName() {}

  /** The one name that the lines give so; empty if they give none, or several. */
  static Optional<String> in(Dictionary dictionary, List<Line> lines) {
    List<String> names =
        lines.stream()
            .filter(line -> !line.isItem())
            .flatMap(line -> line.pieces().stream())
            .map(piece -> of(dictionary, piece.text()))
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
  }

  private static Optional<String> of(Dictionary dictionary, String text) {
    String[] words = text.split("\\s+", -1);
    for (int i = 1; i + 1 < words.length; i++) {
      Meaning word = dictionary.read(words[i], EnumSet.of(Kind.FIELD));
      boolean names = word.isWhole() && word.only(Kind.FIELD).filter(NAMES::contains).isPresent();
      if (names && isCode(words[i + 1])) {
        return Optional.of(name(words, i + 1));
      }
    }
    return Optional.empty();
  }

  /** Capitals with a digit or a hyphen: no word of a language looks so. */
  private static boolean isCode(String word) {
    return word.matches("\\p{Lu}[\\p{L}0-9]*[-/.0-9][\\p{L}0-9/.-]*[,;:)]?");
  }

  /** The code and the capitalised words behind it, up to a bracket, a comma or a small word. */
  private static String name(String[] words, int from) {
    StringBuilder name = new StringBuilder(words[from]);
    int at = from + 1;
    while (!ends(name) && at < words.length && at - from < MOST_WORDS && isName(words[at])) {
      name.append(' ').append(words[at]);
      at++;
    }
    return name.toString().replaceFirst("[,;:)]+$", "");
  }

  private static boolean ends(CharSequence name) {
    return name.toString().matches("(?s).*[,;:)]");
  }

  private static boolean isName(String word) {
    return word.matches("[\\p{Lu}0-9].*");
  }
}
