package rickyard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.report.csv.Field;
import rickyard.report.csv.MorningTables;
import rickyard.report.csv.Table;
import rickyard.report.view.LotRow;

/** Lots by suitability, in 80 columns and as the table that a morning writes. */
final class LotList {
  private static final int STANDS = 14 + 1 + 12 + 1 + 9 + 1 + 7 + 2;

  private LotList() {}

  static List<String> of(List<LotRow> rows, Optional<String> group) {
    List<String> lines = new ArrayList<>();
    lines.add(row("lot", "material", "WSC+st %", "starch", "stands").get(0));
    for (LotRow row : rows) {
      String provisional = row.isProvisional() ? " (provisional)" : "";
      lines.addAll(
          row(
              row.lot(),
              row.material(),
              number(row.nscWsc()),
              number(row.starch()),
              group.map(g -> standing(row, g)).orElseGet(() -> stands(row)) + provisional));
    }
    if (rows.isEmpty()) {
      lines.add("No lot: neither a register nor a report names one.");
    }
    lines.addAll(
        Wrapped.lines(
            "% of dry matter; 'clears the chosen limit' is said of the lot as the only forage."));
    return lines;
  }

  /** The columns of lots.csv; with a group, how each lot stands for it. */
  static Table table(List<LotRow> rows, Optional<String> group) {
    Table lots = MorningTables.lots(rows);
    if (group.isEmpty()) {
      return lots;
    }
    List<String> columns = new ArrayList<>(lots.columns());
    columns.add("stands");
    List<List<Field>> all = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      List<Field> fields = new ArrayList<>(lots.rows().get(i));
      fields.add(Field.text(standing(rows.get(i), group.get())));
      all.add(fields);
    }
    return new Table(lots.file(), columns, all);
  }

  private static List<String> row(
      String lot, String material, String nsc, String starch, String stands) {
    List<String> words = Wrapped.column(stands, Wrapped.WIDTH - STANDS);
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
                Locale.ROOT,
                "%-14s %-12s %9s %7s  %s",
                Wrapped.cut(lot, 14),
                Wrapped.cut(material, 12),
                nsc,
                starch,
                words.get(0))
            .stripTrailing());
    words.stream().skip(1).forEach(more -> lines.add(" ".repeat(STANDS) + more));
    return lines;
  }

  private static String number(@Nullable Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.1f", value);
  }

  private static String standing(LotRow row, String group) {
    return row.suits().contains(group)
        ? "clears"
        : row.notFor().contains(group)
            ? "exceeds"
            : row.undecided().contains(group) ? "not cleared" : "no limit";
  }

  private static String stands(LotRow row) {
    List<String> words = new ArrayList<>();
    addWords(words, "clears for", row.suits());
    addWords(words, "not for", row.notFor());
    addWords(words, "undecided for", row.undecided());
    return words.isEmpty() ? row.reason() : String.join("; ", words);
  }

  private static void addWords(List<String> words, String start, List<String> groups) {
    if (!groups.isEmpty()) {
      words.add(start + " " + String.join(", ", groups));
    }
  }
}
