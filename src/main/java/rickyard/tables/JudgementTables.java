package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rickyard.core.forage.Analyte;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.judgement.Bound;
import rickyard.core.judgement.Caution;
import rickyard.core.judgement.ConditionRow;
import rickyard.core.judgement.Conditions;
import rickyard.core.judgement.IfMissing;
import rickyard.core.judgement.JudgementSettings;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.LimitUnit;
import rickyard.core.judgement.LotNote;
import rickyard.core.judgement.LotRules;
import rickyard.core.judgement.Severity;

/**
 * {@code config/conditions.csv}, {@code limits.csv}, {@code judgement-settings.csv}, {@code
 * lot-notes.csv} and {@code cautions.csv}.
 *
 * @param conditions condition to group
 * @param limits in the order of the table
 * @param settings single numbers and choices of the judging
 * @param notes sentences that verdicts call for
 * @param cautions what no laboratory's figure tells
 * @param files the tables read, for versions and digests
 * @param problems everything wrong in them; a row with a problem is not among {@code limits}
 */
public record JudgementTables(
    Conditions conditions,
    List<Limit> limits,
    JudgementSettings settings,
    List<LotNote> notes,
    List<Caution> cautions,
    List<TableFile> files,
    List<TableProblem> problems) {

  private static final List<String> CONDITION_COLUMNS =
      List.of("condition", "with", "group", "note", "source", "locator", "status");
  private static final List<String> LIMIT_COLUMNS =
      List.of(
          "limit_id",
          "group",
          "subject",
          "quantity",
          "bound",
          "value",
          "unit",
          "risk",
          "severity",
          "if_missing",
          "materials",
          "source",
          "locator",
          "status");

  public JudgementTables {
    requireNonNull(conditions, "conditions");
    limits = List.copyOf(limits);
    requireNonNull(settings, "settings");
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
    files = List.copyOf(files);
    problems = List.copyOf(problems);
  }

  /** What a lot is judged by. */
  public LotRules lotRules() {
    return new LotRules(limits, settings);
  }

  /**
   * The limits that no value can be held against.
   *
   * @param kept the analytes of which analyses hold values
   */
  public List<TableProblem> unfit(Map<AnalyteCode, Analyte> kept) {
    return files.stream()
        .filter(f -> f.name().equals("limits.csv"))
        .flatMap(f -> LimitFit.problems(f, kept).stream())
        .toList();
  }

  /** Loads them all, with the office's overrides where it has a config folder. */
  public static JudgementTables load(Optional<Path> officeConfig) {
    TableFile conditions =
        TableFile.load(
            "conditions.csv", CONDITION_COLUMNS, List.of("condition", "with"), officeConfig);
    TableFile limits =
        TableFile.load("limits.csv", LIMIT_COLUMNS, List.of("limit_id"), officeConfig);
    List<ConditionRow> rows = conditions.rows().stream().map(JudgementTables::condition).toList();
    List<Limit> read = new ArrayList<>();
    limits.rows().forEach(row -> limit(row).ifPresent(read::add));
    JudgementSettingsTable settings = JudgementSettingsTable.load(officeConfig);
    LotWordsTables words = LotWordsTables.load(officeConfig);
    List<TableFile> files = new ArrayList<>(List.of(conditions, limits, settings.file()));
    files.addAll(words.files());
    List<TableProblem> problems = new ArrayList<>();
    files.forEach(f -> problems.addAll(f.problems()));
    return new JudgementTables(
        new Conditions(rows),
        read,
        settings.settings(),
        words.notes(),
        words.cautions(),
        files,
        problems);
  }

  private static ConditionRow condition(TableRow row) {
    return new ConditionRow(
        row.required("condition"),
        row.text("with"),
        row.text("group"),
        row.text("note"),
        row.text("source"),
        row.text("status"));
  }

  private static Optional<Limit> limit(TableRow row) {
    Optional<LimitSubject> subject =
        code(row, "subject", LimitSubject.values(), LimitSubject::code);
    Optional<Bound> bound = code(row, "bound", Bound.values(), Bound::code);
    Optional<Severity> severity = code(row, "severity", Severity.values(), Severity::code);
    Optional<IfMissing> missing = code(row, "if_missing", IfMissing.values(), IfMissing::code);
    Optional<LimitUnit> unit = LimitUnit.parse(row.required("unit"));
    if (unit.isEmpty()) {
      row.problem("unit", "unknown-unit", "a unit with its basis, such as % DM");
    }
    boolean hasQuantity = hasQuantity(row);
    boolean hasMaterials = hasMaterials(row);
    double value = row.requiredNumber("value");
    OptionalDouble risk = row.number("risk");
    boolean isLimit = isLimit(row, value);
    boolean isRisk = isRisk(row, risk);
    if (subject.isEmpty()
        || bound.isEmpty()
        || severity.isEmpty()
        || missing.isEmpty()
        || unit.isEmpty()
        || !hasQuantity
        || !hasMaterials
        || !isLimit
        || !isRisk) {
      return Optional.empty();
    }
    return Optional.of(
        new Limit(
            row.required("limit_id"),
            row.required("group"),
            subject.get(),
            row.text("quantity"),
            bound.get(),
            value,
            unit.get(),
            risk,
            severity.get(),
            missing.get(),
            row.text("materials"),
            row.text("source"),
            row.text("locator"),
            row.text("status"),
            row.isOffice()));
  }

  private static boolean hasQuantity(TableRow row) {
    if (row.required("quantity").matches("[a-z][a-z0-9_]*")) {
      return true;
    }
    row.problem("quantity", "unknown-quantity", "an analyte code in lower case");
    return false;
  }

  private static boolean hasMaterials(TableRow row) {
    if (List.of("", "hay", "haylage").contains(row.text("materials"))) {
      return true;
    }
    row.problem("materials", "unknown-word", "hay, haylage or blank");
    return false;
  }

  private static boolean isLimit(TableRow row, double value) {
    if (Double.isFinite(value) && value >= 0) {
      return true;
    }
    if (Double.isFinite(value)) {
      row.problem("value", "out-of-range", "a number of at least 0");
    }
    return false;
  }

  private static boolean isRisk(TableRow row, OptionalDouble risk) {
    if (risk.isEmpty()) {
      return row.text("risk").isEmpty();
    }
    if (risk.getAsDouble() > 0 && risk.getAsDouble() <= 0.5) {
      return true;
    }
    row.problem("risk", "out-of-range", "a share above 0 and at most 0.5, or blank");
    return false;
  }

  private static <T> Optional<T> code(
      TableRow row, String column, T[] values, Function<T, String> code) {
    String cell = row.required(column);
    Optional<T> found = Arrays.stream(values).filter(v -> code.apply(v).equals(cell)).findFirst();
    if (found.isEmpty() && !cell.isEmpty()) {
      row.problem(
          column,
          "unknown-word",
          "one of " + String.join(", ", Arrays.stream(values).map(code).toList()));
    }
    return found;
  }
}
