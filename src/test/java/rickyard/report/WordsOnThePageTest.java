package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;

/** Codes and keys stay where programs read and people type; elsewhere the page says words. */
class WordsOnThePageTest {
  private static MorningView view(Map<String, String> texts) {
    return SampleView.of(8, 6, text -> texts.getOrDefault(text, text));
  }

  private static Document page(MorningView view) {
    byte[] html = requireNonNull(Outputs.of(view, Set.of(Outputs.PAGE)).get("summary.html"));
    return PageText.page(new String(html, UTF_8));
  }

  @Test
  void aQuestionAboutFiguresIsAskedInWordsButQuotesTheReport() {
    Document page =
        page(
            view(
                Map.of(
                    "Are the figures as fed or of dry matter?",
                    "Are CP, MN and NSC_WSC as fed (CP \"MN 8.1\")?")));
    assertEquals(
        "Are crude protein, manganese and WSC + starch as fed (crude protein \"MN 8.1\")?",
        page.select("[data-entry=question] h4").get(1).text());
  }

  @Test
  void aLotThatIsCalledLikeAnAnalyteKeepsItsName() {
    Document page = page(view(Map.of("Which lot is 'L0'?", "Which lot is K, P or CP?")));
    assertEquals("Which lot is K, P or CP?", page.select("[data-entry=question] h4").get(0).text());
  }

  @Test
  void aChoiceIsTypedAsItIsAndItsMeaningStandsBesideIt() {
    Document page = page(view(Map.of("LO", "NSC_WSC", "L10", "C25-103")));
    Element choices = page.select("[data-entry=question] p").get(2);
    assertEquals(
        List.of("NSC_WSC", "C25-103", "none"), choices.select("code").eachText(), choices.text());
    assertEquals("Choices: NSC_WSC (WSC + starch) or C25-103 or none", choices.text());
  }

  @Test
  void aKeyThatIsTheNameAgainIsNotSaidTwice() {
    String page = page(view(Map.of("H1", "bramble"))).text();
    assertTrue(page.contains("Bramble"), page);
    assertFalse(page.contains("Bramble (bramble)"), page);
  }

  @Test
  void whatIsDueNamesHorsesAndSaysNothingTwice() {
    Document page =
        page(view(Map.of("Just under the line.", "Just under the line; fed to H1, H2")));
    String due = page.select(".due tbody tr").get(1).text();
    assertTrue(due.contains(" Take 20 cores of L4. "), due);
    assertFalse(due.contains("test again:"), due);
    assertTrue(due.endsWith("; fed to Bramble (H1), Quill (H2)"), due);
  }

  @Test
  void strawStandsAfterEveryHayWhateverItsSugar() {
    MorningView view = SampleView.of(8, 12);
    List<String> straw =
        view.lots().stream().filter(l -> l.material().equals("straw")).map(LotRow::lot).toList();
    List<String> order = page(view).select("article[data-entry=lot] h3").eachText();
    assertEquals(12, order.size());
    assertEquals(2, straw.size());
    assertEquals(straw, order.subList(10, 12));
    assertFalse(
        view.lots().get(11).material().equals("straw"), "the order of suitability is another");
    String last = page(view).select("article[data-entry=lot]").last().text();
    assertTrue(last.contains("Straw is no only forage"), last);
  }
}
