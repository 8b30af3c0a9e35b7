package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** All tables that diets are evaluated with. */
public record FeedingStandards(
    RequirementTables requirements,
    EnergyEquation energy,
    List<TypicalValue> typicalValues,
    List<FeedRole> roles,
    List<HighValue> highValues,
    List<Tolerance> tolerances,
    List<IntakeRule> intakeRules,
    List<KindRule> kinds,
    Settings settings) {

  public FeedingStandards {
    requireNonNull(requirements, "requirements");
    requireNonNull(energy, "energy");
    typicalValues = List.copyOf(typicalValues);
    roles = List.copyOf(roles);
    highValues = List.copyOf(highValues);
    tolerances = List.copyOf(tolerances);
    intakeRules = List.copyOf(intakeRules);
    kinds = List.copyOf(kinds);
    requireNonNull(settings, "settings");
  }

  public Optional<TypicalValue> findTypical(String material, AnalyteCode analyte) {
    for (TypicalValue t : typicalValues) {
      if (t.analyte().equals(analyte) && t.material().equals(material)) {
        return Optional.of(t);
      }
    }
    return Optional.empty();
  }

  public Optional<FeedRole> findRole(String role) {
    return roles.stream().filter(r -> r.role().equals(role)).findFirst();
  }

  public Optional<HighValue> findHighValue(String role, AnalyteCode analyte) {
    for (HighValue t : highValues) {
      if (t.analyte().equals(analyte) && t.role().equals(role)) {
        return Optional.of(t);
      }
    }
    return Optional.empty();
  }

  public Optional<Tolerance> findTolerance(AnalyteCode analyte) {
    for (Tolerance t : tolerances) {
      if (t.analyte().equals(analyte)) {
        return Optional.of(t);
      }
    }
    return Optional.empty();
  }

  /** The intake rule of a horse: that of the protected where it is pregnant, lactating or sick. */
  public IntakeRule intakeRule(Horse horse) {
    boolean isProtected = isProtected(horse);
    return intakeRules.stream()
        .filter(r -> r.type() == horse.type() && r.isProtected() == isProtected)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no intake rule for " + horse.type()));
  }

  /** Whether a horse is pregnant, lactating or has a condition that forbids restriction. */
  public boolean isProtected(Horse horse) {
    return horse.status() == HorseStatus.PREGNANT
        || horse.status() == HorseStatus.LACTATING
        || settings.words("protected_conditions").stream().anyMatch(horse::has);
  }

  /**
   * A feed's value with the uncertainty of its kind.
   *
   * @param analyte which
   * @param unit unit of {@code value}
   * @param basis basis of {@code value}
   * @param value as printed
   * @param halfWidth half of the last printed digit
   * @param kind batch, typical, max or min; max and min are bounds
   * @param evidence where it stands
   * @throws IllegalArgumentException for another kind
   */
  public Measured ofKind(
      AnalyteCode analyte,
      Unit unit,
      Basis basis,
      double value,
      double halfWidth,
      String kind,
      Evidence evidence) {
    return switch (kind) {
      case "max" -> Measured.atMost(unit, basis, value, evidence);
      case "min" -> Measured.atLeast(unit, basis, value, 0, evidence);
      default -> Measured.of(unit, basis, value, halfWidth, kindU(analyte, value, kind), evidence);
    };
  }

  private double kindU(AnalyteCode analyte, double value, String kind) {
    return kinds.stream()
        .filter(k -> k.kind().equals(kind))
        .filter(k -> k.analyte().equals(analyte.value()) || k.analyte().equals("*"))
        .min(Comparator.comparing(k -> k.analyte().equals("*")))
        .orElseThrow(() -> new IllegalArgumentException("no kind of value \"" + kind + "\""))
        .uOf(value);
  }
}
