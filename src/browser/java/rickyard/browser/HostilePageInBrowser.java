package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.report.HostilePage;

/** Names with markup and script stay text in a real browser. */
class HostilePageInBrowser {
  private static final long SEED = 20261127L;
  private static final int PAGES = 8;

  @Test
  void nothingRunsNothingIsAskedForAndThePageStaysWhole(@TempDir Path folder) throws Exception {
    try (Chromium browser = Chromium.withScript()) {
      for (int i = 0; i < PAGES; i++) {
        Path page = Files.write(folder.resolve("p" + i + ".html"), HostilePage.make(SEED + i));
        browser.wide(1280, 900).go(page);
        String about = "seed " + (SEED + i);

        browser.quiet();
        assertTrue(browser.driver().getTitle().startsWith("Morning paper, "), about);
        assertEquals(40, browser.all("details[data-entry=horse]").size(), about);
        assertEquals(12, browser.all("[data-entry=lot]").size(), about);
        assertEquals(1, browser.all("script").size(), about);
        assertEquals(
            List.of(),
            browser.texts(
                "return Array.from(document.querySelectorAll('*'))"
                    + ".filter(e => Array.from(e.attributes).some(a => a.name.startsWith('on'))"
                    + " || ['IMG', 'IFRAME', 'OBJECT', 'EMBED', 'FORM'].includes(e.tagName))"
                    + ".map(e => e.outerHTML.slice(0, 80))"),
            about);
        browser.ask("document.querySelectorAll('details').forEach(d => { d.open = true; })");
        assertEquals(
            0L,
            browser.number(
                "Math.max(0, document.documentElement.scrollWidth"
                    + " - document.documentElement.clientWidth)"),
            about + ": wider than the screen");
      }
    }
  }
}
