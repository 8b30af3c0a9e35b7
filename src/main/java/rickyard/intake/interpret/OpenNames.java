package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Identities;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Measured;

/**
 * Settles names that different laboratories use for different things (NSC, sugar, nitrate) from the
 * report's own words or its own arithmetic; never from what is usual.
 */
final class OpenNames {
  private final Dictionary dictionary;
  private final Statements statements;
  private final List<Resolved> chosen;
  private final PageHints hints;

  OpenNames(Dictionary dictionary, Statements statements, List<Resolved> chosen, PageHints hints) {
    this.hints = hints;
    this.dictionary = dictionary;
    this.statements = statements;
    this.chosen = List.copyOf(chosen);
  }

  /** The figures with open names settled, or in doubt; one that nobody needs is left out. */
  List<Resolved> settle() {
    List<Resolved> settled = new ArrayList<>();
    for (Resolved resolved : chosen) {
      if (resolved.finding().label().rule().use() == AnalyteRule.Use.OPEN) {
        settled(resolved).ifPresent(settled::add);
      } else {
        settled.add(resolved);
      }
    }
    return settled;
  }

  private Optional<Resolved> settled(Resolved open) {
    String name = open.code().value();
    List<String> meanings = meanings(open, name);
    Optional<LayoutHint> hint = hints.openName(name);
    if (meanings.isEmpty() && hint.isPresent() && !isSpare(name)) {
      return hinted(open, hint.get());
    }
    if (hint.filter(h -> !meanings.isEmpty() && !meanings.contains(h.value())).isPresent()) {
      return Optional.of(open.withTrouble("hint-contradicted"));
    }
    if (meanings.size() == 1) {
      boolean twin = find(new AnalyteCode(meanings.get(0))).isPresent();
      return twin ? Optional.empty() : dictionary.find(meanings.get(0)).map(open::as);
    }
    if (meanings.size() > 1 || isSpare(name)) {
      return Optional.empty();
    }
    return Optional.of(open.trouble().isEmpty() ? open.withTrouble(doubt(name)) : open);
  }

  /** The question about an open name. */
  static String doubt(String name) {
    return switch (name) {
      case "NITRATE" -> "nitrate-form-unknown";
      case "SUGAR" -> "sugar-not-defined";
      default -> "nsc-definition-unknown";
    };
  }

  /** Named by the hint, unless the same thing is printed besides under its own name. */
  private Optional<Resolved> hinted(Resolved open, LayoutHint hint) {
    boolean twin = find(new AnalyteCode(hint.value())).isPresent();
    return twin
        ? Optional.empty()
        : dictionary
            .find(hint.value())
            .map(open::as)
            .map(
                r ->
                    PageHints.resting(
                        r, open.code() + " is " + hint.value() + " by " + hint.row()));
  }

  /** 'Sugar' beside WSC adds nothing: the limits are in WSC. Beside ESC alone it may be the WSC. */
  private boolean isSpare(String name) {
    return name.equals("SUGAR") && find(AnalyteCode.WSC).isPresent();
  }

  private List<String> meanings(Resolved open, String name) {
    Optional<String> said = statements.definition(name);
    if (said.isPresent()) {
      return List.of(said.get());
    }
    return switch (name) {
      case "NSC", "SUGAR_STARCH" -> sums(open);
      case "SUGAR" -> parts(open);
      default -> List.of();
    };
  }

  private List<String> sums(Resolved open) {
    List<String> fits = new ArrayList<>();
    if (isSum(open, AnalyteCode.WSC)) {
      fits.add("NSC_WSC");
    }
    if (isSum(open, AnalyteCode.ESC)) {
      fits.add("NSC_ESC");
    }
    return fits;
  }

  private boolean isSum(Resolved open, AnalyteCode carbohydrate) {
    Optional<Measured> printed = open.value().filter(v -> open.trouble().isEmpty());
    Optional<Measured> part = find(carbohydrate);
    Optional<Measured> starch = find(AnalyteCode.STARCH);
    return printed.isPresent()
        && part.isPresent()
        && starch.isPresent()
        && part.get().basis() == printed.get().basis()
        && starch.get().basis() == printed.get().basis()
        && Identities.nonStructural(Span.of(part.get()), Span.of(starch.get()))
            .meets(Span.of(printed.get()));
  }

  /** Sugar is WSC or ESC if, with starch, it gives an NSC whose definition is printed. */
  private List<String> parts(Resolved open) {
    List<String> fits = new ArrayList<>();
    for (String code : List.of("WSC", "ESC")) {
      Optional<Measured> sum = find(new AnalyteCode("NSC_" + code));
      Optional<Measured> starch = find(AnalyteCode.STARCH);
      Optional<Measured> part = open.value().filter(v -> open.trouble().isEmpty());
      if (sum.isPresent()
          && starch.isPresent()
          && part.isPresent()
          && part.get().basis() == sum.get().basis()
          && starch.get().basis() == sum.get().basis()
          && Identities.nonStructural(Span.of(part.get()), Span.of(starch.get()))
              .meets(Span.of(sum.get()))) {
        fits.add(code);
      }
    }
    return fits;
  }

  private Optional<Measured> find(AnalyteCode code) {
    return chosen.stream()
        .filter(r -> r.code().equals(code) && r.trouble().isEmpty())
        .findFirst()
        .flatMap(Resolved::value);
  }
}
