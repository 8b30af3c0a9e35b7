package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.view.AmendmentRow;
import rickyard.report.view.AnalysisRow;
import rickyard.report.view.MorningView;

/** What the pages say of a report that took another one's place. */
class AmendmentPageTest {
  private static final String LINE = "L1: new.pdf takes the place of old.pdf (newer-revision)";

  private static AnalysisRow figure(String code, double value, double u, String basis) {
    return new AnalysisRow(
        "x.pdf",
        "",
        1,
        2,
        "",
        "L1",
        "",
        "N-7",
        1,
        "final",
        "",
        code,
        "",
        "",
        "",
        basis,
        "%",
        value,
        value,
        value,
        u,
        "reported",
        "nir",
        "in-force",
        "",
        false,
        "");
  }

  private static AmendmentRow row(
      List<AnalysisRow> old, List<AnalysisRow> now, String why, List<String> cleared) {
    return new AmendmentRow(
        "L1",
        "",
        LINE,
        why,
        old,
        now,
        new AmendmentRow.Source("N-7", 1, "old.pdf"),
        new AmendmentRow.Source("N-7", 2, "new.pdf"),
        cleared,
        List.of(3));
  }

  private static String said(AmendmentRow row) {
    MorningView view = SampleView.of(3, 2).withAmendments(List.of(row));
    return PageText.page(html(view)).select("#changed ~ ul li").get(0).text();
  }

  private static String html(MorningView view) {
    return new String(
        requireNonNull(Outputs.of(view, Set.of(Outputs.PAGE)).get("summary.html")), UTF_8);
  }

  @Test
  void theFiguresThatDecideComeFirstFromWhatToWhatAndForWhom() {
    List<AnalysisRow> old =
        List.of(
            figure("NSC_WSC", 7.9, 0.03, "dm"),
            figure("WSC", 7.2, 0.03, "dm"),
            figure("STARCH", 0.6, 0.03, "dm"),
            figure("DM", 88.8, 0.03, "af"),
            figure("CP", 8.6, 0.03, "dm"),
            figure("NDF", 61.9, 0.03, "dm"));
    List<AnalysisRow> now =
        List.of(
            figure("NSC_WSC", 13.1, 0.03, "dm"),
            figure("WSC", 12.2, 1.6, "dm"),
            figure("STARCH", 0.8, 0.6, "dm"),
            figure("DM", 88.8, 0.7, "af"),
            figure("CP", 8.7, 0.6, "dm"),
            figure("NDF", 57.4, 1.2, "dm"));

    String said = said(row(old, now, "newer-revision", List.of("ID")));

    assertTrue(
        said.startsWith(
            "N-7 revision 2 (new.pdf) takes the place of revision 1 (old.pdf). L1: WSC + starch 7.8"
                + " → 13 % of dry matter, WSC 7.2 → 12.2 % of dry matter, Starch 0.6 → 0.8 % of"
                + " dry matter, NDF 61.9 → 57.4 % of dry matter; fed to Bramble (H1), Tansy (H3); "
                + "L1 does not clear for insulin dysregulation (ID) any more; "),
        said);
    assertTrue(said.endsWith("decisions to look at again: decisions.csv rows [3]."), said);
    assertFalse(said.contains("Crude protein"), "changed by less than its uncertainty: " + said);
  }

  @Test
  void whatOneReportDoesNotPrintIsTheSumOfItsPartsOnBothSides() {
    List<AnalysisRow> old = List.of(figure("WSC", 7.2, 0, "dm"), figure("STARCH", 0.6, 0, "dm"));
    List<AnalysisRow> now =
        List.of(
            figure("NSC_WSC", 14, 0, "dm"),
            figure("WSC", 12.2, 1, "dm"),
            figure("STARCH", 0.8, 1, "dm"));

    assertTrue(
        said(row(old, now, "newer-revision", List.of()))
            .contains("L1: WSC + starch 7.8 → 13 % of dry matter, "),
        "like with like, never a sum with a printed figure");
  }

