package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import rickyard.report.csv.CsvOut;
import rickyard.report.text.Harmless;
import rickyard.report.view.MorningView;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Ten thousand names that want to be something else, through every output. */
class OutputsHostileInputTest {
  private static final long SEED = 20261124L;
  private static final int STRINGS = 10_000;

  @Test
  void everyOutputKeepsTheTextAndTakesNothingElse() throws Exception {
    Random random = new Random(SEED);
    Map<String, Integer> skeleton = elements(page(SampleView.of(7, 4)));
    int used = 0;
    for (int round = 0; used < STRINGS; round++) {
      Map<String, String> names = new HashMap<>();
      List<String> given = new ArrayList<>();
      MorningView view =
          SampleView.of(
              7,
              4,
              text ->
                  names.computeIfAbsent(
                      text,
                      t -> {
                        String name = HostileNames.next(random, given.size());
                        given.add(name);
                        return name;
                      }));
      used += given.size();
      String about = "seed " + SEED + ", round " + round;
      SortedMap<String, byte[]> files = Outputs.of(view, Set.of("data", "page"));
      checkTables(view, files, about);
      checkJson(view, text(files, "summary.json"), about);
      checkPage(view, text(files, "summary.html"), skeleton, about);
    }
    assertTrue(used >= STRINGS);
  }

  @Test
  void theGuardIsUndoneExactly() {
    Random random = new Random(SEED);
    for (int i = 0; i < STRINGS; i++) {
      String name = Harmless.text(HostileNames.next(random, i));
      String cell = CsvOut.guarded(name);
      assertEquals(name, CsvOut.unguarded(cell), "seed " + SEED + ", string " + i);
      assertTrue(
          cell.isEmpty() || "=+-@\t\r".indexOf(cell.charAt(0)) < 0, "seed " + SEED + ": " + cell);
    }
  }

  private static void checkTables(MorningView view, SortedMap<String, byte[]> files, String about)
      throws Exception {
    List<CSVRecord> lots = records(files, "lots.csv");
    List<CSVRecord> horses = records(files, "horses.csv");
    assertEquals(view.lots().size(), lots.size(), about);
    assertEquals(view.horses().size(), horses.size(), about);
    for (int i = 0; i < lots.size(); i++) {
      same(view.lots().get(i).lot(), lots.get(i).get("lot"), about);
      same(view.lots().get(i).holder(), lots.get(i).get("holder"), about);
      same(view.lots().get(i).reason(), lots.get(i).get("reason"), about);
    }
    for (int i = 0; i < horses.size(); i++) {
      same(view.horses().get(i).horse(), horses.get(i).get("horse"), about);
      same(view.horses().get(i).client(), horses.get(i).get("client"), about);
      same(view.horses().get(i).reason(), horses.get(i).get("reason"), about);
    }
    for (String file : files.keySet()) {
      if (file.endsWith(".csv")) {
        String text = text(files, file);
        assertTrue(text.chars().noneMatch(c -> c == 0 || c == 0x1b || c == 0x202e), about);
        int columns = text.lines().findFirst().orElseThrow().split(",", -1).length;
        for (CSVRecord row : records(files, file)) {
          assertEquals(columns, row.size(), about + " " + file);
          row.forEach(cell -> assertTrue(cell.isEmpty() || !formula(cell), about + " " + cell));
        }
      }
    }
  }

  /** Numbers may start with a minus; nothing else may start like a formula. */
  private static boolean formula(String cell) {
    boolean number = cell.matches("-?\\d+(\\.\\d+)?");
    return !number && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
  }

  private static void same(String given, String cell, String about) {
    assertEquals(Harmless.text(given), CsvOut.unguarded(cell), about);
  }

  private static void checkJson(MorningView view, String json, String about) {
    JsonNode root = JsonMapper.shared().readTree(json);
    for (int i = 0; i < view.horses().size(); i++) {
      assertEquals(
          Harmless.text(view.horses().get(i).horse()),
          root.get("horses").get(i).get("horse").asString(),
          about);
    }
  }

  private static void checkPage(
      MorningView view, String html, Map<String, Integer> skeleton, String about) {
    Document page = PageText.page(html);
    Map<String, Integer> elements = elements(page);
    assertEquals(skeleton.keySet(), elements.keySet(), about);
    for (String rare : List.of("script", "style", "svg", "details", "table", "article", "title")) {
      assertEquals(skeleton.get(rare), elements.get(rare), about + " " + rare);
    }
    for (Element element : page.getAllElements()) {
      element
          .attributes()
          .forEach(
              attribute ->
                  assertTrue(
                      !attribute.getKey().startsWith("on") && !attribute.getKey().equals("style"),
                      about + " " + attribute.getKey()));
      String href = element.attr("href");
      assertTrue(href.matches("(#[a-z0-9-]+|tel:[0-9+]+|data:,)?"), about + " " + href);
      assertTrue(element.id().matches("[a-z0-9-]*"), about + " " + element.id());
    }
    List<String> headings = page.select("article h3").eachText();
    assertEquals(
        view.lots().stream().map(l -> spaced(Harmless.line(l.lot()))).toList(), headings, about);
    List<String> horses = page.select("details.horse > summary > strong").eachText();
    for (int i = 0; i < horses.size(); i++) {
      String key = spaced(Harmless.line(view.horses().get(i).horse()));
      assertTrue(horses.get(i).contains(key), about + " " + horses.get(i));
    }
  }

  /** As a parser shows text: white space of every kind together. */
  private static String spaced(String text) {
    Element probe = new Element("p");
    probe.text(text);
    return probe.text();
  }

  private static Map<String, Integer> elements(Document page) {
    return page.getAllElements().stream()
        .collect(Collectors.toMap(Element::normalName, e -> 1, Integer::sum));
  }

  private static Document page(MorningView view) {
    return PageText.page(text(Outputs.of(view, Set.of("page")), "summary.html"));
  }

  private static String text(SortedMap<String, byte[]> files, String file) {
    return new String(requireNonNull(files.get(file)), UTF_8);
  }

  private static List<CSVRecord> records(SortedMap<String, byte[]> files, String file)
      throws Exception {
    try (var parser =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(text(files, file)))) {
      return parser.getRecords();
    }
  }
}
