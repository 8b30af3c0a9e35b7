package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.HorseAdvice;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.ShareRow;

/** What leads from one entry of the page to another, and to the papers beside it. */
class PageEntriesTest {
  private static Document page(SortedMap<String, byte[]> files) {
    return PageText.page(new String(requireNonNull(files.get("summary.html")), UTF_8));
  }

  @Test
  void aHorseLeadsToItsSheetAndLetterWhereTheyWereMade() {
    MorningView view = SampleView.of(12, 6);
    SortedMap<String, byte[]> files =
        Outputs.of(view, Set.of(Outputs.PAGE, Outputs.SHEETS, Outputs.LETTERS));
    Document page = page(files);

    List<String> sheets = page.select("a[href^=sheets/]").eachAttr("href");
    List<String> letters = page.select("a[href^=letters/]").eachAttr("href");
    assertEquals(view.horses().size(), sheets.size());
    assertFalse(letters.isEmpty());
    sheets.forEach(href -> assertTrue(files.containsKey(href), href));
    letters.forEach(href -> assertTrue(files.containsKey(href), href));
    assertTrue(sheets.stream().anyMatch(href -> href.endsWith(".pdf")), "a ration that changes");
    assertTrue(sheets.stream().anyMatch(href -> href.endsWith(".html")), "one that stands");
    assertTrue(
        page.select("meta[http-equiv=Content-Security-Policy]")
            .attr("content")
            .startsWith("default-src 'none'"));
  }

  @Test
  void aPageMadeAloneLeadsToNoPaper() {
    Document page = page(Outputs.of(SampleView.of(12, 6), Set.of(Outputs.PAGE)));
    assertTrue(page.select("a[href^=sheets/], a[href^=letters/]").isEmpty());
    Document sheets = page(Outputs.of(SampleView.of(12, 6), Set.of(Outputs.PAGE, Outputs.SHEETS)));
    assertTrue(sheets.select("a[href^=letters/]").isEmpty());
  }

  @Test
  void theLotsOfADietAndOfAProposalAreLinksToTheirEntries() {
    Document page = page(Outputs.of(SampleView.of(12, 6), Set.of(Outputs.PAGE)));
    Element horse = requireNonNull(page.selectFirst("details[data-level=call-now]:has(.items)"));
    for (String table : List.of(".portions", ".items")) {
      Element link = requireNonNull(horse.selectFirst(table + " tbody a"));
      Element lot = requireNonNull(page.getElementById(link.attr("href").substring(1)));
      assertEquals("lot", lot.attr("data-entry"));
      assertTrue(link.text().contains(lot.attr("data-name")), link.outerHtml());
      assertTrue(
          horse.select(table + " tbody a").size() < horse.select(table + " tbody tr").size(),
          "a feed has no entry to go to");
    }
  }

  private static ShareRow share(String horse, String lot, String now) {
    return new ShareRow(
        horse,
        lot,
        8.0,
        30.0,
        240.0,
        "clears",
        "Lowest first.",
        "C1",
        "ID",
        "",
        List.of(now),
        "clears");
  }

  @Test
  void aPlanThatDiffersFromTheHorsesOwnFirstProposalSaysSo() {
    MorningView view = SampleView.of(12, 6);
    // H1 is to be called about; its first proposal with amounts takes L1 in place of L2
    MorningView swapped =
        view.withHorses(view.horses().stream().map(PageEntriesTest::withoutTheFirst).toList());
    CoOpView coOp =
        new CoOpView(
            List.of(share("H1", "L3", "L1"), share("H2", "L1", "L2")),
            List.of(),
            List.of(),
            List.of());
    Document page = page(Outputs.of(swapped, coOp, Set.of(Outputs.PAGE)));

    String differs = page.select(".share tbody tr").get(0).text();
    assertTrue(
        differs.contains("Its own first proposal is 'Another lot' with Upper Ley (L1); the plan"),
        differs);
    assertTrue(differs.endsWith("the adviser decides."), differs);
    String same = page.select(".share tbody tr").get(1).text();
    assertFalse(same.contains("own first proposal"), same);
    assertTrue(page.select("#coop ~ p").text().contains("start from the first proposal in its"));
  }

  private static HorseAdvice withoutTheFirst(HorseAdvice h) {
    return Altered.proposals(h, h.proposals().stream().skip(1).toList());
  }
}
