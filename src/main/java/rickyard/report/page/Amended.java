package rickyard.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.text.Harmless;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.AmendmentRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;

/** What a new report changed of a lot, in one sentence each: from what to what, and for whom. */
final class Amended {
  private static final int MOST_NAMES = 12;

  private Amended() {}

  /** What was amended first, then every other change of which that says nothing. */
  static Listed<String> of(MorningView view) {
    Set<String> told =
        view.amendments().stream().map(AmendmentRow::line).collect(Collectors.toSet());
    List<String> lines = new ArrayList<>();
    view.amendments().forEach(row -> lines.add(sentence(row, view)));
    LimitNames limits = new LimitNames(view);
    view.changes().stream()
        .filter(c -> !told.contains(c))
        .map(limits::inWords)
        .map(Plain::line)
        .forEach(lines::add);
    return Listed.first(lines, line -> line, "summary.json");
  }

  private static String sentence(AmendmentRow row, MorningView view) {
    String lot = Harmless.line(row.lot());
    String about = row.batch().isBlank() ? lot : lot + ", batch " + Harmless.line(row.batch());
    List<String> parts = new ArrayList<>();
    parts.add(about + ": " + FigureChanges.of(row));
    String fed = fed(row.lot(), view);
    parts.add(fed.isEmpty() ? "fed to no horse on record" : "fed to " + fed);
    if (!row.cleared().isEmpty()) {
      parts.add(lot + " does not clear for " + Words.all("group", row.cleared()) + " any more");
    }
    view.lots().stream()
        .filter(l -> l.lot().equals(row.lot()) && row.batch().isBlank())
        .findFirst()
        .map(Amended::standing)
        .ifPresent(parts::add);
    if (!row.decisionRows().isEmpty()) {
      parts.add("decisions to look at again: decisions.csv rows " + row.decisionRows());
    }
    return head(row) + " " + Harmless.sentence(String.join("; ", parts));
  }

  private static String head(AmendmentRow row) {
    String file = Harmless.line(row.by().file());
    if (row.why().equals("withdrawn")) {
      String withdrawn = named(row.from());
      return withdrawn + " is withdrawn (" + file + ").";
    }
    if (row.why().equals("tests-disagree")) {
      return named(row.by()) + " (" + file + ") disagrees with " + named(row.from()) + ".";
    }
    boolean same =
        !row.by().reportNo().isBlank() && row.by().reportNo().equals(row.from().reportNo());
    String old =
        !same
            ? named(row.from())
            : row.from().revision() > 0 ? "revision " + row.from().revision() : "the first report";
    return named(row.by())
        + (row.by().revision() > 0 ? " revision " + row.by().revision() : "")
        + " ("
        + file
        + ") takes the place of "
        + old
        + " ("
        + Harmless.line(row.from().file())
        + ").";
  }

  private static String named(AmendmentRow.Source source) {
    return source.reportNo().isBlank()
        ? "The report in " + Harmless.line(source.file())
        : Harmless.line(source.reportNo());
  }

  private static String standing(LotRow lot) {
    List<String> parts = new ArrayList<>();
    if (!lot.suits().isEmpty()) {
      parts.add("clears for " + Words.all("group", lot.suits()));
    }
    if (!lot.notFor().isEmpty()) {
      parts.add("not for " + Words.all("group", lot.notFor()));
    }
    if (!lot.undecided().isEmpty()) {
      parts.add("not cleared for " + Words.all("group", lot.undecided()));
    }
    return parts.isEmpty() ? "it clears for no group now" : "now " + String.join(", ", parts);
  }

  private static String fed(String lot, MorningView view) {
    List<String> horses =
        view.horses().stream()
            .filter(horse -> isFed(horse, lot))
            .map(horse -> Names.horse(view, horse.horse()))
            .toList();
    int more = horses.size() - MOST_NAMES;
    String names = horses.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
    return more > 0 ? names + " and " + Shown.count(more, "more", "more") : names;
  }

  private static boolean isFed(HorseAdvice horse, String lot) {
    return FindWords.items(horse).anyMatch(portion -> portion.item().equals(lot));
  }
}
