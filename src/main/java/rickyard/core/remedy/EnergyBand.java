package rickyard.core.remedy;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Digestible energy that a changed ration should stay within, so that the change does not push the
 * body condition the wrong way.
 *
 * <p>It binds only where the energy of every item is known from reports: what is assumed of one hay
 * is no reason against it.
 *
 * @param leastMcal per day; 0 where less is no harm
 * @param mostMcal per day; infinite where more is no harm
 */
public record EnergyBand(double leastMcal, double mostMcal) {
  /** Key of the content that holds an item's energy, Mcal per kg of dry matter. */
  public static final String QUANTITY = "energy";

  private static final double TIE = 1e-6;

  public EnergyBand {
    if (!(leastMcal >= 0 && leastMcal <= mostMcal && Double.isFinite(leastMcal))) {
      throw new IllegalArgumentException("energy band " + leastMcal + " to " + mostMcal);
    }
  }

  /** Energy of an item, Mcal per kg of dry matter; empty where no report tells it. */
  static OptionalDouble perKgDm(Candidate item) {
    return item.findContent(QUANTITY)
        .map(c -> OptionalDouble.of(c.value()))
        .orElseGet(OptionalDouble::empty);
  }

  /** Whether reports tell the energy of all that a support may hold. */
  static boolean isKnown(MixSpec spec) {
    return Stream.concat(
            spec.free().stream().map(FreeItem::item), spec.fixed().stream().map(Serving::item))
        .allMatch(item -> perKgDm(item).isPresent());
  }

  /** Mcal per day of what is fed; items that no report tells count as nothing. */
  static double of(List<Serving> ration) {
    return ration.stream().mapToDouble(a -> a.dmKg() * perKgDm(a.item()).orElse(0)).sum();
  }

  /** Whether an amount stays within, up to rounding. */
  public boolean holds(double mcal) {
    return mcal >= leastMcal * (1 - TIE) && mcal <= mostMcal * (1 + TIE);
  }
}
