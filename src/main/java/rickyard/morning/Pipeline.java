package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.advice.AdviceContext;
import rickyard.core.advice.Consumption;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HayUse;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseAdviser;
import rickyard.core.advice.HorseQuestion;
import rickyard.core.advice.Larder;
import rickyard.core.advice.Scales;
import rickyard.core.advice.TracedDiet;
import rickyard.core.advice.coop.CoOp;
import rickyard.core.advice.coop.CoOpAdvice;
import rickyard.core.advice.coop.CoOpContext;
import rickyard.core.advice.coop.Fall;
import rickyard.core.advice.coop.Falls;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Answer;
import rickyard.core.forage.BagBatch;
import rickyard.core.forage.InForce;
import rickyard.core.forage.Question;
import rickyard.core.forage.Received;
import rickyard.core.forage.SettledSample;
import rickyard.core.forage.Settlement;
import rickyard.core.forage.Standing;
import rickyard.core.forage.Unsettled;
import rickyard.core.judgement.LotJudge;
import rickyard.core.judgement.LotRules;
import rickyard.core.judgement.Suitability;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Horse;
import rickyard.core.quantity.Measured;
import rickyard.core.remedy.MassUnit;
import rickyard.intake.ReadDocument;
import rickyard.registers.BadRow;
import rickyard.registers.Concern;
import rickyard.registers.Office;

/**
 * The way from what was read to what is said, as functions; it wires rooms and computes nothing.
 */
final class Pipeline {
  private static final Set<String> DECISIVE =
      Set.of("DM", "MOISTURE", "WSC", "ESC", "STARCH", "NSC", "NSC_WSC", "NSC_ESC", "K", "NITRATE");

  private final Inputs inputs;
  private final Office office;
  private final Tables tables;
  private final MassUnit units;
  private final Memory memory;
  private Optional<HorseAdviser> adviser = Optional.empty();
  private Optional<HayUse> use = Optional.empty();

  Pipeline(Inputs inputs, Options options, Memory memory) {
    this.inputs = inputs;
    this.office = inputs.registers().office();
    this.tables = inputs.tables();
    this.units = MassUnit.named(options.units());
    this.memory = memory;
  }

  Memory memory() {
    return memory;
  }

  SettledMorning settle(FilesInHand files) {
    return settle(files, office.answers());
  }

  /** The same with other answers than those of the register. */
  SettledMorning settle(FilesInHand files, List<Answer> answers) {
    List<Received> received = new ArrayList<>();
    files.first().forEach((hash, seen) -> add(files, hash, seen, received));
    Settlement settlement =
        new Settlement(
            new AnalysisMaker(tables.uncertainty().uncertainties()),
            tables.analytes(),
            tables.sampleKinds().kinds());
    Unsettled unsettled =
        new Unsettled(
            received,
            List.copyOf(office.lots().values()),
            office.feeds().stream().map(f -> new BagBatch(f.id(), f.batch(), f.name())).toList(),
            answers,
            office.decisions(),
            inputs.asOf(),
            memory.layouts());
    return new SettledMorning(files, settlement.settle(unsettled));
  }

  private static void add(
      FilesInHand files, String hash, FilesInHand.FirstSeen seen, List<Received> received) {
    for (ReadDocument document : files.get(hash).documents()) {
      document
          .report()
          .ifPresent(report -> received.add(new Received(report, seen.on(), path(seen, document))));
    }
  }

  private static String path(FilesInHand.FirstSeen seen, ReadDocument document) {
    return document.part().isEmpty() ? seen.path() : seen.path() + "!" + document.part();
  }

  Judged judge(SettledMorning morning) {
    LotRules rules = tables.judgement().lotRules();
    SortedMap<String, List<Verdict>> verdicts = new TreeMap<>();
    SortedMap<String, Suitability> suitability = new TreeMap<>();
    for (InForce entry : morning.settled().inForce()) {
      if (isLot(entry)) {
        List<Verdict> found =
            entry
                .analysis()
                .map(analysis -> LotJudge.judge(analysis, rules))
                .orElseGet(() -> LotJudge.unanalysed(entry.why(), rules));
        verdicts.put(entry.subject(), found);
        suitability.put(entry.subject(), Suitability.of(found));
      }
    }
    return new Judged(verdicts, suitability);
  }

  private boolean isLot(InForce entry) {
    return entry.provisional() || office.lots().containsKey(entry.subject());
  }

