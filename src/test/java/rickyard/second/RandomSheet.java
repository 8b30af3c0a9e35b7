package rickyard.second;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Method;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;

/** A report of a lot as random figures: whole, partial, as fed or dry, in various units. */
record RandomSheet(List<Printed> figures, int cores) {
  private record Range(String code, double low, double high, String unit) {}

  private static final List<Range> RANGES =
      List.of(
          new Range("CP", 4, 22, "%"),
          new Range("ADF", 25, 45, "%"),
          new Range("NDF", 46, 70, "%"),
          new Range("EE", 1, 4, "%"),
          new Range("ASH", 3, 11, "%"),
          new Range("WSC", 3, 16, "%"),
          new Range("ESC", 2, 9, "%"),
          new Range("STARCH", 0.2, 4, "%"),
          new Range("NSC_WSC", 5, 18, "%"),
          new Range("DE", 1.6, 2.6, "Mcal/kg"),
          new Range("CA", 0.2, 1.6, "%"),
          new Range("P", 0.1, 0.4, "%"),
          new Range("MG", 0.1, 0.4, "%"),
          new Range("K", 0.8, 3, "%"),
          new Range("NA", 0.01, 0.3, "%"),
          new Range("FE", 40, 700, "mg/kg"),
          new Range("CU", 2, 15, "mg/kg"),
          new Range("ZN", 8, 60, "mg/kg"),
          new Range("SE", 0.02, 3, "mg/kg"),
          new Range("NO3_N", 50, 4000, "mg/kg"),
          new Range("NO3", 300, 18000, "mg/kg"),
          new Range("ERGOVALINE", 0.02, 0.7, "mg/kg"));

  private record PrintUnit(String name, double factor, int decimals) {}

  static RandomSheet draw(Draws draws) {
    List<Printed> figures = new ArrayList<>();
    boolean hasDm = draws.chance(0.9);
    double dm = draws.between(55, 93);
    if (hasDm) {
      boolean isWater = draws.chance(0.3);
      String digits = draws.printed(isWater ? 100 - dm : dm, isWater ? 100 - dm : dm, 1);
      figures.add(new Printed(isWater ? "MOISTURE" : "DM", digits, false, 1, "%", "af", "nir"));
    }
    boolean isAsFed = draws.chance(0.4);
    for (Range range : RANGES) {
      boolean isRare = List.of("NSC_WSC", "NO3", "ERGOVALINE").contains(range.code());
      if (draws.chance(isRare ? 0.4 : 0.75)) {
        figures.add(figure(draws, range, isAsFed ? "af" : "dm", isAsFed ? dm / 100 : 1));
      }
    }
    return new RandomSheet(figures, draws.chance(0.6) ? draws.whole(1, 30) : 0);
  }

  private static Printed figure(Draws draws, Range range, String basis, double scale) {
    PrintUnit unit = draws.of(unitsOf(range.unit()));
    String digits =
        draws.printed(
            range.low() * scale / unit.factor(),
            range.high() * scale / unit.factor(),
            unit.decimals());
    boolean isBelow = draws.chance(0.06);
    String method = draws.of(List.of("nir", "wet", ""));
    return new Printed(range.code(), digits, isBelow, unit.factor(), unit.name(), basis, method);
  }

  private static List<PrintUnit> unitsOf(String canonical) {
    return switch (canonical) {
      case "%" ->
          List.of(
              new PrintUnit("%", 1, 2),
              new PrintUnit("g/kg", 0.1, 1),
              new PrintUnit("g/lb", 0.1 / 0.45359237, 2));
      case "mg/kg" ->
          List.of(
              new PrintUnit("mg/kg", 1, 2),
              new PrintUnit("mg/lb", 1 / 0.45359237, 2),
              new PrintUnit("ug/kg", 0.001, 0));
      default ->
          List.of(
              new PrintUnit("Mcal/kg", 1, 2),
              new PrintUnit("MJ/kg", 1 / 4.184, 1),
              new PrintUnit("Mcal/lb", 1 / 0.45359237, 3));
    };
  }

  /** The same as the reader hands it over: canonical unit, printed basis, rounding only in u. */
  Sample sample(String label) {
    List<Reading> readings = new ArrayList<>();
    for (Printed f : figures) {
      readings.add(reading(f, readings.size()));
    }
    OptionalInt said = cores > 0 ? OptionalInt.of(cores) : OptionalInt.empty();
    return new Sample(label, "", "", "", Optional.empty(), said, readings, List.of(), List.of());
  }

  private static Reading reading(Printed f, int row) {
    Basis basis = f.basis().equals("af") ? Basis.AS_FED : Basis.DRY_MATTER;
    Unit unit = Unit.findByCode(f.unit()).orElseThrow();
    String raw = f.isBelow() ? "<" + f.digits() : f.digits();
    Place place = new Place("5ec0", 1, row + 1, f.code());
    Evidence evidence = new Evidence.Reported(place, raw);
    double half = Csv.halfWidth(f.digits());
    Measured value =
        f.isBelow()
            ? Measured.below(unit, basis, f.number(), 0, evidence)
            : Measured.of(unit, basis, f.number(), half, half / Math.sqrt(3), evidence);
    Method method =
        f.method().isEmpty() ? Method.UNKNOWN : f.method().equals("wet") ? Method.WET : Method.NIR;
    return new Reading(
        new AnalyteCode(f.code()),
        raw,
        f.unit(),
        f.basis(),
        method,
        place,
        Optional.of(value.in(canonical(f))),
        "");
  }

  private static Unit canonical(Printed f) {
    if (f.code().equals("DM") || f.code().equals("MOISTURE")) {
      return Unit.PERCENT;
    }
    String unit =
        RANGES.stream().filter(r -> r.code().equals(f.code())).findFirst().orElseThrow().unit();
    return Unit.findByCode(unit).orElseThrow();
  }
}
