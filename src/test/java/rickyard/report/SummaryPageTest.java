package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.core.advice.Proposal;
import rickyard.report.view.Counts;
import rickyard.report.view.MorningView;

class SummaryPageTest {
  @Test
  void theNumbersOfTheHeadlineAddUp() {
    Document page = PageText.page(html(SampleView.of(24, 12)));
    List<String> sentences = page.select(".headline p").eachText();
    assertEquals(
        "5 files came: 1 read, 1 waits for an answer, 1 came twice, 1 could not be read, 1 known"
            + " from an earlier morning.",
        sentences.get(0));
    for (String sentence : List.of(sentences.get(0), sentences.get(2))) {
      Matcher numbers = Pattern.compile("\\b(\\d+)\\b").matcher(sentence);
      assertTrue(numbers.find());
      int all = Integer.parseInt(numbers.group(1));
      int sum = 0;
      while (numbers.find()) {
        sum += Integer.parseInt(numbers.group(1));
      }
      assertEquals(all, sum, sentence);
    }
    assertTrue(page.select("[role=alert]").isEmpty());
  }

  @Test
  void countsThatDoNotAddUpAreSaidAloud() {
    MorningView view = SampleView.of(2, 2);
    MorningView wrong = Altered.counts(view, new Counts(9, 2, 3, 1, 1, 0, 1, 1, 9, 2, 2, 0));
    String alert = PageText.page(html(wrong)).select("[role=alert]").text();
    assertTrue(alert.contains("The outcomes add up to 7, but 9 files came."), alert);
    assertTrue(alert.contains("Counted as accepted: 3, but 1 are listed."), alert);
  }

  @Test
  void problemsStandBeforeCallsAndCallsBeforeTheRest() {
    Document page = PageText.page(html(SampleView.of(24, 12)));
    assertEquals(
        List.of(
            "problems",
            "calls",
            "pending",
            "changed",
            "lots",
            "horses",
            "season",
            "arrived",
            "rules"),
        page.select("h2").eachAttr("id"));
  }

  @Test
  void oneCallAClientTheMostUrgentFirst() {
    Document page = PageText.page(html(SampleView.of(24, 12)));
    List<String> clients = page.select(".call h4").eachText();
    assertEquals(new HashSet<>(clients).size(), clients.size());
    assertEquals("Ada Thornbeck (C1)", clients.get(0));
    Element first = requireNonNull(page.selectFirst(".call"));
    assertEquals("tel:0555010" + "23", first.select(".phone a").attr("href"));
    assertEquals(
        first.select("li").size(), first.select("input[type=checkbox][aria-label]").size());
    assertTrue(first.text().contains("from this test alone: 99.6 %"), first.text());
  }

  @Test
  void everySentenceToSayAndEveryQuestionIsOnThePage() {
    MorningView view = SampleView.of(24, 12);
    Document page = PageText.page(html(view));
    view.questions()
        .forEach(q -> assertTrue(page.select("#pending ~ .entry").text().contains(q.question())));
    assertTrue(page.text().contains("q-71ac,L10,YOUR NAME,2026-11-24,"));
    assertEquals(view.horses().size(), page.select("details.horse").size());
    assertEquals(view.lots().size(), page.select("article").size());
    assertTrue(page.select("details[open]").isEmpty(), "closed until somebody opens them");
  }

  @Test
  void theDecisionRuleAndTheCautionsArePrinted() {
    MorningView view = SampleView.of(3, 2);
    Document page = PageText.page(html(view));
    assertTrue(page.text().contains(view.decisionRule()));
    for (String caution : Cautions.all()) {
      assertTrue(page.select(".cautions").text().contains(caution));
      page.select("details.horse").forEach(d -> assertTrue(d.text().contains(caution)));
    }
    assertFalse(page.text().matches("(?i).*\\bsafe\\b.*"), "clears the chosen limit, never safe");
  }

  @Test
  void poundsAreShownWhereTheOfficeWantsThem() {
    MorningView view = SampleView.of(1, 2);
    MorningView pounds = Altered.units(view, "lb");
    Document page = PageText.page(html(pounds));
    // 8.75 kg / 0.45359237 kg per lb = 19.29 lb
    assertTrue(page.select(".items").text().contains("19.29"));
    assertTrue(page.select(".items caption").text().contains("lb"));
    assertTrue(
        page.select(".items td.soft").text().contains("8.75 kg"), "the other unit beside it");
    page.select("details.horse td.soft").remove();
    assertFalse(page.select("details.horse").text().matches("(?s).*\\d kg.*"));
  }

  @Test
  void anEmptyMorningIsAPageToo() {
    Document page = PageText.page(html(SampleView.empty()));
    assertTrue(page.text().contains("Nothing arrived."));
    assertTrue(page.text().contains("Nobody has to be called this morning."));
    assertTrue(page.text().contains("No horses are in the register."));
  }

