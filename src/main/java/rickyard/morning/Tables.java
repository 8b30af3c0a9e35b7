package rickyard.morning;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.Analyte;
import rickyard.core.forage.AnalyteCode;
import rickyard.intake.interpret.AnalyteRule;
import rickyard.intake.interpret.Dictionary;
import rickyard.tables.DictionaryTables;
import rickyard.tables.FollowUpTable;
import rickyard.tables.JudgementTables;
import rickyard.tables.NutritionTables;
import rickyard.tables.RemedyTables;
import rickyard.tables.SampleKindTable;
import rickyard.tables.SeasonTable;
import rickyard.tables.ShareTable;
import rickyard.tables.TableFile;
import rickyard.tables.TableProblem;
import rickyard.tables.UncertaintyTable;
import rickyard.tables.UnusableTablesException;

/**
 * All tables of a morning, built-in with the office's changes.
 *
 * @param dictionary what laboratories call things
 * @param judgement conditions and limits
 * @param uncertainty errors of laboratories and sampling
 * @param nutrition requirements, typical values, tolerances
 * @param remedy the office's choices for proposals
 * @param sampleKinds what reports call a sample
 * @param season from how many tests on something is said of lots over time
 * @param share how a co-op's hay is shared out
 * @param followUps how long weights and tests hold
 * @param files every table read
 */
record Tables(
    Dictionary dictionary,
    JudgementTables judgement,
    UncertaintyTable uncertainty,
    NutritionTables nutrition,
    RemedyTables remedy,
    SampleKindTable sampleKinds,
    SeasonTable season,
    ShareTable share,
    FollowUpTable followUps,
    List<TableFile> files) {

  Tables {
    files = List.copyOf(files);
  }

  /**
   * Loads them all.
   *
   * @throws UnusableTablesException with every problem of every table
   */
  static Tables load(Optional<Path> officeConfig) {
    Dictionary dictionary = DictionaryTables.load(officeConfig);
    JudgementTables judgement = JudgementTables.load(officeConfig);
    UncertaintyTable uncertainty = UncertaintyTable.load(officeConfig);
    NutritionTables nutrition = NutritionTables.load(officeConfig);
    List<TableProblem> problems = new ArrayList<>(judgement.problems());
    problems.addAll(uncertainty.problems());
    problems.addAll(judgement.unfit(kept(dictionary)));
    if (!problems.isEmpty()) {
      throw new UnusableTablesException(problems);
    }
    List<TableFile> files = new ArrayList<>(DictionaryTables.files(officeConfig));
    files.addAll(judgement.files());
    files.add(uncertainty.file());
    files.addAll(nutrition.files());
    RemedyTables remedy = RemedyTables.load(officeConfig);
    files.add(remedy.table());
    SampleKindTable kinds = SampleKindTable.load(officeConfig);
    files.add(kinds.file());
    SeasonTable season = SeasonTable.load(officeConfig);
    files.add(season.file());
    ShareTable share = ShareTable.load(officeConfig);
    files.add(share.table());
    FollowUpTable followUps = FollowUpTable.load(officeConfig);
    files.add(followUps.file());
    return new Tables(
        dictionary,
        judgement,
        uncertainty,
        nutrition,
        remedy,
        kinds,
        season,
        share,
        followUps,
        files);
  }

  /** The analytes of which analyses hold values. */
  private static Map<AnalyteCode, Analyte> kept(Dictionary dictionary) {
    Map<AnalyteCode, Analyte> kept = new TreeMap<>();
    dictionary
        .analytes()
        .forEach(
            (code, rule) -> {
              if (rule.use() == AnalyteRule.Use.VALUE) {
                kept.put(code, rule.analyte());
              }
            });
    return kept;
  }

  /** What each analyte is: unit, basis, digits. */
  SortedMap<AnalyteCode, Analyte> analytes() {
    SortedMap<AnalyteCode, Analyte> analytes = new TreeMap<>();
    dictionary.analytes().forEach((code, rule) -> analytes.put(code, rule.analyte()));
    return analytes;
  }

  /** Digest by table name. */
  SortedMap<String, String> digests() {
    SortedMap<String, String> digests = new TreeMap<>();
    files.forEach(f -> digests.put(f.name(), f.digest()));
    return digests;
  }
}
