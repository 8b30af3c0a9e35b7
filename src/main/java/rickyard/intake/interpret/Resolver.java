package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.core.forage.Analyte;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;
import rickyard.intake.interpret.Figure.Form;
import rickyard.intake.interpret.Finding.Said;

/** Decides unit and basis of one figure from what the page says, and makes the value. */
final class Resolver {
  /** What cell, column and row say stands near; what section and page say only fills a gap. */
  private static final int NEAR = 2;

  private static final double ROOT3 = StrictMath.sqrt(3);

  private Resolver() {}

  static Resolved resolve(Finding finding) {
    AnalyteRule rule = finding.label().rule();
    String basis = basis(finding, rule.analyte());
    if (finding.figure().isTroubled()) {
      return new Resolved(finding, basis, Optional.empty(), finding.figure().trouble())
          .withUnit(unit(finding, rule).unit());
    }
    String trouble = censoring(finding);
    Choice unit = unit(finding, rule);
    if (!trouble.isEmpty()) {
      return new Resolved(finding, basis, Optional.empty(), trouble).withUnit(unit.unit());
    }
    if (unit.unit().isEmpty()) {
      String why = finding.trouble().isEmpty() ? unit.trouble() : finding.trouble();
      return new Resolved(finding, basis, Optional.empty(), why);
    }
    if (basis.isEmpty()) {
      String why = finding.trouble().isEmpty() ? basisTrouble(finding) : finding.trouble();
      return new Resolved(finding, "", Optional.empty(), why)
          .withUnit(unit.unit())
          .withBare(value(finding, unit.unit().get(), Basis.NONE).in(rule.analyte().unit()));
    }
    Measured value = value(finding, unit.unit().get(), basisOf(basis)).in(rule.analyte().unit());
    boolean possible = value.best() <= rule.ceiling() && value.lower() <= rule.ceiling();
    String why = possible ? finding.trouble() : "implausible-figure";
    return new Resolved(finding, basis, Optional.of(value), why).withUnit(unit.unit());
  }

  private record Choice(Optional<Unit> unit, String trouble) {}

  private static String censoring(Finding finding) {
    Form form = finding.figure().form();
    if (form == Form.TRACE) {
      return "trace-without-limit";
    }
    boolean limited = finding.limit().filter(Figure::hasNumber).isPresent();
    return form == Form.NOT_DETECTED && !limited ? "detection-limit-not-stated" : "";
  }

  private static Choice unit(Finding finding, AnalyteRule rule) {
    List<Unit> allowed = rule.units();
    if (rule.analyte().unit() == Unit.ONE) {
      return new Choice(Optional.of(Unit.ONE), "");
    }
    List<Said<Unit>> said = finding.units();
    if (said.isEmpty()) {
      return new Choice(Optional.empty(), "unit-not-stated");
    }
    if (said.get(0).from() > 0) {
      List<Unit> distinct = distinct(said);
      List<Unit> possible = new ArrayList<>(1);
      for (Unit unit : distinct) {
        if (allowed.contains(unit) && isPossible(finding, rule, unit)) {
          possible.add(unit);
        }
      }
      if (possible.size() > 1) {
        return new Choice(Optional.empty(), "unit-contradiction");
      }
      if (distinct.size() > 1 && possible.size() == 1) {
        return new Choice(Optional.of(possible.get(0)), "");
      }
    }
    Unit unit = said.get(0).what();
    return allowed.contains(unit)
        ? new Choice(Optional.of(unit), "")
        : new Choice(Optional.empty(), "unit-not-possible");
  }

  /** What is said near; where nothing is, what is said elsewhere. */
  private static List<Unit> distinct(List<Said<Unit>> said) {
    List<Unit> distinct = new ArrayList<>(1);
    for (Said<Unit> one : said) {
      boolean counts = one.from() <= NEAR || said.get(0).from() > NEAR;
      if (counts && !distinct.contains(one.what())) {
        distinct.add(one.what());
      }
    }
    return distinct;
  }

  /** Whether a figure in this unit stays below what is possible for its analyte. */
  static boolean isPossible(Finding finding, AnalyteRule rule, Unit unit) {
    double number = finding.figure().number().doubleValue();
    return unit.convert(number, rule.analyte().unit()) <= rule.ceiling();
  }

  /** The basis as af, dm or none; empty if it is not stated or the page contradicts itself. */
  private static String basis(Finding finding, Analyte analyte) {
    if (analyte.basis() == Basis.NONE) {
      return "none";
    }
    if (analyte.basis() == Basis.AS_FED) {
      return "af";
    }
    List<Said<String>> said = finding.bases();
    if (said.isEmpty() || isContradiction(said)) {
      return "";
    }
    return said.get(0).what();
  }

  /** Column and row, or two marks of one column, say different things. */
  private static boolean isContradiction(List<Said<String>> said) {
    if (said.get(0).from() == 0) {
      return false;
    }
    Optional<String> near = Optional.empty();
    for (Said<String> one : said) {
      if (one.from() <= NEAR && near.filter(n -> !n.equals(one.what())).isPresent()) {
        return true;
      }
      near = one.from() <= NEAR ? Optional.of(one.what()) : near;
    }
    return false;
  }

  private static String basisTrouble(Finding finding) {
    return finding.bases().isEmpty() ? "basis-not-stated" : "basis-contradiction";
  }

  static Basis basisOf(String word) {
    return switch (word) {
      case "af" -> Basis.AS_FED;
      case "dm" -> Basis.DRY_MATTER;
      default -> Basis.NONE;
    };
  }

  private static Measured value(Finding finding, Unit unit, Basis basis) {
    Figure figure = finding.figure();
    Evidence evidence = new Evidence.Reported(finding.place(), finding.raw());
    double number = figure.number().doubleValue();
    return switch (figure.form()) {
      case BELOW -> Measured.below(unit, basis, number, number / 2 / ROOT3, evidence);
      case ABOVE -> Measured.atLeast(unit, basis, number, 0, evidence);
      case NOT_DETECTED -> {
        double limit = finding.limit().orElseThrow().number().doubleValue();
        yield Measured.below(unit, basis, limit, limit / 2 / ROOT3, evidence);
      }
      default -> {
        double half = figure.half().doubleValue();
        yield Measured.of(unit, basis, number, half, half / ROOT3, evidence);
      }
    };
  }
}
