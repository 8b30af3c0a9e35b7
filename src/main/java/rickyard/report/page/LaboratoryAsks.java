package rickyard.report.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.OutcomeRow;
import rickyard.report.view.VerdictRow;

/** What only a laboratory can put right: a broken file, a figure left out, a report withdrawn. */
final class LaboratoryAsks {
  private static final Pattern LEFT_OUT = Pattern.compile("([A-Za-z][A-Za-z -]*?) is not reported");
  private static final int MOST = 60;

  private LaboratoryAsks() {}

  static List<String> of(MorningView view) {
    List<String> asks = new ArrayList<>();
    view.outcomes().stream()
        .filter(row -> row.outcome().equals("refused") && row.reason().contains("ask for it again"))
        .map(LaboratoryAsks::again)
        .forEach(asks::add);
    for (LotRow lot : view.lots()) {
      lot(view, lot).ifPresent(asks::add);
    }
    if (asks.size() <= MOST) {
      return asks;
    }
    List<String> first = new ArrayList<>(asks.subList(0, MOST));
    first.add((asks.size() - MOST) + " more; see outcomes.csv and verdicts.csv.");
    return first;
  }

  private static String again(OutcomeRow row) {
    String file = row.part().isBlank() ? row.file() : row.file() + ", " + row.part();
    return Harmless.line(file) + ": " + Plain.sentence(row.reason());
  }

  private static Optional<String> lot(MorningView view, LotRow lot) {
    Set<String> missing = new LinkedHashSet<>();
    boolean withdrawn = false;
    for (VerdictRow row : lot.verdicts()) {
      if (row.verdict().equals("cannot-judge") && row.quantity().startsWith("nsc")) {
        LEFT_OUT.matcher(row.reason()).results().forEach(m -> missing.add(m.group(1).strip()));
        withdrawn = withdrawn || row.reason().contains("the laboratory withdrew it");
      }
    }
    if (withdrawn) {
      return Optional.of(
          name(view, lot) + ": the report is withdrawn; ask why, and what takes its place.");
    }
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            name(view, lot)
                + ": ask for "
                + String.join(" and ", missing)
                + " of the same sample, if it is kept.");
  }

  private static String name(MorningView view, LotRow lot) {
    String reports =
        view.analyses().stream()
            .filter(row -> row.lot().equals(lot.lot()) && !row.reportNo().isBlank())
            .map(LaboratoryAsks::report)
            .distinct()
            .collect(Collectors.joining("; "));
    return Harmless.line(lot.lot()) + (reports.isEmpty() ? "" : " (" + reports + ")");
  }

  private static String report(AnalysisRow row) {
    return "report "
        + Harmless.line(row.reportNo())
        + (row.lab().isBlank() ? "" : " of " + Harmless.line(row.lab()));
  }
}
