package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * Digestible energy of a forage: the report's own horse value or the equation, as configured.
 *
 * <p>Energy lines of ruminants (TDN, net energies, metabolisable energy) are no inputs and never
 * stand in.
 */
final class ForageEnergy {
  private ForageEnergy() {}

  /** Puts the value in force among the contents; leaves a printed one that it replaces in reach. */
  static void add(
      String material, Map<AnalyteCode, Measured> contents, FeedingStandards standards) {
    Optional<Measured> printed = Optional.ofNullable(contents.get(AnalyteCode.DE));
    boolean reportFirst = standards.settings().text("de_preference").equals("report");
    if (reportFirst && printed.isPresent()) {
      return;
    }
    byEquation(material, contents, standards)
        .map(de -> printed.map(p -> beside(de, p)).orElse(de))
        .ifPresent(de -> contents.put(AnalyteCode.DE, de));
  }

  private static Measured beside(Measured formula, Measured printed) {
    if (!(formula.evidence() instanceof Evidence.Derived derived)) {
      return formula;
    }
    List<Evidence.Term> inputs = new ArrayList<>(derived.inputs());
    inputs.add(new Evidence.Term(EnergyComparison.PRINTED, printed));
    return Measured.of(
        formula.unit(),
        formula.basis(),
        formula.best(),
        0,
        formula.u(),
        new Evidence.Derived(derived.formula(), inputs));
  }

  /**
   * The equation with what the report gives; only fat and ash may be typical of the material.
   *
   * @return empty where protein or fibre is not reported
   */
  static Optional<Measured> byEquation(
      String material, Map<AnalyteCode, Measured> contents, FeedingStandards standards) {
    Optional<Measured> cp = reported(contents, AnalyteCode.CP);
    Optional<Measured> adf = reported(contents, AnalyteCode.ADF);
    Optional<Measured> ndf = reported(contents, AnalyteCode.NDF);
    Optional<Measured> fat = orTypical(material, AnalyteCode.EE, contents, standards);
    Optional<Measured> ash = orTypical(material, AnalyteCode.ASH, contents, standards);
    if (cp.isEmpty() || adf.isEmpty() || ndf.isEmpty() || fat.isEmpty() || ash.isEmpty()) {
      return Optional.empty();
    }
    return standards
        .energy()
        .of(
            cp.get(),
            adf.get(),
            ndf.get(),
            fat.get(),
            ash.get(),
            standards.settings().number("de_model_u"));
  }

  private static Optional<Measured> reported(
      Map<AnalyteCode, Measured> contents, AnalyteCode code) {
    return Optional.ofNullable(contents.get(code))
        .filter(value -> Origin.of(value.evidence()) != Origin.ASSUMED);
  }

  private static Optional<Measured> orTypical(
      String material,
      AnalyteCode code,
      Map<AnalyteCode, Measured> contents,
      FeedingStandards standards) {
    return Optional.ofNullable(contents.get(code))
        .or(() -> standards.findTypical(material, code).map(ForageEnergy::measured));
  }

  private static Measured measured(TypicalValue typical) {
    return Measured.of(
        Unit.PERCENT,
        Basis.DRY_MATTER,
        typical.mean(),
        0,
        typical.u(),
        new Evidence.Assumed(
            typical.source().table(), typical.material() + " " + typical.analyte()));
  }
}
