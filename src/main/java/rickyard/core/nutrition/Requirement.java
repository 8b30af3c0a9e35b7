package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a horse needs of one nutrient a day, with the rows that make it up.
 *
 * @param nutrient which
 * @param perDay in the nutrient's unit; empty where no requirement is known, which is not zero
 * @param bracket what encloses a need that has no figure; empty where there is a figure or nothing
 *     is known
 * @param parts the terms of the sum, in the order of the tables
 * @param standing the weakest support among the parts
 * @param reason why there is no requirement; empty if there is one
 * @param caveat what must be said of a figure that the tables do not print; empty if they do
 */
public record Requirement(
    Nutrient nutrient,
    OptionalDouble perDay,
    Optional<Bracket> bracket,
    List<Part> parts,
    Standing standing,
    String reason,
    String caveat) {

  public Requirement {
    requireNonNull(nutrient, "nutrient");
    requireNonNull(perDay, "perDay");
    requireNonNull(bracket, "bracket");
    parts = List.copyOf(parts);
    requireNonNull(standing, "standing");
    requireNonNull(reason, "reason");
    requireNonNull(caveat, "caveat");
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
   * @param others what other sources give for the coefficient
   */
  public record Part(
      double coefficient,
      double scale,
      Driver driver,
      double driverValue,
      double amount,
      Source source,
      List<OtherValue> others) {
    public Part {
      requireNonNull(driver, "driver");
      requireNonNull(source, "source");
      others = List.copyOf(others);
    }
  }

  /**
   * Two needs that enclose one without a figure.
   *
   * @param low less than this is short
   * @param high this is enough
   */
  public record Bracket(double low, double high) {
    public Bracket {
      if (!(low >= 0 && low <= high && Double.isFinite(high))) {
        throw new IllegalArgumentException("not a bracket: " + low + " to " + high);
      }
    }
  }

  /**
   * The same need after another source.
   *
   * @param perDay in the nutrient's unit
   * @param value what that source gives for one coefficient
   */
  public record Other(double perDay, OtherValue value) {}

  static Requirement none(Nutrient nutrient, String reason) {
    return new Requirement(
        nutrient,
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        Standing.VERIFIED,
        reason,
        "");
  }

  static Requirement sum(Nutrient nutrient, List<Part> parts) {
    double total = parts.stream().mapToDouble(Part::amount).sum();
    Standing standing =
        parts.stream().map(p -> p.source().standing()).reduce(Standing.VERIFIED, Standing::and);
    return new Requirement(
        nutrient, OptionalDouble.of(total), Optional.empty(), parts, standing, "", "");
  }

  /** The same figure where the tables do not print it: as weak as the rule that reaches there. */
  Requirement beyond(OutsideRule rule) {
    return new Requirement(
        nutrient,
        perDay,
        bracket,
        parts,
        standing.and(rule.source().standing()),
        reason,
        rule.words());
  }

  /** No figure, but two that enclose it, whichever of them is the higher. */
  static Requirement between(Requirement a, Requirement b, OutsideRule rule) {
    if (a.perDay.isEmpty() || b.perDay.isEmpty()) {
      return none(a.nutrient, rule.words());
    }
    double one = a.perDay.getAsDouble();
    double two = b.perDay.getAsDouble();
    return new Requirement(
        a.nutrient,
        OptionalDouble.empty(),
        Optional.of(new Bracket(Math.min(one, two), Math.max(one, two))),
        List.of(),
        a.standing.and(b.standing).and(rule.source().standing()),
        rule.words(),
        "");
  }

  /** The least that can be right: the figure, or the lower end of what encloses it. */
  public OptionalDouble atLeast() {
    return bracket.map(b -> OptionalDouble.of(b.low())).orElse(perDay);
  }

  /**
   * What a supply is held against: the figure; without one the end of the bracket that the supply
   * settles, if it settles one.
   */
  OptionalDouble heldAgainst(Amount supply) {
    if (bracket.isEmpty()) {
      return perDay;
    }
    Bracket ends = bracket.get();
    double assured = nutrient == Nutrient.DE ? supply.best() : supply.low();
    if (assured >= ends.high()) {
      return OptionalDouble.of(ends.high());
    }
    return supply.best() < ends.low() ? OptionalDouble.of(ends.low()) : OptionalDouble.empty();
  }

  /** The need as other sources have it, where a page that uses it must say so. */
  public List<Other> others() {
    List<Other> found = new ArrayList<>();
    for (Part part : parts) {
      for (OtherValue other : OtherValue.said(part.coefficient(), part.others())) {
        double amount = other.value() * part.scale() * part.driverValue();
        found.add(new Other(perDay.orElse(0) - part.amount() + amount, other));
      }
    }
    return List.copyOf(found);
  }
}
