package rickyard.intake.interpret;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
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
    SortedSet<String> percent = new TreeSet<>();
    if (has(bare, "MOISTURE", "DM")
        && Identities.dryMatter(got(bare, "MOISTURE")).meets(got(bare, "DM"))) {
      percent.addAll(Set.of("MOISTURE", "DM"));
    }
    if (has(bare, "ADF", "NDF", "RFV")
        && Identities.relativeFeedValue(got(bare, "ADF"), got(bare, "NDF"))
            .widened(1)
            .meets(got(bare, "RFV"))) {
      percent.addAll(Set.of("ADF", "NDF"));
    }
    if (has(bare, "CP", "NDF", "EE", "ASH", "NFC")
        && Identities.nonFibre(
                Span.exactly(100),
                got(bare, "CP"),
                got(bare, "NDF"),
                got(bare, "EE"),
                got(bare, "ASH"))
            .widened(0.1)
            .meets(got(bare, "NFC"))) {
      percent.addAll(Set.of("CP", "NDF", "EE", "ASH", "NFC"));
    }
    return findings.stream()
        .map(
            f ->
                f.units().isEmpty() && percent.contains(f.code())
                    ? f.with(
                        List.of(new Said<>(Unit.PERCENT, FROM_FIGURES)), f.bases(), f.trouble())
                    : f)
        .toList();
  }

  private static Span got(SortedMap<String, Span> spans, String code) {
    return requireNonNull(spans.get(code), code);
  }

  private static boolean has(SortedMap<String, Span> spans, String... codes) {
    return spans.keySet().containsAll(List.of(codes));
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
