package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.RetestRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;

/**
 * Names that want to be something else, in the outputs that other programs open: workbook,
 * calendar, printed paper, and what a co-op shares out on each of them. A few hundred in each
 * build, ten thousand with {@code -Drickyard.strings=10000}, as the profile hostile does.
 */
class EveryFamilyHostileInputTest {
  private static final long SEED = 20261127L;
  private static final int STRINGS = Integer.getInteger("rickyard.strings", 400);
  private static final Set<String> FAMILIES =
      Set.of(Outputs.DATA, Outputs.PAGE, Outputs.XLSX, Outputs.CALENDAR, Outputs.PDF);

  @Test
  void workbookCalendarAndPaperKeepTheTextAndTakeNothingElse() throws Exception {
    Random random = new Random(SEED);
    int used = 0;
    for (int round = 0; used < STRINGS; round++) {
      Map<String, String> names = new HashMap<>();
      UnaryOperator<String> hostile =
          text ->
              names.computeIfAbsent(
                  text, t -> HostileNames.next(random, names.size() + 1_000 * 1_000));
      MorningView view = SampleView.of(9, 4, hostile);
      CoOpView coOp = shared(view, hostile);
      used += names.size();
      String about = "seed " + SEED + ", round " + round;
      SortedMap<String, byte[]> files = Outputs.of(view, coOp, FAMILIES);
      workbook(requireNonNull(files.get("summary.xlsx")), about);
      calendar(view, requireNonNull(files.get("follow-ups.ics")), about);
      paper(requireNonNull(files.get("summary.pdf")), about);
      page(view, coOp, new String(requireNonNull(files.get("summary.html")), UTF_8), about);
    }
    assertTrue(used >= STRINGS);
  }

  private static CoOpView shared(MorningView view, UnaryOperator<String> hostile) {
    String horse = view.horses().get(0).horse();
    String lot = view.lots().get(0).lot();
    return new CoOpView(
        List.of(
            new ShareRow(
                horse,
                lot,
                8.75,
                30.0,
                262.5,
                "clears",
                hostile.apply("share why"),
                view.horses().get(0).client(),
                hostile.apply("share group"),
                hostile.apply("share from"),
                List.of(hostile.apply("share now")),
                "clears")),
        List.of(
            new ShortageRow(
                hostile.apply("shortage group"),
                List.of(horse, hostile.apply("shortage horse")),
                500,
                120.5,
                hostile.apply("shortage why"),
                hostile.apply("shortage day"),
                30)),
        List.of(
            new RetestRow(
                1,
                hostile.apply("retest lot"),
                List.of("ID"),
                0.25,
                400,
                100.0,
                hostile.apply("retest why"))),
        List.of(hostile.apply("co-op note")));
  }

  private static void workbook(byte[] bytes, String about) throws Exception {
    try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      assertEquals(6, book.getNumberOfSheets(), about);
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            assertNotEquals(CellType.FORMULA, cell.getCellType(), about);
            assertEquals(null, cell.getHyperlink(), about);
          }
        }
      }
      assertTrue(book.getAllNames().stream().allMatch(n -> n.getNameName().startsWith("_xlnm")));
    }
  }

  private static void calendar(MorningView view, byte[] bytes, String about) throws Exception {
    Calendar calendar = new CalendarBuilder().build(new ByteArrayInputStream(bytes));
    long calls = view.horses().stream().filter(h -> h.priority().code().startsWith("call")).count();
    assertEquals(
        view.followUps().size() + calls, calendar.getComponents(Component.VEVENT).size(), about);
    assertEquals(calendar.getComponents().size(), view.followUps().size() + calls, about);
  }

  /** Nothing on paper can be run, opened or followed. */
  private static void paper(byte[] bytes, String about) throws Exception {
    try (PDDocument document = Loader.loadPDF(bytes)) {
      assertTrue(document.getNumberOfPages() > 1, about);
      assertEquals(null, document.getDocumentCatalog().getOpenAction(), about);
      assertEquals(null, document.getDocumentCatalog().getNames(), about);
      for (PDPage page : document.getPages()) {
        assertTrue(page.getAnnotations().isEmpty(), about);
      }
    }
  }

  private static void page(MorningView view, CoOpView coOp, String html, String about) {
    Document page = PageText.page(html);
    assertEquals(1, page.select("script").size(), about);
    assertEquals(1, page.select(".share tbody tr").size(), about);
    assertEquals(coOp.shortages().size(), page.select(".shortage tbody tr").size(), about);
    assertEquals(coOp.retests().size(), page.select(".retests tbody tr").size(), about);
    long calls = view.horses().stream().filter(h -> h.priority().code().startsWith("call")).count();
    assertEquals(calls, page.select(".call-list tbody tr").size(), about);
    for (Element element : page.getAllElements()) {
      assertFalse(
          element.attributes().asList().stream().anyMatch(a -> a.getKey().startsWith("on")), about);
    }
  }
}
