package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Lot;
import rickyard.core.forage.Report;
import rickyard.core.forage.SettledSample;
import rickyard.core.forage.SharedValues;
import rickyard.core.judgement.Caution;
import rickyard.core.judgement.ErrorAccount;
import rickyard.core.judgement.LotNotes;
import rickyard.core.judgement.Suitability;
import rickyard.core.judgement.Verdict;
import rickyard.core.quantity.Measured;
import rickyard.registers.Office;
import rickyard.report.view.LotRow;
import rickyard.report.view.VerdictRow;
import rickyard.tables.JudgementTables;

/** Lots with their verdicts, sorted by suitability as the only forage. */
final class LotRows {
  private static final Comparator<LotRow> BY_SUITABILITY =
      Comparator.<LotRow>comparingInt(r -> r.notFor().size())
          .thenComparingInt(r -> -r.suits().size())
          .thenComparingDouble(r -> r.nscWsc() == null ? Double.MAX_VALUE : r.nscWsc())
          .thenComparing(LotRow::lot);

  private final Office office;
  private final Tables tables;
  private final SettledMorning morning;
  private final Judged judged;
  private final Places places;
  private final SharedValues shared = new SharedValues();

  LotRows(Inputs inputs, SettledMorning morning, Judged judged, Places places) {
    this.office = inputs.registers().office();
    this.tables = inputs.tables();
    this.morning = morning;
    this.judged = judged;
    this.places = places;
  }

  List<LotRow> rows() {
    List<LotRow> rows = new ArrayList<>();
    for (InForce entry : morning.settled().inForce()) {
      if (judged.verdicts().containsKey(entry.subject()) && entry.batch().isEmpty()) {
        rows.add(row(entry));
      }
    }
    rows.sort(BY_SUITABILITY);
    return rows;
  }

  private LotRow row(InForce entry) {
    Optional<Lot> lot = office.findLot(entry.subject());
    List<Verdict> verdicts = judged.verdicts().getOrDefault(entry.subject(), List.of());
    Suitability suitability =
        judged.suitability().getOrDefault(entry.subject(), Suitability.of(verdicts));
    return new LotRow(
        entry.subject(),
        lot.map(Lot::holder).orElse(""),
        lot.map(Lot::material).orElse(""),
        lot.map(Lot::cutting).orElse(""),
        lot.map(l -> boxed(l.stockKg())).orElse(null),
        content(entry, AnalyteCode.NSC_WSC),
        content(entry, AnalyteCode.NSC_ESC),
        content(entry, AnalyteCode.STARCH),
        List.copyOf(suitability.suits()),
        List.copyOf(suitability.notFor()),
        List.copyOf(suitability.undecided()),
        entry.why(),
        verdicts.stream().filter(v -> !v.isSilent()).map(v -> verdict(entry.subject(), v)).toList(),
        assumptions(entry),
        report(entry).map(Report::lab).orElse(""),
        sample(entry).flatMap(s -> s.sample().sampledOn()).map(LocalDate::toString).orElse(""),
        notes(entry, verdicts),
        accounts(entry, verdicts, tables));
  }

  /** What its verdicts call for, and what its material and region make a person ask. */
  private List<String> notes(InForce entry, List<Verdict> verdicts) {
    JudgementTables words = tables.judgement();
    List<String> found = new ArrayList<>();
    entry.analysis().ifPresent(a -> found.addAll(LotNotes.of(verdicts, a, words.notes())));
    String material = office.findLot(entry.subject()).map(Lot::material).orElse("");
    words.cautions().stream()
        .filter(c -> c.isFor(material, words.settings()))
        .map(Caution::text)
        .forEach(found::add);
    return found;
  }

  /** What the uncertainties of a lot's judged values are made of. */
  static List<String> accounts(InForce entry, List<Verdict> verdicts, Tables tables) {
    return entry
        .analysis()
        .map(
            a ->
                ErrorAccount.of(
                    verdicts,
                    a,
                    tables.uncertainty().uncertainties(),
                    tables.judgement().settings()))
        .orElse(List.of());
  }

  private static @Nullable Double boxed(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }

  private static @Nullable Double content(InForce entry, AnalyteCode code) {
    return entry
        .analysis()
        .flatMap(a -> a.analysis().find(code))
        .filter(Measured::isBoundedAbove)
        .map(Measured::best)
        .orElse(null);
  }

  private List<String> assumptions(InForce entry) {
    List<String> found = new ArrayList<>();
    entry
        .analysis()
        .map(AccountedAnalysis::assumption)
        .filter(a -> !a.isEmpty())
        .ifPresent(found::add);
    office.decisions().stream()
        .filter(d -> d.kind().equals("override") && d.about().equals(entry.subject()))
        .map(
            d ->
                "override by "
                    + d.by()
                    + " on "
                    + d.date()
                    + ": "
                    + d.value()
                    + " ("
                    + d.why()
                    + ")")
        .forEach(found::add);
    if (entry.provisional()) {
      found.add(LotRow.PROVISIONAL);
    }
    return found;
  }

  private Optional<SettledSample> sample(InForce entry) {
    return morning.settled().samplesOf(entry).stream().findFirst();
  }

  private Optional<Report> report(InForce entry) {
    return sample(entry)
        .flatMap(s -> places.find(s.key().document()))
        .flatMap(Places.Where::report);
  }

  private VerdictRow verdict(String lot, Verdict verdict) {
    Optional<Measured> value = verdict.value();
    return new VerdictRow(
        lot,
        verdict.limit().group(),
        verdict.limit().id(),
        verdict.limit().quantity(),
        verdict.limit().value(),
        verdict.limit().unit().text(),
        shared.number(value.map(Measured::best).orElse(null)),
        shared.number(value.map(Measured::low).orElse(null)),
        shared.number(value.map(Measured::high).filter(Double::isFinite).orElse(null)),
        shared.number(value.map(Measured::u).orElse(null)),
        shared.number(boxed(verdict.pOver())),
        verdict.word().code(),
        verdict.settle().isEmpty() || verdict.reason().contains(verdict.settle())
            ? verdict.reason()
            : verdict.reason() + "; " + verdict.settle(),
        shared.number(boxed(verdict.limit().risk())),
        verdict.limit().severity().code());
  }
}
