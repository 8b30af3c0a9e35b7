package rickyard.core.forage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;

/** Samples, readings and a table of uncertainties for tests. */
final class Samples {
  static final Uncertainties UNCERTAINTIES =
      new Uncertainties(
          List.of(
              lab("WSC", "wet", "any", 0.7),
              lab("WSC", "nir", "any", 1.5),
              lab("WSC", "nir", "legume", 2.25),
              lab("ESC", "any", "any", 1.2),
              lab("STARCH", "wet", "any", 0.3),
              lab("STARCH", "nir", "any", 0.6),
              lab("DM", "any", "any", 0.7),
              new ErrorTerm("lab", "*", "any", "any", 15, true, "memory", "memory"),
              term("core", "WSC", 2.0),
              term("core", "STARCH", 0.5),
              term("cores", "*", 3)));

  private Samples() {}

  private static ErrorTerm lab(String code, String method, String material, double value) {
    return new ErrorTerm("lab", code, method, material, value, false, "memory", "memory");
  }

  private static ErrorTerm term(String kind, String code, double value) {
    return new ErrorTerm(kind, code, "any", "any", value, false, "memory", "memory");
  }

  static Reading reading(String code, Basis basis, double best, Method method) {
    return reading(code, basis, Unit.PERCENT, best, method);
  }

  static Reading reading(String code, Basis basis, Unit unit, double best, Method method) {
    Place place = new Place("d0c", 1, 1, code + " " + basis.code());
    Measured value =
        Measured.of(
            unit, basis, best, 0.05, 0.05 / Math.sqrt(3), new Evidence.Reported(place, best + ""));
    return new Reading(
        new AnalyteCode(code),
        Double.toString(best),
        unit.code(),
        basis.code(),
        method,
        place,
        Optional.of(value),
        "");
  }

  static Reading dm(String code, double best) {
    return reading(code, Basis.DRY_MATTER, best, Method.UNKNOWN);
  }

  static Reading af(String code, double best) {
    return reading(code, Basis.AS_FED, best, Method.UNKNOWN);
  }

  static Reading below(String code, double x) {
    Reading like = dm(code, x);
    return new Reading(
        like.analyte(),
        "<" + x,
        "%",
        "dm",
        Method.UNKNOWN,
        like.place(),
        Optional.of(
            Measured.below(
                Unit.PERCENT,
                Basis.DRY_MATTER,
                x,
                0,
                new Evidence.Reported(like.place(), "<" + x))),
        "");
  }

  static Reading inDoubt(Reading reading, String doubt) {
    return new Reading(
        reading.analyte(),
        reading.raw(),
        reading.rawUnit(),
        reading.rawBasis(),
        reading.method(),
        reading.place(),
        reading.value(),
        doubt);
  }

  static Sample of(String label, Reading... readings) {
    return new Sample(
        label,
        "",
        "",
        "",
        Optional.empty(),
        OptionalInt.empty(),
        Arrays.asList(readings),
        List.of(),
        List.of());
  }

  static Sample with(Sample s, List<Doubt> doubts, List<Check> checks) {
    return new Sample(
        s.label(),
        s.batch(),
        s.labNo(),
        s.material(),
        s.sampledOn(),
        s.cores(),
        s.readings(),
        new ArrayList<>(doubts),
        checks);
  }

  static Sample sampled(Sample s, LocalDate on) {
    return new Sample(
        s.label(),
        s.batch(),
        s.labNo(),
        s.material(),
        Optional.of(on),
        s.cores(),
        s.readings(),
        s.doubts(),
        s.checks());
  }

  static Sample cores(Sample s, int cores) {
    return new Sample(
        s.label(),
        s.batch(),
        s.labNo(),
        s.material(),
        s.sampledOn(),
        OptionalInt.of(cores),
        s.readings(),
        s.doubts(),
        s.checks());
  }

  static Subject lot(String id) {
    return new Subject(id, "", MaterialClass.GRASS, OptionalInt.empty());
  }

  static AccountedAnalysis analysis(Sample sample) {
    return new AnalysisMaker(UNCERTAINTIES).make(sample, lot("N2"));
  }
}
