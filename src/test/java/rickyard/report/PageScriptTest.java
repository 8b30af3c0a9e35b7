package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.net.URLDecoder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.htmlunit.BrowserVersion;
import org.htmlunit.WebClient;
import org.htmlunit.html.DomElement;
import org.htmlunit.html.HtmlElement;
import org.htmlunit.html.HtmlInput;
import org.htmlunit.html.HtmlPage;
import org.htmlunit.html.HtmlSelect;
import org.htmlunit.html.HtmlTextArea;
import org.htmlunit.javascript.host.event.KeyboardEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.report.view.MorningView;

/** The page as a file on disk, with its script, in a browser without a network. */
class PageScriptTest {
  private final WebClient browser = new WebClient(BrowserVersion.CHROME);
  private final List<String> asked = new ArrayList<>();

  @TempDir Path folder;

  @AfterEach
  void close() {
    browser.close();
  }

  private HtmlPage open(MorningView view) throws IOException {
    Path file = folder.resolve("summary.html");
    Files.write(file, requireNonNull(Outputs.of(view, Set.of(Outputs.PAGE)).get("summary.html")));
    browser.getOptions().setThrowExceptionOnScriptError(true);
    browser.setConfirmHandler((page, message) -> asked.add(message));
    return browser.getPage(file.toUri().toURL());
  }

  private static List<String> names(HtmlPage page, String selector) {
    return page.querySelectorAll(selector).stream()
        .map(n -> ((DomElement) n).getAttribute("data-name"))
        .toList();
  }

  private static HtmlTextArea rows(HtmlPage page) {
    return (HtmlTextArea) page.getElementById("told-text");
  }

  private static List<CSVRecord> csv(String text) throws IOException {
    try (var parser = CSVFormat.RFC4180.parse(new StringReader(text))) {
      return parser.getRecords();
    }
  }

  private static void type(HtmlElement input, String text) throws IOException {
    input.click();
    input.type(text);
  }

  @Test
  void findingAndShowingHideTheOthersAndCountThem() throws IOException {
    HtmlPage page = open(SampleView.of(24, 12));
    type((HtmlElement) page.getElementById("find"), "bramble");
    int horses = page.querySelectorAll("[data-entry=horse]:not(.away)").size();
    assertEquals(2, horses);
    assertTrue(page.getElementById("found").asNormalizedText().contains(" of "));

    ((HtmlInput) page.getElementById("find")).setValue("");
    HtmlSelect only = (HtmlSelect) page.getElementById("only");
    only.setSelectedAttribute(only.getOptionByText("Horses: call now"), true);
    List<String> shown = names(page, "[data-entry=horse]:not(.away)");
    assertFalse(shown.isEmpty());
    assertEquals(shown, names(page, "[data-entry=horse][data-level=call-now]"));
    assertEquals(0, page.querySelectorAll("[data-entry=lot]:not(.away)").size());
  }

  private static String found(HtmlPage page) {
    return page.getElementById("found").asNormalizedText();
  }

  private static HtmlInput box(HtmlPage page) {
    return (HtmlInput) page.getElementById("find");
  }

  @Test
  void reportsAndFilesFindTheirLotAndLotsTheHorsesThatAreFedThem() throws IOException {
    HtmlPage page = open(SampleView.of(24, 12));
    type(box(page), "report-3.pdf");
    assertEquals(List.of("L3"), names(page, "[data-entry=lot]:not(.away)"));
    assertEquals(List.of(), names(page, "[data-entry=horse]:not(.away)"));

    box(page).setValue("");
    type(box(page), "bramble (h1)");
    List<String> lots = names(page, "[data-entry=lot]:not(.away)");
    assertEquals(List.of("L1"), lots, "the lots that this horse is fed");
    assertEquals(List.of("Bramble (H1)"), names(page, "[data-entry=horse]:not(.away)"));

    box(page).setValue("");
    type(box(page), "l1 bramble");
    assertEquals(
        List.of("Bramble (H1)", "Bramble (H13)"), names(page, "[data-entry=horse]:not(.away)"));
    box(page).setValue("");
    type(box(page), "l1 quill");
    assertEquals(List.of(), names(page, "[data-entry=horse]:not(.away)"), "every word must stand");
  }

