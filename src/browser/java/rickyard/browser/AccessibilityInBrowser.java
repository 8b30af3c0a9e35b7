package rickyard.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The rules of the Web Content Accessibility Guidelines 2.1, levels A and AA, as the open checker
 * axe-core knows them.
 */
class AccessibilityInBrowser {
  private static final String RUN =
      "const done = arguments[arguments.length - 1];"
          + "axe.run(document, {resultTypes: ['violations']}).then(r => done({"
          + " checked: r.passes.length,"
          + " found: r.violations.filter(v => v.impact === 'serious' || v.impact === 'critical')"
          + "  .map(v => v.id + ' ' + v.impact + ' x' + v.nodes.length + ': '"
          + "   + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160)).join(' | ')),"
          + " lesser: r.violations.filter(v => v.impact !== 'serious' && v.impact !== 'critical')"
          + "  .map(v => v.id + ' ' + v.impact + ' x' + v.nodes.length + ': '"
          + "   + v.nodes[0].html.slice(0, 160))}));";

  private static Chromium browser;
  private static String checker;

  @BeforeAll
  static void open() throws IOException {
    browser = Chromium.withScript();
    browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
    try (InputStream in = AccessibilityInBrowser.class.getResourceAsStream("/axe.min.js")) {
      assertNotNull(in, "the checker's script");
      checker = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @SuppressWarnings("unchecked")
  private static List<String> check() {
    browser.ask(checker + ";");
    Map<String, Object> result = (Map<String, Object>) browser.driver().executeAsyncScript(RUN);
    assertTrue(((Number) result.get("checked")).intValue() > 5, "rules that applied");
    for (String line : (List<String>) result.get("lesser")) {
      System.out.println("not serious: " + line);
    }
    return (List<String>) result.get("found");
  }

  @ParameterizedTest
  @CsvSource({"1280,false", "1280,true", "390,false", "390,true"})
  void theSummaryHasNoSeriousViolation(int width, boolean open) {
    browser.wide(width, 900).go(Demo.file("summary.html"));
    // Entries of one kind are of one template; all of them are minutes of checking.
    browser.ask(
        "['horse', 'lot', 'call'].forEach(kind =>"
            + " document.querySelectorAll('[data-entry=' + kind + ']')"
            + "  .forEach((e, i) => { if (i >= 4) { e.remove(); } }));"
            + "document.querySelectorAll('tbody').forEach(b =>"
            + " { while (b.rows.length > 12) { b.deleteRow(12); } });");
    if (open) {
      browser.ask("document.querySelectorAll('details').forEach(d => { d.open = true; })");
    }

    assertEquals(List.of(), check());
  }

  /** One sheet of each shape: its body's classes say the size and the course. */
  @Test
  void noSheetHasASeriousViolation() throws IOException {
    List<String> found = new ArrayList<>();
    Set<String> shapes = new HashSet<>();
    browser.wide(1280, 900);
    for (Path sheet : Demo.files("sheets")) {
      if (sheet.toString().endsWith(".html") && shapes.add(shape(sheet))) {
        browser.go(sheet);
        check().forEach(v -> found.add(sheet.getFileName() + " " + v));
      }
    }

    assertTrue(shapes.size() > 2, shapes.toString());
    assertEquals(List.of(), found);
  }

  private static String shape(Path sheet) throws IOException {
    String text = Files.readString(sheet);
    int body = text.indexOf("<body");
    return text.substring(body, text.indexOf('>', body));
  }

  /** A picture without words and grey on grey are found: the checker does check. */
  @Test
  void theCheckerSeesWhatIsWrong() {
    browser.wide(1280, 900).go(Demo.file("summary.html"));
    browser.ask(
        "document.querySelector('h1').style.color = '#ddd';"
            + "const i = document.createElement('img'); i.src = 'data:,';"
            + "document.querySelector('main').appendChild(i);");

    List<String> found = check();

    assertTrue(found.stream().anyMatch(v -> v.startsWith("color-contrast")), found.toString());
    assertTrue(found.stream().anyMatch(v -> v.startsWith("image-alt")), found.toString());
  }
}
