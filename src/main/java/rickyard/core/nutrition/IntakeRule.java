package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.OptionalDouble;

/**
 * How much a kind of animal should and may eat; dry matter in % of body weight a day.
 *
 * @param type kind
 * @param isProtected for pregnant, lactating or sick animals
 * @param warnBelow forage below which it is said; empty if there is no such line
 * @param vetBelow forage below which a vet plan must be on record
 * @param refuseBelow forage below which a ration is refused
 * @param usualMax usual ceiling of the total
 * @param adlib assumed total where something is fed ad lib
 * @param adlibU its spread (k = 1), relative, %
 * @param strawUsualPercent usual cap of straw, % of the forage dry matter
 * @param strawHardPercent hard cap
 * @param source table row
 */
public record IntakeRule(
    HorseType type,
    boolean isProtected,
    OptionalDouble warnBelow,
    double vetBelow,
    double refuseBelow,
    double usualMax,
    double adlib,
    double adlibU,
    double strawUsualPercent,
    double strawHardPercent,
    Source source) {

  public IntakeRule {
    requireNonNull(type, "type");
    requireNonNull(warnBelow, "warnBelow");
    requireNonNull(source, "source");
    if (!(refuseBelow > 0 && refuseBelow <= vetBelow && vetBelow <= warnBelow.orElse(usualMax))) {
      throw new IllegalArgumentException("floors out of order for " + type.code());
    }
    if (!(strawUsualPercent >= 0 && strawUsualPercent <= strawHardPercent)) {
      throw new IllegalArgumentException("straw caps out of order for " + type.code());
    }
  }

  /**
   * Whether such an animal is never given less than it eats without a vet plan: donkeys,
   * miniatures, pregnant, lactating and sick animals.
   */
  public boolean isNeverRestricted() {
    return isProtected || type == HorseType.DONKEY || type == HorseType.MINIATURE;
  }

  /** The highest of the floors: below it something is said. */
  public double firstFloor() {
    return warnBelow.orElse(vetBelow);
  }
}
