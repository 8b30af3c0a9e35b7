package rickyard.intake.interpret;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.AnalyteCode;
import rickyard.intake.check.Usual;

/**
 * What the reader knows of words: the analytes with their units, and every spelling in every
 * language.
 *
 * <p>A text is read from left to right; at each word the longest spelling of the kinds in question
 * wins. There is no likeness and no distance: a word is known or it is not.
 */
public final class Dictionary implements Serializable {
  private static final long serialVersionUID = 1L;

  private final SortedMap<AnalyteCode, AnalyteRule> analytes;
  private final Map<String, List<Phrase>> byFirstWord;
  private transient Voice.@Nullable Ear ear;
  private final List<Usual> usual;
  private final List<LayoutHint> hints;
  private final String digest;

  /**
   * Makes a dictionary.
   *
   * @param analytes the rules, one for each code
   * @param phrases the spellings
   * @param usual what is usual in which material
   * @param digest identifies the tables that it was made from
   */
  public Dictionary(
      List<AnalyteRule> analytes, List<Phrase> phrases, List<Usual> usual, String digest) {
    this(analytes, phrases, usual, List.of(), digest);
  }

  /**
   * Makes a dictionary that knows something of layouts besides.
   *
   * @param hints what some layouts do not say themselves
   */
  public Dictionary(
      List<AnalyteRule> analytes,
      List<Phrase> phrases,
      List<Usual> usual,
      List<LayoutHint> hints,
      String digest) {
    SortedMap<AnalyteCode, AnalyteRule> rules = new TreeMap<>();
    analytes.forEach(rule -> rules.put(rule.analyte().code(), rule));
    this.analytes = Collections.unmodifiableSortedMap(rules);
    this.byFirstWord = index(phrases);
    this.usual = List.copyOf(usual);
    this.hints = List.copyOf(hints);
    this.digest = digest;
  }

  private static Map<String, List<Phrase>> index(List<Phrase> phrases) {
    Comparator<Phrase> longestFirst =
        Comparator.comparingInt((Phrase p) -> -p.words().size())
            .thenComparing(Phrase::kind)
            .thenComparing(Phrase::meaning);
    Map<String, List<Phrase>> index = new HashMap<>();
    phrases.stream()
        .sorted(longestFirst)
        .forEach(p -> index.computeIfAbsent(p.words().get(0), k -> new ArrayList<>()).add(p));
    index.replaceAll((word, list) -> List.copyOf(list));
    return index;
  }

  /** The analytes by code. */
  public SortedMap<AnalyteCode, AnalyteRule> analytes() {
    return analytes;
  }

  /** What is usual in which material. */
  List<Usual> usual() {
    return usual;
  }

  /** SHA-256 of the tables behind it. */
  public String digest() {
    return digest;
  }

  List<LayoutHint> hints() {
    return hints;
  }

  Optional<AnalyteRule> find(String code) {
    return Optional.ofNullable(analytes.get(new AnalyteCode(code)));
  }

  /** What a text says when only the kinds given are looked for. */
  Meaning read(String text, Set<Kind> kinds) {
    return read(Words.of(text), kinds);
  }

  Meaning read(List<String> words, Set<Kind> kinds) {
    List<Phrase> found = new ArrayList<>(2);
    List<String> unknown = new ArrayList<>(2);
    int at = 0;
    while (at < words.size()) {
      Optional<Phrase> phrase = longestAt(words, at, kinds);
      if (phrase.isPresent()) {
        found.add(phrase.get());
        at += phrase.get().words().size();
      } else {
        unknown.add(words.get(at));
        at++;
      }
    }
    // A name of which no word is known, as of each lot in a long table, keeps its words once.
    return new Meaning(words, found, found.isEmpty() ? words : unknown);
  }

  private Optional<Phrase> longestAt(List<String> words, int at, Set<Kind> kinds) {
    for (Phrase phrase : byFirstWord.getOrDefault(words.get(at), List.of())) {
      if (kinds.contains(phrase.kind()) && standsAt(phrase.words(), words, at)) {
        return Optional.of(phrase);
      }
    }
    return Optional.empty();
  }

  /** Whether a spelling stands there whose first word does. */
  private static boolean standsAt(List<String> spelling, List<String> words, int at) {
    if (at + spelling.size() > words.size()) {
      return false;
    }
    for (int i = 1; i < spelling.size(); i++) {
      if (!spelling.get(i).equals(words.get(at + i))) {
        return false;
      }
    }
    return true;
  }

  /** What a text may say beyond itself. */
  Voice voice(String text) {
    Voice.Ear known = ear;
    if (known == null) {
      known = new Voice.Ear(byFirstWord.values().stream().flatMap(List::stream).toList());
      ear = known;
    }
    return known.of(text);
  }

  /** The sets of kinds that make sense in each kind of cell. */
  static final Set<Kind> IN_LABEL =
      EnumSet.of(
          Kind.ANALYTE,
          Kind.RATIO,
          Kind.UNIT,
          Kind.BASIS,
          Kind.STATEMENT,
          Kind.METHOD,
          Kind.FILLER);

  static final Set<Kind> IN_MARK =
      EnumSet.of(Kind.RATIO, Kind.UNIT, Kind.BASIS, Kind.STATEMENT, Kind.METHOD, Kind.FILLER);

  static final Set<Kind> IN_HEADING =
      EnumSet.of(
          Kind.ROLE,
          Kind.FIELD,
          Kind.RATIO,
          Kind.UNIT,
          Kind.BASIS,
          Kind.STATEMENT,
          Kind.METHOD,
          Kind.SUBJECT,
          Kind.FILLER);
}
