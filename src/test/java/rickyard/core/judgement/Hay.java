package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Method;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.core.forage.Subject;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.tables.JudgementTables;
import rickyard.tables.UncertaintyTable;

/** A lot of hay as reports give it, made figure by figure and judged by the built-in tables. */
final class Hay {
  static final JudgementTables TABLES = JudgementTables.load(Optional.empty());
  static final UncertaintyTable UNCERTAINTY = UncertaintyTable.load(Optional.empty());
  private static final AnalysisMaker MAKER = new AnalysisMaker(UNCERTAINTY.uncertainties());

  private final List<Reading> readings = new ArrayList<>();
  private MaterialClass material = MaterialClass.GRASS;
  private Method method = Method.NIR;
  private OptionalInt cores = OptionalInt.of(20);

  private Hay() {}

  static Hay of() {
    return new Hay();
  }

  Hay material(MaterialClass of) {
    material = of;
    return this;
  }

  Hay method(Method by) {
    method = by;
    return this;
  }

  Hay cores(int taken) {
    cores = OptionalInt.of(taken);
    return this;
  }

  Hay unknownCores() {
    cores = OptionalInt.empty();
    return this;
  }

  Hay dm(String code, double value) {
    return with(code, unit(code), Basis.DRY_MATTER, value);
  }

  Hay af(String code, double value) {
    return with(code, unit(code), Basis.AS_FED, value);
  }

  /** The figure that a cell prints; '&lt;x' is below x; blank is nothing. */
  Hay printed(String code, String cell, Basis basis) {
    if (cell == null || cell.isBlank()) {
      return this;
    }
    return cell.startsWith("<")
        ? below(code, Double.parseDouble(cell.substring(1)), basis)
        : with(code, unit(code), basis, Double.parseDouble(cell));
  }

  Hay below(String code, double x, Basis basis) {
    return add(code, basis, Measured.below(unit(code), basis, x, 0, said(code)));
  }

  Hay with(String code, Unit unit, Basis basis, double value) {
    return add(code, basis, Measured.of(unit, basis, value, 0.05, 0, said(code)));
  }

  private Hay add(String code, Basis basis, Measured value) {
    readings.add(
        new Reading(
            new AnalyteCode(code),
            Double.toString(value.best()),
            value.unit().code(),
            basis.code(),
            method,
            place(code),
            Optional.of(value),
            ""));
    return this;
  }

  private static Place place(String code) {
    return new Place("d0c", 1, 1, code);
  }

  private static Evidence said(String code) {
    return new Evidence.Reported(place(code), "");
  }

  private static Unit unit(String code) {
    return switch (code) {
      case "NO3_N", "NO3", "SE", "FE", "ERGOVALINE" -> Unit.MG_PER_KG;
      case "MOULD" -> Unit.CFU_PER_G;
      default -> Unit.PERCENT;
    };
  }

  AccountedAnalysis analysis() {
    Sample sample =
        new Sample(
            "N2",
            "",
            "",
            "",
            Optional.empty(),
            OptionalInt.empty(),
            readings,
            List.of(),
            List.of());
    return MAKER.make(sample, new Subject("N2", "", material, cores));
  }

  List<Verdict> judge() {
    return LotJudge.judge(analysis(), TABLES.lotRules());
  }

  Verdict judge(Limit limit) {
    return LotJudge.judge(analysis(), new LotRules(List.of(limit), TABLES.settings())).get(0);
  }

  Verdict judge(String limitId) {
    return judge().stream()
        .filter(v -> v.limit().id().equals(limitId))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no verdict on " + limitId));
  }

  boolean isJudged(String limitId) {
    return judge().stream().anyMatch(v -> v.limit().id().equals(limitId));
  }
}
