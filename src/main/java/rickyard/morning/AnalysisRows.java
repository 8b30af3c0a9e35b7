package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.core.forage.ReportStatus;
import rickyard.core.forage.SampleKey;
import rickyard.core.forage.SettledSample;
import rickyard.core.forage.SharedValues;
import rickyard.core.forage.Standing;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.report.view.AnalysisRow;

/**
 * One row for every figure of this morning's documents and of those in force, and one for every
 * value derived from them.
 */
final class AnalysisRows {
  private final SettledMorning morning;
  private final Places places;
  private final SharedValues shared = new SharedValues();
  private final Map<SampleKey, InForce> inForce = new HashMap<>();

  AnalysisRows(SettledMorning morning, Places places) {
    this.morning = morning;
    this.places = places;
    for (InForce entry : morning.settled().inForce()) {
      entry.from().forEach(key -> inForce.put(key, entry));
    }
  }

  List<AnalysisRow> rows() {
    List<AnalysisRow> rows = new ArrayList<>();
    for (SettledSample sample : morning.settled().samples()) {
      places
          .find(sample.key().document())
          .filter(w -> !w.isEarlier() || inForce.containsKey(sample.key()))
          .ifPresent(where -> rows.addAll(of(sample, where)));
    }
    for (InForce entry : morning.settled().inForce()) {
      if (entry.isCombined()) {
        entry.analysis().ifPresent(a -> rows.addAll(combined(entry, a)));
      }
    }
    return rows;
  }

  /** The figures of one sample, of this morning or an earlier one, in force or not. */
  List<AnalysisRow> of(SettledSample sample) {
    return places.find(sample.key().document()).map(where -> of(sample, where)).orElse(List.of());
  }

  private List<AnalysisRow> of(SettledSample sample, Places.Where where) {
    List<AnalysisRow> rows = new ArrayList<>();
    Optional<AccountedAnalysis> analysis =
        Optional.ofNullable(inForce.get(sample.key())).flatMap(InForce::analysis);
    String sampledOn = sample.sample().sampledOn().map(LocalDate::toString).orElse("");
    for (Reading reading : sample.sample().readings()) {
      rows.add(reading(sample, where, sampledOn, reading, analysis));
    }
    InForce entry = inForce.get(sample.key());
    if (entry != null && !entry.isCombined()) {
      analysis.ifPresent(
          a -> derived(a).forEach((c, v) -> rows.add(derived(sample, where, sampledOn, c, v))));
    }
    return rows;
  }

  private static Map<AnalyteCode, Measured> derived(AccountedAnalysis analysis) {
    Map<AnalyteCode, Measured> found = new java.util.TreeMap<>();
    analysis
        .analysis()
        .dryMatter()
        .filter(v -> v.evidence() instanceof Evidence.Derived)
        .ifPresent(v -> found.put(AnalyteCode.DM, v));
    analysis
        .analysis()
        .contents()
        .forEach(
            (code, value) -> {
              // A lower bound from partial evidence is no value of the sample.
              if (value.evidence() instanceof Evidence.Derived && value.isBoundedAbove()) {
                found.put(code, value);
              }
            });
    return found;
  }

  private AnalysisRow reading(
      SettledSample sample,
      Places.Where where,
      String sampledOn,
      Reading reading,
      Optional<AccountedAnalysis> analysis) {
    Optional<Measured> value = reading.value();
    return new AnalysisRow(
        where.file(),
        where.part(),
        reading.place().page(),
        reading.place().row(),
        reading.place().column(),
        lot(sample),
        where.report().map(Report::lab).orElse(""),
        where.report().map(Report::reportNo).orElse(""),
        where.report().map(Report::revision).orElse(0),
        sample
            .sample()
            .standing()
            .or(() -> where.report().map(Report::status))
            .map(ReportStatus::code)
            .orElse(""),
        sampledOn,
        reading.analyte().value(),
        reading.raw(),
        reading.rawUnit(),
        reading.rawBasis(),
        value.map(v -> v.basis().code()).orElse(""),
        value.map(v -> v.unit().code()).orElse(""),
        shared.number(value.map(Measured::best).orElse(null)),
        shared.number(value.map(Measured::low).orElse(null)),
        shared.number(value.map(Measured::high).filter(Double::isFinite).orElse(null)),
        shared.number(u(reading, value, analysis)),
        value.map(v -> v.evidence().origin()).orElse("reported"),
        reading.method().code(),
        state(sample, reading),
        sample.batch(),
        isUsed(sample, reading, analysis),
        "");
  }

