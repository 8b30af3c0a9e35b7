package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Unit;

/**
 * The lines of a diet: what is summed over the items and held against a requirement.
 *
 * <p>The code is the analyte's; the factor turns a content in its canonical unit (% DM, mg/kg DM,
 * Mcal/kg DM, IU/kg DM) times kg of dry matter into the amount per day.
 */
public enum Nutrient {
  DM("kg", 1),
  DE("Mcal", 1),
  CP("g", 10),
  LYS("g", 10),
  CA("g", 10),
  P("g", 10),
  MG("g", 10),
  K("g", 10),
  NA("g", 10),
  CL("g", 10),
  S("g", 10),
  CO("mg", 1),
  CU("mg", 1),
  I("mg", 1),
  FE("mg", 1),
  MN("mg", 1),
  SE("mg", 1),
  ZN("mg", 1),
  VIT_A("IU", 1),
  VIT_D("IU", 1),
  VIT_E("IU", 1),
  THIAMIN("mg", 1),
  RIBOFLAVIN("mg", 1),
  /** Calcium to phosphorus, a bare ratio. */
  CA_P("1", 1);

  private final String unit;
  private final double perKg;

  Nutrient(String unit, double perKg) {
    this.unit = unit;
    this.perKg = perKg;
  }

  /** The code in every output. */
  public String code() {
    return name();
  }

  public AnalyteCode analyte() {
    return requireNonNull(Codes.BY_NUTRIENT.get(this));
  }

  /** Unit of the amount per day: kg, Mcal, g, mg, IU, or 1 for the ratio. */
  public String unit() {
    return unit;
  }

  /** The canonical unit of its content on dry matter, from which {@link #perKg()} leads. */
  public Unit contentUnit() {
    return switch (unit) {
      case "Mcal" -> Unit.MCAL_PER_KG;
      case "mg" -> Unit.MG_PER_KG;
      case "IU" -> Unit.IU_PER_KG;
      case "1" -> Unit.ONE;
      default -> Unit.PERCENT;
    };
  }

  /** Amount per day from one kg of dry matter that holds one canonical unit of content. */
  public double perKg() {
    return perKg;
  }

  /** Whether it is a sum of contents over the items: all but dry matter itself and the ratio. */
  public boolean isSummed() {
    return this != DM && this != CA_P;
  }

  public static Optional<Nutrient> findByCode(String code) {
    for (Nutrient nutrient : values()) {
      if (nutrient.name().equals(code)) {
        return Optional.of(nutrient);
      }
    }
    return Optional.empty();
  }

  /** Made once: a code checks its letters each time it is made. */
  private static final class Codes {
    static final Map<Nutrient, AnalyteCode> BY_NUTRIENT = all();

    private static Map<Nutrient, AnalyteCode> all() {
      Map<Nutrient, AnalyteCode> codes = new EnumMap<>(Nutrient.class);
      for (Nutrient nutrient : values()) {
        codes.put(nutrient, new AnalyteCode(nutrient.name()));
      }
      return Collections.unmodifiableMap(codes);
    }
  }
}
