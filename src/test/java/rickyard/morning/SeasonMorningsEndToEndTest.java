package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lots, fields and laboratories over several mornings, from the bytes to the page. */
class SeasonMorningsEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final String BROOK = "Brook Vale Forage Laboratory";
  private static final String FELL = "=cmd|<b>Fellside</b> Forage Laboratory";

  @TempDir Path folder;

  private static void report(
      SmallOffice office, String number, String lab, String lot, LocalDate sampled, double wsc) {
    office.write(
        "inbox/" + number + ".csv",
        lab
            + "\nReport no,"
            + number
            + "\nLot,"
            + lot
            + "\nSampled on,"
            + sampled
            + "\nAnalyte,Result,Unit,Basis\nDry matter,88.0,%,as fed\nWSC,"
            + wsc
            + ",%,dry matter\nStarch,0.6,%,dry matter\nCrude protein,9.9,%,dry matter\n");
  }

  private static SmallOffice office(Path folder) {
    SmallOffice office = new SmallOffice(folder);
    office.write("registers/clients.csv", "client_id,name,email,phone,adviser,units\n");
    StringBuilder lots =
        new StringBuilder(
            "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
                + "price_per_tonne,for_sale,cores,sampled_on,sampled_by,field\n");
    for (int i = 1; i <= 5; i++) {
      String year = i == 1 ? "2024" : "2025";
      String field = i <= 2 ? "Long Acre" : "";
      lots.append("M-").append(i).append(",co-op,grass-hay,,1,").append(year);
      lots.append("-07-01,900,18,100,yes,12,,,").append(field).append('\n');
    }
    office.write("registers/lots.csv", lots.toString());
    return office;
  }

  private static MorningEnd threeMornings(Path folder) {
    SmallOffice office = office(folder);
    for (int i = 1; i <= 5; i++) {
      report(office, "B-" + i, BROOK, "M-" + i, DAY.minusDays(9), 8 + i / 2.0);
    }
    MorningEnd first = office.run(DAY);
    assertEquals(
        List.of(),
        SmallOffice.rows(first, "over-time.csv").stream()
            .filter(r -> !r.get("kind").equals("field"))
            .toList());
    assertTrue(
        SmallOffice.text(first, "summary.html")
            .contains("No lot has tests of two different days that could be compared."));
    double[] less = {0.8, 1.0, 0.9, 1.1};
    for (int i = 1; i <= 4; i++) {
      report(office, "F-" + i, FELL, "M-" + i, DAY.minusDays(2), 8 + i / 2.0 - less[i - 1]);
    }
    MorningEnd second = office.run(DAY.plusDays(1));
    assertTrue(
        SmallOffice.rows(second, "over-time.csv").stream()
            .filter(r -> r.get("kind").equals("laboratories"))
            .allMatch(r -> r.get("finding").equals("too-few") && r.get("change").isEmpty()));
    report(office, "F-5", FELL, "M-5", DAY.minusDays(2), 4.5);
    return office.run(DAY.plusDays(2));
  }

  private static Map<String, String> row(MorningEnd end, String kind, String quantity) {
    return SmallOffice.rows(end, "over-time.csv").stream()
        .filter(r -> r.get("kind").equals(kind) && r.get("quantity").equals(quantity))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void testsOfEarlierMorningsCountAlsoWhereTheyDisagree() throws IOException {
    MorningEnd end = threeMornings(folder.resolve("office"));

    // Differences 0.8, 1.0, 0.9, 1.1 and of the lot whose tests disagree 10.5 - 4.5 = 6
    Map<String, String> pair = row(end, "laboratories", "WSC");
    assertEquals("5", pair.get("n"));
    double sign = pair.get("about").startsWith("Brook") ? 1 : -1;
    assertEquals(sign * 9.8 / 5, Double.parseDouble(pair.get("change")), 1e-6);
    assertEquals("4", pair.get("df"));
    assertEquals("may-be-chance", pair.get("finding"));
    List<Map<String, String>> lots =
        SmallOffice.rows(end, "over-time.csv").stream()
            .filter(r -> r.get("kind").equals("lot") && r.get("quantity").equals("WSC"))
            .toList();
    assertEquals(5, lots.size());
    assertEquals("steady", lots.get(0).get("finding"));
    assertEquals("changed", lots.get(4).get("finding"));
    assertTrue(lots.get(4).get("words").contains("by different laboratories"));

    // The lot in dispute has no analysis in force and is counted nowhere.
    Map<String, String> season = SmallOffice.rows(end, "season.csv").get(0);
    assertEquals("grass-hay", season.get("of"));
    assertEquals("4", season.get("lots"));
    assertEquals(
        "4",
        SmallOffice.rows(end, "season-clears.csv").stream()
            .filter(r -> r.get("by").equals("material"))
            .findFirst()
            .orElseThrow()
            .get("lots"));
    Map<String, String> field = row(end, "field", "NSC_WSC");
    assertEquals("Long Acre", field.get("about"));
    assertEquals("2024", field.get("from"));
    assertEquals("2025", field.get("to"));
  }

  @Test
  void aNameFromOutsideIsTextInEveryOutput() throws IOException {
    MorningEnd end = threeMornings(folder.resolve("office"));
    String page = SmallOffice.text(end, "summary.html");
    assertFalse(page.contains("<b>Fellside"), "markup of a name");
    assertTrue(page.contains("&lt;b&gt;Fellside"));
    assertFalse(
        SmallOffice.text(end, "over-time.csv").lines().anyMatch(l -> l.matches(".*,=cmd.*")));
  }

  @Test
  void theSameMorningsGiveTheSameBytes() throws IOException {
    MorningEnd one = threeMornings(folder.resolve("one"));
    MorningEnd two = threeMornings(folder.resolve("two"));
    for (String file :
        List.of("season.csv", "season-clears.csv", "over-time.csv", "summary.html")) {
      assertArrayEquals(
          Files.readAllBytes(one.out().resolve(file)),
          Files.readAllBytes(two.out().resolve(file)),
          file);
    }
  }
}
