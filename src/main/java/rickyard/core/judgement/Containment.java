package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * Which content is a part of which by definition: a part is never more than its whole.
 *
 * <p>ESC and fructan are parts of WSC; ESC is a part of ESC + starch, WSC and ESC + starch are
 * parts of WSC + starch, starch is a part of both sums. NFC is no whole of this kind: it is a
 * difference with the errors of four analyses that takes off twice what is both fibre and protein
 * or ash, so that true WSC + starch may lie over it.
 */
final class Containment {
  private static final Map<AnalyteCode, List<AnalyteCode>> WHOLES =
      Map.of(
          AnalyteCode.NSC_ESC, List.of(AnalyteCode.NSC_WSC),
          AnalyteCode.WSC, List.of(AnalyteCode.NSC_WSC),
          AnalyteCode.ESC, List.of(AnalyteCode.WSC, AnalyteCode.NSC_ESC, AnalyteCode.NSC_WSC),
          AnalyteCode.STARCH, List.of(AnalyteCode.NSC_ESC, AnalyteCode.NSC_WSC));

  private static final Map<AnalyteCode, List<AnalyteCode>> PARTS =
      Map.of(AnalyteCode.WSC, List.of(AnalyteCode.ESC, AnalyteCode.FRUCTAN));

  private Containment() {}

  /** The bounded values of the wholes that hold a content, with their names; narrowest first. */
  @Cites(source = "definition", locator = "a part is at most its whole: ESC <= WSC <= WSC + starch")
  static List<Evidence.Term> wholes(AnalyteCode part, Map<AnalyteCode, Measured> contents) {
    List<Evidence.Term> found = new ArrayList<>();
    for (AnalyteCode whole : WHOLES.getOrDefault(part, List.of())) {
      Measured value = contents.get(whole);
      if (value != null && value.isBoundedAbove()) {
        found.add(new Evidence.Term(name(whole), value));
      }
    }
    return found;
  }

  /** The greatest lower bound that its parts give a content that nobody reported. */
  @Cites(source = "definition", locator = "a whole is at least each of its parts")
  static Optional<Measured> atLeastItsParts(
      AnalyteCode whole, Map<AnalyteCode, Measured> contents) {
    Optional<Measured> best = Optional.empty();
    for (AnalyteCode part : PARTS.getOrDefault(whole, List.of())) {
      Measured value = contents.get(part);
      if (value != null && best.map(b -> value.in(b.unit()).lower() > b.lower()).orElse(true)) {
        best = Optional.of(atLeast(part, value));
      }
    }
    return best;
  }

  private static Measured atLeast(AnalyteCode part, Measured value) {
    Unit unit = value.unit();
    return Measured.atLeast(
        unit,
        value.basis(),
        value.lower(),
        value.u(),
        new Evidence.Derived(
            "at least " + name(part), List.of(new Evidence.Term(name(part), value))));
  }

  /** A content of carbohydrate in the words of a page. */
  static String name(AnalyteCode code) {
    return switch (code.value()) {
      case "NSC_WSC" -> "WSC + starch";
      case "NSC_ESC" -> "ESC + starch";
      case "STARCH" -> "starch";
      case "FRUCTAN" -> "fructan";
      default -> code.value();
    };
  }
}
