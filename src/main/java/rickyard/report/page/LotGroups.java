package rickyard.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.LotRow;
import rickyard.report.view.VerdictRow;

/** For whom a lot clears and for whom not, with what a reader must know beside the group's name. */
final class LotGroups {
  /** From here on a chance is said beside 'clears'. */
  private static final double WORTH_SAYING = 0.05;

  private LotGroups() {}

  /** The groups that it clears for; of one that has no limit for sugar, by what it was judged. */
  static String suits(LotRow lot) {
    return lot.suits().stream().map(group -> suits(lot, group)).collect(Collectors.joining(", "));
  }

  private static String suits(LotRow lot, String group) {
    List<VerdictRow> rows = rows(lot, group);
    boolean isSugar = rows.stream().anyMatch(row -> row.quantity().startsWith("nsc"));
    String by =
        isSugar || rows.isEmpty()
            ? ""
            : "by "
                + rows.stream()
                    .map(row -> Words.of("quantity", row.quantity()))
                    .distinct()
                    .collect(Collectors.joining(" and "))
                + " alone";
    return Words.of("group", group) + inBrackets(by, isSugar ? "" : chance(rows));
  }

  /** The highest chance of being over all the same, where a limit has no guard band. */
  private static String chance(List<VerdictRow> rows) {
    return rows.stream()
        .map(VerdictRow::pOver)
        .flatMap(Stream::ofNullable)
        .max(Double::compare)
        .filter(chance -> chance >= WORTH_SAYING)
        .map(chance -> "chance of being over " + Shown.chance(chance))
        .orElse("");
  }

  /** The groups that it is not cleared for and not condemned for either, each with why. */
  static String notCleared(LotRow lot) {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (String group : lot.undecided()) {
      byReason
          .computeIfAbsent(why(rows(lot, group)), why -> new ArrayList<>())
          .add(Words.of("group", group));
    }
    return byReason.entrySet().stream()
        .map(alike -> String.join(", ", alike.getValue()) + inBrackets(alike.getKey(), ""))
        .collect(Collectors.joining("; "));
  }

  private static String why(List<VerdictRow> rows) {
    Optional<VerdictRow> over = worst(rows, "borderline-over");
    Optional<VerdictRow> open = worst(rows, "cannot-judge");
    Optional<VerdictRow> under = worst(rows, "borderline-under");
    return over.map(row -> "a little over, " + Shown.chance(row.pOver()) + " chance of being over")
        .or(() -> open.map(row -> "cannot be judged"))
        .or(
            () ->
                under.map(
                    row ->
                        "a little under, " + Shown.chance(row.pOver()) + " chance of being over"))
        .orElse("");
  }

  private static Optional<VerdictRow> worst(List<VerdictRow> rows, String verdict) {
    return rows.stream()
        .filter(row -> row.verdict().equals(verdict))
        .max((a, b) -> Double.compare(chance(a), chance(b)));
  }

  private static double chance(VerdictRow row) {
    Double chance = row.pOver();
    return chance == null ? 0 : chance;
  }

  private static List<VerdictRow> rows(LotRow lot, String group) {
    return lot.verdicts().stream()
        .filter(row -> row.group().equals(group) && !row.verdict().equals("no-limit"))
        .filter(row -> row.severity().equals("stop") || row.severity().equals("change"))
        .toList();
  }

  private static String inBrackets(String first, String second) {
    String words = first + (first.isEmpty() || second.isEmpty() ? "" : "; ") + second;
    return words.isEmpty() ? "" : " (" + words + ")";
  }
}
