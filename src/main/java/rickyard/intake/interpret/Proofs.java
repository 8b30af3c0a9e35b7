package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.Identities;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Unit;
import rickyard.intake.interpret.Finding.Said;

/**
 * What the figures prove of themselves where the page says nothing: percent by moisture + dry
 * matter = 100, by RFV, by NFC; two columns without headings by a constant ratio equal to the dry
 * matter.
 */
final class Proofs {
  private static final int FROM_FIGURES = 5;
  private static final double MARGIN = 0.0005;
  private static final int ENOUGH_LINES = 3;
  private static final double NFC_MARGIN = 0.1;

  private Proofs() {}

  /** The findings with what their own figures prove. */
  static List<Finding> apply(List<Finding> findings) {
    return columns(units(findings));
  }

  private static List<Finding> units(List<Finding> findings) {
    SortedMap<String, Span> bare = new TreeMap<>();
    findings.stream()
        .filter(f -> f.figure().hasNumber() && f.figure().form() == Figure.Form.NUMBER)
        .filter(
            f ->
                f.bases().stream().noneMatch(b -> b.from() <= 1 && b.what().equals("af"))
                    || isWater(f.code()))
        .filter(
            f ->
                f.units().isEmpty()
                    || f.units().get(0).what() == Unit.PERCENT
                    || f.units().get(0).what() == Unit.ONE)
        .forEach(f -> bare.putIfAbsent(f.code(), span(f)));
    Set<String> percent = percent(bare);
    return findings.stream()
        .map(
            f ->
                f.units().isEmpty() && percent.contains(f.code())
                    ? f.with(
                        List.of(new Said<>(Unit.PERCENT, FROM_FIGURES)), f.bases(), f.trouble())
                    : f)
        .toList();
  }

  /** The analytes that these numbers can only be in percent. */
  private static Set<String> percent(SortedMap<String, Span> bare) {
    Set<String> percent = new TreeSet<>();
    List<Span> water = spans(bare, "MOISTURE", "DM");
    if (!water.isEmpty() && Identities.dryMatter(water.get(0)).meets(water.get(1))) {
      percent.addAll(Set.of("MOISTURE", "DM"));
    }
    List<Span> feedValue = spans(bare, "ADF", "NDF", "RFV");
    if (!feedValue.isEmpty()
        && Identities.relativeFeedValue(feedValue.get(0), feedValue.get(1))
            .widened(Identities.RFV_MARGIN)
            .meets(feedValue.get(2))) {
      percent.addAll(Set.of("ADF", "NDF"));
    }
    List<Span> parts = spans(bare, "CP", "NDF", "EE", "ASH", "NFC");
    if (!parts.isEmpty() && isNonFibre(parts)) {
      percent.addAll(Set.of("CP", "NDF", "EE", "ASH", "NFC"));
    }
    return percent;
  }

  private static boolean isNonFibre(List<Span> parts) {
    return Identities.nonFibre(
            Span.exactly(100), parts.get(0), parts.get(1), parts.get(2), parts.get(3))
        .widened(NFC_MARGIN)
        .meets(parts.get(4));
  }

  /** The spans of all these analytes; none if one is missing. */
  private static List<Span> spans(SortedMap<String, Span> bare, String... codes) {
    List<Span> spans = new ArrayList<>();
    for (String code : codes) {
      Optional.ofNullable(bare.get(code)).ifPresent(spans::add);
    }
    return spans.size() == codes.length ? spans : List.of();
  }

  private static boolean isWater(String code) {
    return code.equals("DM") || code.equals("MOISTURE");
  }

  private static Span span(Finding finding) {
    double number = finding.figure().number().doubleValue();
    double half = finding.figure().half().doubleValue();
    return new Span(number - half, number + half);
  }

  private static List<Finding> columns(List<Finding> findings) {
    SortedMap<String, List<Finding>> pairs = new TreeMap<>();
    findings.stream()
        .filter(f -> f.trouble().equals("column-not-known") && f.figure().hasNumber())
        .forEach(f -> pairs.computeIfAbsent(f.code(), c -> new ArrayList<>()).add(f));
    Optional<Span> dry = dryMatter(findings);
    pairs.entrySet().removeIf(e -> isWater(e.getKey()) || e.getValue().size() != 2);
    if (dry.isEmpty() || pairs.size() < ENOUGH_LINES) {
      return findings;
    }
    Span share = dry.get().times(0.01).widened(MARGIN);
    boolean firstIsAsFed =
        pairs.values().stream()
            .allMatch(p -> Identities.ratio(span(p.get(0)), span(p.get(1))).meets(share));
    boolean firstIsDry =
        pairs.values().stream()
            .allMatch(p -> Identities.ratio(span(p.get(1)), span(p.get(0))).meets(share));
    if (firstIsAsFed == firstIsDry) {
      return findings;
    }
    return findings.stream().map(f -> placed(f, pairs, firstIsAsFed, dry.get())).toList();
  }

  /** Dry matter from lines whose telling figure is one number, whatever its column. */
  private static Optional<Span> dryMatter(List<Finding> findings) {
    List<Span> said =
        findings.stream()
            .filter(f -> isWater(f.code()) && f.figure().hasNumber())
            .filter(f -> f.figure().number().signum() > 0)
            .map(f -> f.code().equals("DM") ? span(f) : Identities.dryMatter(span(f)))
            .filter(s -> s.middle() > 20 && s.middle() < 99)
            .toList();
    return said.isEmpty() || said.stream().anyMatch(s -> !s.meets(said.get(0)))
        ? Optional.empty()
        : Optional.of(said.get(0));
  }

  private static Finding placed(
      Finding finding, SortedMap<String, List<Finding>> pairs, boolean firstIsAsFed, Span dry) {
    if (!finding.trouble().equals("column-not-known")) {
      return finding;
    }
    if (isWater(finding.code())) {
      boolean telling =
          finding.figure().hasNumber()
              && (finding.code().equals("DM") ? span(finding) : Identities.dryMatter(span(finding)))
                  .meets(dry);
      return telling
          ? finding.with(finding.units(), List.of(new Said<>("af", 1)), "")
          : trivial(finding);
    }
    List<Finding> pair = pairs.getOrDefault(finding.code(), List.of());
    if (pair.isEmpty()) {
      return finding;
    }
    boolean first = pair.get(0).equals(finding);
    String basis = first == firstIsAsFed ? "af" : "dm";
    return finding.with(finding.units(), List.of(new Said<>(basis, 1)), "");
  }

  private static Finding trivial(Finding finding) {
    double number = finding.figure().number().doubleValue();
    return number == 100 || number == 0
        ? finding.with(finding.units(), List.of(new Said<>("dm", 1)), "")
        : finding;
  }
}