  /** Tests that are combined are none of them what the lot is judged by. */
  private boolean isUsed(
      SettledSample sample, Reading reading, Optional<AccountedAnalysis> analysis) {
    InForce entry = inForce.get(sample.key());
    return entry != null
        && !entry.isCombined()
        && analysis
            .flatMap(a -> a.analysis().find(reading.analyte()))
            .filter(v -> isOf(v, reading.place()))
            .isPresent();
  }

  /** The full uncertainty where this very figure is in force, else that of its rounding. */
  private static @Nullable Double u(
      Reading reading, Optional<Measured> value, Optional<AccountedAnalysis> analysis) {
    return analysis
        .flatMap(a -> a.analysis().find(reading.analyte()))
        .filter(v -> isOf(v, reading.place()))
        .or(() -> value)
        .map(Measured::u)
        .orElse(null);
  }

  private static boolean isOf(Measured value, Place place) {
    if (value.evidence() instanceof Evidence.Hinted hinted) {
      return hinted.place().equals(place);
    }
    return value.evidence() instanceof Evidence.Reported reported && reported.place().equals(place);
  }

  private static String lot(SettledSample sample) {
    return sample.subject().isEmpty() ? sample.sample().label() : sample.subject();
  }

  private static String state(SettledSample sample, Reading reading) {
    if (sample.standing() == Standing.IN_FORCE && !reading.isSettled()) {
      return reading.doubt().equals("identity-broken") ? "quarantined" : "question";
    }
    return sample.standing() == Standing.DUPLICATE ? "superseded" : sample.standing().code();
  }

  private AnalysisRow derived(
      SettledSample sample,
      Places.Where where,
      String sampledOn,
      AnalyteCode code,
      Measured value) {
    return derivedRow(
        where.file(),
        where.part(),
        lot(sample),
        sample.batch(),
        where.report(),
        sampledOn,
        code,
        value);
  }

  /** Tests that agree: a row of their own for each combined value, with no file. */
  private List<AnalysisRow> combined(InForce entry, AccountedAnalysis analysis) {
    List<AnalysisRow> rows = new ArrayList<>();
    analysis
        .analysis()
        .dryMatter()
        .ifPresent(
            v ->
                rows.add(
                    derivedRow(
                        "",
                        "",
                        entry.subject(),
                        entry.batch(),
                        Optional.empty(),
                        "",
                        AnalyteCode.DM,
                        v)));
    analysis
        .analysis()
        .contents()
        .forEach(
            (code, value) -> {
              if (value.isBoundedAbove()) {
                rows.add(
                    derivedRow(
                        "", "", entry.subject(), entry.batch(), Optional.empty(), "", code, value));
              }
            });
    return rows;
  }

  private AnalysisRow derivedRow(
      String file,
      String part,
      String lot,
      String batch,
      Optional<Report> report,
      String sampledOn,
      AnalyteCode code,
      Measured value) {
    return new AnalysisRow(
        file,
        part,
        0,
        0,
        "",
        lot,
        report.map(Report::lab).orElse(""),
        report.map(Report::reportNo).orElse(""),
        report.map(Report::revision).orElse(0),
        report.map(r -> r.status().code()).orElse(""),
        sampledOn,
        code.value(),
        "",
        "",
        "",
        value.basis().code(),
        value.unit().code(),
        value.best(),
        value.low(),
        Double.isFinite(value.high()) ? Double.valueOf(value.high()) : null,
        value.u(),
        "derived",
        "calc",
        "in-force",
        batch,
        true,
        Cells.of(value, places));
  }
}
