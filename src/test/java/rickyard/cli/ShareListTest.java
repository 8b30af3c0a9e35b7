package rickyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rickyard.report.view.CoOpView;
import rickyard.report.view.RetestRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ShareListTest {
  private static final CoOpView VIEW =
      new CoOpView(
          List.of(
              row("a-horse-with-a-long-id", "pregnant-late", "a-lot-with-a-long-id", 12.5),
              row("mint", "", "", null)),
          List.of(
              new ShortageRow(
                  "ID",
                  List.of("sage", "mint"),
                  2400,
                  1200,
                  "words ".repeat(30),
                  "2026-03-31",
                  30)),
          List.of(new RetestRow(1, "=NEAR", List.of("ID"), 0.36, 120, null, "words ".repeat(30))),
          List.of("a note ".repeat(20)));

  private static ShareRow row(String horse, String group, String lot, Double perDay) {
    return new ShareRow(
        horse,
        lot,
        perDay,
        30.0,
        perDay,
        "borderline-under",
        "why",
        "ash",
        group,
        "",
        List.of("X"),
        "clears");
  }

  @Test
  void noLineIsWiderThanATerminal() {
    for (String units : List.of("kg", "lb")) {
      for (String line : ShareList.of(VIEW, units).lines().toList()) {
        assertTrue(line.length() <= 80, line);
      }
    }
    assertTrue(ShareList.of(VIEW, "kg").contains("borderline-under"));
  }

  @Test
  void nothingToShareIsSaid() {
    assertTrue(ShareList.of(CoOpView.none(), "kg").startsWith("Nothing to share out"));
  }

  @Test
  void jsonHasTheColumnsOfTheTablesAndNullWhereANumberIsUnknown() {
    JsonNode root = new JsonMapper().readTree(ShareList.json(VIEW));

    assertEquals(12.5, root.get("share").get(0).get("kg_per_day").asDouble());
    assertTrue(root.get("share").get(1).get("kg_per_day").isNull());
    assertEquals(1.2, root.get("shortage").get(0).get("short_t").asDouble());
    assertTrue(root.get("retests").get(0).get("expected_kg").isNull());
  }

  @Test
  void aTextThatASpreadsheetWouldRunIsGuardedInCsv() {
    assertTrue(ShareList.csv(VIEW, ShareCommand.Part.RETESTS).contains("1,'=NEAR,"));
    assertTrue(ShareList.csv(VIEW, ShareCommand.Part.SHORTAGE).startsWith("group,horses,"));
    assertTrue(ShareList.csv(VIEW, ShareCommand.Part.SHARE).startsWith("horse,lot,"));
  }
}
