package rickyard.morning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.advice.HayEaten;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.HorseQuestion;
import rickyard.core.advice.coop.Falls;
import rickyard.core.advice.coop.Recalls;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Question;
import rickyard.core.judgement.Caution;
import rickyard.core.judgement.DecisionRule;
import rickyard.registers.BadRow;
import rickyard.registers.Office;
import rickyard.report.view.Counts;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.OutcomeRow;
import rickyard.report.view.PaperLinks;
import rickyard.report.view.QuestionRow;
import rickyard.report.view.RecallRow;
import rickyard.report.view.TableRowUsed;
import rickyard.tables.JudgementTables;
import rickyard.tables.TableFile;
import rickyard.tables.TableProblem;

/** Puts together what is to be shown of a morning. */
final class ViewMaker {
  private final Inputs inputs;
  private final Options options;
  private final Memory memory;
  private final SettledMorning morning;
  private final Judged judged;
  private final List<HorseAdvice> advice;
  private final HayEaten eaten;
  private final Office office;
  private final Places places;

  ViewMaker(
      Inputs inputs,
      Options options,
      Memory memory,
      SettledMorning morning,
      Judged judged,
      List<HorseAdvice> advice,
      HayEaten eaten) {
    this.inputs = inputs;
    this.options = options;
    this.memory = memory;
    this.morning = morning;
    this.judged = judged;
    this.advice = List.copyOf(advice);
    this.eaten = eaten;
    this.office = inputs.registers().office();
    this.places = new Places(morning.files());
  }

  MorningView view() {
    RegisterFacts registers = new RegisterFacts(inputs);
    List<OutcomeRow> outcomes = new OutcomeRows(morning, places).rows();
    List<LotRow> lots = new LotRows(inputs, morning, judged, places).rows();
    List<QuestionRow> questions = questions();
    return new MorningView(
        inputs.asOf(),
        options.units(),
        outcomes,
        new AnalysisRows(morning, places).rows(),
        lots,
        horses(),
        questions,
        FollowUpDesk.rows(inputs, eaten, judged, advice, lots, questions, outcomes),
        recalls(),
        changes(),
        inputs.registers().badRows().stream().map(BadRow::message).distinct().toList(),
        notes(),
        DecisionRule.words(),
        tables(),
        registers.horses(),
        registers.clients(),
        counts(outcomes, lots),
        memory.diets().isEmpty() && memory.lots().isEmpty(),
        new SeasonLots(inputs, morning, judged).view(),
        lotCautions(),
        new AmendmentRows(morning, judged, memory, places).rows(),
        PaperLinks.none());
  }

  /** What no figure tells of lots, where it is said once for all of them. */
  private List<String> lotCautions() {
    JudgementTables tables = inputs.tables().judgement();
    return tables.cautions().stream()
        .filter(c -> c.isGeneral(tables.settings()))
        .map(Caution::text)
        .toList();
  }

  private List<RecallRow> recalls() {
    List<Decision> decisions = office.decisions();
    var falls =
        new Falls(inputs.asOf(), decisions, advice, judged.verdicts())
            .after(memory.falls(), memory.lots());
    Recalls recalls =
        new Recalls(inputs.asOf(), office.lots(), office.deliveries(), decisions, advice);
    return CoOpRows.recalls(recalls.of(falls, judged.verdicts()));
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    inputs.registers().warnings().stream().map(TableProblem::message).forEach(notes::add);
    notes.addAll(new Answered(morning, office).idle());
    return notes;
  }

  private List<HorseAdvice> horses() {
    return advice.stream()
        .sorted(
            Comparator.comparing((HorseAdvice h) -> h.problems().isEmpty())
                .thenComparing(HorseAdvice::priority)
                .thenComparing(HorseAdvice::client)
                .thenComparing(HorseAdvice::horse))
        .toList();
  }

  private List<QuestionRow> questions() {
    List<QuestionRow> rows = new ArrayList<>();
    for (Question question : morning.settled().questions()) {
      rows.add(
          new QuestionRow(
              question.id(),
              question.kind(),
              places.file(question.document()),
              places.part(question.document()),
              question.about(),
              question.question(),
              String.join("|", question.choices()),
              question.proposed(),
              question.why()));
    }
    SortedMap<String, QuestionRow> ofHorses = new TreeMap<>();
    for (HorseAdvice horse : advice) {
      horse.questions().forEach(q -> ofHorses.putIfAbsent(q.id(), row(q)));
    }
    rows.addAll(ofHorses.values());
    return rows;
  }

  private static QuestionRow row(HorseQuestion question) {
    return new QuestionRow(
        question.id(),
        question.kind(),
        "",
        "",
        question.about(),
        question.question(),
        String.join("|", question.choices()),
        "",
        question.why());
  }

  private List<String> changes() {
    List<String> changes = new ArrayList<>(AmendmentRows.lines(morning, places));
    memory
        .lots()
        .forEach(
            (lot, before) -> {
              SortedMap<String, String> now =
                  Pipeline.words(judged.verdicts().getOrDefault(lot, List.of()));
              for (String limit : new TreeSet<>(before.keySet())) {
                String word = now.getOrDefault(limit, "no-limit");
                if (!word.equals(before.get(limit))) {
                  changes.add(
                      lot + ": " + limit + " " + before.get(limit) + " before, " + word + " now");
                }
              }
            });
    return changes;
  }

  private List<TableRowUsed> tables() {
    List<TableRowUsed> used = new ArrayList<>();
    for (TableFile file : inputs.tables().files()) {
      boolean isOffice = file.rows().stream().anyMatch(r -> r.isOffice());
      used.add(new TableRowUsed(file.name(), file.version(), file.digest(), isOffice));
    }
    used.sort(Comparator.comparing(TableRowUsed::name));
    return used;
  }

  private Counts counts(List<OutcomeRow> outcomes, List<LotRow> lots) {
    List<OutcomeRow> files = outcomes.stream().filter(o -> o.part().isEmpty()).toList();
    return new Counts(
        files.size(),
        outcomes.size() - files.size(),
        of(files, "accepted"),
        of(files, "question"),
        of(files, "duplicate"),
        of(files, "superseded"),
        of(files, "refused"),
        of(files, "known"),
        files.stream().mapToInt(OutcomeRow::samples).sum(),
        lots.size(),
        advice.size(),
        0);
  }

  private static int of(List<OutcomeRow> files, String outcome) {
    return (int) files.stream().filter(f -> f.outcome().equals(outcome)).count();
  }
}
