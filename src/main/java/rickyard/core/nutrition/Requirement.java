package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a horse needs of one nutrient a day, with the rows that make it up.
 *
 * @param nutrient which
 * @param perDay in the nutrient's unit; empty where no requirement is known, which is not zero
 * @param parts the terms of the sum, in the order of the tables
 * @param standing the weakest support among the parts
 * @param reason why there is no requirement; empty if there is one
 */
public record Requirement(
    Nutrient nutrient, OptionalDouble perDay, List<Part> parts, Standing standing, String reason) {

  public Requirement {
    requireNonNull(nutrient, "nutrient");
    requireNonNull(perDay, "perDay");
    parts = List.copyOf(parts);
    requireNonNull(standing, "standing");
    requireNonNull(reason, "reason");
    if (perDay.isPresent()
        && !(perDay.getAsDouble() >= 0 && Double.isFinite(perDay.getAsDouble()))) {
      throw new IllegalArgumentException("a requirement is finite and >= 0: " + perDay);
    }
    if (perDay.isPresent() == !reason.isEmpty()) {
      throw new IllegalArgumentException("either a requirement or the reason why not");
    }
  }

  /**
   * One term.
   *
   * @param coefficient as the table prints it, times {@code scale}
   * @param scale 1, or the factor of the kind of animal (donkeys' energy)
   * @param driver what it is multiplied by
   * @param driverValue how much of that
   * @param amount the product, per day
   * @param source the table row
   */
  public record Part(
      double coefficient,
      double scale,
      Driver driver,
      double driverValue,
      double amount,
      Source source) {
    public Part {
      requireNonNull(driver, "driver");
      requireNonNull(source, "source");
    }
  }

  static Requirement none(Nutrient nutrient, String reason) {
    return new Requirement(nutrient, OptionalDouble.empty(), List.of(), Standing.VERIFIED, reason);
  }

  static Requirement sum(Nutrient nutrient, List<Part> parts) {
    double total = parts.stream().mapToDouble(Part::amount).sum();
    Standing standing =
        parts.stream().map(p -> p.source().standing()).reduce(Standing.VERIFIED, Standing::and);
    return new Requirement(nutrient, OptionalDouble.of(total), parts, standing, "");
  }
}
