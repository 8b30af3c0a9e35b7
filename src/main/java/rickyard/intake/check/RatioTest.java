package rickyard.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.forage.Identities;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;

/**
 * The strongest test of a two-column report: as fed / dry matter is the same on every line and
 * equals the dry matter. A line that is off is misread; a ratio above 1 means swapped columns; a
 * ratio of 1 means the same basis twice; lines that agree with each other but not with the dry
 * matter mean that the dry matter is misread.
 */
record RatioTest(List<Check> checks, SortedMap<AnalyteCode, String> touched, boolean confirms) {
  static final String NAME = "as fed / dry matter = DM";
  private static final double MARGIN = 0.0005;

  static RatioTest of(Figures figures) {
    SortedMap<AnalyteCode, Span> ratios = ratios(figures);
    SortedMap<AnalyteCode, String> touched = new TreeMap<>();
    List<Check> checks = new ArrayList<>();
    if (ratios.isEmpty()) {
      return new RatioTest(checks, touched, false);
    }
    Optional<Span> dry = figures.dryMatter().map(s -> s.times(0.01));
    Optional<Span> shared = shared(ratios);
    boolean above = median(ratios) > 1 + 1e-9;
    boolean same = ratios.values().stream().allMatch(r -> r.meets(Span.exactly(1)));
    if (above) {
      contents(figures, "columns-swapped", touched);
    } else if (same
        && dry.filter(d -> !d.meets(Span.exactly(1))).isPresent()
        && ratios.values().stream().noneMatch(r -> r.meets(dry.get()))) {
      contents(figures, "columns-same-basis", touched);
    } else {
      judge(ratios, dry, shared, touched);
    }
    boolean confirms = touched.isEmpty() && dry.isPresent();
    Span expected = dry.orElse(shared.orElse(new Span(0, 1)));
    ratios.forEach(
        (code, ratio) ->
            checks.add(
                new Check(
                    NAME,
                    Check.Kind.EXACT,
                    !touched.containsKey(code)
                        && (dry.isEmpty() || ratio.meets(expected.widened(MARGIN))),
                    List.of(code),
                    SampleChecks.words(expected, ratio))));
    return new RatioTest(checks, touched, confirms);
  }

  /** Wrong columns are wrong for every line, also for those printed in one column only. */
  private static void contents(
      Figures figures, String why, SortedMap<AnalyteCode, String> touched) {
    figures
        .values()
        .forEach(
            (code, value) -> {
              if (!Figures.isWater(code) && value.basis() != Basis.NONE) {
                touched.put(code, why);
              }
            });
  }

  private static SortedMap<AnalyteCode, Span> ratios(Figures figures) {
    SortedMap<AnalyteCode, Span> ratios = new TreeMap<>();
    figures
        .asFed()
        .forEach(
            (code, wet) -> {
              Optional<Measured> dry = Optional.ofNullable(figures.values().get(code));
              if (dry.isPresent() && !dry.get().isOneSided() && !wet.isOneSided()) {
                ratios.put(code, Identities.ratio(Span.of(wet), Span.of(dry.get())));
              }
            });
    return ratios;
  }

  /** The ratio that more than half of the lines allow; empty if there is none. */
  private static Optional<Span> shared(SortedMap<AnalyteCode, Span> ratios) {
    for (Span candidate :
        ratios.values().stream()
            .sorted(java.util.Comparator.comparingDouble((Span s) -> s.high() - s.low()))
            .toList()) {
      long agree = ratios.values().stream().filter(r -> r.meets(candidate.widened(MARGIN))).count();
      if (2 * agree > ratios.size() && agree >= 2) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }

  private static double median(SortedMap<AnalyteCode, Span> ratios) {
    double[] lows = ratios.values().stream().mapToDouble(Span::low).sorted().toArray();
    return lows[lows.length / 2];
  }

  private static void judge(
      SortedMap<AnalyteCode, Span> ratios,
      Optional<Span> dry,
      Optional<Span> shared,
      SortedMap<AnalyteCode, String> touched) {
    boolean dryFits = dry.isPresent() && fits(ratios, dry.get()) * 2 > ratios.size();
    boolean dryFitsSome = dry.isPresent() && fits(ratios, dry.get()) > 0;
    if (dry.isPresent()
        && !dryFits
        && shared.isPresent()
        && !shared.get().widened(MARGIN).meets(dry.get())) {
      touched.put(AnalyteCode.DM, SampleChecks.BROKEN);
      touched.put(AnalyteCode.MOISTURE, SampleChecks.BROKEN);
      mark(ratios, shared.get(), touched);
      return;
    }
    Optional<Span> expected = dryFitsSome ? dry : shared;
    if (expected.isPresent()) {
      mark(ratios, expected.get(), touched);
    } else if (dry.isPresent() || ratios.size() > 1) {
      ratios.keySet().forEach(c -> touched.put(c, SampleChecks.BROKEN));
      if (dry.isPresent()) {
        touched.put(AnalyteCode.DM, SampleChecks.BROKEN);
      }
    }
  }

  private static long fits(SortedMap<AnalyteCode, Span> ratios, Span expected) {
    return ratios.values().stream().filter(r -> r.meets(expected.widened(MARGIN))).count();
  }

  private static void mark(
      SortedMap<AnalyteCode, Span> ratios, Span expected, SortedMap<AnalyteCode, String> touched) {
    ratios.forEach(
        (code, ratio) -> {
          if (!ratio.meets(expected.widened(MARGIN))) {
            touched.put(code, SampleChecks.BROKEN);
          }
        });
  }
}
