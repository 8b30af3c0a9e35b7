package rickyard.core.quantity;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;

/**
 * A content with its bounds, its uncertainty and its evidence.
 *
 * <p>Three pairs of numbers stand beside the best value and must not be mixed. {@code low} and
 * {@code high} are what rounding and censoring allow: 9.4 is [9.35, 9.45], '&lt;0.5' is [0, 0.5].
 * {@code lower} and {@code upper} are what a verdict takes: the best value itself, except that a
 * censored or one-sided term puts its end in ('&lt;0.5' is 0.5 under a maximum and 0 over a
 * minimum; a label's maximum is its own upper end; a bound that is open is infinite). {@code u} is
 * the standard uncertainty (k = 1), rounding included.
 *
 * @param unit what is counted
 * @param basis as fed, dry matter, or none
 * @param best the best single value, finite, at least 0
 * @param low lower end allowed by rounding and censoring, at least 0
 * @param high upper end, may be infinite
 * @param lower the value used against a minimum, at least 0
 * @param upper the value used against a maximum, may be infinite
 * @param u standard uncertainty in {@code unit}, finite, at least 0
 * @param evidence where it comes from
 */
public record Measured(
    Unit unit,
    Basis basis,
    double best,
    double low,
    double high,
    double lower,
    double upper,
    double u,
    Evidence evidence)
    implements Serializable {

  public Measured {
    requireNonNull(unit, "unit");
    requireNonNull(basis, "basis");
    requireNonNull(evidence, "evidence");
    requireFinite("best", best);
    requireFinite("u", u);
    requireFinite("low", low);
    requireFinite("lower", lower);
    if (Double.isNaN(high) || high < low || Double.isNaN(upper) || upper < lower) {
      throw new IllegalArgumentException(
          "bounds out of order: [" + low + ", " + high + "], [" + lower + ", " + upper + "]");
    }
  }

  private static void requireFinite(String name, double value) {
    if (!Double.isFinite(value) || value < 0) {
      throw new IllegalArgumentException(name + " must be finite and >= 0, was " + value);
    }
  }

  /** A number without censoring: its own lower and upper, rounded by at most {@code halfWidth}. */
  public static Measured of(
      Unit unit, Basis basis, double best, double halfWidth, double u, Evidence evidence) {
    return new Measured(
        unit,
        basis,
        best,
        Math.max(0, best - halfWidth),
        best + halfWidth,
        best,
        best,
        u,
        evidence);
  }

  /** '&lt;x' or 'not detected' at x: best x/2, interval [0, x]. */
  public static Measured below(Unit unit, Basis basis, double x, double u, Evidence evidence) {
    return new Measured(unit, basis, x / 2, 0, x, 0, x, u, evidence);
  }

  /** '&gt;x', or a bound from partial evidence: at least x, open above. */
  public static Measured atLeast(Unit unit, Basis basis, double x, double u, Evidence evidence) {
    return new Measured(
        unit, basis, x, x, Double.POSITIVE_INFINITY, x, Double.POSITIVE_INFINITY, u, evidence);
  }

  /** A guaranteed maximum: anything from 0 to x, taken as x. */
  public static Measured atMost(Unit unit, Basis basis, double x, Evidence evidence) {
    return new Measured(unit, basis, x, 0, x, 0, x, 0, evidence);
  }

  /** Whether the evidence bounds the number above. */
  public boolean isBoundedAbove() {
    return upper < Double.POSITIVE_INFINITY;
  }

  /** Whether a censored or one-sided term stands in it. */
  public boolean isOneSided() {
    return lower != upper;
  }

  public Measured withU(double newU) {
    return new Measured(unit, basis, best, low, high, lower, upper, newU, evidence);
  }

  public Measured withEvidence(Evidence newEvidence) {
    return new Measured(unit, basis, best, low, high, lower, upper, u, newEvidence);
  }

  /** The same number said of another basis: for a basis that was misread, never a conversion. */
  public Measured onBasis(Basis other) {
    return new Measured(unit, other, best, low, high, lower, upper, u, evidence);
  }

  /** The same content in another unit of the same dimension; basis and evidence stay. */
  public Measured in(Unit target) {
    return new Measured(
        target,
        basis,
        unit.convert(best, target),
        unit.convert(low, target),
        unit.convert(high, target),
        unit.convert(lower, target),
        unit.convert(upper, target),
        unit.convert(u, target),
        evidence);
  }

  /**
   * The sum of this and another content of the same unit and basis; ends add, uncertainties add as
   * {@code u² = u1² + u2² + 2 r u1 u2}.
   *
   * @param other the content to add
   * @param correlation r between the two errors, in [-1, 1]; 0 where nothing is known
   * @param evidence what the sum is, in the field's words
   * @throws UnlikeQuantitiesException if unit or basis differ
   */
  @Cites(source = "jcgm100-2008", locator = "5.2.2, law of propagation with correlation")
  public Measured plus(Measured other, double correlation, Evidence evidence) {
    if (unit != other.unit || basis != other.basis) {
      throw new UnlikeQuantitiesException("cannot add " + other.kind() + " to " + kind());
    }
    double variance = u * u + other.u * other.u + 2 * correlation * u * other.u;
    return new Measured(
        unit,
        basis,
        best + other.best,
        low + other.low,
        high + other.high,
        lower + other.lower,
        upper + other.upper,
        StrictMath.sqrt(Math.max(0, variance)),
        evidence);
  }

  /**
   * This as-fed content on the dry-matter basis: {@code c_DM = 100 · c_AF / DM}, with {@code (u/y)²
   * = (u_AF/c_AF)² + (u_d/d)²}; a zero content keeps the scaled {@code u_AF}.
   *
   * @param dryMatter dry matter of the same sample, % as fed, in (0, 100]
   * @return the content on dry matter in the same unit
   * @throws UnlikeQuantitiesException if this is not as fed or {@code dryMatter} is not % as fed
   */
  @Cites(source = "definition", locator = "dry matter = 100 - moisture, % as fed")
  public Measured toDryMatter(Measured dryMatter) {
    if (basis != Basis.AS_FED) {
      throw new UnlikeQuantitiesException("not an as-fed content: " + kind());
    }
    if (dryMatter.unit != Unit.PERCENT || dryMatter.basis != Basis.AS_FED) {
      throw new UnlikeQuantitiesException("not a dry-matter content: " + dryMatter.kind());
    }
    if (!(dryMatter.low > 0 && dryMatter.best <= 100)) {
      throw new IllegalArgumentException("dry matter must be in (0, 100] %, was " + dryMatter.best);
    }
    double factor = 100 / dryMatter.best;
    double fromDm = best * factor * dryMatter.u / dryMatter.best;
    return new Measured(
        unit,
        Basis.DRY_MATTER,
        best * factor,
        low * 100 / Math.min(100, dryMatter.high),
        high * 100 / dryMatter.low,
        lower * factor,
        upper * factor,
        StrictMath.sqrt(u * factor * (u * factor) + fromDm * fromDm),
        new Evidence.Derived(
            "100 × as fed / DM",
            List.of(new Evidence.Term("as fed", this), new Evidence.Term("DM", dryMatter))));
  }

  private String kind() {
    return unit.code() + " " + basis.code();
  }
}