  @Test
  void headingsAndSectionsWithoutAHitAreHiddenAndNamedOnce() throws IOException {
    HtmlPage page = open(SampleView.of(24, 12));
    HtmlSelect only = (HtmlSelect) page.getElementById("only");
    only.setSelectedAttribute(only.getOptionByText("Horses: call now"), true);

    List<String> headings =
        page.querySelectorAll("main > section > h3:not(.left-out)").stream()
            .map(n -> n.getTextContent())
            .toList();
    assertEquals(1, headings.size(), headings.toString());
    assertTrue(headings.get(0).startsWith("Call now"), headings.toString());
    assertEquals(
        List.of("horses"),
        page.querySelectorAll("main > section:not(.left-out)").stream()
            .map(n -> ((DomElement) n).getAttribute("aria-labelledby"))
            .toList());
    String hidden = page.getElementById("search-note").getTextContent();
    assertTrue(hidden.startsWith("Hidden by the search: Calls; "), hidden);
    assertTrue(hidden.endsWith("; Rules and tables used."), hidden);

    only.setSelectedAttribute("", true);
    assertEquals(0, page.querySelectorAll(".left-out, .away").size());
    assertEquals("", page.getElementById("search-note").getTextContent());
  }

  @Test
  void enterGoesFromHitToHitAndEscapeEndsTheSearch() throws IOException {
    HtmlPage page = open(SampleView.of(24, 12));
    type(box(page), "bramble");
    box(page).type(KeyboardEvent.DOM_VK_RETURN);
    DomElement first = page.getFocusedElement();
    assertTrue(first != box(page), "the focus is on a hit");
    assertTrue(found(page).startsWith("Hit 1 of "), found(page));
    ((HtmlElement) page.getFocusedElement()).type(KeyboardEvent.DOM_VK_RETURN);
    assertTrue(page.getFocusedElement() != first, "and goes on to the next");
    assertTrue(found(page).startsWith("Hit 2 of "), found(page));
    assertEquals(0, page.querySelectorAll("details[open]").size());
    ((HtmlElement) page.getFocusedElement()).type(KeyboardEvent.DOM_VK_ESCAPE);
    assertEquals("", box(page).getValue());
    assertEquals(box(page), page.getFocusedElement());
    assertEquals(0, page.querySelectorAll(".left-out, .away").size());
  }

  @Test
  void theOnlyHitIsOpened() throws IOException {
    HtmlPage page = open(SampleView.of(12, 12));
    HtmlElement quiet = page.querySelector("[data-entry=horse][data-level=none]");
    type(box(page), quiet.getAttribute("data-name") + " balancer");
    assertTrue(found(page).startsWith("1 of "), found(page));
    box(page).type(KeyboardEvent.DOM_VK_RETURN);

    assertTrue(quiet.hasAttribute("open"));
    assertEquals(quiet.querySelector("summary"), page.getFocusedElement());
  }

  @Test
  void lotsAndHorsesAreSortedAndPutBack() throws IOException {
    HtmlPage page = open(SampleView.of(24, 12));
    List<String> lots = names(page, "[data-entry=lot]");
    List<String> horses = names(page, "[data-entry=horse]");
    HtmlSelect order = (HtmlSelect) page.getElementById("order");

    order.setSelectedAttribute("lot:nsc", true);
    List<Double> nsc =
        page.querySelectorAll("[data-entry=lot]").stream()
            .map(n -> ((DomElement) n).getAttribute("data-nsc"))
            .filter(v -> !v.isEmpty())
            .map(Double::valueOf)
            .toList();
    assertEquals(nsc.stream().sorted().toList(), nsc);
    assertFalse(lots.equals(names(page, "[data-entry=lot]")));
    order.setSelectedAttribute("horse:name", true);
    assertEquals(lots, names(page, "[data-entry=lot]"));
    List<String> now = names(page, "[data-entry=horse][data-level=none]");
    assertEquals(now.stream().sorted(String.CASE_INSENSITIVE_ORDER).toList(), now);
    order.setSelectedAttribute("", true);
    assertEquals(horses, names(page, "[data-entry=horse]"));
  }

