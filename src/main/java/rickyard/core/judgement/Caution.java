package rickyard.core.judgement;

import static java.util.Objects.requireNonNull;

import java.util.Locale;
import java.util.Set;

/**
 * What no laboratory's figure tells of a lot and a person must ask; one row of {@code
 * config/cautions.csv}. It decides nothing.
 *
 * @param id key of the table
 * @param materials materials as the register of lots writes them; empty for every material
 * @param hazards codes of the hazards that a region may be known for; empty where every region has
 *     it
 * @param text the sentence
 * @param source key of the bibliography
 * @param status verified, secondary, memory, common-practice or assumed
 */
public record Caution(
    String id,
    Set<String> materials,
    Set<String> hazards,
    String text,
    String source,
    String status) {

  public Caution {
    requireNonNull(id, "id");
    materials = Set.copyOf(materials);
    hazards = Set.copyOf(hazards);
    requireNonNull(text, "text");
    requireNonNull(source, "source");
    requireNonNull(status, "status");
  }

  /** Whether it is said once for all lots: it has no region, or the office has not said its own. */
  public boolean isGeneral(JudgementSettings settings) {
    return hazards.isEmpty() || !settings.isRegionKnown();
  }

  /**
   * Whether it is said of a lot: the office's region is known for it and the material fits.
   *
   * @param material as the register of lots writes it; blank fits
   */
  public boolean isFor(String material, JudgementSettings settings) {
    String name = material.strip().toLowerCase(Locale.ROOT);
    return !hazards.isEmpty()
        && settings.isRegionOf(hazards)
        && (materials.isEmpty() || name.isEmpty() || materials.contains(name));
  }
}
