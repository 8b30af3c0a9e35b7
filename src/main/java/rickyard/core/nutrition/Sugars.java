package rickyard.core.nutrition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Cites;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;

/** The sums of starch and sugar of a foodstuff, and what partial reports say about them. */
final class Sugars {
  static final List<AnalyteCode> CODES =
      List.of(
          AnalyteCode.NSC_WSC,
          AnalyteCode.NSC_ESC,
          AnalyteCode.STARCH,
          AnalyteCode.WSC,
          AnalyteCode.ESC);

  private Sugars() {}

  /**
   * Adds both sums. Two bounded parts beat a sum already there, and one that is smaller than a part
   * is not believed. A part alone is a bound from below; {@code ESC + starch ≤ WSC + starch} bounds
   * the one by the other.
   *
   * @param contents changed in place
   * @param correlation of the errors of sugar and starch
   */
  @Cites(source = "definition", locator = "NSC = WSC + starch, or ESC + starch; ESC is part of WSC")
  static void addSums(Map<AnalyteCode, Measured> contents, double correlation) {
    put(AnalyteCode.ESC, AnalyteCode.NSC_ESC, contents, correlation);
    put(AnalyteCode.WSC, AnalyteCode.NSC_WSC, contents, correlation);
    Optional<Measured> wide = find(contents, AnalyteCode.NSC_WSC);
    Optional<Measured> narrow = find(contents, AnalyteCode.NSC_ESC);
    if (narrow.isPresent() && !isClosed(wide) && lower(narrow) >= lower(wide)) {
      contents.put(AnalyteCode.NSC_WSC, floor("ESC + starch", narrow.get()));
    }
    if (isClosed(wide) && !isClosed(narrow)) {
      contents.put(AnalyteCode.NSC_ESC, ceiling(wide.orElseThrow(), narrow));
    }
  }

  private static void put(
      AnalyteCode sugar, AnalyteCode sum, Map<AnalyteCode, Measured> contents, double correlation) {
    List<AnalyteCode> parts =
        sum.equals(AnalyteCode.NSC_WSC)
            ? List.of(sugar, AnalyteCode.STARCH, AnalyteCode.ESC, AnalyteCode.NSC_ESC)
            : List.of(sugar, AnalyteCode.STARCH);
    Optional<Measured> printed = find(contents, sum);
    boolean isContradicted =
        printed.isPresent()
            && parts.stream()
                .flatMap(part -> find(contents, part).stream())
                .anyMatch(part -> part.low() > printed.get().high());
    if (isContradicted) {
      contents.remove(sum);
    }
    sum(sugar, contents, correlation)
        .filter(v -> v.isBoundedAbove() || !isClosed(find(contents, sum)))
        .ifPresent(v -> contents.put(sum, v));
  }

  private static Optional<Measured> find(Map<AnalyteCode, Measured> contents, AnalyteCode code) {
    return Optional.ofNullable(contents.get(code));
  }

  private static boolean isClosed(Optional<Measured> value) {
    return value.isPresent() && value.get().isBoundedAbove();
  }

  private static double lower(Optional<Measured> value) {
    return value.map(Measured::lower).orElse(0.0);
  }

  private static Optional<Measured> sum(
      AnalyteCode sugar, Map<AnalyteCode, Measured> contents, double correlation) {
    Optional<Measured> sugars = find(contents, sugar);
    Optional<Measured> starch = find(contents, AnalyteCode.STARCH);
    if (sugars.isPresent() && starch.isPresent()) {
      List<Evidence.Term> terms =
          List.of(
              new Evidence.Term(sugar.value(), sugars.get()),
              new Evidence.Term(AnalyteCode.STARCH.value(), starch.get()));
      Evidence evidence = new Evidence.Derived(sugar + " + starch", terms);
      return Optional.of(sugars.get().plus(starch.get(), correlation, evidence));
    }
    return sugars
        .map(s -> floor(sugar + " alone, starch not reported", s))
        .or(() -> starch.map(s -> floor("starch alone, " + sugar + " not reported", s)));
  }

  private static Measured floor(String words, Measured part) {
    Evidence evidence =
        new Evidence.Derived("at least " + words, List.of(new Evidence.Term(words, part)));
    return new Measured(
        part.unit(),
        part.basis(),
        part.best(),
        part.low(),
        Double.POSITIVE_INFINITY,
        part.lower(),
        Double.POSITIVE_INFINITY,
        part.u(),
        evidence);
  }

  /** ESC + starch where only WSC + starch is known: taken at the upper end, open downwards. */
  private static Measured ceiling(Measured wide, Optional<Measured> narrow) {
    Evidence evidence =
        new Evidence.Derived(
            "at most WSC + starch", List.of(new Evidence.Term("WSC + starch", wide)));
    double low = Math.min(wide.low(), narrow.map(Measured::low).orElse(0.0));
    double lower = Math.min(wide.lower(), narrow.map(Measured::lower).orElse(0.0));
    return new Measured(
        wide.unit(),
        wide.basis(),
        wide.best(),
        low,
        wide.high(),
        lower,
        wide.upper(),
        wide.u(),
        evidence);
  }
}