  @Test
  void aHeadingIsAButtonThatSortsItsTableAndSaysSo() throws IOException {
    HtmlPage page = open(SampleView.of(24, 12));
    HtmlElement button = page.querySelector("#arrived ~ .wide th button.sort");
    HtmlElement head = (HtmlElement) button.getParentNode();
    // a native button, which every browser presses by keyboard too
    assertEquals("button", button.getTagName());
    button.click();

    assertEquals("ascending", head.getAttribute("aria-sort"));
    List<String> cells =
        page.querySelectorAll("#arrived ~ .wide tbody tr > :first-child").stream()
            .map(n -> n.getTextContent().strip())
            .toList();
    assertEquals(cells.stream().sorted().toList(), cells);
    button.click();
    assertEquals("descending", head.getAttribute("aria-sort"));
  }

  @Test
  void ticksBecomeRowsOfDecisions() throws Exception {
    HtmlPage page = open(SampleView.of(24, 12, t -> t.equals("H1") ? "=H,\"1\"" : t));
    assertEquals("", rows(page).getText());
    type((HtmlElement) page.getElementById("told-by"), "Ada, of the office");
    HtmlElement item = page.querySelector(".told[data-about^='=H']");
    type(item.<HtmlElement>querySelector("input.note"), "rang at 7, will wait");
    item.<HtmlElement>querySelector("input[type=checkbox]").click();

    List<CSVRecord> records = csv(rows(page).getText());
    assertEquals(1, records.size());
    assertEquals(
        List.of(
            "2026-11-24",
            "'=H,\"1\"",
            "told",
            item.getAttribute("data-verdict"),
            "",
            "Ada, of the office",
            "rang at 7, will wait"),
        records.get(0).toList());
    assertTrue(page.getElementById("told-status").asNormalizedText().startsWith("1 row, not yet"));

    item.<HtmlElement>querySelector("input[type=checkbox]").click();
    assertEquals("", rows(page).getText());
  }

  @Test
  void theRowsAreSavedAsAFileWithItsHead() throws Exception {
    HtmlPage page = open(SampleView.of(24, 12));
    for (Object box : page.querySelectorAll(".told input[type=checkbox]")) {
      ((HtmlElement) box).click();
    }
    int ticked = page.querySelectorAll(".told").size();
    page.executeJavaScript(
        "HTMLAnchorElement.prototype.click = function () { window.saved = this.href; };");
    ((HtmlElement) page.getElementById("told-save")).click();

    String saved = String.valueOf(page.executeJavaScript("window.saved").getJavaScriptResult());
    String text =
        URLDecoder.decode(saved.substring(saved.indexOf(',') + 1).replace("+", "%2B"), UTF_8);
    List<CSVRecord> records = csv(text);
    assertEquals("date,about,kind,value,start_on,by,why", String.join(",", records.get(0)));
    assertEquals(1 + ticked, records.size());
    assertTrue(
        page.getElementById("told-status")
            .asNormalizedText()
            .startsWith("Saved as decisions-2026-11-24.csv"));
  }

  @Test
  void openingAndClosing() throws IOException {
    HtmlPage page = open(SampleView.of(24, 12));
    ((HtmlElement) page.getElementById("open-urgent")).click();
    assertEquals(
        page.querySelectorAll("details.urgent").size(),
        page.querySelectorAll("details[open]").size());
    ((HtmlElement) page.getElementById("open-all")).click();
    assertEquals(
        page.querySelectorAll("[data-entry=horse]").size(),
        page.querySelectorAll("[data-entry=horse][open]").size());
    ((HtmlElement) page.getElementById("close-all")).click();
    assertEquals(0, page.querySelectorAll("details[open]").size());
  }

  @Test
  void anEmptyMorningRunsItsScriptToo() throws IOException {
    HtmlPage page = open(SampleView.empty());
    assertTrue(page.querySelectorAll(".script-only[hidden]").isEmpty());
  }

  @Test
  void withoutScriptNothingIsOfferedThatDoesNothing() throws IOException {
    browser.getOptions().setJavaScriptEnabled(false);
    HtmlPage page = open(SampleView.of(24, 12));
    for (Object button : page.querySelectorAll("button, select, textarea, input[type=text]")) {
      DomElement element = (DomElement) button;
      boolean isHidden = false;
      for (var at = element.getParentNode(); at instanceof DomElement up; at = up.getParentNode()) {
        isHidden |= up.hasAttribute("hidden");
      }
      assertTrue(isHidden, element.asXml());
    }
    assertTrue(page.querySelectorAll(".told input[type=checkbox]").size() > 0);
  }
}
