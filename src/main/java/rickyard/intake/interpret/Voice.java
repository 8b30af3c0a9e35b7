package rickyard.intake.interpret;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/**
 * What a cell may say beyond itself: most cells of a long table are figures and names, and no
 * sentence needs to be looked for in a line of them.
 */
enum Voice {
  /**
   * No word of it begins a statement, a standing or a definition, and no mark makes it an entry.
   */
  SILENT,
  /** It may be part of a statement, but not of a definition or of a note of units. */
  STATING,
  /** It may say anything. */
  OPEN;

  /** Verbs of definitions: 'sugar is WSC'. */
  private static final Set<String> VERBS =
      Set.of("is", "are", "ist", "sind", "est", "sont", "es", "son", "zijn", "means");

  /** Signs that neither join nor part words in another way if a text is set beside another. */
  private static final String PLAIN = " -/,%<>";

  /** The words with which something begins that a line may say. */
  static final class Ear {
    private final Set<String> defining = new HashSet<>();
    private final Set<String> stating = new HashSet<>(VERBS);

    Ear(Collection<Phrase> phrases) {
      for (Phrase phrase : phrases) {
        if (phrase.kind() == Kind.DEFINITION) {
          defining.add(phrase.words().get(0));
        } else if (isStating(phrase)) {
          stating.add(phrase.words().get(0));
        }
      }
    }

    private static boolean isStating(Phrase phrase) {
      return switch (phrase.kind()) {
        case BASIS, STATEMENT, STATUS -> true;
        case FIELD -> phrase.meaning().equals("replaces") || phrase.meaning().equals("revision");
        default -> false;
      };
    }

    Voice of(String text) {
      if (!isPlain(text)) {
        return OPEN;
      }
      Voice voice = SILENT;
      for (String word : Words.of(text)) {
        if (defining.contains(word)) {
          return OPEN;
        }
        voice = stating.contains(word) ? STATING : voice;
      }
      return voice;
    }
  }

  /** Whether the words of a line are those of its cells: no sign reaches over a cell's border. */
  private static boolean isPlain(String text) {
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || isAccented(c);
      boolean point = c == '.' && at + 1 < text.length() && isDigit(text.charAt(at + 1));
      if (!letter && !isDigit(c) && !point && PLAIN.indexOf(c) < 0) {
        return false;
      }
    }
    return true;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isAccented(char c) {
    return c >= '\u00C0' && c <= '\u017F' && c != '\u00D7' && c != '\u00F7';
  }
}
