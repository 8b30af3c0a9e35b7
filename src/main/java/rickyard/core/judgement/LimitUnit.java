package rickyard.core.judgement;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;
import rickyard.core.quantity.UnlikeQuantitiesException;

/**
 * The unit of a limit with its basis, for example {@code % DM}, {@code % AF}, {@code mg/kg DM},
 * {@code CFU/g}, {@code g/kg BW} (per meal and kilogram of body weight) or {@code g} (per meal).
 *
 * <p>A value per kilogram of body weight is carried as {@link Unit#G_PER_KG} on {@link Basis#NONE},
 * an amount in grams as {@link Unit#ONE} on {@link Basis#NONE}.
 *
 * @param text as the table writes it
 * @param unit what is counted
 * @param basis dry matter, as fed, or none
 */
public record LimitUnit(String text, Unit unit, Basis basis) {

  public LimitUnit {
    requireNonNull(text, "text");
    requireNonNull(unit, "unit");
    requireNonNull(basis, "basis");
  }

  /** The unit that a table's cell names, if it names one. */
  public static Optional<LimitUnit> parse(String text) {
    String[] words = text.strip().split("\\s+", -1);
    if (words.length == 1 && words[0].equals("g")) {
      return Optional.of(new LimitUnit("g", Unit.ONE, Basis.NONE));
    }
    Optional<Unit> unit = Unit.findByCode(words[0]);
    if (words.length == 1) {
      return unit.filter(LimitUnit::needsNoBasis).map(u -> new LimitUnit(words[0], u, Basis.NONE));
    }
    return words.length == 2
        ? unit.flatMap(u -> findBasis(words[1]).map(b -> new LimitUnit(text.strip(), u, b)))
        : Optional.empty();
  }

  private static boolean needsNoBasis(Unit unit) {
    return switch (unit.dimension()) {
      case COUNT, NUMBER -> true;
      case MASS_SHARE, ENERGY_DENSITY, ACTIVITY -> false;
    };
  }

  private static Optional<Basis> findBasis(String word) {
    return switch (word) {
      case "DM" -> Optional.of(Basis.DRY_MATTER);
      case "AF" -> Optional.of(Basis.AS_FED);
      case "BW" -> Optional.of(Basis.NONE);
      default -> Optional.empty();
    };
  }

  /**
   * A value in this unit.
   *
   * @throws UnlikeQuantitiesException if its dimension or basis is another
   */
  public Measured of(Measured value) {
    if (value.basis() != basis) {
      throw new UnlikeQuantitiesException(
          "limit in " + text + ", value on basis " + value.basis().code());
    }
    return value.in(unit);
  }
}
