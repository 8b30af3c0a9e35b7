package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A diet in plain numbers and words: what is given, what it supplies, how it stands against every
 * limit of the horse.
 *
 * @param asFedKg all items, kg as fed per day
 * @param dmKg dry matter per day, kg
 * @param dmPercentBw dry matter, % of body weight
 * @param nscWscPercent WSC + starch of the whole diet, % of dry matter; null if unknown
 * @param nscWscU its standard uncertainty
 * @param nscEscPercent ESC + starch of the whole diet, % of dry matter; null if unknown
 * @param nscGrams WSC + starch per day, g; null if unknown
 * @param portions its items
 * @param lines its nutrients
 * @param limits every limit of the horse's groups
 * @param worst the limit it stands worst against; null if no limit applies
 * @param notes floors, ratios, energy, what is not in the bucket
 */
public record DietSummary(
    double asFedKg,
    double dmKg,
    double dmPercentBw,
    @Nullable Double nscWscPercent,
    @Nullable Double nscWscU,
    @Nullable Double nscEscPercent,
    @Nullable Double nscGrams,
    List<PortionLine> portions,
    List<DietLine> lines,
    List<LimitLine> limits,
    @Nullable LimitLine worst,
    List<NoteLine> notes)
    implements Serializable {

  public DietSummary {
    portions = List.copyOf(portions);
    lines = List.copyOf(lines);
    limits = List.copyOf(limits);
    notes = List.copyOf(notes);
    requireNonNull(portions, "portions");
  }

  /** The word of the worst-placed limit; no-limit where none applies. */
  public String verdict() {
    return worst == null ? "no-limit" : worst.verdict();
  }
}
