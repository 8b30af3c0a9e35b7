package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the dictionary makes of a text in one context. It is asked some hundred times for each line
 * of a page: hence plain loops.
 *
 * @param words the text's words
 * @param phrases the spellings found, from left to right, not overlapping
 * @param unknown the words that belong to none
 */
record Meaning(List<String> words, List<Phrase> phrases, List<String> unknown) {

  Meaning {
    words = List.copyOf(words);
    phrases = List.copyOf(phrases);
    unknown = List.copyOf(unknown);
  }

  boolean isWhole() {
    return unknown.isEmpty() && !words.isEmpty();
  }

  boolean has(Kind kind) {
    for (Phrase phrase : phrases) {
      if (phrase.kind() == kind) {
        return true;
      }
    }
    return false;
  }

  boolean has(Kind kind, String meaning) {
    for (Phrase phrase : phrases) {
      if (phrase.kind() == kind && phrase.meaning().equals(meaning)) {
        return true;
      }
    }
    return false;
  }

  /** The distinct meanings of one kind, in order. */
  List<String> all(Kind kind) {
    return all(kind, kind);
  }

  /** The meaning of one kind if exactly one is named. */
  Optional<String> only(Kind kind) {
    return one(all(kind));
  }

  /** The one basis named, in whatever form. */
  Optional<String> basis() {
    return one(all(Kind.BASIS, Kind.STATEMENT));
  }

  private List<String> all(Kind kind, Kind other) {
    if (phrases.isEmpty()) {
      return List.of();
    }
    List<String> all = new ArrayList<>(2);
    for (Phrase phrase : phrases) {
      boolean asked = phrase.kind() == kind || phrase.kind() == other;
      if (asked && !all.contains(phrase.meaning())) {
        all.add(phrase.meaning());
      }
    }
    return List.copyOf(all);
  }

  private static Optional<String> one(List<String> all) {
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }
}
