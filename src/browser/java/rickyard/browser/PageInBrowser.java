package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The summary with its script, by keyboard, wide and narrow. */
class PageInBrowser {
  private static Chromium browser;

  @BeforeAll
  static void open() {
    browser = Chromium.withScript();
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @BeforeEach
  void load() {
    browser.wide(1280, 900).go(Demo.file("summary.html"));
  }

  private static final String SHOWN =
      "return Array.from(document.querySelectorAll(arguments[0]))"
          + ".filter(e => e.getClientRects().length > 0)";

  private static List<String> shown(String selector, String what) {
    return browser.texts(SHOWN + ".map(e => " + what + ")", selector);
  }

  @Test
  void opensFromDiskWithoutANetworkAndWithoutAWordOnTheConsole() {
    assertTrue(browser.number("document.querySelectorAll('[data-entry]').length") > 50);

    browser.quiet();
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 768, 390, 320})
  void nothingStandsBesideTheScreenClosedOrOpen(int width) throws Exception {
    browser.wide(width, 844).go(Demo.file("summary.html"));
    assertEquals(List.of(), beside(), "closed");
    browser.picture("summary-" + width);

    browser.ask("document.querySelectorAll('details').forEach(d => { d.open = true; })");

    assertEquals(List.of(), beside(), "open");
  }

  /** What is wider than the screen and cannot be scrolled within its own frame. */
  private static List<String> beside() {
    return browser.texts(
        "const w = document.documentElement.clientWidth;"
            + "return Array.from(document.body.querySelectorAll('*'))"
            + ".filter(e => e.getClientRects().length > 0 && !e.closest('.wide')"
            + " && !e.closest('.skip') && !e.closest('svg') && !e.closest('thead')"
            + " && e.getBoundingClientRect().right > w + 1)"
            + ".map(e => e.tagName + '.' + e.className + ': ' + e.textContent.slice(0, 60))");
  }

  @Test
  void theFirstKeysSkipTheContentsAndLeadToTheCalls() {
    browser.press(Keys.TAB);
    assertEquals("Skip to the calls", browser.focused().getText());
    assertTrue(browser.focused().isDisplayed());

    browser.press(Keys.ENTER);

    assertTrue(browser.tabTo("#main .call-list a", 1), "the first stop after the skip is a call");
  }

