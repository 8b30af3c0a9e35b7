package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import rickyard.intake.interpret.Statements.OfBasis;

/**
 * What a text of one or more sentences says of the basis of the results.
 *
 * <p>A sentence whose words are all known may name the basis in any form. One with unknown words
 * counts only where a clause speaks of the results and names the basis in words that stand for
 * themselves ('on dry matter'), and where nothing denies it, leaves it open or turns it to
 * something else ('to convert', 'typical', 'the sample as received').
 */
final class Sentences {
  private static final int LONGEST = 30;

  /** Beside other cells 'Result (g/kg DM)' is the heading of a column, no sentence. */
  private static final int SHORTEST_BESIDE = 6;

  private static final Pattern END =
      Pattern.compile("(?<=[\\p{L}0-9)%]{2})[.;!]+(?:\\s+|$)|\\s\\|\\s");
  private static final Pattern CLAUSE =
      Pattern.compile("[,:]\\s+|\\s*[()]\\s*|\\s[-\u2013\u2014]\\s");
  private static final Pattern UNLESS =
      Pattern.compile(
          "(?i)[,(]?\\s*(?:unless|except (?:where|when|if|as)|soweit nicht|wenn"
              + " nicht)\\s(?<rest>.*)");
  private static final Pattern SAID_OTHERWISE =
      Pattern.compile(
          "(?i).*(?:other(?:wise|s)?|different(?:ly)?|stated|noted|indicated|marked|specified|given|shown|anders|angegeben).*");

  /** 'All results, means and limits of detection are …': what else is said to be so as well. */
  private static final Pattern LISTED =
      Pattern.compile(
          "(?i)(?<all>\\ball (?:results|values|figures))(?:,| and)(?:[,"
              + " ]+(?:and|or|the|of|district|typical|usual|reference|means?|averages?|ranges?|limits?|values|detection|quantification))+(?<verb>\\s+(?:are|is)\\b)");

  private static final Set<Kind> KINDS =
      EnumSet.of(
          Kind.STATEMENT,
          Kind.BASIS,
          Kind.SUBJECT,
          Kind.EXCEPT,
          Kind.NOT,
          Kind.HEDGE,
          Kind.ANALYTE,
          Kind.UNIT,
          Kind.METHOD,
          Kind.FILLER);

  private static final Set<Kind> WITHOUT_ANALYTES = without(Kind.ANALYTE);
  private static final Set<String> WATER = Set.of("DM", "MOISTURE");
  private static final Set<String> ON =
      Set.of("on", "in", "auf", "im", "sur", "en", "sobre", "op", "je", "pro", "per");

  /** Words that speak of what is left when something else has been said. */
  private static final Set<String> REST =
      Set.of(
          "other",
          "others",
          "else",
          "rest",
          "remaining",
          "ubrigen",
          "ubrige",
          "anderen",
          "autres",
          "reste",
          "demas",
          "otros",
          "resto",
          "overige",
          "andra",
          "ovriga",
          "altri");

  static boolean speaksOfTheRest(String text) {
    return Words.of(text).stream().anyMatch(REST::contains);
  }

  /**
   * The analytes that a text names beside a basis: what is said of the rest is not said of them.
   */
  static Set<String> namedWithBasis(Dictionary dictionary, String text) {
    Meaning meaning = dictionary.read(text, KINDS);
    boolean basis = meaning.has(Kind.BASIS) || meaning.has(Kind.STATEMENT);
    Set<String> named = new TreeSet<>(basis ? meaning.all(Kind.ANALYTE) : List.of());
    named.removeAll(WATER);
    return named;
  }

  private static Set<Kind> without(Kind kind) {
    Set<Kind> kinds = EnumSet.copyOf(KINDS);
    kinds.remove(kind);
    return kinds;
  }

  private final Dictionary dictionary;

  Sentences(Dictionary dictionary) {
    this.dictionary = dictionary;
  }

  static List<String> split(String text) {
    List<String> sentences = new ArrayList<>();
    for (String sentence : END.split(text, -1)) {
      if (!sentence.isBlank()) {
        sentences.add(sentence.strip());
      }
    }
    return sentences;
  }

  /**
   * The basis that a text states; empty if it states none, or two.
   *
   * @param alone whether the text is a line of its own, so that a bare 'dry matter basis' counts
   */
  Optional<OfBasis> basis(String text, int at, boolean alone) {
    List<OfBasis> said = new ArrayList<>();
    for (String sentence : split(text)) {
      sentence(sentence, at, alone).filter(b -> !said.contains(b)).ifPresent(said::add);
    }
    return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
  }

