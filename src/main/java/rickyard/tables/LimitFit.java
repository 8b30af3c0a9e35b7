package rickyard.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rickyard.core.forage.Analyte;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.LimitUnit;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;

/**
 * Holds limits against the analytes that are kept: one on a quantity that no analysis holds would
 * never be judged, and one in another kind of unit or on another basis cannot be.
 */
final class LimitFit {
  private LimitFit() {}

  /**
   * The limits that do not fit, as problems of their rows.
   *
   * @param limits {@code limits.csv}
   * @param kept the analytes of which analyses hold values
   */
  static List<TableProblem> problems(TableFile limits, Map<AnalyteCode, Analyte> kept) {
    List<TableProblem> found = new ArrayList<>();
    for (TableRow row : limits.rows()) {
      String quantity = row.text("quantity");
      Optional<LimitUnit> unit = LimitUnit.parse(row.text("unit"));
      if (quantity.matches("[a-z][a-z0-9_]*") && unit.isPresent()) {
        check(row, new AnalyteCode(quantity.toUpperCase(java.util.Locale.ROOT)), unit.get(), kept)
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private static Optional<TableProblem> check(
      TableRow row, AnalyteCode code, LimitUnit unit, Map<AnalyteCode, Analyte> kept) {
    boolean isRatio = code.equals(AnalyteCode.CA_OXALATE);
    Analyte analyte = kept.get(code);
    if (analyte == null && !isRatio) {
      return Optional.of(
          problem(row, "quantity", "unknown-quantity", "an analyte of which values are kept"));
    }
    if (row.text("subject").equals(LimitSubject.BUCKET_MEAL.code())) {
      return Optional.empty();
    }
    Unit own = analyte == null ? Unit.ONE : analyte.unit();
    Basis basis = analyte == null ? Basis.NONE : analyte.basis();
    boolean isFit = own.dimension() == unit.unit().dimension() && unit.basis() == basis;
    return isFit
        ? Optional.empty()
        : Optional.of(
            problem(
                row,
                "unit",
                "unit-does-not-fit",
                "a unit like " + own.code() + words(basis) + " for " + code));
  }

  private static String words(Basis basis) {
    return switch (basis) {
      case AS_FED -> " AF";
      case DRY_MATTER -> " DM";
      case NONE -> "";
    };
  }

  private static TableProblem problem(TableRow row, String column, String code, String expected) {
    return new TableProblem(row.file(), row.number(), column, code, expected, row.text(column));
  }
}
