package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * First reports, amendments, copies, preliminary reports and withdrawals over whole mornings, in
 * every order of arrival: the last morning decides alike, and what was replaced is announced once.
 * Each lot has a case of its own, so that one office shows them all.
 */
class AmendmentsEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  private static final List<String> LOTS = List.of("F-1", "F-2", "F-3", "F-4", "F-5", "F-6", "F-7");

  private static final int[][] ORDERS = {
    {0, 1, 2}, {2, 1, 0}, {1, 0, 2}, {0, 2, 1}, {1, 2, 0}, {2, 0, 1}
  };

  /** The orders tried: some in each build, all with {@code -P soak}. */
  private static final int TRIED = Integer.getInteger("rickyard.orders", 3);

  @TempDir Path folder;

  /** A file that arrives, and what it says. */
  private record Arrival(String file, String text) {}

  private static Arrival report(String file, String lot, String head, double wsc) {
    return new Arrival(
        file,
        "Brook Vale Forage Laboratory\n"
            + head
            + "Lot,"
            + lot
            + "\nAnalyte,Result,Unit,Basis\nDry matter,88.0,%,as fed\nWSC,"
            + wsc
            + ",%,dry matter\nStarch,0.6,%,dry matter\nCrude protein,9.9,%,dry matter\n");
  }

  private static String no(String number) {
    return "Report no," + number + "\n";
  }

  private static String amended(String number, int revision) {
    return no(number) + "Revision," + revision + "\nStatus,amended\n";
  }

  private static Arrival withdrawal(String file, String number) {
    return new Arrival(
        file,
        "Brook Vale Forage Laboratory\nReport withdrawn\n" + no(number) + "Status,withdrawn\n");
  }

  /** The cases: which files belong together; they arrive in all orders. */
  private static List<List<Arrival>> cases() {
    return List.of(
        // A first report and its correction.
        List.of(
            report("f1.csv", "F-1", no("V-1"), 7), report("c1.csv", "F-1", amended("V-1", 2), 13)),
        // A correction under a number of its own that names the one it replaces.
        List.of(
            report("f2.csv", "F-2", no("V-2"), 7),
            report("c2.csv", "F-2", no("V-2A") + "Replaces report,V-2\n", 13)),
        // The same bytes under two names.
        List.of(report("f3.csv", "F-3", no("V-3"), 7), report("again3.csv", "F-3", no("V-3"), 7)),
        // One number, other figures, and nothing that orders them.
        List.of(report("f4.csv", "F-4", no("V-4"), 7), report("other4.csv", "F-4", no("V-4"), 9.5)),
        // Preliminary, final, corrected.
        List.of(
            report("p5.csv", "F-5", no("V-5") + "Status,preliminary\n", 6),
            report("f5.csv", "F-5", no("V-5"), 7),
            report("c5.csv", "F-5", amended("V-5", 2), 13)),
        // First, corrected, withdrawn.
        List.of(
            report("f6.csv", "F-6", no("V-6"), 7),
            report("c6.csv", "F-6", amended("V-6", 2), 13),
            withdrawal("w6.csv", "V-6")),
        // A correction of a report that never came.
        List.of(report("c7.csv", "F-7", amended("V-7", 2), 13)));
  }

  private SmallOffice office(String name) {
    SmallOffice office = new SmallOffice(folder.resolve(name));
    office.lots(LOTS);
    office.write("registers/clients.csv", "client_id,name,email,phone,adviser,units\n");
    StringBuilder told = new StringBuilder("date,about,kind,value,start_on,by,why\n");
    LOTS.forEach(lot -> told.append("2026-03-01,").append(lot).append(",told,clears,,Ruth,\n"));
    office.write("registers/decisions.csv", told.toString());
    return office;
  }

  private static void arrive(SmallOffice office, Arrival arrival) {
    office.write("inbox/" + arrival.file(), arrival.text());
  }

  /** A morning for each step of an order; a case of fewer files has had all of its own by then. */
  private List<MorningEnd> mornings(SmallOffice office, int[] order) {
    List<MorningEnd> ends = new ArrayList<>();
    for (int step = 0; step < order.length; step++) {
      for (List<Arrival> each : cases()) {
        int at = order[step];
        if (at < each.size()) {
          arrive(office, each.get(at));
        }
      }
      ends.add(office.run(DAY.plusDays(step)));
    }
    return ends;
  }

  /** What was decided: verdicts, and the figures in force with what is asked. */
  private static String decisions(MorningEnd end) {
    TreeSet<String> figures = new TreeSet<>();
    for (Map<String, String> row : SmallOffice.rows(end, "analyses.csv")) {
      if (row.get("state").equals("in-force")) {
        figures.add(row.get("lot") + " " + row.get("analyte") + " " + row.get("value"));
      }
    }
    String questions =
        SmallOffice.rows(end, "questions.csv").stream()
            .map(row -> row.get("kind") + " " + row.get("about"))
            .sorted()
            .collect(Collectors.joining("\n"));
    return SmallOffice.text(end, "verdicts.csv") + figures + questions;
  }

  private static List<String> changes(MorningEnd end) {
    List<String> lines = new ArrayList<>();
    JsonNode json = new JsonMapper().readTree(SmallOffice.text(end, "summary.json"));
    json.get("changes").forEach(line -> lines.add(line.asString()));
    return lines;
  }

  private static long announced(List<MorningEnd> ends, String lot, String by) {
    return ends.stream()
        .flatMap(end -> changes(end).stream())
        .filter(line -> line.startsWith(lot + ":") && line.contains(by + " takes the place of"))
        .count();
  }

  @Test
  void thePageSaysWhatTheAmendedReportChangedAlsoWhereTheOldOneCameEarlier() {
    SmallOffice office = office("told");
    arrive(office, cases().get(0).get(0));
    office.run(DAY);
    arrive(office, cases().get(0).get(1));
    String page = SmallOffice.text(office.run(DAY.plusDays(1)), "summary.html");

    assertTrue(
        page.contains(
            "V-1 revision 2 (c1.csv) takes the place of the first report (f1.csv). F-1: WSC +"
                + " starch 7.6 → 13.6 % of dry matter, WSC 7 → 13 % of dry matter; fed to no horse"
                + " on record; F-1 does not clear for"),
        page);
    assertFalse(page.contains("F-1: c1.csv takes the place of"), "said once");
    String figures = page.substring(page.indexOf("Reasons, every limit and figure of F-1"));
    String table = figures.substring(figures.indexOf("<table class=\"stack figures"));
    table = table.substring(0, table.indexOf("</table>"));
    assertTrue(
        table.contains("WSC + starch, from &quot;13.0&quot; in c1.csv, page 1, row "), table);
  }

  @Test
  void everyOrderOfArrivalEndsInTheSameDecisionsAndReplacedValuesAreAnnouncedOnce() {
    SmallOffice together = office("together");
    cases().forEach(each -> each.forEach(arrival -> arrive(together, arrival)));
    String expected = decisions(together.run(DAY.plusDays(2)));
    assertTrue(expected.contains("F-1 WSC 13"), expected);
    assertTrue(expected.contains("F-2 WSC 13"), expected);
    assertTrue(expected.contains("F-3 WSC 7"), expected);
    assertFalse(expected.contains("F-4 WSC"), expected);
    assertTrue(expected.contains("F-5 WSC 13"), expected);
    assertFalse(expected.contains("F-6 WSC"), expected);
    assertTrue(expected.contains("F-7 WSC 13"), expected);
    assertTrue(expected.contains("which-revision"), expected);

    for (int[] order : Arrays.copyOf(ORDERS, TRIED)) {
      String name = order[0] + "" + order[1] + order[2];
      List<MorningEnd> ends = mornings(office(name), order);
      assertEquals(expected, decisions(ends.get(2)), "order " + name);

      boolean firstFirst = name.indexOf('0') < name.indexOf('1');
      assertEquals(firstFirst ? 1 : 0, announced(ends, "F-1", "c1.csv"), "order " + name);
      assertEquals(firstFirst ? 1 : 0, announced(ends, "F-2", "c2.csv"), "order " + name);
      boolean somethingToWithdraw = order[0] != 2;
      assertEquals(somethingToWithdraw, announced(ends, "F-6", "w6.csv") > 0, "order " + name);
      String told = changes(ends.get(2)).toString() + changes(ends.get(1));
      assertEquals(
          firstFirst, told.contains("decisions to look at again: decisions.csv rows [2]"), name);
    }
  }
}