  /** All horses, those with a bad row too, sorted. */
  List<String> horseIds() {
    return Stream.concat(
            office.horses().keySet().stream(),
            inputs.registers().concerned(Concern.HORSE).stream().filter(id -> !id.isEmpty()))
        .distinct()
        .sorted()
        .toList();
  }

  HorseAdvice advise(String horseId, SettledMorning morning, Judged judged) {
    Horse horse = office.horses().get(horseId);
    if (horse == null) {
      List<BadRow> rows = inputs.registers().badRowsOf(Concern.HORSE, horseId);
      String client = rows.stream().map(BadRow::clientId).findFirst().orElse("");
      return HorseAdvice.unjudged(
          horseId, client, rows.stream().map(BadRow::message).distinct().toList());
    }
    return adviser(morning, judged).advise(horse);
  }

  TracedDiet trace(Horse horse, SettledMorning morning, Judged judged) {
    return adviser(morning, judged).trace(horse);
  }

  /** Shares the hay of a co-op, or for sale, out over all horses. */
  CoOpAdvice share(SettledMorning morning, Judged judged, List<HorseAdvice> advice) {
    SortedMap<String, AccountedAnalysis> analyses = new TreeMap<>();
    morning.settled().inForce().stream()
        .filter(SettledMorning::isLot)
        .forEach(entry -> entry.analysis().ifPresent(a -> analyses.put(entry.subject(), a)));
    return CoOp.advise(
        new CoOpContext(
            inputs.asOf(),
            office.horses(),
            advice,
            larder(morning),
            office.deliveries(),
            use(morning).eaten(),
            tables.judgement().limits(),
            judged.verdicts(),
            analyses,
            adviser(morning, judged),
            tables.remedy().settings(),
            tables.share().settings(),
            units));
  }

  private synchronized HorseAdviser adviser(SettledMorning morning, Judged judged) {
    if (adviser.isEmpty()) {
      adviser = Optional.of(new HorseAdviser(context(morning, judged)));
    }
    return adviser.get();
  }

  private AdviceContext context(SettledMorning morning, Judged judged) {
    LocalDate asOf = inputs.asOf();
    Larder larder = larder(morning);
    var standards = tables.nutrition().standards();
    return new AdviceContext(
        asOf,
        larder,
        new TreeMap<>(office.horses()),
        office.rations(),
        office.deliveries(),
        office.measures(),
        office.decisions(),
        standards,
        tables.judgement().conditions(),
        tables.judgement().limits(),
        judged.verdicts(),
        memory.diets(),
        whyNotJudged(morning),
        turnedLots(morning, judged),
        askedAbout(morning),
        answered(),
        problems(),
        tables.remedy().settings(),
        scales(),
        use(morning));
  }

  /** What horses take of lots, now and before. */
  synchronized HayUse use(SettledMorning morning) {
    if (use.isEmpty()) {
      use =
          Optional.of(
              Consumption.perDay(
                  office.horses().values(),
                  office.rations(),
                  office.deliveries(),
                  office.measures(),
                  larder(morning),
                  tables.nutrition().standards(),
                  inputs.asOf()));
    }
    return use.get();
  }

  private Scales scales() {
    SortedMap<String, MassUnit> byClient = new TreeMap<>();
    office.clients().values().stream()
        .filter(c -> !c.units().isEmpty())
        .forEach(c -> byClient.put(c.id(), MassUnit.named(c.units())));
    return new Scales(units, byClient);
  }

  private Larder larder(SettledMorning morning) {
    List<Analysis> analyses = new ArrayList<>();
    for (InForce entry : morning.settled().inForce()) {
      entry.analysis().ifPresent(a -> analyses.add(a.analysis()));
    }
    return new Larder(office.lots(), office.feeds(), analyses, tables.nutrition().standards());
  }

  private static SortedMap<String, String> whyNotJudged(SettledMorning morning) {
    SortedMap<String, String> why = new TreeMap<>();
    for (InForce entry : morning.settled().inForce()) {
      String reason = entry.analysis().map(Pipeline::whyNoSugar).orElse(entry.why());
      if (!reason.isEmpty()) {
        why.put(entry.subject(), reason);
      }
    }
    return why;
  }

  /** Why an analysis gives no WSC + starch; empty where it gives one. */
  private static String whyNoSugar(AccountedAnalysis analysis) {
    if (isKnown(analysis, AnalyteCode.NSC_WSC)) {
      return "";
    }
    String left = analysis.whyLeftOut(AnalyteCode.NSC_WSC);
    if (!left.isEmpty()) {
      return left;
    }
    return Stream.of(AnalyteCode.WSC, AnalyteCode.STARCH)
        .filter(code -> !isKnown(analysis, code))
        .map(code -> "its report gives no " + code)
        .collect(Collectors.joining(", "));
  }

