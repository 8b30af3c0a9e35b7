package rickyard.intake.interpret;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rickyard.core.forage.Doubt;
import rickyard.core.forage.Layout;
import rickyard.core.forage.Report;
import rickyard.core.forage.ReportStatus;
import rickyard.core.forage.Sample;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.ReadingProgress;
import rickyard.intake.grid.ocr.ScannedPages;

/**
 * Reads a grid as a laboratory's report. A function of the grid and the dictionary: no clock, no
 * register, no knowledge of any laboratory.
 *
 * <p>At most one reading of an analyte stands in a sample. Where as fed and dry matter are both
 * printed the dry-matter figure is taken and the as-fed one serves to check it.
 */
public final class Interpreter {
  /**
   * Cautions about text that was left out or marked unreadable already: no figure hangs on them.
   */
  private static final Set<String> HARMLESS =
      Set.of(
          "encoding-guessed",
          "overdrawn-text",
          "hidden-text",
          "struck-text",
          "turned-text",
          "control-characters",
          // Asked for each sample, with all that was read.
          ScannedPages.CAUTION);

  private final Dictionary dictionary;
  private final ReadingProgress progress;

  public Interpreter(Dictionary dictionary) {
    this(dictionary, ReadingProgress.none());
  }

  /** An interpreter that tells how far it is in a long document. */
  public Interpreter(Dictionary dictionary, ReadingProgress progress) {
    this.dictionary = dictionary;
    this.progress = progress;
  }

  /**
   * Reads one document.
   *
   * @param grid its cells
   * @param documentSha256 SHA-256 of its bytes, lower-case hex, for the places
   * @return a report with at least one sample, or why there is none
   */
  public Interpretation interpret(Grid grid, String documentSha256) {
    boolean certain = grid.kind() == Grid.Kind.TABLE;
    PageHints hints = PageHints.on(grid, dictionary.hints());
    List<Line> lines = new Lines(dictionary, certain, hints).of(grid);
    Walk walk = new Walk(dictionary, lines, certain, documentSha256);
    walk.run(progress);
    List<SampleDraft> drafts = walk.samples().withFigures();
    if (drafts.size() == 1 && drafts.get(0).isNameless()) {
      SampleDraft only = drafts.get(0);
      ProseName.in(dictionary, lines).ifPresent(name -> only.note("sample", name));
    }
    boolean withdrawal = drafts.isEmpty() && isWithdrawal(walk.front());
    if (withdrawal) {
      drafts = List.of(walk.samples().named());
    }
    if (drafts.isEmpty()) {
      return none(lines);
    }
    Dates.Order order = hints.order(dates(walk, drafts));
    SampleWriter writer =
        new SampleWriter(walk, order, hints, grid.cautions().contains(ScannedPages.CAUTION));
    List<Sample> samples = new ArrayList<>(drafts.size());
    for (SampleDraft draft : drafts) {
      samples.add(writer.write(draft));
      progress.reached("samples", samples.size(), drafts.size());
    }
    if (!withdrawal && samples.stream().allMatch(s -> s.readings().isEmpty())) {
      return new Interpretation.NotUnderstood(
          "no-values", "The page names analytes, but none of its figures could be taken.");
    }
    List<Untaken> untaken = new ArrayList<>(walk.unknown());
    untaken.addAll(writer.untaken());
    Layout layout = new PageLayout(dictionary, lines).of(walk.front().lab(), walk.heads(), drafts);
    List<Doubt> notes = new ArrayList<>(hints.doubts());
    grid.cautions().stream()
        .filter(c -> !HARMLESS.contains(c))
        .forEach(c -> notes.add(Doubts.ofCaution(c)));
    Doubts.ofSamples(samples).ifPresent(notes::add);
    return new Interpretation.Understood(
        report(walk, order, samples, notes, layout, documentSha256), untaken);
  }

  /** A letter that takes a report back prints no figures, but names the report. */
  private static boolean isWithdrawal(Front front) {
    return front.status() == ReportStatus.WITHDRAWN
        && !(front.field("report_no").isEmpty() && front.field("replaces").isEmpty());
  }

  private static Interpretation none(List<Line> lines) {
    boolean labels = lines.stream().anyMatch(l -> l.pieces().stream().anyMatch(Piece::isLabel));
    return labels
        ? new Interpretation.NotUnderstood(
            "no-values", "The page names analytes, but no figure stands beside or below them.")
        : new Interpretation.NotUnderstood(
            "no-analytes", "No cell of the page is the name of an analyte.");
  }

  private static List<String> dates(Walk walk, List<SampleDraft> drafts) {
    List<String> dates = new ArrayList<>();
    dates.add(walk.front().field("reported"));
    dates.add(walk.front().field("received"));
    drafts.forEach(d -> dates.add(d.field("sampled")));
    return dates;
  }

  private static Report report(
      Walk walk,
      Dates.Order order,
      List<Sample> samples,
      List<Doubt> notes,
      Layout layout,
      String document) {
    Front front = walk.front();
    Optional<LocalDate> reported =
        Doubts.date(front.field("reported"), order, "report date", notes);
    return new Report(
        document,
        front.lab(),
        front.field("report_no"),
        front.revision(),
        front.field("replaces"),
        front.status(),
        reported,
        samples,
        notes,
        layout);
  }
}
