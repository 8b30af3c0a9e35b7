package rickyard.core.forage;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reports, lots and settlements for tests. */
final class Reports {
  static final LocalDate AS_OF = LocalDate.of(2026, 11, 2);
  static final Lot N2 = lot("N2", Optional.of(LocalDate.of(2026, 7, 1)));

  private Reports() {}

  static Lot lot(String id, Optional<LocalDate> harvested) {
    return new Lot(
        id,
        "co-op",
        "grass-hay",
        OptionalDouble.empty(),
        "1",
        harvested,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        OptionalInt.of(12),
        Optional.empty(),
        "");
  }

  static Received received(
      String document,
      String number,
      int revision,
      ReportStatus status,
      Optional<LocalDate> reportedOn,
      Sample... samples) {
    return replacing(document, number, revision, "", status, reportedOn, samples);
  }

  static Received replacing(
      String document,
      String number,
      int revision,
      String replaces,
      ReportStatus status,
      Optional<LocalDate> reportedOn,
      Sample... samples) {
    return new Received(
        new Report(
            document,
            "Fellside",
            number,
            revision,
            replaces,
            status,
            reportedOn,
            List.of(samples),
            List.of()),
        AS_OF,
        document + ".csv");
  }

  static Received noted(Received r, Doubt... notes) {
    Report o = r.report();
    return new Received(
        new Report(
            o.document(),
            o.lab(),
            o.reportNo(),
            o.revision(),
            o.replaces(),
            o.status(),
            o.reportedOn(),
            o.samples(),
            List.of(notes)),
        r.readOn(),
        r.path());
  }

  static Received read(Received r, LocalDate on) {
    return new Received(r.report(), on, r.path());
  }

  static Received fin(String document, String number, Sample... samples) {
    return received(document, number, 0, ReportStatus.FINAL, Optional.empty(), samples);
  }

  static Sample sugars(String label, double wsc, double starch) {
    return Samples.of(label, Samples.dm("WSC", wsc), Samples.dm("STARCH", starch));
  }

  static Settled settle(List<Received> reports) {
    return settle(reports, List.of(N2), List.of(), List.of());
  }

  static Settled settle(
      List<Received> reports, List<Lot> lots, List<Answer> answers, List<Decision> decisions) {
    return settle(new Unsettled(reports, lots, List.of(), answers, decisions, AS_OF));
  }

  static Settled settle(Unsettled unsettled) {
    return new Settlement(new AnalysisMaker(Samples.UNCERTAINTIES), Map.of()).settle(unsettled);
  }

  static Answer answer(String id, String said) {
    return new Answer(id, said, "ruth", AS_OF, "");
  }

  static double nsc(Settled settled, String lot) {
    return settled
        .find(lot, "")
        .flatMap(InForce::analysis)
        .flatMap(a -> a.analysis().find(AnalyteCode.NSC_WSC))
        .orElseThrow()
        .best();
  }

  static boolean hasAnalysis(Settled settled, String lot) {
    return settled.find(lot, "").flatMap(InForce::analysis).isPresent();
  }

  static SettledSample sample(Settled settled, String document) {
    return settled.samples().stream()
        .filter(s -> s.key().document().equals(document))
        .findFirst()
        .orElseThrow();
  }

  static String outcome(Settled settled, String document) {
    return settled.reports().stream()
        .filter(r -> r.document().equals(document))
        .map(SettledReport::outcome)
        .findFirst()
        .orElseThrow();
  }

  static Question question(Settled settled, String kind) {
    return settled.questions().stream()
        .filter(q -> q.kind().equals(kind))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + kind + " in " + settled.questions()));
  }
}
