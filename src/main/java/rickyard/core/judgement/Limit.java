package rickyard.core.judgement;

import static java.util.Objects.requireNonNull;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Normal;

/**
 * A limit of a group, as {@code config/limits.csv} gives it.
 *
 * @param id key of the table
 * @param group the horses it is for; {@code all} is every horse
 * @param subject lot, diet or bucket meal
 * @param quantity what is limited, with its definition: {@code nsc_wsc}, {@code nsc_esc}, {@code
 *     starch}, {@code k} …
 * @param bound which side is the wrong one
 * @param value the limit, at least 0, in {@code unit}
 * @param unit with its basis
 * @param risk accepted chance of being wrong when the verdict says 'clears', in (0, 0.5]; empty for
 *     no guard band
 * @param severity what going over asks for
 * @param ifMissing what a missing value leads to
 * @param materials {@code hay} (all but haylage), {@code haylage}, or empty for every material
 * @param source key of the bibliography
 * @param locator page or words in the source
 * @param status verified, secondary, memory, common-practice or assumed
 * @param fromOffice whether the office's own table gave it
 */
public record Limit(
    String id,
    String group,
    LimitSubject subject,
    String quantity,
    Bound bound,
    double value,
    LimitUnit unit,
    OptionalDouble risk,
    Severity severity,
    IfMissing ifMissing,
    String materials,
    String source,
    String locator,
    String status,
    boolean fromOffice) {

  /** The group that every horse is in. */
  public static final String ALL = "all";

  /** Factors already found: the search for one is slow, and limits share a few risks. */
  private static final Map<Double, Double> FACTORS = new ConcurrentHashMap<>();

  public Limit {
    requireNonNull(id, "id");
    requireNonNull(group, "group");
    requireNonNull(subject, "subject");
    requireNonNull(bound, "bound");
    requireNonNull(unit, "unit");
    requireNonNull(severity, "severity");
    requireNonNull(ifMissing, "ifMissing");
    requireNonNull(materials, "materials");
    requireNonNull(source, "source");
    requireNonNull(locator, "locator");
    requireNonNull(status, "status");
    if (!quantity.matches("[a-z][a-z0-9_]*")) {
      throw new IllegalArgumentException("not a quantity: " + quantity);
    }
    if (!Double.isFinite(value) || value < 0) {
      throw new IllegalArgumentException("a limit must be finite and >= 0, was " + value);
    }
    if (risk.isPresent() && !(risk.getAsDouble() > 0 && risk.getAsDouble() <= 0.5)) {
      throw new IllegalArgumentException("risk must be in (0, 0.5], was " + risk.getAsDouble());
    }
  }

  /** The analyte that the quantity names. */
  public AnalyteCode analyte() {
    return new AnalyteCode(quantity.toUpperCase(Locale.ROOT));
  }

  /** The factor z of the guard band {@code w = z · u}; 0 where there is none. */
  public double guardFactor() {
    return risk.isPresent() ? FACTORS.computeIfAbsent(risk.getAsDouble(), Normal::guardFactor) : 0;
  }

  /** Whether the limit is for dry-stored hay, for haylage or for both. */
  public boolean isForMaterial(boolean dryStored) {
    return materials.isEmpty() || materials.equals(dryStored ? "hay" : "haylage");
  }

  /** The quantity in the field's words, for example {@code WSC + starch}. */
  public String words() {
    return switch (quantity) {
      case "nsc_wsc" -> "NSC (WSC + starch)";
      case "nsc_esc" -> "NSC (ESC + starch)";
      case "starch" -> "starch";
      case "k" -> "potassium";
      case "no3_n" -> "nitrate-nitrogen";
      case "moisture" -> "moisture";
      case "se" -> "selenium";
      case "fe" -> "iron";
      case "ergovaline" -> "ergovaline";
      case "mould" -> "mould count";
      case "wsc" -> "WSC";
      case "esc" -> "ESC";
      case "oxalate" -> "oxalate";
      case "ca_oxalate" -> "calcium to oxalate";
      default -> quantity.toUpperCase(Locale.ROOT);
    };
  }
}
