package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * How much a horse should and may eat; kg of dry matter per day.
 *
 * @param floorKgDm least of all together
 * @param ceilingKgDm most of all together
 * @param forageFloorKgDm least of forage
 * @param maxStrawShare most straw, as a share of the forage dry matter, in [0, 1]
 * @param energy what its energy should stay within; empty where nothing is known to hold it to
 */
public record IntakeRange(
    double floorKgDm,
    double ceilingKgDm,
    double forageFloorKgDm,
    double maxStrawShare,
    Optional<EnergyBand> energy) {
  public IntakeRange {
    requireNonNull(energy, "energy");
    if (!(floorKgDm >= 0 && floorKgDm <= ceilingKgDm && Double.isFinite(ceilingKgDm))) {
      throw new IllegalArgumentException("intake range " + floorKgDm + " to " + ceilingKgDm);
    }
    if (!(forageFloorKgDm >= 0 && forageFloorKgDm <= ceilingKgDm)) {
      throw new IllegalArgumentException("forage floor " + forageFloorKgDm);
    }
    if (!(maxStrawShare >= 0 && maxStrawShare <= 1)) {
      throw new IllegalArgumentException("straw share " + maxStrawShare);
    }
  }
}
