package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;

/**
 * A sample's values in canonical units and bases, with full uncertainty (laboratory, sampling and
 * rounding): what diets and verdicts are computed from.
 *
 * <p>What is not in {@code contents} is unknown, which is not zero.
 *
 * @param subject lot id, or feed id for a bagged feed
 * @param batch batch of a feed; empty for a lot
 * @param dryMatter % as fed; empty if the report gives neither dry matter nor moisture
 * @param contents reported and derived values by analyte, each in its canonical unit; never as fed
 */
public record Analysis(
    String subject,
    String batch,
    Optional<Measured> dryMatter,
    SortedMap<AnalyteCode, Measured> contents)
    implements Serializable {

  public Analysis {
    requireNonNull(subject, "subject");
    requireNonNull(batch, "batch");
    requireNonNull(dryMatter, "dryMatter");
    contents = Collections.unmodifiableSortedMap(new TreeMap<>(contents));
    contents
        .values()
        .forEach(
            v -> {
              if (v.basis() == Basis.AS_FED) {
                throw new IllegalArgumentException("contents of an analysis are never as fed");
              }
            });
  }

  public Optional<Measured> find(AnalyteCode code) {
    return code.equals(AnalyteCode.DM) ? dryMatter : Optional.ofNullable(contents.get(code));
  }
}
