package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Hay of one field, one cutting, stored together.
 *
 * @param id register key
 * @param holder client id or {@code co-op}
 * @param material grass-hay, legume-hay, mixed-hay, cereal-hay, straw, haylage …
 * @param legumePercent share of legume, %
 * @param cutting as the register says
 * @param harvestedOn day of harvest
 * @param stockKg kg as fed in store
 * @param baleKg kg as fed of a bale
 * @param pricePerTonne in the office's money
 * @param forSale whether others may buy it
 * @param cores cores taken for its analysis
 * @param sampledOn day of sampling
 * @param sampledBy who sampled
 * @param field the field it grew on, by a name of its own in the office; empty if nobody says
 */
public record Lot(
    String id,
    String holder,
    String material,
    OptionalDouble legumePercent,
    String cutting,
    Optional<LocalDate> harvestedOn,
    OptionalDouble stockKg,
    OptionalDouble baleKg,
    OptionalDouble pricePerTonne,
    boolean forSale,
    OptionalInt cores,
    Optional<LocalDate> sampledOn,
    String sampledBy,
    String field) {

  public Lot {
    requireNonNull(id, "id");
    requireNonNull(holder, "holder");
    requireNonNull(material, "material");
    requireNonNull(cutting, "cutting");
    requireNonNull(sampledBy, "sampledBy");
    requireNonNull(field, "field");
  }

  /** A lot of which nobody says on which field it grew. */
  public Lot(
      String id,
      String holder,
      String material,
      OptionalDouble legumePercent,
      String cutting,
      Optional<LocalDate> harvestedOn,
      OptionalDouble stockKg,
      OptionalDouble baleKg,
      OptionalDouble pricePerTonne,
      boolean forSale,
      OptionalInt cores,
      Optional<LocalDate> sampledOn,
      String sampledBy) {
    this(
        id,
        holder,
        material,
        legumePercent,
        cutting,
        harvestedOn,
        stockKg,
        baleKg,
        pricePerTonne,
        forSale,
        cores,
        sampledOn,
        sampledBy,
        "");
  }
}
