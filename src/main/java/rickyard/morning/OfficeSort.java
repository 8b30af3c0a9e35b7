package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.report.view.LotRow;

/** Lots by suitability as the only forage; needs reports only. */
public final class OfficeSort {
  private static final String FORMAT = "%-14s %-12s %9s %7s  %s";

  private OfficeSort() {}

  /**
   * The lots as lines of at most 80 columns where ids are short.
   *
   * @param group only how the lots stand for this group
   * @param progress told what had to be mended in the ledger
   */
  public static List<String> of(
      OfficeFolders folders, LocalDate asOf, Optional<String> group, Progress progress) {
    Desk desk = Desk.open(folders, new Options("kg", new java.util.TreeSet<>()), asOf, progress);
    group.ifPresent(g -> requireGroup(desk, g));
    Places places = new Places(desk.morning().files());
    List<LotRow> rows = new LotRows(desk.inputs(), desk.morning(), desk.judged(), places).rows();
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(Locale.ROOT, FORMAT, "lot", "material", "WSC+st %", "starch", "stands"));
    for (LotRow row : rows) {
      lines.add(
          String.format(
              Locale.ROOT,
              FORMAT,
              row.lot(),
              row.material(),
              number(row.nscWsc()),
              number(row.starch()),
              stands(row, group)));
    }
    if (rows.isEmpty()) {
      lines.add("No lot: neither a register nor a report names one.");
    }
    lines.add("% of dry matter; 'clears the chosen limit' is said of the lot as the only forage.");
    return lines;
  }

  private static void requireGroup(Desk desk, String group) {
    var known = desk.inputs().tables().judgement().conditions().groups();
    if (!known.contains(group)) {
      throw new UsageException(
          "There is no group \"" + group + "\"; groups are " + String.join(", ", known) + ".");
    }
  }

  private static String number(@Nullable Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.1f", value);
  }

  private static String stands(LotRow row, Optional<String> group) {
    if (group.isPresent()) {
      String asked = group.get();
      return row.suits().contains(asked)
          ? "clears"
          : row.notFor().contains(asked)
              ? "exceeds"
              : row.undecided().contains(asked) ? "not cleared" : "no limit";
    }
    List<String> words = new ArrayList<>();
    addWords(words, "clears for", row.suits());
    addWords(words, "not for", row.notFor());
    addWords(words, "undecided for", row.undecided());
    String all = words.isEmpty() ? row.reason() : String.join("; ", words);
    boolean isProvisional = row.assumptions().contains(LotRows.PROVISIONAL);
    return isProvisional ? all + " (provisional)" : all;
  }

  private static void addWords(List<String> words, String start, List<String> groups) {
    if (!groups.isEmpty()) {
      words.add(start + " " + String.join(", ", groups));
    }
  }
}