  /** The basis in a field such as 'Basis: dry matter, except moisture'. */
  Optional<OfBasis> ofMark(String value, int at) {
    String text = benign(split(value).stream().findFirst().orElse(""));
    Optional<OfBasis> exceptWater = exceptWater(text, at);
    if (exceptWater.isPresent()) {
      return exceptWater;
    }
    Meaning meaning = dictionary.read(text, EnumSet.copyOf(KINDS));
    Optional<String> basis = basisOf(meaning);
    boolean plain =
        !meaning.has(Kind.NOT) && !meaning.has(Kind.HEDGE) && !meaning.has(Kind.SUBJECT, "part");
    if (basis.isEmpty()) {
      Meaning mark = dictionary.read(text, Dictionary.IN_MARK);
      return mark.isWhole()
          ? mark.basis().map(b -> new OfBasis(at, b, Section.unit(mark), true, Set.of(), Set.of()))
          : Optional.empty();
    }
    return plain && meaning.unknown().isEmpty()
        ? stated(meaning, basis.get(), at, true).filter(b -> b.only().isEmpty())
        : Optional.empty();
  }

  /** 'dry matter, except dry matter itself (as received)'. */
  private Optional<OfBasis> exceptWater(String text, int at) {
    List<String> clauses = List.of(CLAUSE.split(text, -1));
    Meaning first = dictionary.read(clauses.get(0), Dictionary.IN_MARK);
    if (clauses.size() < 2 || !first.isWhole() || first.basis().isEmpty()) {
      return Optional.empty();
    }
    boolean excepted = false;
    for (String clause : clauses.subList(1, clauses.size())) {
      Meaning meaning = dictionary.read(clause, KINDS);
      boolean ofWater = WATER.containsAll(meaning.all(Kind.ANALYTE));
      boolean known = meaning.unknown().isEmpty() && !meaning.has(Kind.SUBJECT);
      boolean bracket = excepted && !meaning.has(Kind.ANALYTE);
      if (!known || !ofWater || !(meaning.has(Kind.EXCEPT) || bracket || clause.isBlank())) {
        return Optional.empty();
      }
      excepted |= meaning.has(Kind.EXCEPT) && meaning.has(Kind.ANALYTE);
    }
    return excepted
        ? Optional.of(
            new OfBasis(at, first.basis().get(), Section.unit(first), true, Set.of(), WATER))
        : Optional.empty();
  }

  private Optional<OfBasis> sentence(String text, int at, boolean alone) {
    String sentence = benign(text);
    boolean prose = alone || Words.of(text).size() >= SHORTEST_BESIDE;
    Meaning meaning = prose ? understood(sentence) : dictionary.read(sentence, KINDS);
    Optional<String> basis = meaning.basis();
    if (meaning.has(Kind.NOT) || meaning.has(Kind.HEDGE) || meaning.words().size() > LONGEST) {
      return Optional.empty();
    }
    if (basis.isEmpty()) {
      return prose ? clause(sentence, at) : Optional.empty();
    }
    boolean about = (meaning.has(Kind.STATEMENT) && alone) || meaning.has(Kind.SUBJECT);
    if (meaning.unknown().isEmpty()) {
      return about
          ? stated(meaning, basis.get(), at, meaning.has(Kind.SUBJECT, "all"))
          : Optional.empty();
    }
    return clause(sentence, at);
  }

  /**
   * What a sentence says. 'Results in g per kg of dry matter' names no analyte: where every word is
   * understood without one, and a unit or 'on' leads to it, dry matter is the basis.
   */
  private Meaning understood(String sentence) {
    Meaning meaning = dictionary.read(sentence, KINDS);
    if (meaning.basis().isPresent()) {
      return meaning;
    }
    Meaning bare = dictionary.read(sentence, WITHOUT_ANALYTES);
    return bare.unknown().isEmpty() && bare.basis().isPresent() && leadsToBasis(bare)
        ? bare
        : meaning;
  }

  private static boolean leadsToBasis(Meaning meaning) {
    boolean led = false;
    for (Phrase phrase : meaning.phrases()) {
      boolean leads = phrase.words().stream().anyMatch(ON::contains);
      if (phrase.kind() == Kind.BASIS) {
        return led || leads;
      }
      boolean on = phrase.kind() == Kind.FILLER && leads;
      led = phrase.kind() == Kind.UNIT || on || (led && phrase.kind() == Kind.FILLER);
    }
    return false;
  }

