package rickyard.core.forage;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Applies one answer to one reading that waited for it. */
final class AnsweredReading {
  private final Map<AnalyteCode, Analyte> analytes;

  AnsweredReading(Map<AnalyteCode, Analyte> analytes) {
    this.analytes = analytes;
  }

  /**
   * The reading as answered; empty if the answer does not settle it.
   *
   * @param reading waits with a doubt
   * @param doubt the question's doubt
   * @param answer what the office said
   */
  Optional<Reading> apply(Reading reading, Doubt doubt, Answer answer) {
    String said = answer.answer().strip();
    String low = said.toLowerCase(Locale.ROOT);
    if (isLeaveOut(low)) {
      return Optional.of(
          with(reading, reading.analyte(), reading.rawBasis(), Optional.empty(), "left-out"));
    }
    Evidence evidence =
        new Evidence.Answered(answer.questionId(), answer.by(), answer.on().toString());
    if (isYes(low)) {
      return doubt.proposed().isEmpty()
          ? reading.value().map(v -> settled(reading, reading.analyte(), v.withEvidence(evidence)))
          : byWord(reading, doubt.proposed(), doubt, evidence);
    }
    return byWord(reading, said, doubt, evidence);
  }

  static boolean isYes(String low) {
    return low.equals("yes")
        || low.equals("as read")
        || low.equals("as printed")
        || low.equals("take it");
  }

  static boolean isLeaveOut(String low) {
    return low.equals("leave out") || low.equals("leave-out") || low.equals("no");
  }

  private Optional<Reading> byWord(Reading reading, String said, Doubt doubt, Evidence evidence) {
    Optional<Basis> basis = RawFigure.basis(said);
    if (basis.isPresent()) {
      return value(reading, reading.analyte(), unit(reading), basis, reading.raw(), evidence);
    }
    Optional<AnalyteCode> code = code(said, doubt);
    if (code.isPresent()) {
      return reading.value().isPresent()
          ? reading
              .value()
              .flatMap(v -> canonical(code.get(), v))
              .map(v -> settled(reading, code.get(), v.withEvidence(evidence)))
          : value(reading, code.get(), unit(reading), basis(reading), reading.raw(), evidence);
    }
    Optional<Unit> unit = RawFigure.unit(said);
    if (unit.isPresent()) {
      return value(reading, reading.analyte(), unit, basis(reading), reading.raw(), evidence);
    }
    return number(reading, said, doubt, evidence);
  }

  /** A number as the answer: the figure itself, or the limit of detection where that was asked. */
  private Optional<Reading> number(Reading reading, String said, Doubt doubt, Evidence evidence) {
    boolean limit = doubt.code().contains("limit");
    String raw = limit && !said.startsWith("<") ? "<" + said : said;
    return value(reading, reading.analyte(), unit(reading), basis(reading), raw, evidence);
  }

  private Optional<Reading> value(
      Reading reading,
      AnalyteCode code,
      Optional<Unit> unit,
      Optional<Basis> basis,
      String raw,
      Evidence evidence) {
    if (unit.isEmpty() || basis.isEmpty()) {
      return Optional.empty();
    }
    return RawFigure.read(raw, unit.get(), basis.get(), evidence)
        .flatMap(v -> canonical(code, v))
        .map(v -> settled(reading, code, v));
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
    Optional<Unit> printed = RawFigure.unit(reading.rawUnit());
    return printed.isPresent() ? printed : reading.value().map(Measured::unit);
  }

  private Optional<Basis> basis(Reading reading) {
    Optional<Basis> printed = RawFigure.basis(reading.rawBasis());
    return printed.isPresent() ? printed : reading.value().map(Measured::basis);
  }

  /** A code among the choices, or the sum in words. */
  private static Optional<AnalyteCode> code(String said, Doubt doubt) {
    String bare = said.toUpperCase(Locale.ROOT).replaceAll("\\s", "");
    String code =
        switch (bare) {
          case "WSC+STARCH" -> "NSC_WSC";
          case "ESC+STARCH" -> "NSC_ESC";
          case "NO3-N" -> "NO3_N";
          default -> bare;
        };
    boolean offered =
        doubt.choices().stream().anyMatch(c -> c.equalsIgnoreCase(said) || c.equals(code));
    return offered && code.matches("[A-Z][A-Z0-9_]*") && RawFigure.unit(said).isEmpty()
        ? Optional.of(new AnalyteCode(code))
        : Optional.empty();
  }

  private static Reading settled(Reading reading, AnalyteCode code, Measured value) {
    return with(reading, code, value.basis().code(), Optional.of(value), "");
  }

  private static Reading with(
      Reading r, AnalyteCode code, String basis, Optional<Measured> value, String doubt) {
    return new Reading(code, r.raw(), r.rawUnit(), basis, r.method(), r.place(), value, doubt);
  }
}
