package rickyard.report.view;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.HorseAdvice;

/**
 * Everything that a morning shows, sorted as outputs want it.
 *
 * @param asOf its day
 * @param units kg or lb, for pages
 * @param outcomes what arrived, containers before their parts
 * @param analyses every figure
 * @param lots by suitability as sole forage
 * @param horses by priority, then client, then id
 * @param questions what waits for an answer
 * @param followUps by due date
 * @param recalls lots whose verdict fell
 * @param changes what changed since the last morning: amended reports, reopened decisions
 * @param problems bad register rows, in plain words, first on the page
 * @param warnings what was noticed about registers
 * @param decisionRule the rule, printed on every output
 * @param tables tables used
 * @param horseFacts by horse
 * @param clientFacts by client
 * @param counts they add up
 * @param firstMorning whether the ledger was empty before
 * @param season the lots and tests of all mornings taken together
 * @param lotCautions what no figure tells of lots, said once for all of them
 * @param amendments what the reports that are new this morning replaced
 * @param papers the sheets and letters made with the page
 */
public record MorningView(
    LocalDate asOf,
    String units,
    List<OutcomeRow> outcomes,
    List<AnalysisRow> analyses,
    List<LotRow> lots,
    List<HorseAdvice> horses,
    List<QuestionRow> questions,
    List<FollowUpRow> followUps,
    List<RecallRow> recalls,
    List<String> changes,
    List<String> problems,
    List<String> warnings,
    String decisionRule,
    List<TableRowUsed> tables,
    SortedMap<String, HorseFacts> horseFacts,
    SortedMap<String, ClientFacts> clientFacts,
    Counts counts,
    boolean firstMorning,
    SeasonView season,
    List<String> lotCautions,
    List<AmendmentRow> amendments,
    PaperLinks papers) {

  public MorningView {
    outcomes = List.copyOf(outcomes);
    analyses = List.copyOf(analyses);
    lots = List.copyOf(lots);
    horses = List.copyOf(horses);
    questions = List.copyOf(questions);
    followUps = List.copyOf(followUps);
    recalls = List.copyOf(recalls);
    changes = List.copyOf(changes);
    problems = List.copyOf(problems);
    warnings = List.copyOf(warnings);
    tables = List.copyOf(tables);
    lotCautions = List.copyOf(lotCautions);
    amendments = List.copyOf(amendments);
    horseFacts = Collections.unmodifiableSortedMap(new TreeMap<>(horseFacts));
    clientFacts = Collections.unmodifiableSortedMap(new TreeMap<>(clientFacts));
  }

  /** The same morning with its lots and tests taken together. */
  public MorningView withSeason(SeasonView season) {
    return with(horses, counts, season, amendments, papers);
  }

  /** The same morning with a number of letters counted. */
  public MorningView withLetters(int letters) {
    return with(horses, counts.withLetters(letters), season, amendments, papers);
  }

  /** The same morning with other advice. */
  public MorningView withHorses(List<HorseAdvice> horses) {
    return with(horses, counts, season, amendments, papers);
  }

  /** The same morning with what its new reports replaced. */
  public MorningView withAmendments(List<AmendmentRow> amendments) {
    return with(horses, counts, season, amendments, papers);
  }

  /** The same morning with the papers made beside its page. */
  public MorningView withPapers(PaperLinks papers) {
    return with(horses, counts, season, amendments, papers);
  }

  private MorningView with(
      List<HorseAdvice> horses,
      Counts counts,
      SeasonView season,
      List<AmendmentRow> amendments,
      PaperLinks papers) {
    return new MorningView(
        asOf,
        units,
        outcomes,
        analyses,
        lots,
        horses,
        questions,
        followUps,
        recalls,
        changes,
        problems,
        warnings,
        decisionRule,
        tables,
        horseFacts,
        clientFacts,
        counts,
        firstMorning,
        season,
        lotCautions,
        amendments,
        papers);
  }
}
