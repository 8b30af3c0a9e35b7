package rickyard.intake.interpret;

import java.util.List;
import java.util.Optional;

/**
 * What the dictionary makes of a text in one context.
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
    return phrases.stream().anyMatch(p -> p.kind() == kind);
  }

  boolean has(Kind kind, String meaning) {
    return phrases.stream().anyMatch(p -> p.kind() == kind && p.meaning().equals(meaning));
  }

  /** The distinct meanings of one kind, in order. */
  List<String> all(Kind kind) {
    return phrases.stream().filter(p -> p.kind() == kind).map(Phrase::meaning).distinct().toList();
  }

  /** The meaning of one kind if exactly one is named. */
  Optional<String> only(Kind kind) {
    List<String> all = all(kind);
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  /** The one basis named, in whatever form. */
  Optional<String> basis() {
    List<String> all =
        phrases.stream()
            .filter(p -> p.kind() == Kind.BASIS || p.kind() == Kind.STATEMENT)
            .map(Phrase::meaning)
            .distinct()
            .toList();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }
}
