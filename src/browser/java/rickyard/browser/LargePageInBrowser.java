package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.report.LargePage;

/**
 * The page of 2,000 horses and 500 lots opens and is searched while somebody waits. The figures go
 * to target/browser/large-page.txt; the bounds are wide, for slow machines. Another page is
 * measured with {@code -Drickyard.page=FILE}.
 */
class LargePageInBrowser {
  private static final int HORSES = 2_000;
  private static final int LOTS = 500;
  private static final long MOST_TO_OPEN_MS = 60_000;
  private static final long MOST_TO_FILTER_MS = 5_000;
  private static final int ROUNDS = 5;

  /** Types a word and waits for what is drawn with it. */
  private static final String FILTER =
      "const done = arguments[arguments.length - 1];"
          + "const box = document.getElementById('find');"
          + "const start = performance.now();"
          + "box.value = arguments[0];"
          + "box.dispatchEvent(new Event('input'));"
          + "const script = performance.now() - start;"
          + "requestAnimationFrame(() => setTimeout(() =>"
          + " done([script, performance.now() - start]), 0));";

  private final List<String> figures = new ArrayList<>();

  @Test
  void aLargeOfficesPageOpensAndIsSearchedInTime(@TempDir Path folder) throws IOException {
    String given = System.getProperty("rickyard.page", "");
    Path page =
        given.isEmpty()
            ? Files.write(folder.resolve("large.html"), LargePage.make(HORSES, LOTS))
            : Path.of(given).toAbsolutePath();
    note("page, kB", Math.round(Files.size(page) / 1024.0));
    for (int width : List.of(1280, 390)) {
      try (Chromium browser = Chromium.withScript()) {
        measure(browser.wide(width, 900), page, width);
      }
    }
    Path file = Path.of("target/browser/large-page.txt");
    Files.createDirectories(file.getParent());
    Files.write(file, figures);
  }

  private void measure(Chromium browser, Path page, int width) {
    long start = System.nanoTime();
    browser.go(page);
    browser.ask("document.getElementById('find').focus(); return document.body.offsetHeight");
    long opened = (System.nanoTime() - start) / 1_000_000;
    note(width + " px: opened and ready, ms", opened);
    note(
        width + " px: of that until the script has run, ms",
        browser.number(
            "Math.round(performance.timing.domContentLoadedEventEnd"
                + " - performance.timing.navigationStart)"));
    note(width + " px: elements", browser.number("document.getElementsByTagName('*').length"));
    note(width + " px: height, px", browser.number("document.documentElement.scrollHeight"));
    String horse =
        (String)
            browser.ask(
                "return Array.from(document.querySelectorAll('[data-entry=horse]')).pop()"
                    + ".dataset.name");
    long finding = filter(browser, width + " px: find one horse", horse);
    long clearing = filter(browser, width + " px: show all again", "");
    long many = filter(browser, width + " px: a letter that many have", "a");
    filter(browser, "", "");
    assertTrue(opened < MOST_TO_OPEN_MS, figures.toString());
    assertTrue(Math.max(finding, Math.max(clearing, many)) < MOST_TO_FILTER_MS, figures.toString());
  }

  /** The median of several, until it is drawn. */
  private long filter(Chromium browser, String what, String word) {
    List<Long> script = new ArrayList<>();
    List<Long> drawn = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      wait(browser, word.isEmpty() ? "zzz" : "");
      @SuppressWarnings("unchecked")
      List<Number> ms = (List<Number>) browser.driver().executeAsyncScript(FILTER, word);
      script.add(ms.get(0).longValue());
      drawn.add(ms.get(1).longValue());
    }
    Collections.sort(script);
    Collections.sort(drawn);
    if (!what.isEmpty()) {
      note(what + ", script, ms", script.get(ROUNDS / 2));
      note(what + ", until drawn, ms", drawn.get(ROUNDS / 2));
    }
    return drawn.get(ROUNDS / 2);
  }

  private static void wait(Chromium browser, String word) {
    browser.driver().executeAsyncScript(FILTER, word);
  }

  private void note(String what, long figure) {
    figures.add(String.format(Locale.ROOT, "%s: %d", what, figure));
  }
}
