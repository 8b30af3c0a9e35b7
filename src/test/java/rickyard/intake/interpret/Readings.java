package rickyard.intake.interpret;

import java.util.Optional;
import java.util.stream.Collectors;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.Sample;
import rickyard.intake.grid.Grid;
import rickyard.tables.DictionaryTables;

/** Reads grids with the built-in dictionary and shows what was read in one line for each sample. */
final class Readings {
  static final Dictionary DICTIONARY = DictionaryTables.load(Optional.empty());
  private static final String DOCUMENT = "0".repeat(64);

  private Readings() {}

  static Interpretation interpret(Grid grid) {
    return new Interpreter(DICTIONARY).interpret(grid, DOCUMENT);
  }

  static Report report(Grid grid) {
    return interpret(grid)
        .fold(
            Interpretation.Understood::report,
            n -> {
              throw new AssertionError(n.code() + ": " + n.reason());
            });
  }

  /** 'label: CP=9.4 dm, STARCH?nsc-unknown': settled figures in canonical units, doubts by code. */
  static String words(Grid grid) {
    return report(grid).samples().stream().map(Readings::words).collect(Collectors.joining("\n"));
  }

  static String words(Sample sample) {
    String figures =
        sample.readings().stream().map(Readings::words).collect(Collectors.joining(", "));
    return (sample.label().isEmpty() ? "-" : sample.label()) + ": " + figures;
  }

  private static String words(Reading reading) {
    if (!reading.isSettled()) {
      return reading.analyte() + "?" + reading.doubt();
    }
    var value = reading.value().orElseThrow();
    String sign = value.lower() == value.upper() ? "=" : value.isBoundedAbove() ? "<" : ">";
    double shown = sign.equals("<") ? value.upper() : value.lower();
    return reading.analyte() + sign + plain(shown) + " " + value.basis().code();
  }

  private static String plain(double value) {
    return java.math.BigDecimal.valueOf(value)
        .setScale(6, java.math.RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
