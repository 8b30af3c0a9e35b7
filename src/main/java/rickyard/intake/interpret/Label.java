package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

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

  String code() {
    return rule.analyte().code().value();
  }

  /**
   * The label in a text; empty unless every word of the text is understood and one analyte named.
   */
  static Optional<Label> read(Dictionary dictionary, String text) {
    List<String> words = Words.of(text);
    Meaning meaning = dictionary.read(words, Dictionary.IN_LABEL);
    List<String> codes = meaning.all(Kind.ANALYTE);
    if (!meaning.isWhole() || codes.isEmpty() || codes.size() > 2) {
      return Optional.empty();
    }
    if (codes.size() == 2) {
      return withDryMatterAsBasis(dictionary, meaning, codes);
    }
    return make(dictionary, meaning, codes.get(0), meaning.basis());
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
