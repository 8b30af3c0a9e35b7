package rickyard.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import rickyard.report.view.VerdictRow;

/** The lots, in the order of their suitability, each with its pictures and where they came from. */
public final class LotPages {
  /** One limit's verdict. */
  public record Verdict(
      String group,
      String quantity,
      String limit,
      String value,
      String verdict,
      String chance,
      String risk,
      String severity,
      String reason) {}

  /** One figure with the place that it was read from. */
  public record Figure(
      String analyte, String value, String printed, String place, String origin, String state) {}

  /** One lot. */
  public record Entry(
      String anchor,
      String lot,
      String about,
      String suits,
      String notFor,
      String undecided,
      String reason,
      String assumptions,
      List<String> pictures,
      List<Verdict> deciding,
      List<Verdict> others,
      List<Figure> figures) {}

  private LotPages() {}

  static List<Entry> of(MorningView view, Anchors anchors) {
    Map<String, List<AnalysisRow>> byLot = new TreeMap<>();
    for (AnalysisRow row : view.analyses()) {
      byLot.computeIfAbsent(row.lot(), l -> new ArrayList<>()).add(row);
    }
    Mass mass = Mass.named(view.units());
    List<Entry> entries = new ArrayList<>();
    for (LotRow lot : view.lots()) {
      List<AnalysisRow> rows = byLot.getOrDefault(lot.lot(), List.of());
      entries.add(entry(view, lot, rows, anchors, mass));
    }
    return entries;
  }

  private static Entry entry(
      MorningView view, LotRow lot, List<AnalysisRow> rows, Anchors anchors, Mass mass) {
    return new Entry(
        anchors.lot(lot.lot()),
        Harmless.line(lot.lot()),
        about(view, lot, mass),
        Words.all("group", lot.suits()),
        Words.all("group", lot.notFor()),
        Words.all("group", lot.undecided()),
        Harmless.line(lot.reason()),
        String.join("; ", lot.assumptions().stream().map(Harmless::line).toList()),
        pictures(lot, anchors),
        lot.verdicts().stream().filter(LotPages::decides).map(LotPages::verdict).toList(),
        lot.verdicts().stream().filter(v -> !decides(v)).map(LotPages::verdict).toList(),
        rows.stream().map(LotPages::figure).toList());
  }

  private static String about(MorningView view, LotRow lot, Mass mass) {
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
            ? "day of sampling unknown"
            : "sampled " + Harmless.line(lot.sampledOn()));
    parts.add(lot.lab().isBlank() ? "laboratory unknown" : "by " + Harmless.line(lot.lab()));
    return String.join(" · ", parts);
  }

  /** Limits that stop or ask for a change, and everything that is not plainly under its limit. */
  private static boolean decides(VerdictRow row) {
    boolean weighty = row.severity().equals("stop") || row.severity().equals("change");
    boolean over = row.verdict().equals("exceeds") || row.verdict().equals("borderline-over");
    boolean unsaid = row.verdict().equals("no-limit");
    return !unsaid && (weighty || over);
  }

  private static Verdict verdict(VerdictRow row) {
    String unit = Words.of("unit", row.unit());
    return new Verdict(
        Words.of("group", row.group()),
        Words.of("quantity", row.quantity()),
        Shown.number(Double.valueOf(row.limit())) + " " + unit,
        Shown.withUncertainty(row.value(), row.u()),
        Words.of("verdict", row.verdict()),
        Shown.chance(row.pOver()),
        row.risk() == null ? "none set" : Shown.chance(row.risk()),
        Words.of("severity", row.severity()),
        Harmless.line(row.reason()));
  }

  /** One picture for each quantity with a deciding limit and a value. */
  private static List<String> pictures(LotRow lot, Anchors anchors) {
    Map<String, List<VerdictRow>> byQuantity = new LinkedHashMap<>();
    for (VerdictRow row : lot.verdicts()) {
      if (decides(row) && row.value() != null) {
        String key = row.quantity() + "\n" + row.unit();
        byQuantity.computeIfAbsent(key, q -> new ArrayList<>()).add(row);
      }
    }
    List<String> pictures = new ArrayList<>();
    byQuantity.values().forEach(rows -> pictures.add(picture(rows, lot.lot(), anchors)));
    return pictures;
  }

  private static String picture(List<VerdictRow> rows, String lot, Anchors anchors) {
    VerdictRow first = rows.get(0);
    Double value = first.value();
    String unit = Words.of("unit", first.unit());
    String title =
        Words.of("quantity", first.quantity())
            + " of "
            + Harmless.line(lot)
            + ": "
            + Shown.withUncertainty(value, first.u())
            + " "
            + unit;
    List<LimitPicture.Mark> marks =
        rows.stream().map(r -> new LimitPicture.Mark(r.limit(), Harmless.line(r.group()))).toList();
    return LimitPicture.of(
        anchors.picture(), title, value == null ? 0 : value, first.u(), unit, marks);
  }

  private static Figure figure(AnalysisRow row) {
    String unit = row.unit() + " " + Words.of("basis", row.basis());
    return new Figure(
        Harmless.line(row.analyte()),
        Shown.withUncertainty(row.value(), row.u()) + " " + Harmless.line(unit),
        Harmless.line(row.raw() + " " + row.rawUnit() + " " + row.rawBasis()),
        place(row),
        Words.of("origin", row.origin()),
        Harmless.line(row.state()));
  }

  private static String place(AnalysisRow row) {
    if (row.file().isBlank()) {
      return "";
    }
    StringBuilder place = new StringBuilder(Harmless.line(row.file()));
    if (!row.part().isBlank()) {
      place.append(", ").append(Harmless.line(row.part()));
    }
    if (row.page() > 0) {
      place.append(", page ").append(row.page());
    }
    if (row.row() > 0) {
      place.append(", row ").append(row.row());
    }
    if (!row.column().isBlank()) {
      place.append(", column ").append(Harmless.line(row.column()));
    }
    return place.toString();
  }
}
