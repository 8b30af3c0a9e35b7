package rickyard.report.page;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Shown;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.TableRowUsed;

/** Everything on the summary page, in the order of reading. */
public record Summary(
    String day,
    String isoDay,
    String unit,
    String otherUnit,
    boolean firstMorning,
    List<String> headline,
    List<String> contradictions,
    List<String> cautions,
    List<String> problems,
    List<String> warnings,
    List<CallList.Line> callList,
    List<Callers.Call> callsNow,
    List<Callers.Call> callsToday,
    Listed<Pending.Question> questions,
    List<String> laboratory,
    List<Pending.Waiting> horsesWaiting,
    Listed<Pending.Waiting> lotsWaiting,
    String comparison,
    Listed<String> changes,
    Listed<Changes.OfHorse> horseChanges,
    List<Changes.Recall> recalls,
    Listed<Changes.Due> due,
    Listed<LotPages.Entry> lots,
    List<LotPages.Brief> lotsInBrief,
    String lotsCut,
    List<String> lotCautions,
    String before,
    String horsesCut,
    List<HorsePages.Level> levels,
    Season season,
    OverTimePages overTime,
    Listed<Arrivals.Entry> arrivals,
    String arrived,
    int known,
    int parts,
    String rule,
    List<LimitsUsed.Line> limits,
    List<TableLine> tables) {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

  private static final int DIGITS_OF_A_DIGEST = 12;

  /** A table used. */
  public record TableLine(String name, String version, String digest, boolean office) {}

  /** Everything that a page of this morning shows. */
  public static Summary of(MorningView view, List<String> cautions) {
    List<LotRow> lots = LotPages.shown(view);
    List<LotRow> rest = LotPages.rest(view, lots);
    Anchors anchors = new Anchors(view, lots, rest);
    return new Summary(
        DAY.format(view.asOf()),
        view.asOf().toString(),
        Mass.named(view.units()).unit(),
        Mass.named(view.units()).other().unit(),
        view.firstMorning(),
        headline(view),
        Arrivals.contradictions(view),
        cautions,
        lines(view.problems()),
        lines(view.warnings()),
        CallList.of(view, anchors),
        Callers.of(view, anchors, Priority.CALL_NOW),
        Callers.of(view, anchors, Priority.CALL_TODAY),
        Pending.questions(view),
        LaboratoryAsks.of(view),
        Pending.horses(view, anchors),
        Pending.lots(view, anchors),
        Changes.comparison(view),
        Amended.of(view),
        Changes.ofHorses(view, anchors),
        Changes.recalls(view),
        Changes.due(view),
        LotPages.of(view, lots, anchors),
        LotPages.brief(view, rest, anchors),
        LotPages.areMany(view)
            ? "Of so many lots only limits that decide have pictures; the figures stand beside all."
            : "",
        lines(view.lotCautions()),
        Changes.before(view),
        HorsePages.areMany(view)
            ? "Of so many horses a picture is drawn for the first limit only, nutrients that are met"
                + " stand in words, and the first three proposals have their tables; what is left"
                + " out is named in its place."
            : "",
        HorsePages.of(view, anchors),
        Season.of(view),
        OverTimePages.of(view),
        Arrivals.of(view),
        Arrivals.sentence(view),
        view.counts().known(),
        view.counts().parts(),
        Harmless.line(view.decisionRule()),
        LimitsUsed.of(view),
        view.tables().stream().map(Summary::table).toList());
  }

  private static List<String> lines(List<String> words) {
    return words.stream().map(Harmless::line).toList();
  }

  private static TableLine table(TableRowUsed row) {
    String digest = Harmless.line(row.sha256());
    return new TableLine(
        Harmless.line(row.name()),
        Harmless.line(row.version()),
        digest.substring(0, Math.min(DIGITS_OF_A_DIGEST, digest.length())),
        row.officeChanged());
  }

  private static List<String> headline(MorningView view) {
    List<String> sentences = new ArrayList<>();
    sentences.add(Arrivals.sentence(view));
    if (view.counts().samples() > 0) {
      sentences.add(
          "They hold "
              + Shown.count(view.counts().samples(), "sample", "samples")
              + "; "
              + Shown.count(view.lots().size(), "lot is", "lots are")
              + (view.lots().size() > Listed.MOST ? " known." : " listed below."));
    }
    sentences.add(horses(view));
    return sentences;
  }

  /** The horses by priority; the numbers add up to all of them. */
  private static String horses(MorningView view) {
    if (view.horses().isEmpty()) {
      return "No horses are in the register.";
    }
    List<String> parts = new ArrayList<>();
    add(parts, view, Priority.CALL_NOW, "to call about now");
    add(parts, view, Priority.CALL_TODAY, "to call about today");
    add(parts, view, Priority.ASK, "waiting for an answer");
    add(parts, view, Priority.NOTE, "with a note");
    add(parts, view, Priority.STANDING, "told before and unchanged");
    add(parts, view, Priority.NONE, "with nothing to say");
    return Shown.count(view.horses().size(), "horse", "horses")
        + ": "
        + String.join(", ", parts)
        + ".";
  }

  private static void add(List<String> parts, MorningView view, Priority priority, String words) {
    long number =
        view.horses().stream().map(HorseAdvice::priority).filter(priority::equals).count();
    if (number > 0) {
      parts.add(number + " " + words);
    }
  }
}
