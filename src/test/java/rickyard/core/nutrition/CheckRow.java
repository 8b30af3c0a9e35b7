package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One row of {@code reference/requirement-checks.csv}. */
public record CheckRow(
    String group,
    double matureKg,
    double currentKg,
    String detail,
    String nutrient,
    String unit,
    String value,
    double tolerance,
    String source,
    String status) {

  private static final Map<String, Nutrient> NUTRIENTS = nutrients();

  /** What a row can prove. */
  public enum Evidence {
    /** Seen printed in a source. */
    PRINTED("printed in a source"),
    /** Value and equation recalled: one memory. */
    RECALLED("recalled [R]"),
    /** Recalled; a constant was fitted to it. */
    FITTED("recalled and fitted to [F]"),
    /** Filled from the equation: agreement is by construction. */
    COMPUTED("computed from the equation [E]"),
    /** Recalled without a mark: maximum tolerable levels. */
    MEMORY("recalled, unmarked");

    private final String words;

    Evidence(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  static List<CheckRow> all() {
    return read("requirement-checks.csv").stream().map(CheckRow::of).toList();
  }

  static List<CSVRecord> read(String name) {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
    try (InputStream in = requireNonNull(CheckRow.class.getResourceAsStream("/reference/" + name));
        CSVParser parser =
            CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CheckRow of(CSVRecord row) {
    return new CheckRow(
        row.get("class"),
        number(row.get("mature_bw_kg")),
        number(row.get("current_bw_kg")),
        row.get("detail"),
        row.get("nutrient"),
        row.get("unit"),
        row.get("value"),
        Double.parseDouble(row.get("tolerance")),
        row.get("source"),
        row.get("status"));
  }

  /** The rows print a weight or leave it blank: then 500 kg stand for any. */
  private static double number(String cell) {
    return cell.isEmpty() ? 500 : Double.parseDouble(cell);
  }

  private static Map<String, Nutrient> nutrients() {
    Map<String, Nutrient> names = new TreeMap<>();
    for (Nutrient nutrient : Nutrient.values()) {
      names.put(nutrient.code().toLowerCase(Locale.ROOT), nutrient);
    }
    names.put("lysine", Nutrient.LYS);
    names.put("vitamin_a", Nutrient.VIT_A);
    names.put("vitamin_d", Nutrient.VIT_D);
    names.put("vitamin_e", Nutrient.VIT_E);
    return names;
  }

  boolean isNutrient() {
    return NUTRIENTS.containsKey(nutrient.toLowerCase(Locale.ROOT));
  }

  Nutrient knownNutrient() {
    return requireNonNull(NUTRIENTS.get(nutrient.toLowerCase(Locale.ROOT)), nutrient);
  }

  double number() {
    return Double.parseDouble(value);
  }

  public Evidence evidence() {
    if (status.equals("verified")) {
      return Evidence.PRINTED;
    }
    return source.contains("[R]")
        ? Evidence.RECALLED
        : source.contains("[F]")
            ? Evidence.FITTED
            : source.contains("[E]") ? Evidence.COMPUTED : Evidence.MEMORY;
  }

  /** Whether the row is of a horse and not of needs per kg, steps or contents. */
  public boolean isOfOneWeight() {
    return (unit.endsWith("/d") && !unit.contains("BW")) || unit.equals("kg");
  }

  boolean isKnownMismatch() {
    return source.contains("KNOWN MISMATCH");
  }

  /** What tells it from the other rows that give the same thing. */
  String key() {
    return String.join("|", group, detail, nutrient, value) + "|" + matureKg + "|" + currentKg;
  }

  static String keyOf(CSVRecord row) {
    return String.join(
            "|", row.get("class"), row.get("detail"), row.get("nutrient"), row.get("value"))
        + "|"
        + number(row.get("mature_bw_kg"))
        + "|"
        + number(row.get("current_bw_kg"));
  }
}
