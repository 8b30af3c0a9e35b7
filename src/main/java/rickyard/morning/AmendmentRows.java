package rickyard.morning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Reopened;
import rickyard.core.forage.Report;
import rickyard.core.forage.SettledSample;
import rickyard.core.judgement.Verdict;
import rickyard.report.view.AmendmentRow;
import rickyard.report.view.AnalysisRow;

/** What the reports that are new this morning replaced, with the figures of both. */
final class AmendmentRows {
  private static final String CLEARS = "clears";

  private final SettledMorning morning;
  private final Judged judged;
  private final Memory memory;
  private final Places places;
  private final AnalysisRows figures;

  AmendmentRows(SettledMorning morning, Judged judged, Memory memory, Places places) {
    this.morning = morning;
    this.judged = judged;
    this.memory = memory;
    this.places = places;
    this.figures = new AnalysisRows(morning, places);
  }

  /** Each value that was replaced by a document of this morning; a known one was told before. */
  List<AmendmentRow> rows() {
    return news(morning, places).stream().map(this::row).toList();
  }

  private static List<Reopened> news(SettledMorning morning, Places places) {
    return morning.settled().reopened().stream()
        .filter(r -> places.find(r.by()).map(w -> !w.isEarlier()).orElse(false))
        .toList();
  }

  /** The same, one sentence each. */
  static List<String> lines(SettledMorning morning, Places places) {
    return news(morning, places).stream().map(r -> line(r, places)).toList();
  }

  private static String line(Reopened reopened, Places places) {
    return reopened.subject()
        + ": "
        + places.file(reopened.by())
        + " takes the place of "
        + places.file(reopened.replaced().document())
        + " ("
        + reopened.why()
        + ")"
        + (reopened.decisionRows().isEmpty()
            ? ""
            : "; decisions to look at again: decisions.csv rows " + reopened.decisionRows());
  }

  private AmendmentRow row(Reopened reopened) {
    return new AmendmentRow(
        reopened.subject(),
        reopened.batch(),
        line(reopened, places),
        reopened.why(),
        sample(reopened).map(figures::of).orElse(List.of()),
        now(reopened),
        source(reopened.replaced().document()),
        source(reopened.by()),
        cleared(reopened),
        reopened.decisionRows());
  }

  private Optional<SettledSample> sample(Reopened reopened) {
    return morning.settled().samples().stream()
        .filter(s -> s.key().equals(reopened.replaced()))
        .findFirst();
  }

  /** The figures in force that the new document brought. */
  private List<AnalysisRow> now(Reopened reopened) {
    List<AnalysisRow> rows = new ArrayList<>();
    for (InForce entry : morning.settled().inForce()) {
      if (entry.subject().equals(reopened.subject()) && entry.batch().equals(reopened.batch())) {
        morning.settled().samplesOf(entry).stream()
            .filter(s -> s.key().document().equals(reopened.by()))
            .forEach(s -> rows.addAll(figures.of(s)));
      }
    }
    return rows;
  }

  private AmendmentRow.Source source(String document) {
    Optional<Report> report = places.find(document).flatMap(Places.Where::report);
    return new AmendmentRow.Source(
        report.map(Report::reportNo).orElse(""),
        report.map(Report::revision).orElse(0),
        places.file(document));
  }

  /** Groups all of whose limits the lot cleared on the last morning, and not all of them now. */
  private List<String> cleared(Reopened reopened) {
    SortedMap<String, String> before =
        memory.lots().getOrDefault(reopened.subject(), new TreeMap<>());
    if (!reopened.batch().isEmpty() || before.isEmpty()) {
      return List.of();
    }
    TreeSet<String> lost = new TreeSet<>();
    TreeSet<String> never = new TreeSet<>();
    for (Verdict verdict : judged.verdicts().getOrDefault(reopened.subject(), List.of())) {
      String group = verdict.limit().group();
      if (!CLEARS.equals(before.get(verdict.limit().id()))) {
        never.add(group);
      } else if (!CLEARS.equals(verdict.word().code())) {
        lost.add(group);
      }
    }
    lost.removeAll(never);
    return List.copyOf(lost);
  }
}
