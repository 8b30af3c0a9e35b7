package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.advice.TracedDiet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.forage.Corrected;
import rickyard.core.forage.InForce;
import rickyard.core.forage.LayoutSeen;
import rickyard.core.forage.Reading;
import rickyard.core.forage.SettledSample;
import rickyard.core.judgement.LotNotes;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Horse;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.report.trace.TraceText;

/** How a number of a lot or of a horse's diet came about, down to page, row and column. */
public final class OfficeTrace {
  private final Desk desk;
  private final Places places;
  private final TraceText text;

  private OfficeTrace(Desk desk) {
    this.desk = desk;
    this.places = new Places(desk.morning().files());
    this.text = new TraceText(places::words);
  }

  /**
   * The trace as lines.
   *
   * @param name a lot or a horse
   * @param quantity an analyte code such as NSC_WSC; empty for what the limits ask
   * @param progress told what had to be mended in the ledger
   * @throws UsageException if no lot and no horse has this name
   */
  public static List<String> of(
      OfficeFolders folders,
      LocalDate asOf,
      String name,
      Optional<String> quantity,
      Progress progress) {
    Desk desk = Desk.open(folders, new Options("kg", new TreeSet<>()), asOf, progress);
    OfficeTrace trace = new OfficeTrace(desk);
    Optional<AnalyteCode> code = quantity.map(OfficeTrace::code);
    Optional<Horse> horse = desk.inputs().registers().office().findHorse(name);
    if (horse.isPresent()) {
      return trace.horse(horse.get(), code.orElse(AnalyteCode.NSC_WSC));
    }
    List<InForce> entries =
        desk.morning().settled().inForce().stream().filter(i -> i.subject().equals(name)).toList();
    if (entries.isEmpty()) {
      throw new UsageException("No lot, feed or horse is called \"" + name + "\".");
    }
    List<String> lines = new ArrayList<>();
    entries.forEach(entry -> lines.addAll(trace.lot(entry, code)));
    return lines;
  }

  private static AnalyteCode code(String quantity) {
    String code = quantity.toUpperCase(Locale.ROOT).replace('-', '_');
    try {
      return new AnalyteCode(code);
    } catch (IllegalArgumentException e) {
      throw new UsageException(
          "\"" + quantity + "\" is not a quantity; try NSC_WSC, STARCH, DM, CA …");
    }
  }

  private List<String> lot(InForce entry, Optional<AnalyteCode> code) {
    List<String> lines = new ArrayList<>();
    String batch = entry.batch().isEmpty() ? "" : " batch " + entry.batch();
    lines.add(entry.subject() + batch + ": " + entry.why());
    if (entry.analysis().isEmpty()) {
      lines.add("  no analysis is in force");
    }
    entry
        .analysis()
        .ifPresent(
            analysis -> {
              Map<AnalyteCode, Measured> values = new TreeMap<>(analysis.analysis().contents());
              analysis.analysis().dryMatter().ifPresent(dm -> values.put(AnalyteCode.DM, dm));
              values.forEach(
                  (c, v) -> {
                    if (code.isEmpty() || code.get().equals(c)) {
                      lines.addAll(text.of(c.value(), v));
                    }
                  });
              analysis
                  .leftOut()
                  .forEach(l -> lines.add("left out: " + l.analyte() + ", " + l.reason()));
              lines.add("cores: " + analysis.cores() + " (" + analysis.coresFrom() + ")");
            });
    addVerdicts(entry, lines);
    addChecks(entry, lines);
    addAnswers(entry, lines);
    addLayouts(entry, lines);
    return lines;
  }

  private void addVerdicts(InForce entry, List<String> lines) {
    List<Verdict> verdicts =
        desk.judged().verdicts().getOrDefault(entry.subject(), List.of()).stream()
            .filter(v -> !v.isSilent())
            .toList();
    LotRows.accounts(entry, verdicts, desk.inputs().tables())
        .forEach(account -> lines.add("uncertainty of " + account));
    for (Verdict verdict : verdicts) {
      String id = verdict.limit().id();
      lines.add("limit " + id + ": " + verdict.word().code() + ", " + verdict.reason());
      if (!verdict.settle().isEmpty() && !verdict.reason().contains(verdict.settle())) {
        lines.add("  to settle it: " + verdict.settle());
      }
    }
    entry
        .analysis()
        .ifPresent(
            a ->
                LotNotes.of(verdicts, a, desk.inputs().tables().judgement().notes())
                    .forEach(note -> lines.add("note: " + note)));
  }

  private void addChecks(InForce entry, List<String> lines) {
    for (SettledSample sample : desk.morning().settled().samples()) {
      if (entry.from().contains(sample.key())) {
        for (Check check : sample.sample().checks()) {
          lines.add((check.holds() ? "confirmed: " : "broken: ") + check.words());
        }
      }
    }
  }

  /** What a person said about its figures, beside what was read. */
  private void addAnswers(InForce entry, List<String> lines) {
    for (SettledSample sample : desk.morning().settled().samples()) {
      if (entry.from().contains(sample.key())) {
        for (Reading reading : sample.sample().readings()) {
          reading
              .value()
              .map(Measured::evidence)
              .filter(e -> e instanceof Evidence.Answered)
              .ifPresent(e -> lines.add(answered(reading, (Evidence.Answered) e)));
        }
      }
    }
    desk.morning().settled().corrected().stream()
        .filter(c -> entry.from().contains(c.key()))
        .map(this::corrected)
        .forEach(lines::add);
  }

  private String answered(Reading reading, Evidence.Answered answer) {
    return "read: "
        + read(reading)
        + "; settled by "
        + answer.by()
        + " on "
        + answer.on()
        + " ("
        + answer.questionId()
        + ")";
  }

  private String corrected(Corrected corrected) {
    return "corrected: "
        + read(corrected.read())
        + "; now "
        + corrected.decision().value()
        + " by "
        + corrected.decision().by()
        + " on "
        + corrected.decision().date()
        + " ("
        + corrected.decision().why()
        + "); the layout is to be looked at";
  }

  private String read(Reading reading) {
    return reading.analyte()
        + " \""
        + reading.raw()
        + "\" in "
        + places.words(reading.place())
        + ", "
        + reading.place().words();
  }

  private void addLayouts(InForce entry, List<String> lines) {
    for (LayoutSeen seen : desk.morning().settled().layouts()) {
      boolean isOfEntry =
          desk.morning().settled().samples().stream()
              .filter(s -> s.subject().equals(entry.subject()))
              .filter(s -> s.batch().equals(entry.batch()))
              .anyMatch(s -> s.key().document().equals(seen.document()));
      if (isOfEntry && !seen.layout().isNone()) {
        lines.add(
            "layout of "
                + places.file(seen.document())
                + ": "
                + seen.layout().name()
                + ", "
                + seen.state());
        seen.notes().forEach(note -> lines.add("  " + note));
      }
    }
  }

  private List<String> horse(Horse horse, AnalyteCode code) {
    TracedDiet traced = desk.pipeline().trace(horse, desk.morning(), desk.judged());
    List<String> lines = new ArrayList<>(traced.lines(code));
    traced.contents(code).forEach((item, value) -> lines.addAll(text.of(item + " " + code, value)));
    return lines;
  }
}
