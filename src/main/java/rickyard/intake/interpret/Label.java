package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.core.quantity.Unit;

/**
 * A cell that names an analyte, with what it says besides.
 *
 * @param rule the analyte
 * @param unit the unit in the label; empty if none
 * @param basis af or dm; empty if the label says neither
 * @param method nir, wet or calc; empty if the label says none
 * @param ratio whether it makes the figure a share of another analyte
 */
record Label(
    AnalyteRule rule,
    Optional<Unit> unit,
    Optional<String> basis,
    Optional<String> method,
    boolean ratio) {

  Label {
    requireNonNull(rule, "rule");
    requireNonNull(unit, "unit");
    requireNonNull(basis, "basis");
    requireNonNull(method, "method");
  }

  /** The same label over figures that are shares of another analyte, or are not. */
  Label with(boolean share) {
    return share == ratio ? this : new Label(rule, unit, basis, method, share);
  }

  String code() {
    return rule.analyte().code().value();
  }

  /**
   * The label in a text; empty unless every word of the text is understood and one analyte named.
   */
  static Optional<Label> read(Dictionary dictionary, String text) {
    Optional<Label> plain = plain(dictionary, text);
    if (plain.isPresent()) {
      return plain;
    }
    Optional<Label> turned = text.indexOf(',') < 0 ? Optional.empty() : turned(dictionary, text);
    return turned.isPresent() ? turned : bracketed(dictionary, text);
  }

  /** 'Fibre, acid detergent, %': the head word first, marks last. */
  private static Optional<Label> turned(Dictionary dictionary, String text) {
    List<String> names = new ArrayList<>();
    List<String> marks = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      (dictionary.read(part, Dictionary.IN_MARK).isWhole() ? marks : names).add(part.strip());
    }
    return names.size() == 2
        ? plain(dictionary, names.get(1) + " " + names.get(0) + " " + String.join(" ", marks))
        : Optional.empty();
  }

  /** 'Fibre, neutral detergent (aNDF)': a name and the same name, or a unit, in brackets. */
  private static Optional<Label> bracketed(Dictionary dictionary, String text) {
    int open = text.lastIndexOf('(');
    if (open <= 0 || !text.endsWith(")")) {
      return Optional.empty();
    }
    String bracket = text.substring(open + 1, text.length() - 1);
    String head = text.substring(0, open).strip();
    Optional<Label> name = plain(dictionary, head).or(() -> turned(dictionary, head));
    Optional<Label> same = plain(dictionary, bracket);
    if (same.isPresent() && name.filter(n -> isLooser(same.get().rule(), n.code())).isPresent()) {
      return name;
    }
    if (same.isPresent()) {
      return same.filter(
          s ->
              name.filter(n -> n.code().equals(s.code()) || isOpenFor(n.rule(), s.code()))
                  .isPresent());
    }
    return dictionary.read(bracket, Dictionary.IN_MARK).isWhole()
        ? name.flatMap(n -> plain(dictionary, n.rule().analyte().name() + " " + bracket))
        : Optional.empty();
  }

  /** Whether a name says less than a code: 'sugar' than WSC, a bare DE than the horse's. */
  private static boolean isLooser(AnalyteRule rule, String code) {
    return isOpenFor(rule, code)
        || (rule.use() == AnalyteRule.Use.LEAVE
            && rule.analyte().code().value().equals(code + "_BARE"));
  }

  private static boolean isOpenFor(AnalyteRule rule, String code) {
    return rule.use() == AnalyteRule.Use.OPEN && rule.openFor().contains(code);
  }

  private static Optional<Label> plain(Dictionary dictionary, String text) {
    List<String> words = Words.of(text);
    Meaning meaning = dictionary.read(words, Dictionary.IN_LABEL);
    List<String> codes = meaning.all(Kind.ANALYTE);
    if (!meaning.isWhole() || codes.isEmpty() || codes.size() > 2) {
      return Optional.empty();
    }
    if (codes.size() == 2) {
      Optional<String> named = named(dictionary, codes);
      if (named.isPresent()) {
        return make(dictionary, meaning, named.get(), meaning.basis());
      }
      return withDryMatterAsBasis(dictionary, meaning, codes);
    }
    return make(dictionary, meaning, codes.get(0), meaning.basis());
  }

  /** 'Sugars, water-soluble (WSC)': an open name beside one of the things it may stand for. */
  private static Optional<String> named(Dictionary dictionary, List<String> codes) {
    for (int i = 0; i < 2; i++) {
      String other = codes.get(1 - i);
      if (dictionary.find(codes.get(i)).filter(r -> isOpenFor(r, other)).isPresent()) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  /** 'Crude protein, dry matter': the dry matter is a basis, not a second analyte. */
  private static Optional<Label> withDryMatterAsBasis(
      Dictionary dictionary, Meaning meaning, List<String> codes) {
    if (!codes.contains("DM") || codes.contains("MOISTURE") || meaning.basis().isPresent()) {
      return Optional.empty();
    }
    String other = codes.get(0).equals("DM") ? codes.get(1) : codes.get(0);
    return make(dictionary, meaning, other, Optional.of("dm"));
  }

  private static Optional<Label> make(
      Dictionary dictionary, Meaning meaning, String code, Optional<String> basis) {
    boolean twoBases =
        meaning.all(Kind.BASIS).size() + meaning.all(Kind.STATEMENT).size() > 0 && basis.isEmpty();
    if (twoBases || meaning.all(Kind.UNIT).size() > 1) {
      return Optional.empty();
    }
    return dictionary
        .find(code)
        .map(
            rule ->
                new Label(
                    rule,
                    meaning.only(Kind.UNIT).flatMap(Unit::findByCode),
                    basis,
                    meaning.only(Kind.METHOD),
                    meaning.has(Kind.RATIO)));
  }
}
