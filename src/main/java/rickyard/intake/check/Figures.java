package rickyard.intake.check;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Identities;
import rickyard.core.forage.Span;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;

/**
 * The figures of one sample as the relations need them: in canonical units, on one basis.
 *
 * @param values the figure that counts of each analyte
 * @param asFed the as-fed figure printed beside a dry-matter one
 */
public record Figures(
    SortedMap<AnalyteCode, Measured> values, SortedMap<AnalyteCode, Measured> asFed) {

  public Figures {
    requireNonNull(values, "values");
    requireNonNull(asFed, "asFed");
    values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    asFed = Collections.unmodifiableSortedMap(new TreeMap<>(asFed));
  }

  /** The span of a figure on the basis that most contents share; empty for one on the other. */
  Optional<Span> span(AnalyteCode code) {
    Basis common = commonBasis();
    return Optional.ofNullable(values.get(code))
        .filter(v -> isWater(code) || v.basis() == Basis.NONE || v.basis() == common)
        .map(Span::of);
  }

  static boolean isWater(AnalyteCode code) {
    return code.equals(AnalyteCode.DM) || code.equals(AnalyteCode.MOISTURE);
  }

  /** Dry matter unless no content stands on it. */
  Basis commonBasis() {
    for (Measured value : values.values()) {
      if (value.basis() == Basis.DRY_MATTER) {
        return Basis.DRY_MATTER;
      }
    }
    return Basis.AS_FED;
  }

  /** Dry matter in %, printed or from moisture. */
  Optional<Span> dryMatter() {
    Optional<Span> printed = span(AnalyteCode.DM);
    return printed.isPresent() ? printed : span(AnalyteCode.MOISTURE).map(Identities::dryMatter);
  }

  /** What all parts of the feed add up to on the common basis, %. */
  Optional<Span> total() {
    return commonBasis() == Basis.DRY_MATTER ? Optional.of(Span.exactly(100)) : dryMatter();
  }
}
