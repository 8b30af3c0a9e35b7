package rickyard.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.report.season.SeasonSummary;
import rickyard.report.view.Counts;
import rickyard.report.view.MorningView;
import rickyard.report.view.PaperLinks;
import rickyard.report.view.SeasonLot;
import rickyard.report.view.SeasonView;

class SeasonTest {
  @Test
  void countsMeansAndSharesAreThoseOfTheLots() {
    // 8, 10 and 12: mean 10, standard deviation of a sample sqrt((4 + 0 + 4) / 2) = 2
    Season season =
        Season.of(
            view(
                lot("A", "grass-hay", 8.0, "ID", "Brook~~~Vale"),
                lot("B", "grass-hay", 10.0, "", "Brook~~~Vale"),
                lot("C", "grass-hay", 12.0, "", "Brook"),
                lot("D", "straw", 3.0, "ID", ""),
                lot("E", "grass-hay", Double.NaN, "", "Brook")));
    Season.Row grass = season.parts().get(0).rows().shown().get(0);
    assertEquals("WSC + starch", season.quantity());
    assertEquals("grass hay", grass.key());
    assertEquals("4", grass.lots());
    assertEquals("3", grass.count());
    assertEquals("10", grass.mean());
    assertEquals("2", grass.sd());
    assertEquals("8 to 12", grass.range());
    assertEquals(List.of("1 of 4 (25 %)"), grass.shares());
    Season.Row straw = season.parts().get(0).rows().shown().get(1);
    assertEquals("–", straw.sd(), "one lot has no spread");
    assertEquals(List.of("1 of 1 (100 %)"), straw.shares());
    Season.Part laboratories = season.parts().get(1);
    assertEquals("By laboratory", laboratories.caption(), "one year parts no material");
    assertEquals(
        List.of("Brook", "Brook~~~Vale", "not stated"),
        laboratories.rows().shown().stream().map(Season.Row::key).toList());
    assertEquals(
        List.of("2", "2", "1"),
        laboratories.rows().shown().stream().map(Season.Row::lots).toList());
  }

  @Test
  void theOrderOfTheLotsChangesNothing() {
    SeasonLot a = lot("A", "grass-hay", 8.1, "ID", "Brook");
    SeasonLot b = lot("B", "grass-hay", 10.2, "", "Vale");
    SeasonLot c = lot("C", "grass-hay", 12.4, "", "Brook");
    assertEquals(
        SeasonSummary.of(view(a, b, c).season()), SeasonSummary.of(view(c, a, b).season()));
  }

  @Test
  void withoutLotsThereIsNoTable() {
    assertTrue(Season.of(view()).parts().isEmpty());
  }

  private static SeasonLot lot(
      String id, String material, double nsc, String suits, String laboratory) {
    TreeMap<String, SeasonLot.Content> contents = new TreeMap<>();
    if (!Double.isNaN(nsc)) {
      contents.put("NSC_WSC", new SeasonLot.Content(nsc, "% DM"));
    }
    return new SeasonLot(
        id,
        material,
        "co-op",
        laboratory,
        "2026",
        "2026-08",
        contents,
        suits.isEmpty() ? List.of() : List.of(suits),
        List.of(),
        suits.isEmpty() ? List.of("ID") : List.of());
  }

  private static MorningView view(SeasonLot... lots) {
    return new MorningView(
        LocalDate.of(2026, 11, 24),
        "kg",
        List.of(),
        List.of(),
        List.of(),
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
        false,
        new SeasonView(List.of("NSC_WSC"), List.of(lots), Optional.empty()),
        List.of(),
        List.of(),
        PaperLinks.none());
  }
}
