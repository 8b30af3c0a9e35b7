package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.forage.ErrorTerm;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Uncertainties;

/**
 * {@code config/uncertainties.csv}.
 *
 * @param uncertainties the rows as a model
 * @param file the table read, for version and digest
 * @param problems everything wrong in it; a row with a problem is not in the model
 */
public record UncertaintyTable(
    Uncertainties uncertainties, TableFile file, List<TableProblem> problems) {

  private static final List<String> COLUMNS =
      List.of(
          "kind",
          "analyte",
          "method",
          "material",
          "value",
          "relative",
          "source",
          "locator",
          "status");
  private static final Set<String> KINDS = Set.of("lab", "core", "cores", "sum-correlation");
  private static final Set<String> METHODS = Set.of("nir", "wet", "any");
  private static final Set<String> MATERIALS =
      Stream.concat(
              Stream.of("any"), Arrays.stream(MaterialClass.values()).map(MaterialClass::code))
          .collect(Collectors.toUnmodifiableSet());

  public UncertaintyTable {
    requireNonNull(uncertainties, "uncertainties");
    requireNonNull(file, "file");
    problems = List.copyOf(problems);
  }

  /** Loads the table, with the office's overrides where it has a config folder. */
  public static UncertaintyTable load(Optional<Path> officeConfig) {
    TableFile file =
        TableFile.load(
            "uncertainties.csv",
            COLUMNS,
            List.of("kind", "analyte", "method", "material"),
            officeConfig);
    List<ErrorTerm> terms = new ArrayList<>();
    file.rows().forEach(row -> term(row).ifPresent(terms::add));
    return new UncertaintyTable(new Uncertainties(terms), file, file.problems());
  }

  private static Optional<ErrorTerm> term(TableRow row) {
    boolean isKind = isWord(row, "kind", KINDS);
    boolean isMethod = isWord(row, "method", METHODS);
    boolean isMaterial = isWord(row, "material", MATERIALS);
    boolean isRelative = isWord(row, "relative", Set.of("yes", "no"));
    double value = row.requiredNumber("value");
    boolean isInRange = isInRange(row, value);
    if (!isKind || !isMethod || !isMaterial || !isRelative || !isInRange) {
      return Optional.empty();
    }
    return Optional.of(
        new ErrorTerm(
            row.text("kind"),
            row.required("analyte"),
            row.text("method"),
            row.text("material"),
            value,
            row.text("relative").equals("yes"),
            row.text("source"),
            row.text("status")));
  }

  private static boolean isInRange(TableRow row, double value) {
    if (!Double.isFinite(value)) {
      return false;
    }
    boolean fits =
        switch (row.text("kind")) {
          case "sum-correlation" -> value >= -1 && value <= 1;
          case "cores" -> value >= 1 && value == Math.rint(value) && value <= 1000;
          default -> value >= 0;
        };
    if (!fits) {
      row.problem("value", "out-of-range", "a number that the kind of row allows");
    }
    return fits;
  }

  private static boolean isWord(TableRow row, String column, Set<String> words) {
    if (words.contains(row.required(column))) {
      return true;
    }
    row.problem(
        column, "unknown-word", "one of " + String.join(", ", words.stream().sorted().toList()));
    return false;
  }
}
