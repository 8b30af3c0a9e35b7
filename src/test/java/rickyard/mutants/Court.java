package rickyard.mutants;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.Analyte;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Lot;
import rickyard.core.forage.Received;
import rickyard.core.forage.Report;
import rickyard.core.forage.Settled;
import rickyard.core.forage.Settlement;
import rickyard.core.forage.Unsettled;
import rickyard.core.judgement.LotJudge;
import rickyard.core.judgement.LotRules;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;
import rickyard.intake.interpret.Dictionary;
import rickyard.registers.LoadContext;
import rickyard.registers.Registers;
import rickyard.tables.JudgementTables;
import rickyard.tables.UncertaintyTable;

/** Settles reports and judges their lots, by the built-in tables, as a morning does. */
final class Court {
  private static final LocalDate AS_OF = LocalDate.of(2026, 3, 16);

  /**
   * What a lot was judged to be.
   *
   * @param sample number of the sample in its report, -1 for none
   * @param analysis what is in force
   * @param clears the limits for lots that clear
   */
  record Ruling(int sample, Optional<AccountedAnalysis> analysis, SortedSet<String> clears) {}

  /** The rulings of one morning by lot, and how many questions it asks. */
  record Trial(SortedMap<String, Ruling> rulings, int questions) {}

  private final Settlement settlement;
  private final LotRules rules;
  private final List<Lot> lots;

  Court(Dictionary dictionary, Collection<Lot> lots) {
    Map<AnalyteCode, Analyte> analytes = new TreeMap<>();
    dictionary.analytes().forEach((code, rule) -> analytes.put(code, rule.analyte()));
    this.settlement =
        new Settlement(
            new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties()), analytes);
    this.rules = JudgementTables.load(Optional.empty()).lotRules();
    this.lots = List.copyOf(lots);
  }

  /** The lots of the demo office. */
  static Collection<Lot> demoLots() {
    var conditions = JudgementTables.load(Optional.empty()).conditions().known();
    return Registers.load(
            Path.of("fixtures/office/registers"), LoadContext.of(AS_OF).withConditions(conditions))
        .office()
        .lots()
        .values();
  }

  static Lot lot(String id, String material) {
    return new Lot(
        id,
        "co-op",
        material,
        OptionalDouble.empty(),
        "1",
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        OptionalInt.of(20),
        Optional.empty(),
        "");
  }

  boolean knows(String lot) {
    return lots.stream().anyMatch(l -> l.id().equals(lot));
  }

  /** Whether the figures that these limits are about are none of the wrong ones. */
  boolean isRight(SortedSet<String> limitIds, SortedSet<String> wrong) {
    return rules.limits().stream()
        .filter(l -> limitIds.contains(l.id()))
        .map(l -> l.analyte().equals(AnalyteCode.MOISTURE) ? AnalyteCode.DM : l.analyte())
        .noneMatch(a -> wrong.contains(a.value()));
  }

  Trial judge(List<Report> reports) {
    List<Received> received = new ArrayList<>();
    for (int i = 0; i < reports.size(); i++) {
      received.add(new Received(reports.get(i), AS_OF, "r" + i));
    }
    Settled settled =
        settlement.settle(new Unsettled(received, lots, List.of(), List.of(), List.of(), AS_OF));
    SortedMap<String, Ruling> rulings = new TreeMap<>();
    for (InForce entry : settled.inForce()) {
      if (entry.analysis().isPresent()) {
        rulings.put(entry.subject(), ruling(entry));
      }
    }
    return new Trial(rulings, settled.questions().size());
  }

  private Ruling ruling(InForce entry) {
    List<Verdict> verdicts =
        entry.analysis().map(a -> LotJudge.judge(a, rules)).orElseGet(List::of);
    SortedSet<String> clears = new TreeSet<>();
    verdicts.stream().filter(v -> v.word() == Word.CLEARS).forEach(v -> clears.add(v.limit().id()));
    int sample = entry.from().isEmpty() ? -1 : entry.from().get(0).index();
    return new Ruling(sample, entry.analysis(), clears);
  }
}
