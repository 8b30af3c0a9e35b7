package rickyard.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rickyard.report.view.AnalysisRow;

class LotFiguresTest {
  private static AnalysisRow row(double value, String origin, String state, boolean used) {
    return new AnalysisRow(
        "a.pdf",
        "",
        1,
        9,
        "DM",
        "L1",
        "",
        "",
        1,
        "final",
        "",
        "NSC_WSC",
        "",
        "",
        "",
        "dm",
        "%",
        value,
        value,
        value,
        0.1,
        origin,
        "nir",
        state,
        "",
        used,
        origin.equals("derived") ? "WSC + starch, from \"12.2\" in a.pdf, page 1, row 8" : "");
  }

  @Test
  void ofTwoInForceTheOneThatIsUsedIsMarkedAndTheOtherSaysSo() {
    List<LotFigures.Figure> figures =
        LotFigures.of(
            List.of(
                row(13.1, "reported", "in-force", false), row(13, "derived", "in-force", true)));
    assertTrue(figures.get(0).state().endsWith("; beside it, not judged by this one"));
    assertTrue(figures.get(1).state().endsWith("; the lot is judged by this one"));
    assertEquals("WSC + starch, from \"12.2\" in a.pdf, page 1, row 8", figures.get(1).place());
    assertEquals("a.pdf, page 1, row 9, column DM", figures.get(0).place());
  }

  @Test
  void aloneInForceAFigureNeedsNoMark() {
    for (LotFigures.Figure figure :
        LotFigures.of(
            List.of(
                row(7.9, "reported", "superseded", false),
                row(13, "reported", "in-force", true)))) {
      assertFalse(figure.state().contains("judged by"), figure.state());
    }
  }

  @Test
  void onlyAFigureThatJudgesHasAnUncertainty() {
    List<LotFigures.Figure> figures =
        LotFigures.of(
            List.of(
                row(7.9, "reported", "superseded", false),
                row(13.1, "reported", "in-force", false),
                row(13, "derived", "in-force", true)));
    assertEquals("7.9 % of dry matter", figures.get(0).value());
    assertEquals("13.1 % of dry matter", figures.get(1).value());
    assertEquals("13 ± 0.1 % of dry matter", figures.get(2).value());
  }
}
