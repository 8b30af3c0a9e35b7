package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rickyard.core.forage.Doubt;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Unit;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;
import rickyard.intake.interpret.Finding.Said;
import rickyard.intake.interpret.LayoutHint.What;

/**
 * The hints that hold for one page. A hint fills a gap and never overrules the page; where the page
 * says otherwise, a person is asked.
 */
final class PageHints {
  /** Said by a hint: farther than anything on the page. */
  static final int FROM_HINT = 6;

  private static final String CONTRADICTED = "hint-contradicted";

  private final List<LayoutHint> hints;
  private boolean markHinted;
  private final List<Doubt> doubts = new ArrayList<>();

  private PageHints(List<LayoutHint> hints) {
    this.hints = List.copyOf(hints);
  }

  static PageHints none() {
    return new PageHints(List.of());
  }

  /** The hints whose words all stand on the page. */
  static PageHints on(Grid grid, List<LayoutHint> all) {
    if (all.isEmpty()) {
      return none();
    }
    List<List<String>> cells = new ArrayList<>();
    for (Page page : grid.pages()) {
      for (Row row : page.rows()) {
        for (Cell cell : row.cells()) {
          cells.add(Words.of(cell.text()));
        }
      }
    }
    return new PageHints(
        all.stream()
            .filter(
                hint ->
                    hint.phrases().stream()
                        .allMatch(
                            phrase ->
                                cells.stream()
                                    .anyMatch(c -> Collections.indexOfSubList(c, phrase) >= 0)))
            .toList());
  }

  private Optional<LayoutHint> find(What what, String about) {
    return hints.stream()
        .filter(h -> h.what() == what && h.about().equals(about))
        .findFirst()
        .or(
            () ->
                hints.stream().filter(h -> h.what() == what && h.about().equals("*")).findFirst());
  }

  /** The decimal mark of the page, or the hint's where no number of the page tells. */
  Dialect dialect(Dialect ofPage) {
    Optional<LayoutHint> hint = find(What.DECIMAL_MARK, "*");
    if (hint.isEmpty()) {
      return ofPage;
    }
    Dialect hinted = hint.get().value().equals("comma") ? Dialect.COMMA : Dialect.POINT;
    if (ofPage == Dialect.OPEN) {
      markHinted = true;
      return hinted;
    }
    if (ofPage != hinted) {
      contradicted(hint.get(), "the decimal mark is a " + hint.get().value());
    }
    return ofPage;
  }

  /** The order of day and month, or the hint's where every date allows it and none tells. */
  Dates.Order order(List<String> dates) {
    Dates.Order ofPage = Dates.order(dates);
    Optional<LayoutHint> hint = find(What.DATE_ORDER, "*");
    if (hint.isEmpty()) {
      return ofPage;
    }
    Dates.Order hinted =
        hint.get().value().equals("day-first") ? Dates.Order.DAY_FIRST : Dates.Order.MONTH_FIRST;
    boolean possible =
        dates.stream().filter(d -> !d.isBlank()).noneMatch(d -> Dates.read(d, hinted).isEmpty());
    if (ofPage == Dates.Order.UNKNOWN) {
      return possible ? hinted : ofPage;
    }
    if (ofPage != hinted) {
      contradicted(hint.get(), "dates are written " + hint.get().value());
    }
    return ofPage;
  }

  private void contradicted(LayoutHint hint, String words) {
    doubts.add(
        new Doubt(
            CONTRADICTED,
            "report",
            Optional.empty(),
            "A hint says that "
                + words
                + ", but the page says otherwise: are the figures right as"
                + " read?",
            List.of("yes", "no"),
            "",
            "The hint is " + hint.row() + ". The page was followed."));
  }

  /** Questions about the report as a whole. */
  List<Doubt> doubts() {
    return List.copyOf(doubts);
  }

