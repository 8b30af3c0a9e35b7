package rickyard.report.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Plain;
import rickyard.report.text.PlainNumber;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.VerdictRow;

/** The lots, in the order of their suitability, each with its pictures and where they came from. */
public final class LotPages {
  /** Why one limit reads as it does. */
  public record Reason(String limit, String reason, String weight) {}

  /** The names of its groups alone, by which the page is filtered. */
  public record Groups(String suits, String notFor, String undecided) {}

  /** One lot. */
  public record Entry(
      String anchor,
      String lot,
      String about,
      Groups groups,
      String suits,
      String notFor,
      String undecided,
      String reason,
      String assumptions,
      List<Blocks.Block> deciding,
      List<Reason> reasons,
      List<Blocks.Block> others,
      List<LotFigures.Figure> figures,
      List<String> notes,
      List<String> accounts,
      String nsc,
      String stock,
      String find) {}

  /** One lot of very many: a line. */
  public record Brief(
      String anchor,
      String lot,
      String about,
      String suits,
      String notFor,
      String undecided,
      String find) {}

  private LotPages() {}

  /**
   * The lots that the page shows, in their order: of very many, those that somebody holds first.
   */
  static List<LotRow> shown(MorningView view) {
    Set<String> chosen =
        view.lots().stream()
            .sorted(
                Comparator.comparing((LotRow lot) -> lot.holder().isBlank())
                    .thenComparing(LotPages::isStraw))
            .limit(Listed.MOST)
            .map(LotRow::lot)
            .collect(Collectors.toSet());
    return view.lots().stream()
        .filter(lot -> chosen.contains(lot.lot()))
        .sorted(Comparator.comparing(LotPages::isStraw))
        .toList();
  }

  /** Straw is no only forage, whatever its sugar: it stands last. */
  private static boolean isStraw(LotRow lot) {
    return lot.material().equals("straw");
  }

  /** The lots beyond those shown that somebody holds or is fed: a line each. */
  static List<LotRow> rest(MorningView view, List<LotRow> shown) {
    if (shown.size() == view.lots().size()) {
      return List.of();
    }
    Set<String> whole = shown.stream().map(LotRow::lot).collect(Collectors.toSet());
    FindWords words = new FindWords(view);
    return view.lots().stream()
        .filter(lot -> !whole.contains(lot.lot()))
        .filter(lot -> !lot.holder().isBlank() || words.isFed(lot.lot()))
        .toList();
  }

  static List<Brief> brief(MorningView view, List<LotRow> rest, Anchors anchors) {
    FindWords words = new FindWords(view);
    return rest.stream()
        .map(
            lot ->
                new Brief(
                    anchors.lot(lot.lot()),
                    Harmless.line(lot.lot()),
                    lot.holder().isBlank() ? "" : "held by " + Names.client(view, lot.holder()),
                    Words.all("group", lot.suits()),
                    Words.all("group", lot.notFor()),
                    Words.all("group", lot.undecided()),
                    words.lot(lot.lot())))
        .toList();
  }

  /** Whether there are more lots than a page can show all of in full. */
  static boolean areMany(MorningView view) {
    return view.lots().size() > Listed.MOST;
  }

  static Listed<Entry> of(MorningView view, List<LotRow> shown, Anchors anchors) {
    Map<String, List<AnalysisRow>> byLot = new TreeMap<>();
    shown.forEach(lot -> byLot.put(lot.lot(), new ArrayList<>()));
    for (AnalysisRow row : view.analyses()) {
      List<AnalysisRow> rows = byLot.get(row.lot());
      if (rows != null) {
        rows.add(row);
      }
    }
    FindWords words = new FindWords(view);
    List<Entry> entries = new ArrayList<>();
    for (LotRow lot : shown) {
      List<AnalysisRow> rows = byLot.getOrDefault(lot.lot(), List.of());
      entries.add(entry(view, lot, rows, anchors, words.lot(lot.lot())));
    }
    return Listed.of(entries, view.lots().size(), "lots.csv, verdicts.csv and analyses.csv");
  }

