package rickyard.registers;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Unit;
import rickyard.tables.TableFile;
import rickyard.tables.TableRow;

/**
 * What columns of feeds.csv may give, and how uncertain a registered value is: {@code
 * feed-analytes.csv} and {@code feed-uncertainty.csv}.
 */
final class FeedAnalytes {
  static final String DRY_MATTER_GROUP = "dry-matter";

  private final Map<AnalyteCode, Entry> byCode = new TreeMap<>();
  private final Map<List<String>, Uncertainty> uncertainties = new HashMap<>();

  private FeedAnalytes() {}

  static FeedAnalytes load(Optional<Path> officeConfig, Findings findings) {
    FeedAnalytes all = new FeedAnalytes();
    TableFile analytes =
        TableFile.load(
            "feed-analytes.csv",
            List.of("code", "unit", "group", "source", "status"),
            List.of("code"),
            officeConfig);
    TableFile uncertain =
        TableFile.load(
            "feed-uncertainty.csv",
            List.of("kind", "group", "relative_pct", "minimum", "note", "source", "status"),
            List.of("kind", "group"),
            officeConfig);
    analytes.rows().forEach(all::addAnalyte);
    uncertain.rows().forEach(all::addUncertainty);
    analytes.problems().forEach(findings::fatal);
    uncertain.problems().forEach(findings::fatal);
    return all;
  }

  private void addAnalyte(TableRow row) {
    String code = row.text("code");
    Optional<Unit> unit = Unit.findByCode(row.text("unit"));
    if (!code.matches("[A-Z][A-Z0-9_]*")) {
      row.problem("code", "not-a-code", "upper-case letters, digits and underscores");
    } else if (unit.isEmpty()) {
      row.problem("unit", "unknown-unit", "a unit such as %, mg/kg, Mcal/kg or IU/kg");
    } else {
      AnalyteCode key = new AnalyteCode(code);
      byCode.put(key, new Entry(key, unit.get(), row.text("group")));
    }
  }

  private void addUncertainty(TableRow row) {
    double relative = row.requiredNumber("relative_pct") / 100;
    double minimum = row.requiredNumber("minimum");
    if (relative >= 0 && minimum >= 0) {
      uncertainties.put(
          List.of(row.text("kind"), row.text("group")), new Uncertainty(relative, minimum));
    } else if (relative < 0 || minimum < 0) {
      row.problem("minimum", "out-of-range", "numbers not below 0");
    }
  }

  /** All entries, those with the longest code first, so that NSC_WSC is tried before N. */
  List<Entry> longestFirst() {
    return byCode.values().stream()
        .sorted(
            Comparator.comparing((Entry e) -> -e.code().value().length())
                .thenComparing(Entry::code))
        .toList();
  }

  /**
   * The assumed standard uncertainty of a value.
   *
   * @param kind batch or typical
   * @param value in the canonical unit, on the basis that the label prints
   * @return in the canonical unit; a tenth of the value where the table has no row
   */
  double uncertainty(String kind, String group, double value) {
    Uncertainty found = uncertainties.get(List.of(kind, group));
    return found == null ? 0.1 * value : Math.max(found.minimum(), found.relative() * value);
  }

  /** One analyte that a column may give. */
  record Entry(AnalyteCode code, Unit unit, String group) {}

  private record Uncertainty(double relative, double minimum) {}
}
