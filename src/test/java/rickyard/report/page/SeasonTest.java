package rickyard.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.report.view.Counts;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;

class SeasonTest {
  @Test
  void countsMeansAndSharesAreThoseOfTheLotsThatHaveAFigure() {
    // 8, 10 and 12: mean 10, standard deviation of a sample sqrt((4 + 0 + 4) / 2) = 2
    List<Season.Part> parts =
        Season.of(
            view(
                lot("A", "grass-hay", 8.0, List.of("ID")),
                lot("B", "grass-hay", 10.0, List.of()),
                lot("C", "grass-hay", 12.0, List.of()),
                lot("D", "straw", 3.0, List.of("ID")),
                lot("E", "grass-hay", null, List.of())));
    Season.Row grass = parts.get(0).rows().get(0);
    assertEquals("grass hay", grass.key());
    assertEquals("3", grass.count());
    assertEquals("10", grass.mean());
    assertEquals("2", grass.sd());
    assertEquals("8 to 12", grass.range());
    assertEquals(List.of("1 (33 %)"), grass.shares());
    Season.Row straw = parts.get(0).rows().get(1);
    assertEquals("–", straw.sd(), "one lot has no spread");
    assertEquals(List.of("1 (100 %)"), straw.shares());
    assertEquals("By laboratory", parts.get(1).caption());
    assertEquals("not stated", parts.get(1).rows().get(0).key());
  }

  @Test
  void withoutFiguresThereIsNoTable() {
    assertTrue(Season.of(view(lot("A", "straw", null, List.of()))).isEmpty());
  }

  private static LotRow lot(
      String id,
      String material,
      @org.jspecify.annotations.Nullable Double nsc,
      List<String> suits) {
    return new LotRow(
        id, "co-op", material, "1", null, nsc, null, null, suits, List.of(), List.of(), "",
        List.of(), List.of(), "", "");
  }

  private static MorningView view(LotRow... lots) {
    return new MorningView(
        LocalDate.of(2026, 11, 24),
        "kg",
        List.of(),
        List.of(),
        List.of(lots),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "",
        List.of(),
        new TreeMap<>(),
        new TreeMap<>(),
        new Counts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
        false);
  }
}
