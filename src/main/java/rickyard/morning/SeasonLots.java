package rickyard.morning;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Lot;
import rickyard.core.forage.LotTest;
import rickyard.core.forage.SampleKey;
import rickyard.core.judgement.Suitability;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.season.Laboratories;
import rickyard.core.season.Laboratory;
import rickyard.core.season.OverTime;
import rickyard.core.season.OverTimeRules;
import rickyard.registers.Office;
import rickyard.report.view.SeasonLot;
import rickyard.report.view.SeasonView;

/** Gathers the lots with an analysis in force, and what their tests show over time. */
final class SeasonLots {
  private static final String SEVERAL = "several laboratories";

  private final Inputs inputs;
  private final Office office;
  private final SettledMorning morning;
  private final Judged judged;
  private final OverTimeRules rules;
  private final Laboratories laboratories;
  private final Map<SampleKey, LotTest> tests = new HashMap<>();

  SeasonLots(Inputs inputs, SettledMorning morning, Judged judged) {
    this.inputs = inputs;
    this.office = inputs.registers().office();
    this.morning = morning;
    this.judged = judged;
    this.rules = inputs.tables().season().rules();
    this.laboratories = Laboratories.of(morning.settled().tests());
    morning.settled().tests().forEach(test -> tests.put(test.key(), test));
  }

  SeasonView view() {
    List<SeasonLot> lots = new ArrayList<>();
    for (InForce entry : morning.settled().inForce()) {
      if (entry.batch().isEmpty()
          && entry.analysis().isPresent()
          && judged.verdicts().containsKey(entry.subject())) {
        lots.add(lot(entry));
      }
    }
    return new SeasonView(
        rules.quantities().stream().map(AnalyteCode::value).toList(),
        lots,
        Optional.of(OverTime.of(morning.settled(), office.lots(), rules)));
  }

  private SeasonLot lot(InForce entry) {
    Optional<Lot> lot = office.findLot(entry.subject());
    List<LotTest> from =
        entry.from().stream().flatMap(k -> Optional.ofNullable(tests.get(k)).stream()).toList();
    Suitability suitability =
        judged.suitability().getOrDefault(entry.subject(), Suitability.of(List.of()));
    return new SeasonLot(
        entry.subject(),
        lot.map(Lot::material).filter(m -> !m.isBlank()).orElseGet(() -> material(from)),
        lot.map(Lot::holder).orElse(""),
        laboratory(from),
        lot.flatMap(Lot::harvestedOn).map(d -> Integer.toString(d.getYear())).orElse(""),
        month(lot, from),
        contents(entry),
        List.copyOf(suitability.suits()),
        List.copyOf(suitability.notFor()),
        List.copyOf(suitability.undecided()));
  }

  /** Of a lot in no register: what its report calls it. */
  private String material(List<LotTest> from) {
    return from.stream()
        .map(LotTest::material)
        .filter(m -> !m.isBlank())
        .findFirst()
        .map(m -> inputs.tables().sampleKinds().material(m))
        .orElse("");
  }

  private String laboratory(List<LotTest> from) {
    SortedSet<String> names = new TreeSet<>();
    from.stream()
        .map(t -> laboratories.get(t.lab()))
        .filter(Laboratory::isNamed)
        .forEach(l -> names.add(l.name()));
    return names.size() > 1 ? SEVERAL : String.join("", names);
  }

  /** The latest sampling of the tests in force, else the day in the register. */
  private static String month(Optional<Lot> lot, List<LotTest> from) {
    Optional<LocalDate> day =
        from.stream().flatMap(t -> t.sampledOn().stream()).max(LocalDate::compareTo);
    return day.or(() -> lot.flatMap(Lot::sampledOn))
        .map(d -> YearMonth.from(d).toString())
        .orElse("");
  }

  private SortedMap<String, SeasonLot.Content> contents(InForce entry) {
    SortedMap<String, SeasonLot.Content> contents = new TreeMap<>();
    for (AnalyteCode code : rules.quantities()) {
      entry
          .analysis()
          .flatMap(a -> a.analysis().find(code))
          .filter(Measured::isBoundedAbove)
          .ifPresent(m -> contents.put(code.value(), new SeasonLot.Content(m.best(), unit(m))));
    }
    return contents;
  }

  private static String unit(Measured measured) {
    return measured.basis() == Basis.DRY_MATTER
        ? measured.unit().code() + " DM"
        : measured.unit().code();
  }
}