  @Test
  void figuresOnTwoBasesAreShownWithBoth() {
    String said =
        said(
            row(
                List.of(figure("WSC", 7.2, 0, "af")),
                List.of(figure("WSC", 7.2, 1, "dm")),
                "newer-revision",
                List.of()));
    assertTrue(said.contains("WSC 7.2 % as fed → 7.2 % of dry matter"), said);
  }

  @Test
  void atMostSixFiguresAreNamedAndTheOthersCounted() {
    List<AnalysisRow> old = new ArrayList<>();
    List<AnalysisRow> now = new ArrayList<>();
    for (String code : List.of("WSC", "STARCH", "CP", "NDF", "ADF", "ASH", "CA", "MG", "K")) {
      old.add(figure(code, 5, 0.1, "dm"));
      now.add(figure(code, 9, 0.1, "dm"));
    }
    String said = said(row(old, now, "newer-revision", List.of()));
    // WSC + starch is the tenth
    assertEquals(6, said.split("→", -1).length - 1, said);
    assertTrue(said.contains(" and 4 more; fed to"), said);
  }

  @Test
  void aWithdrawnReportSaysWhatCountsNoMore() {
    String said =
        said(row(List.of(figure("NSC_WSC", 9.6, 0, "dm")), List.of(), "withdrawn", List.of()));
    assertTrue(
        said.startsWith(
            "N-7 is withdrawn (new.pdf). L1: WSC + starch 9.6 % of dry matter no longer counts;"
                + " nothing takes its place; "),
        said);
  }

  @Test
  void anAmendmentIsSaidOnceOnThePageAndOnPaper() throws Exception {
    AmendmentRow row =
        row(
            List.of(figure("WSC", 7.2, 0, "dm")),
            List.of(figure("WSC", 12.2, 1, "dm")),
            "newer-revision",
            List.of());
    MorningView view = SampleView.of(3, 2, t -> t.startsWith("Report 2211") ? LINE : t);
    view = view.withAmendments(List.of(row));
    Document page = PageText.page(html(view));
    assertEquals(1, page.select("#changed ~ ul").get(0).select("li").size());

    byte[] pdf = requireNonNull(Outputs.of(view, Set.of(Outputs.PDF)).get("summary.pdf"));
    try (var document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertTrue(text.contains("WSC 7.2 → 12.2 % of dry matter"), text);
    }
  }

  @Test
  void aFirstMorningSaysOnceWhatBeforeIsAndClaimsNothingOfItsList() {
    MorningView sample = SampleView.of(24, 12);
    String typical =
        "no earlier morning on record: before is this ration with typical values, as if nothing"
            + " had been analysed";
    MorningView first = first(sample, typical);
    String html = html(first);
    String words = "with typical values, as if nothing had been analysed";
    Document page = PageText.page(html);
    assertFalse(page.text().contains("nothing to compare with"));
    assertFalse(page.text().contains("no earlier morning on record"));
    assertTrue(page.select("#horses + p").text().contains(words));
    assertTrue(page.select("#changed + p").text().contains("first morning"));
    assertFalse(page.select("details.horse, .call, #pending ~ ul").text().contains(words));
    assertEquals(2, html.split(words, -1).length - 1, "at the head of two sections");
    assertTrue(page.select("#changed ~ ul").text().contains("Bramble"), "what else changed stays");

    Document later = PageText.page(html(sample.withHorses(first.horses())));
    assertTrue(
        later.select("details.horse").text().contains(words), "a new horse of a later morning");
  }

  private static MorningView first(MorningView view, String typical) {
    List<HorseAdvice> horses = new ArrayList<>();
    for (HorseAdvice h : view.horses()) {
      List<String> changes = new ArrayList<>(h.changes());
      changes.add(0, typical);
      horses.add(Altered.changes(h, h.reason() + "; why: " + typical, changes));
    }
    return Altered.first(view.withHorses(horses));
  }
}