  @Test
  void whatHasTheFocusCanBeSeen() {
    List<String> unseen = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      browser.press(Keys.TAB);
      String state =
          (String)
              browser.ask(
                  "const e = document.activeElement; const s = getComputedStyle(e);"
                      + "return s.outlineStyle + ' ' + s.outlineWidth;");
      if (state.startsWith("none") || state.endsWith(" 0px")) {
        unseen.add(browser.focused().getTagName() + " " + browser.focused().getText());
      }
    }
    assertEquals(List.of(), unseen);
  }

  @Test
  void findsByKeyboardAndSaysHowMany() {
    assertTrue(browser.tabTo("#find", 40));
    browser.press("campion");

    List<String> horses = shown("details[data-entry=horse]", "e.dataset.name");
    assertTrue(horses.stream().anyMatch(h -> h.startsWith("Campion")), horses.toString());
    assertTrue(horses.size() < 10, horses.toString());
    assertTrue(
        browser.one("#found").getText().matches("\\d+ of \\d+ entries.*"),
        browser.one("#found").getText());

    for (int i = 0; i < "campion".length(); i++) {
      browser.press(Keys.BACK_SPACE);
    }
    assertEquals("", browser.one("#found").getText());
    assertTrue(shown("details[data-entry=horse]", "e.dataset.name").size() > 30);
  }

  @Test
  void showsOneKindByKeyboard() {
    String choice =
        browser
            .texts(
                "return Array.from(document.querySelectorAll('#only option'))"
                    + ".map(o => o.value).filter(v => v.startsWith('Lots that clear for '))")
            .get(0);
    String group = choice.substring("Lots that clear for ".length());
    List<String> wanted =
        browser.texts(
            "return Array.from(document.querySelectorAll('[data-entry=lot]'))"
                + ".filter(e => (e.dataset.suits || '').split(', ').includes(arguments[0]))"
                + ".map(e => e.dataset.name)",
            group);
    assertFalse(wanted.isEmpty());
    assertTrue(browser.tabTo("#only", 40));
    browser.press(choice);

    assertEquals(choice, browser.one("#only").getDomProperty("value"));
    assertEquals(wanted, shown("[data-entry=lot]", "e.dataset.name"));
    assertEquals(List.of(), shown("[data-entry=horse]", "e.dataset.name"));
  }

  @Test
  void sortsLotsAndHorsesByKeyboard() {
    List<String> asPrinted = shown("[data-entry=lot]", "e.dataset.name");
    assertTrue(browser.tabTo("#order", 40));
    browser.press("lots by name");

    List<String> byName = new ArrayList<>(asPrinted);
    byName.sort(Comparator.comparing(n -> n.toLowerCase(Locale.ROOT)));
    assertEquals(byName, shown("[data-entry=lot]", "e.dataset.name"));

    browser.one("#order").sendKeys(Keys.HOME);
    assertEquals(asPrinted, shown("[data-entry=lot]", "e.dataset.name"));
  }

  @Test
  void aTableIsSortedByItsHeadingAndSaysSo() {
    String table = "section[aria-labelledby=arrived] table";
    browser.ask("document.querySelectorAll('details').forEach(d => { d.open = true; })");
    WebElement first = browser.one(table + " thead th button.sort");
    browser.ask("arguments[0].focus()", first);
    browser.press(Keys.ENTER);
    List<String> up = cells(table);
    assertEquals("ascending", browser.one(table + " thead th").getDomAttribute("aria-sort"));

    browser.press(Keys.ENTER);

    List<String> down = cells(table);
    assertEquals("descending", browser.one(table + " thead th").getDomAttribute("aria-sort"));
    assertNotEquals(up, down);
    List<String> again = new ArrayList<>(up);
    java.util.Collections.sort(again);
    assertEquals(again, up);
    java.util.Collections.sort(down);
    assertEquals(up, down, "no row is lost");
  }

  private static List<String> cells(String table) {
    return browser.texts(
        "return Array.from(document.querySelector(arguments[0]).tBodies[0].rows)"
            + ".map(r => r.cells[0].textContent.trim())",
        table);
  }

  @Test
  void opensAHorseByKeyboardAndByTheLinkOfItsCall() {
    String link =
        (String)
            browser.ask("return document.querySelector('.told > a').getAttribute('href').slice(1)");
    assertFalse(isOpen(link));
    assertTrue(browser.tabTo(".told > a", 60));

    browser.press(Keys.ENTER);

    assertTrue(isOpen(link));
    WebElement summary = browser.one("[id='" + link + "'] > summary");
    browser.ask("arguments[0].focus()", summary);
    browser.press(Keys.SPACE);
    assertFalse(isOpen(link));
  }

  private static boolean isOpen(String id) {
    return Boolean.parseBoolean(
        String.valueOf(browser.ask("return document.getElementById(arguments[0]).open", id)));
  }

  @Test
  void ticksByKeyboardBecomeRows() {
    assertTrue(browser.tabTo(".told input[type=checkbox]", 60));
    browser.press(Keys.SPACE);
    assertTrue(browser.tabTo(".told .note", 3));
    browser.press("left a message, 7:20");
    assertTrue(browser.tabTo("#told-by", 200));
    browser.press("Quill");

    String row = browser.one("#told-text").getDomProperty("value");
    assertTrue(row.matches("2026-03-16,[^,]+,told,[^,]+,,Quill,\"left a message, 7:20\""), row);
    assertTrue(browser.one("#told-status").getText().startsWith("1 row"));

    // A reload keeps what was ticked and noted; the name of who told is asked again.
    browser.ask("window.onbeforeunload = null; localStorage.length;");
    browser.go(Demo.file("summary.html"));
    assertEquals(1, browser.all(".told input:checked").size(), "tick after a reload");
    assertTrue(browser.one("#told-text").getDomProperty("value").contains("left a message, 7:20"));

    browser.ask("document.querySelectorAll('.told input:checked').forEach(c => c.click())");
    assertEquals("", browser.one("#told-text").getDomProperty("value"));
    browser.ask("localStorage.clear()");
  }

  @Test
  void oneAdvisersCallsArePrintedAlone() {
    browser.ask(
        "window.print = () => { document.body.dataset.printed = document.body.className; }");
    List<String> advisers =
        browser.texts(
            "return Array.from(new Set(Array.from(document.querySelectorAll('.call'))"
                + ".map(c => c.dataset.adviser))).filter(a => a !== '')");
    assertTrue(advisers.size() > 1, advisers.toString());
    new Select(browser.one("#only")).selectByValue("Calls of " + advisers.get(0));
    browser.click(browser.one("#print-calls"));

    String printed = browser.one("body").getDomAttribute("data-printed");
    assertTrue(printed.contains("calls-alone"), printed);
    assertFalse(browser.one("body").getDomAttribute("class").contains("calls-alone"));
    assertEquals(
        List.of(advisers.get(0)), shown(".call", "e.dataset.adviser").stream().distinct().toList());
  }

  @Test
  void everyLinkLeadsSomewhere() {
    assertEquals(
        List.of(),
        browser.texts(
            "return Array.from(document.querySelectorAll('a[href^=\"#\"]'))"
                + ".map(a => a.getAttribute('href').slice(1))"
                + ".filter(id => document.getElementById(id) === null)"));
  }
}
