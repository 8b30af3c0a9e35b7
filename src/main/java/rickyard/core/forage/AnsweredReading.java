package rickyard.core.forage;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Applies one answer to one reading that waited for it. */
final class AnsweredReading {
  private static final String LEAVE_OUT_ONE = Choices.LEAVE_OUT + " ";

  private final Map<AnalyteCode, Analyte> analytes;

  AnsweredReading(Map<AnalyteCode, Analyte> analytes) {
    this.analytes = analytes;
  }

  /**
   * The reading as answered; empty if the answer does not settle it.
   *
   * @param reading waits with a doubt
   * @param doubt the question's doubt
   * @param taken what the office said
   */
  Optional<Reading> apply(Reading reading, Doubt doubt, Taken taken) {
    String said = taken.said();
    if (taken.is(Choices.LEAVE_OUT) || said.equals(LEAVE_OUT_ONE + reading.analyte())) {
      return Optional.of(
          reading.with(reading.analyte(), reading.rawBasis(), Optional.empty(), "left-out"));
    }
    boolean printed = taken.is(Choices.AS_PRINTED) || taken.is(Choices.AS_READ);
    if (printed || said.startsWith(LEAVE_OUT_ONE)) {
      return reading.value().map(v -> settled(reading, reading.analyte(), v, taken));
    }
    if (taken.is(Choices.SWAPPED)) {
      return reading
          .value()
          .map(v -> settled(reading, reading.analyte(), v.onBasis(other(v.basis())), taken));
    }
    if (taken.is(Choices.DECIMAL_MARK) || taken.is(Choices.THOUSANDS_MARK)) {
      String raw = RawFigure.pointed(reading.raw(), taken.is(Choices.DECIMAL_MARK));
      return value(reading, reading.analyte(), unit(reading), basis(reading), raw, taken);
    }
    return byWord(reading, said, doubt, taken);
  }

  private Optional<Reading> byWord(Reading reading, String said, Doubt doubt, Taken taken) {
    Optional<Basis> basis = RawFigure.basis(said);
    if (basis.isPresent()) {
      return rebased(reading, basis.get(), doubt, taken);
    }
    Optional<AnalyteCode> code = code(said, doubt);
    if (code.isPresent()) {
      return named(reading, code.get(), doubt, taken);
    }
    Optional<Unit> unit = RawFigure.unit(said);
    if (unit.isPresent()) {
      Optional<Basis> printed = basis(reading);
      return value(reading, reading.analyte(), unit, printed, reading.raw(), taken);
    }
    return number(reading, said, doubt, taken);
  }

  private Optional<Reading> rebased(Reading reading, Basis basis, Doubt doubt, Taken taken) {
    if (!reading.doubt().equals(doubt.code())) {
      return Optional.of(
          reading.with(reading.analyte(), basis.code(), reading.value(), reading.doubt()));
    }
    Optional<Measured> known = reading.value().or(reading::bare);
    return known.isPresent()
        ? known.map(v -> settled(reading, reading.analyte(), v.onBasis(basis), taken))
        : value(
            reading, reading.analyte(), unit(reading), Optional.of(basis), reading.raw(), taken);
  }

  /** The name settled; a figure that waits for something else besides keeps waiting for that. */
  private Optional<Reading> named(Reading reading, AnalyteCode code, Doubt doubt, Taken taken) {
    boolean waits = !reading.doubt().isEmpty() && !reading.doubt().equals(doubt.code());
    if (waits) {
      return Optional.of(reading.with(code, reading.rawBasis(), reading.value(), reading.doubt()));
    }
    return reading.value().isPresent()
        ? reading
            .value()
            .flatMap(v -> canonical(code, v))
            .map(v -> settled(reading, code, v, taken))
        : value(reading, code, unit(reading), basis(reading), reading.raw(), taken);
  }

  /** A number as the answer: the figure itself, or the limit of detection where that was asked. */
  private Optional<Reading> number(Reading reading, String said, Doubt doubt, Taken taken) {
    boolean limit = doubt.code().contains("limit");
    String raw = limit && !said.startsWith("<") ? "<" + said : said;
    Optional<Unit> unit = RawFigure.unitBehind(said).or(() -> unit(reading));
    return value(reading, reading.analyte(), unit, basis(reading), raw, taken);
  }

  private Optional<Reading> value(
      Reading reading,
      AnalyteCode code,
      Optional<Unit> unit,
      Optional<Basis> basis,
      String raw,
      Taken taken) {
    if (unit.isEmpty() || basis.isEmpty()) {
      return Optional.empty();
    }
    return RawFigure.read(raw, unit.get(), basis.get(), taken.evidence())
        .flatMap(v -> canonical(code, v))
        .map(v -> settled(reading, code, v, taken));
  }

  private Optional<Measured> canonical(AnalyteCode code, Measured value) {
    Analyte analyte = analytes.get(code);
    if (analyte == null) {
      return Optional.of(value);
    }
    return analyte.unit().dimension() == value.unit().dimension()
        ? Optional.of(value.in(analyte.unit()))
        : Optional.empty();
  }

  private static Optional<Unit> unit(Reading reading) {
    return reading
        .unit()
        .or(() -> RawFigure.unit(reading.rawUnit()))
        .or(() -> reading.value().or(reading::bare).map(Measured::unit));
  }

  private static Optional<Basis> basis(Reading reading) {
    Optional<Basis> printed = RawFigure.basis(reading.rawBasis());
    return printed.isPresent() ? printed : reading.value().map(Measured::basis);
  }

  private static Basis other(Basis basis) {
    return switch (basis) {
      case AS_FED -> Basis.DRY_MATTER;
      case DRY_MATTER -> Basis.AS_FED;
      case NONE -> Basis.NONE;
    };
  }

  /** A code among the choices. */
  private static Optional<AnalyteCode> code(String said, Doubt doubt) {
    String code = said.toUpperCase(Locale.ROOT);
    boolean offered = doubt.choices().contains(said);
    return offered && code.matches("[A-Z][A-Z0-9_]*") && RawFigure.unit(said).isEmpty()
        ? Optional.of(new AnalyteCode(code))
        : Optional.empty();
  }

  private static Reading settled(Reading reading, AnalyteCode code, Measured value, Taken taken) {
    Measured answered = value.withEvidence(taken.evidence());
    return reading.with(code, answered.basis().code(), Optional.of(answered), "");
  }
}