  /** The one clause of a sentence with unknown words that names the basis of the results. */
  private Optional<OfBasis> clause(String sentence, int at) {
    for (String clause : clauses(sentence)) {
      Meaning meaning = understood(clause);
      Optional<String> basis = meaning.basis();
      if (basis.isPresent()
          && (meaning.has(Kind.STATEMENT) || meaning.unknown().isEmpty())
          && meaning.has(Kind.SUBJECT, "all")
          && exceptionsKnown(meaning)
          && isUnchallenged(sentence, clause, basis.get())) {
        return stated(meaning, basis.get(), at, true).filter(b -> b.only().isEmpty());
      }
    }
    return Optional.empty();
  }

  /**
   * Whether no other clause names another basis for anything but water: 'values per kg of dry
   * matter, minerals per kg of product' says two things.
   */
  private boolean isUnchallenged(String sentence, String clause, String basis) {
    boolean waterBefore = false;
    for (String other : clauses(sentence)) {
      Meaning meaning = dictionary.read(other, KINDS);
      boolean differs =
          !other.equals(clause)
              && meaning.phrases().stream()
                  .anyMatch(
                      p ->
                          (p.kind() == Kind.BASIS || p.kind() == Kind.STATEMENT)
                              && !p.meaning().equals(basis));
      boolean ofWater =
          WATER.containsAll(meaning.all(Kind.ANALYTE))
              && meaning.has(Kind.ANALYTE)
              && !meaning.has(Kind.SUBJECT);
      boolean still = waterBefore && !meaning.has(Kind.ANALYTE) && !meaning.has(Kind.SUBJECT);
      if (differs && !ofWater && !still) {
        return false;
      }
      waterBefore = ofWater;
    }
    return true;
  }

  /** Clauses between commas; an exception stays with the clause that it belongs to. */
  private List<String> clauses(String sentence) {
    List<String> clauses = new ArrayList<>();
    for (String part : CLAUSE.split(sentence, -1)) {
      Meaning meaning = dictionary.read(part, EnumSet.of(Kind.EXCEPT));
      boolean exception =
          !meaning.phrases().isEmpty()
              && meaning
                  .words()
                  .subList(0, meaning.phrases().get(0).words().size())
                  .equals(meaning.phrases().get(0).words());
      boolean more = !clauses.isEmpty() && isException(clauses.get(clauses.size() - 1));
      if ((exception && !clauses.isEmpty()) || more) {
        clauses.set(clauses.size() - 1, clauses.get(clauses.size() - 1) + " " + part);
      } else {
        clauses.add(part);
      }
    }
    return clauses;
  }

  private boolean isException(String clause) {
    return dictionary.read(clause, EnumSet.of(Kind.EXCEPT)).has(Kind.EXCEPT);
  }

  private static boolean exceptionsKnown(Meaning meaning) {
    boolean except = false;
    List<String> words = new ArrayList<>(meaning.words());
    for (Phrase phrase : meaning.phrases()) {
      int from = java.util.Collections.indexOfSubList(words, phrase.words());
      if (except && from > 0) {
        return false;
      }
      words = words.subList(from + phrase.words().size(), words.size());
      except |= phrase.kind() == Kind.EXCEPT;
    }
    return !except || words.isEmpty();
  }

  /** A sentence without 'unless otherwise stated': lines that state their own basis keep it. */
  private static String benign(String text) {
    String sentence = LISTED.matcher(text).replaceFirst("${all}${verb}");
    var unless = UNLESS.matcher(sentence);
    return unless.find() && SAID_OTHERWISE.matcher(unless.group("rest")).matches()
        ? sentence.substring(0, unless.start())
        : sentence;
  }

  private static Optional<String> basisOf(Meaning meaning) {
    Optional<String> named = meaning.basis();
    boolean dryMatter =
        named.isEmpty()
            && !meaning.phrases().isEmpty()
            && meaning.phrases().get(0).kind() == Kind.ANALYTE
            && meaning.phrases().get(0).meaning().equals("DM");
    return dryMatter ? Optional.of("dm") : named;
  }

  private static Optional<OfBasis> stated(Meaning meaning, String basis, int at, boolean all) {
    Set<String> only = new TreeSet<>();
    Set<String> except = new TreeSet<>();
    boolean after = false;
    boolean first = true;
    for (Phrase phrase : meaning.phrases()) {
      after |= phrase.kind() == Kind.EXCEPT;
      boolean isBasis = first && meaning.basis().isEmpty();
      if (phrase.kind() == Kind.ANALYTE && !isBasis) {
        (after ? except : only).add(phrase.meaning());
      }
      first = false;
    }
    boolean clear = !(after && except.isEmpty());
    boolean wide = all && !meaning.has(Kind.SUBJECT, "part");
    return clear
        ? Optional.of(new OfBasis(at, basis, Section.unit(meaning), wide, only, except))
        : Optional.empty();
  }
}
