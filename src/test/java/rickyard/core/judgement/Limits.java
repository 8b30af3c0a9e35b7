package rickyard.core.judgement;

import java.util.Optional;
import java.util.OptionalDouble;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Limits and values for tests. */
final class Limits {
  static final Evidence SAID = new Evidence.Assumed("test", "row");

  private Limits() {}

  static Limit of(String quantity, Bound bound, double value, String unit, OptionalDouble risk) {
    return new Limit(
        "test-" + quantity,
        "ID",
        LimitSubject.LOT,
        quantity,
        bound,
        value,
        LimitUnit.parse(unit).orElseThrow(),
        risk,
        Severity.CHANGE,
        IfMissing.ASK,
        "",
        "assumed",
        "",
        "assumed",
        false);
  }

  /** A limit on WSC + starch that differs from others in what is named here only. */
  static Limit named(
      String id, String group, LimitSubject subject, Severity severity, IfMissing ifMissing) {
    return new Limit(
        id,
        group,
        subject,
        "nsc_wsc",
        Bound.MAX,
        10,
        LimitUnit.parse("% DM").orElseThrow(),
        OptionalDouble.empty(),
        severity,
        ifMissing,
        "",
        "assumed",
        "",
        "assumed",
        false);
  }

  static Verdict verdict(Limit limit, Word word) {
    return new Verdict(limit, Optional.empty(), OptionalDouble.empty(), word, "", "");
  }

  static Limit nsc(double value, OptionalDouble risk) {
    return of("nsc_wsc", Bound.MAX, value, "% DM", risk);
  }

  static Measured percent(double best, double u) {
    return Measured.of(Unit.PERCENT, Basis.DRY_MATTER, best, 0, u, SAID);
  }
}
