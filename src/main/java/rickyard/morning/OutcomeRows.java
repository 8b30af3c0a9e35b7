package rickyard.morning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rickyard.core.forage.LayoutSeen;
import rickyard.core.forage.Report;
import rickyard.core.forage.SettledReport;
import rickyard.intake.ReadDocument;
import rickyard.intake.ReadFile;
import rickyard.ledger.ArrivalRow;
import rickyard.report.view.OutcomeRow;

/** One row for every file of the inbox and for every part inside one. */
final class OutcomeRows {
  private final SettledMorning morning;
  private final Places places;
  private final Map<String, SettledReport> settled = new HashMap<>();
  private final Map<String, LayoutSeen> layouts = new HashMap<>();
  private final Set<String> seenFiles = new HashSet<>();
  private final Set<String> seenParts = new HashSet<>();

  OutcomeRows(SettledMorning morning, Places places) {
    this.morning = morning;
    this.places = places;
    morning.settled().reports().forEach(r -> settled.put(r.document(), r));
    morning.settled().layouts().forEach(l -> layouts.put(l.document(), l));
  }

  List<OutcomeRow> rows() {
    List<OutcomeRow> rows = new ArrayList<>();
    for (ArrivalRow arrival : morning.files().arrivals()) {
      of(arrival).forEach(row -> rows.add(withLayout(row)));
    }
    return rows;
  }

  private OutcomeRow withLayout(OutcomeRow row) {
    LayoutSeen seen = layouts.get(row.sha256());
    if (seen == null || seen.layout().isNone() || row.outcome().equals("known")) {
      return row;
    }
    List<String> words = new ArrayList<>(seen.notes());
    words.add(0, seen.state());
    return row.withLayout(seen.layout().id(), String.join("; ", words));
  }

  private List<OutcomeRow> of(ArrivalRow arrival) {
    if (!arrival.problemCode().isEmpty()) {
      return List.of(
          row(arrival, "refused", arrival.problemCode(), arrival.problem(), Optional.empty()));
    }
    ReadFile file = morning.files().get(arrival.sha256());
    if (morning.files().isKnown(arrival.sha256())) {
      return List.of(
          row(
              arrival,
              "known",
              "known",
              "the same bytes were settled on an earlier morning",
              Optional.of(file.documents().get(0))));
    }
    if (!seenFiles.add(arrival.sha256())) {
      return List.of(
          row(
              arrival,
              "duplicate",
              "same-bytes",
              "the same bytes as " + places.file(arrival.sha256()),
              Optional.of(file.documents().get(0))));
    }
    return read(arrival, file);
  }

  private List<OutcomeRow> read(ArrivalRow arrival, ReadFile file) {
    ReadDocument own = file.documents().get(0);
    if (!own.container()) {
      return List.of(document(arrival, own));
    }
    List<OutcomeRow> parts = new ArrayList<>();
    for (ReadDocument part : file.documents().subList(1, file.documents().size())) {
      parts.add(document(arrival, part));
    }
    List<OutcomeRow> rows = new ArrayList<>();
    rows.add(container(arrival, own, parts));
    rows.addAll(parts);
    return rows;
  }

  /** A container is what its parts are: a question before an acceptance, a refusal last. */
  private static OutcomeRow container(
      ArrivalRow arrival, ReadDocument own, List<OutcomeRow> parts) {
    String outcome = "refused";
    for (String each : List.of("question", "accepted", "superseded", "duplicate", "known")) {
      if (parts.stream().anyMatch(p -> p.outcome().equals(each))) {
        outcome = each;
        break;
      }
    }
    int samples = parts.stream().mapToInt(OutcomeRow::samples).sum();
    boolean isRefused = outcome.equals("refused");
    return new OutcomeRow(
        arrival.path(),
        "",
        own.sha256(),
        own.bytes(),
        own.kind(),
        outcome,
        isRefused ? "nothing-inside" : "container",
        isRefused ? "nothing inside it is a report" : Words.count(parts.size(), "part") + " inside",
        "",
        "",
        0,
        samples);
  }

  private OutcomeRow document(ArrivalRow arrival, ReadDocument document) {
    if (document.container()) {
      return plain(arrival, document, "accepted", "container", "a container inside a container");
    }
    if (document.report().isEmpty()) {
      return plain(arrival, document, "refused", document.code(), document.reason());
    }
    if (places.find(document.sha256()).map(Places.Where::isEarlier).orElse(false)) {
      return plain(
          arrival,
          document,
          "known",
          "known",
          "the same document was settled on an earlier morning");
    }
    if (!seenParts.add(document.sha256())) {
      return plain(
          arrival, document, "duplicate", "same-bytes", "the same document came in another file");
    }
    SettledReport found = settled.get(document.sha256());
    if (found == null) {
      throw new IllegalStateException("a report was not settled: " + document.sha256());
    }
    return plain(arrival, document, found.outcome(), found.reasonCode(), found.reason());
  }

  private static OutcomeRow plain(
      ArrivalRow arrival, ReadDocument document, String outcome, String code, String reason) {
    Optional<Report> report = document.report();
    return new OutcomeRow(
        arrival.path(),
        document.part(),
        document.sha256(),
        document.bytes(),
        document.kind(),
        outcome,
        code,
        reason,
        report.map(Report::lab).orElse(""),
        report.map(Report::reportNo).orElse(""),
        report.map(Report::revision).orElse(0),
        report.map(r -> r.samples().size()).orElse(0));
  }

  private static OutcomeRow row(
      ArrivalRow arrival,
      String outcome,
      String code,
      String reason,
      Optional<ReadDocument> document) {
    Optional<Report> report = document.flatMap(ReadDocument::report);
    return new OutcomeRow(
        arrival.path(),
        "",
        arrival.sha256(),
        arrival.bytes(),
        document.map(ReadDocument::kind).orElse("other"),
        outcome,
        code,
        reason,
        report.map(Report::lab).orElse(""),
        report.map(Report::reportNo).orElse(""),
        report.map(Report::revision).orElse(0),
        report.map(r -> r.samples().size()).orElse(0));
  }
}