  private static boolean isKnown(AccountedAnalysis analysis, AnalyteCode code) {
    return analysis.analysis().find(code).map(Measured::isBoundedAbove).orElse(false);
  }

  /** Lots whose analysis rests on other documents than last time and whose verdict changed. */
  private SortedSet<String> turnedLots(SettledMorning morning, Judged judged) {
    SortedSet<String> turned = new TreeSet<>();
    for (InForce entry : morning.settled().inForce()) {
      String before = memory.reports().getOrDefault(entry.subject(), "");
      boolean isOther = !before.isEmpty() && !before.equals(documents(entry));
      boolean isTurned =
          memory.lots().containsKey(entry.subject())
              && !memory
                  .lots()
                  .get(entry.subject())
                  .equals(words(judged.verdicts().getOrDefault(entry.subject(), List.of())));
      if (isOther && isTurned) {
        turned.add(entry.subject());
      }
    }
    return turned;
  }

  static String documents(InForce entry) {
    return String.join(" ", entry.from().stream().map(k -> k.document()).sorted().toList());
  }

  static SortedMap<String, String> words(List<Verdict> verdicts) {
    SortedMap<String, String> words = new TreeMap<>();
    verdicts.forEach(v -> words.put(v.limit().id(), v.word().code()));
    return words;
  }

  /** Lots that an open question keeps from having an analysis. */
  private static SortedSet<String> askedAbout(SettledMorning morning) {
    SortedSet<String> asked = new TreeSet<>();
    for (Question question : morning.settled().questions()) {
      asked.add(question.about());
    }
    morning.settled().samples().stream()
        .filter(s -> s.standing() == Standing.QUESTION || waits(s))
        .forEach(s -> asked.add(s.subject()));
    return asked;
  }

  /** Whether a figure that a verdict may hang on waits for an answer. */
  private static boolean waits(SettledSample sample) {
    return sample.standing() == Standing.IN_FORCE
        && sample.sample().readings().stream()
            .anyMatch(r -> !r.isSettled() && DECISIVE.contains(r.analyte().value()));
  }

  private SortedSet<String> answered() {
    return office.answers().stream()
        .filter(a -> !a.answer().isBlank())
        .map(Answer::questionId)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private SortedMap<String, List<String>> problems() {
    SortedMap<String, List<String>> problems = new TreeMap<>();
    for (BadRow row : inputs.registers().badRows()) {
      if (row.concern() == Concern.HORSE) {
        problems.computeIfAbsent(row.id(), id -> new ArrayList<>()).add(row.message());
      }
    }
    return problems;
  }

  /** What the next morning compares with. */
  Memory remember(SettledMorning morning, Judged judged, List<HorseAdvice> advice) {
    SortedMap<String, DietSummary> diets = new TreeMap<>();
    for (HorseAdvice horse : advice) {
      if (horse.after() != null) {
        diets.put(horse.horse(), horse.after());
      }
    }
    SortedMap<String, SortedMap<String, String>> lots = new TreeMap<>();
    judged.verdicts().forEach((lot, verdicts) -> lots.put(lot, words(verdicts)));
    SortedMap<String, String> reports = new TreeMap<>();
    morning
        .settled()
        .inForce()
        .forEach(
            entry -> {
              if (!entry.from().isEmpty()) {
                reports.put(entry.subject(), documents(entry));
              }
            });
    return new Memory(
        diets,
        lots,
        reports,
        memory.layouts().after(morning.settled().layouts()),
        Optional.of(asked(advice)),
        falls(judged, advice));
  }

  /** What stands fallen after this morning, by lot and limit. */
  SortedMap<String, SortedMap<String, Fall>> falls(Judged judged, List<HorseAdvice> advice) {
    return new Falls(inputs.asOf(), office.decisions(), advice, judged.verdicts())
        .after(memory.falls(), memory.lots());
  }

  /** What advice asks about each horse, where it asks anything. */
  static SortedMap<String, List<HorseQuestion>> asked(List<HorseAdvice> advice) {
    SortedMap<String, List<HorseQuestion>> asked = new TreeMap<>();
    advice.stream()
        .filter(a -> !a.questions().isEmpty())
        .forEach(a -> asked.put(a.horse(), a.questions()));
    return asked;
  }
}
