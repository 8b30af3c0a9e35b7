package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import rickyard.report.view.MorningView;

/** What stands first on the page: the calls in a line each, and what a laboratory is asked. */
class CallListTest {
  @Test
  void everyCallHasOneLineAndLeadsToItsHorse() {
    MorningView view = SampleView.of(24, 12);
    Document page = page(view);
    long calls = view.horses().stream().filter(h -> h.priority().code().startsWith("call")).count();

    List<Element> lines = page.select(".call-list tbody tr");
    assertEquals(calls, lines.size());
    for (Element line : lines) {
      String to = line.select("th a").attr("href").substring(1);
      assertTrue(requireNonNull(page.getElementById(to)).className().contains("urgent"), to);
      assertFalse(line.select("td").last().text().isBlank(), line.text());
    }
  }

  @Test
  void noAmountStandsInTheLineOfAHorseThatTheVetMustSeeFirst() {
    MorningView view = SampleView.of(24, 12);
    for (Element line : page(view).select(".call-list tbody tr")) {
      String horse = line.select("th").text();
      boolean vetFirst =
          view.horses().stream().anyMatch(h -> h.vetFirst() && horse.contains(h.horse()));
      if (vetFirst) {
        assertFalse(line.select("td").last().text().matches(".*[0-9].*"), line.text());
      }
    }
  }

  @Test
  void theLimitsOfTheMorningAreListedOnce() {
    List<String> rows = page(SampleView.of(24, 12)).select(".limits-used code").eachText();
    assertFalse(rows.isEmpty());
    assertEquals(rows.size(), Set.copyOf(rows).size(), rows.toString());
  }

  private static Document page(MorningView view) {
    byte[] html = requireNonNull(Outputs.of(view, Set.of(Outputs.PAGE)).get("summary.html"));
    return PageText.page(new String(html, UTF_8));
  }
}