  /** The figures with their gaps filled; a page that says otherwise makes its figures doubtful. */
  List<Finding> fill(List<Finding> findings) {
    if (hints.isEmpty()) {
      return findings;
    }
    return findings.stream().map(f -> filled(f, findings)).toList();
  }

  private Finding filled(Finding finding, List<Finding> all) {
    Optional<LayoutHint> basis =
        find(What.BASIS, finding.code()).filter(h -> isOnDryMatter(finding));
    Optional<LayoutHint> unit = find(What.UNIT, finding.code());
    List<Said<Unit>> units = new ArrayList<>(finding.units());
    List<Said<String>> bases = new ArrayList<>(finding.bases());
    if (units.isEmpty()) {
      RowReader.say(units, unit.map(LayoutHint::value).flatMap(Unit::findByCode), FROM_HINT);
    }
    if (bases.isEmpty()) {
      RowReader.say(bases, basis.map(LayoutHint::value), FROM_HINT);
    }
    boolean otherwise =
        unit.filter(h -> isContradicted(h, finding, all, f -> codes(f.units()))).isPresent()
            || basis
                .filter(h -> isContradicted(h, finding, all, f -> words(f.bases())))
                .isPresent();
    return finding.with(
        units, bases, finding.trouble().isEmpty() && otherwise ? CONTRADICTED : finding.trouble());
  }

  private static boolean isOnDryMatter(Finding finding) {
    return finding.label().rule().analyte().basis() == Basis.DRY_MATTER;
  }

  private static List<String> codes(List<Said<Unit>> said) {
    return said.stream().map(s -> s.what().code()).toList();
  }

  private static List<String> words(List<Said<String>> said) {
    return said.stream().map(Said::what).toList();
  }

  /**
   * Whether every figure that the hint is about says something else. A unit for all lines only
   * fills gaps: lines have units of their own.
   */
  private static boolean isContradicted(
      LayoutHint hint, Finding finding, List<Finding> all, Function<Finding, List<String>> said) {
    boolean ofAll = hint.about().equals("*");
    if (ofAll && hint.what() == What.UNIT) {
      return false;
    }
    return all.stream()
        .filter(f -> ofAll ? isOnDryMatter(f) : f.code().equals(finding.code()))
        .map(said)
        .noneMatch(words -> words.isEmpty() || words.contains(hint.value()));
  }

  /** What an open name stands for by a hint. */
  Optional<LayoutHint> openName(String name) {
    return find(name.equals("NITRATE") ? What.NITRATE_FORM : What.CARBOHYDRATE, name);
  }

  /** The figure with the hints that it rests on as its evidence. */
  Resolved marked(Resolved resolved) {
    Finding finding = resolved.finding();
    List<String> rows = new ArrayList<>();
    if (isOnDryMatter(finding) && finding.bases().stream().anyMatch(s -> s.from() == FROM_HINT)) {
      find(What.BASIS, finding.code()).ifPresent(h -> rows.add("basis by " + h.row()));
    }
    if (finding.units().stream().anyMatch(s -> s.from() == FROM_HINT)) {
      find(What.UNIT, finding.code()).ifPresent(h -> rows.add("unit by " + h.row()));
    }
    if (markHinted && finding.raw().matches("(?s).*[.,].*")) {
      find(What.DECIMAL_MARK, "*").ifPresent(h -> rows.add("decimal mark by " + h.row()));
    }
    return rows.isEmpty() ? resolved : resting(resolved, String.join(", ", rows));
  }

  static Resolved resting(Resolved resolved, String hint) {
    Finding finding = resolved.finding();
    return new Resolved(
        finding,
        resolved.basis(),
        resolved.value().map(v -> v.withEvidence(evidence(finding, v.evidence(), hint))),
        resolved.trouble());
  }

  private static Evidence evidence(Finding finding, Evidence before, String hint) {
    String all = before instanceof Evidence.Hinted hinted ? hinted.hint() + ", " + hint : hint;
    return new Evidence.Hinted(finding.place(), finding.raw(), all);
  }
}