  @Test
  void thePageIsWellFormedAndItsIdsAreUnique() throws Exception {
    for (MorningView view : List.of(SampleView.empty(), SampleView.of(24, 12))) {
      String html = html(view);
      var factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      assertNotNull(
          factory
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(html.getBytes(UTF_8)))
              .getDocumentElement());
      Document page = PageText.page(html);
      List<String> ids = page.select("[id]").eachAttr("id");
      Set<String> distinct = new HashSet<>(ids);
      assertEquals(distinct.size(), ids.size());
      page.select("a[href^=#]")
          .forEach(a -> assertTrue(distinct.contains(a.attr("href").substring(1)), a.outerHtml()));
      page.select("svg[role=img]")
          .forEach(
              svg -> {
                for (String id : svg.attr("aria-labelledby").split(" ", -1)) {
                  assertTrue(distinct.contains(id));
                }
              });
    }
  }

  @Test
  void everyTableNamesItsColumnsForAScreenReader() {
    Document page = PageText.page(html(SampleView.of(24, 12)));
    assertFalse(page.select("table").isEmpty());
    page.select("th").forEach(th -> assertTrue(th.hasAttr("scope"), th.outerHtml()));
    page.select("table")
        .forEach(
            table -> {
              int columns = table.select("thead th").size();
              table
                  .select("tbody tr")
                  .forEach(row -> assertEquals(columns, row.children().size(), table.text()));
            });
    page.select("svg")
        .forEach(
            svg ->
                assertTrue(
                    svg.hasAttr("aria-hidden") || !svg.select("title").text().isEmpty(),
                    svg.outerHtml()));
  }

  @Test
  void thePageLoadsNothing() {
    String html = html(SampleView.of(24, 12));
    // a digest in base 64 may hold two slashes
    assertFalse(
        html.replaceAll("sha256-[A-Za-z0-9+/=]+", "").matches("(?is).*(https?:)?//[a-z0-9].*"),
        "no address of any kind");
    Document page = PageText.page(html);
    assertTrue(page.select("script[src], img, iframe, object, embed, form, base").isEmpty());
    assertEquals(1, page.select("script").size());
    assertEquals("data:,", page.select("link").attr("href"));
    String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
    assertTrue(policy.startsWith("default-src 'none'; style-src 'sha256-"), policy);
    assertTrue(page.select("[style]").isEmpty(), "the policy forbids style attributes");
  }

  @Test
  void ofVeryManyLotsThePageShowsSomeAndSaysWhereTheOthersAre() {
    Document page = PageText.page(html(SampleView.of(1, 1_000)));

    assertEquals(300, page.select("article[data-entry=lot]").size());
    assertTrue(
        page.text().contains("700 more stand in lots.csv, verdicts.csv and analyses.csv."),
        page.select("#lots").text());
    assertEquals(700, page.select("li[data-entry=lot]").size(), "somebody holds each of them");
    for (Element link : page.select("a[href^=#lot-]")) {
      String target = link.attr("href").substring(1);
      assertEquals(1, page.select("#" + target).size(), "a link to what is not there: " + target);
    }
  }

  @Test
  void ofVeryManyHorsesThoseWithNothingToSayHaveALineEachAndNobodyIsLost() {
    MorningView view = SampleView.of(600, 12);
    Document page = PageText.page(html(view));
    long quiet = view.horses().stream().filter(h -> h.priority() == Priority.NONE).count();

    assertEquals(600, page.select("[data-entry=horse]").size());
    // the others are more than a page shows otherwise; they never give way
    assertTrue(600 - quiet > 300);
    assertEquals(600 - quiet, page.select("details.horse").size());
    assertEquals(quiet, page.select("li[data-entry=horse][data-level=none]").size());
    assertTrue(page.select("#horses ~ p").text().contains("horses.csv and diets.csv"));
    assertTrue(page.select("#horses ~ p").text().contains("'about OFFICE NAME'"));
    Element told = requireNonNull(page.selectFirst("details[data-level=standing]"));
    assertTrue(told.select(".needs").isEmpty());
    assertTrue(told.text().contains("The nutrients of a horse that was told before stand in"));
    Element called = requireNonNull(page.selectFirst("details[data-level=call-now]:has(.needs)"));
    assertFalse(called.select(".needs").text().contains("Dry matter"), "met: in words");
    assertTrue(called.text().contains("diets.csv: Dry matter 8.2 kg of 6.8 (121 %); "));
    assertTrue(called.select(".needs").text().contains("Selenium"), "above its ceiling: a row");
    assertTrue(page.select("#horses ~ p").text().contains("what is left out is named"));
  }

  @Test
  void whereThereIsRoomHorsesWithNothingToSayAreShownInFull() {
    MorningView view = SampleView.of(312, 12);
    Document page = PageText.page(html(view));
    assertEquals(300, page.select("details.horse").size());
    assertEquals(12, page.select("li[data-entry=horse]").size());
    assertEquals(
        0, PageText.page(html(SampleView.of(300, 12))).select("li[data-entry=horse]").size());
  }

  @Test
  void proposalsAfterTheThirdAreNamedWhereThereAreVeryManyHorses() {
    MorningView many = SampleView.of(301, 3).withHorses(more(SampleView.of(301, 3)));
    Document page = PageText.page(html(many));
    Element called = requireNonNull(page.selectFirst("details[data-level=call-now]:has(.items)"));
    assertEquals(3, called.select(".proposal").size());
    assertTrue(
        called.text().contains("1 more proposal stands in remedies.csv and changeover.csv: 4. "),
        called.text());

    MorningView few = SampleView.of(30, 3).withHorses(more(SampleView.of(30, 3)));
    assertEquals(
        4,
        requireNonNull(
                PageText.page(html(few)).selectFirst("details[data-level=call-now]:has(.items)"))
            .select(".proposal")
            .size());
  }

  private static List<HorseAdvice> more(MorningView view) {
    return view.horses().stream().map(SummaryPageTest::withFour).toList();
  }

  private static HorseAdvice withFour(HorseAdvice h) {
    List<Proposal> proposals = new ArrayList<>(h.proposals());
    if (!proposals.isEmpty()) {
      Proposal last = proposals.get(proposals.size() - 1);
      proposals.add(new Proposal(4, "soak", false, last.why(), last.items(), last.diet()));
    }
    return Altered.proposals(h, proposals);
  }

  private static String html(MorningView view) {
    return new String(
        requireNonNull(Outputs.of(view, Set.of(Outputs.PAGE)).get("summary.html")), UTF_8);
  }
}
