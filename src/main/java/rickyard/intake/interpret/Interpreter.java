package rickyard.intake.interpret;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
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
  private final CellTexts texts;
  private final ReadingProgress progress;

  public Interpreter(Dictionary dictionary) {
    this(dictionary, ReadingProgress.none());
  }

  /** An interpreter that tells how far it is in a long document. */
  public Interpreter(Dictionary dictionary, ReadingProgress progress) {
    this.dictionary = dictionary;
    this.texts = new CellTexts(dictionary);
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
    PageHints hints = PageHints.on(grid, dictionary.hints());
    Found found = found(grid, hints, documentSha256);
    return found.drafts().isEmpty()
        ? none(found.labels())
        : understood(grid, hints, found, documentSha256);
  }

  /**
   * What stands on the page. The lines themselves are gone: of a long table they take as much room
   * as its samples.
   *
   * @param drafts the samples; each goes as it is written
   * @param labels whether any cell is the name of an analyte
   */
  private record Found(
      Deque<SampleDraft> drafts,
      SampleWriter.Said said,
      List<Untaken> unknown,
      boolean labels,
      Layout layout) {

    boolean isWithdrawal() {
      return drafts.stream().allMatch(SampleDraft::isEmpty);
    }
  }

  private Found found(Grid grid, PageHints hints, String documentSha256) {
    boolean certain = grid.kind() == Grid.Kind.TABLE;
    List<Line> lines = new Lines(texts, certain, hints).of(grid);
    Walk walk = new Walk(dictionary, lines, certain, documentSha256);
    walk.run(progress);
    List<SampleDraft> drafts = walk.samples().withFigures();
    standings(walk.front(), drafts);
    if (drafts.size() == 1 && drafts.get(0).isNameless()) {
      SampleDraft only = drafts.get(0);
      ProseName.in(dictionary, lines).ifPresent(name -> only.note("sample", name));
    }
    if (drafts.isEmpty() && isWithdrawal(walk.front())) {
      drafts = List.of(walk.samples().named());
    }
    return new Found(
        new ArrayDeque<>(drafts),
        walk.said(),
        walk.unknown(),
        lines.stream().anyMatch(l -> l.pieces().stream().anyMatch(Piece::isLabel)),
        new PageLayout(texts, lines).of(walk.front().lab(), walk.heads(), drafts));
  }

  private static void standings(Front front, List<SampleDraft> drafts) {
    if (drafts.stream().anyMatch(d -> !d.field(SampleWriter.STANDING).isEmpty())) {
      front.standing(
          front.ofRows(drafts.stream().map(d -> d.field(SampleWriter.STANDING)).toList()));
    }
  }

  private Interpretation understood(Grid grid, PageHints hints, Found found, String document) {
    boolean withdrawal = found.isWithdrawal();
    Front front = found.said().front();
    Dates.Order order = hints.order(dates(front, found.drafts()));
    SampleWriter writer =
        new SampleWriter(
            found.said(), order, hints, grid.cautions().contains(ScannedPages.CAUTION));
    int total = found.drafts().size();
    List<Sample> samples = new ArrayList<>(total);
    while (!found.drafts().isEmpty()) {
      samples.add(writer.write(found.drafts().remove()));
      progress.reached("samples", samples.size(), total);
    }
    if (!withdrawal && samples.stream().allMatch(s -> s.readings().isEmpty())) {
      return new Interpretation.NotUnderstood(
          "no-values", "The page names analytes, but none of its figures could be taken.");
    }
    List<Untaken> untaken = new ArrayList<>(found.unknown());
    untaken.addAll(writer.untaken());
    List<Doubt> notes = new ArrayList<>(hints.doubts());
    grid.cautions().stream()
        .filter(c -> !HARMLESS.contains(c))
        .forEach(c -> notes.add(Doubts.ofCaution(c)));
    Doubts.ofSamples(samples).ifPresent(notes::add);
    return new Interpretation.Understood(
        report(front, order, samples, notes, found.layout(), document), untaken);
  }

  /** A letter that takes a report back prints no figures, but names the report. */
  private static boolean isWithdrawal(Front front) {
    return front.status() == ReportStatus.WITHDRAWN
        && !(front.field("report_no").isEmpty() && front.field("replaces").isEmpty());
  }

  private static Interpretation none(boolean labels) {
    return labels
        ? new Interpretation.NotUnderstood(
            "no-values", "The page names analytes, but no figure stands beside or below them.")
        : new Interpretation.NotUnderstood(
            "no-analytes", "No cell of the page is the name of an analyte.");
  }

  private static List<String> dates(Front front, Collection<SampleDraft> drafts) {
    Set<String> dates = new LinkedHashSet<>();
    dates.add(front.field("reported"));
    dates.add(front.field("received"));
    drafts.forEach(d -> dates.add(d.field("sampled")));
    return List.copyOf(dates);
  }

  private static Report report(
      Front front,
      Dates.Order order,
      List<Sample> samples,
      List<Doubt> notes,
      Layout layout,
      String document) {
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