  private static Entry entry(
      MorningView view, LotRow lot, List<AnalysisRow> rows, Anchors anchors, String find) {
    return new Entry(
        anchors.lot(lot.lot()),
        Harmless.line(lot.lot()),
        about(view, lot, rows, Mass.named(view.units())),
        new Groups(
            Words.all("group", lot.suits()),
            Words.all("group", lot.notFor()),
            Words.all("group", lot.undecided())),
        LotGroups.suits(lot),
        Words.all("group", lot.notFor()),
        LotGroups.notCleared(lot),
        Plain.sentence(lot.reason()),
        lot.assumptions().stream()
            .map(line -> Names.advisers(view, Plain.line(line)))
            .collect(Collectors.joining("; ")),
        blocks(lot, true, anchors),
        lot.verdicts().stream().filter(LotPages::decides).map(LotPages::reason).toList(),
        Blocks.drawn(blocks(lot, false, anchors), areMany(view) ? 0 : Integer.MAX_VALUE),
        LotFigures.of(rows),
        notes(lot),
        lot.accounts().stream().map(Plain::line).toList(),
        plain(lot.nscWsc()),
        plain(lot.stockKg()),
        find);
  }

  private static final String STRAW =
      "Straw is no only forage: coarse, poor in protein and minerals, and a risk of impaction and"
          + " gastric ulcers where it is much of what is eaten (common practice, no source); it"
          + " stands last whatever its sugar.";

  private static List<String> notes(LotRow lot) {
    return Stream.concat(
            isStraw(lot) ? Stream.of(STRAW) : Stream.of(), lot.notes().stream().map(Plain::line))
        .toList();
  }

  /** For sorting: a number as programs read it, empty where there is none. */
  private static String plain(@Nullable Double number) {
    return PlainNumber.find(number).map(BigDecimal::toPlainString).orElse("");
  }

  private static String about(MorningView view, LotRow lot, List<AnalysisRow> rows, Mass mass) {
    List<String> parts = new ArrayList<>();
    parts.add(Harmless.line(lot.material()).replace('-', ' '));
    if (!lot.cutting().isBlank()) {
      parts.add("cutting " + Harmless.line(lot.cutting()));
    }
    if (!lot.holder().isBlank()) {
      parts.add("held by " + Names.client(view, lot.holder()));
    }
    Double stock = lot.stockKg();
    parts.add(stock == null ? "stock not recorded" : mass.words(stock) + " in store");
    parts.add(
        lot.sampledOn().isBlank()
            ? days(rows, AnalysisRow::sampledOn, "day of sampling not given", "tests sampled ")
            : "sampled " + Harmless.line(lot.sampledOn()));
    parts.add(
        lot.lab().isBlank()
            ? days(rows, AnalysisRow::lab, "laboratory not named", "by ")
            : "by " + Harmless.line(lot.lab()));
    return String.join(" · ", parts);
  }

  /** Where no one test is in force, those of all its tests. */
  private static String days(
      List<AnalysisRow> rows, Function<AnalysisRow, String> what, String none, String some) {
    String all =
        rows.stream()
            .map(what)
            .map(Harmless::line)
            .filter(text -> !text.isEmpty())
            .distinct()
            .sorted()
            .collect(Collectors.joining(" and "));
    return all.isEmpty() ? none : some + all;
  }

  /** Limits that stop or ask for a change, and everything that is not plainly under its limit. */
  private static boolean decides(VerdictRow row) {
    boolean weighty = row.severity().equals("stop") || row.severity().equals("change");
    boolean over = row.verdict().equals("exceeds") || row.verdict().equals("borderline-over");
    boolean unsaid = row.verdict().equals("no-limit");
    return !unsaid && (weighty || over);
  }

  /** What a reader sees first: starch and sugar, and whatever does not plainly clear. */
  private static boolean isInFront(VerdictRow row) {
    return decides(row) && (row.quantity().startsWith("nsc") || !row.verdict().equals("clears"));
  }

  private static List<Blocks.Block> blocks(LotRow lot, boolean inFront, Anchors anchors) {
    List<Blocks.Held> limits =
        lot.verdicts().stream()
            .filter(row -> isInFront(row) == inFront)
            .map(LotPages::held)
            .toList();
    return Blocks.of(limits, Harmless.line(lot.lot()), anchors);
  }

  private static Blocks.Held held(VerdictRow row) {
    return new Blocks.Held(
        "lot",
        row.group(),
        row.quantity(),
        row.limit(),
        row.unit(),
        row.value(),
        row.low(),
        row.high(),
        row.u(),
        row.pOver(),
        "",
        row.verdict(),
        "");
  }

  private static Reason reason(VerdictRow row) {
    String risk = row.risk() == null ? "none set" : Shown.chance(row.risk());
    return new Reason(
        LimitNames.words(row),
        Reasons.of(row),
        "accepted chance of being wrong "
            + risk
            + ", weight: "
            + Words.of("severity", row.severity()));
  }
}
