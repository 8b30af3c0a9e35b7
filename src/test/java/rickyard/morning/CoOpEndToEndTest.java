package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.report.view.CoOpView;

/**
 * A co-op with 300 kg of hay that clears, for horses that would eat 420 kg of it in a month, and
 * two lots more, of which one has never been tested.
 */
class CoOpEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final String HORSES =
      "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
          + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
          + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to\n";

  @TempDir Path folder;

  private static String horse(String id, String client, String conditions) {
    return id
        + ","
        + client
        + ","
        + id
        + ",horse,2010-05,400,scale,2026-03-01,,,maintenance,low,,6,"
        + conditions
        + ",2,no,0,no,none,,,\n";
  }

  private static String report(String lot, String head, double wsc) {
    return "Brook Vale Forage Laboratory\n"
        + head
        + "Lot,"
        + lot
        + "\nAnalyte,Result,Unit,Basis\nDry matter,88.0,%,as fed\nWSC,"
        + wsc
        + ",%,dry matter\nStarch,0.6,%,dry matter\nCrude protein,9.9,%,dry matter\n";
  }

  private SmallOffice office(String horses) {
    SmallOffice office = new SmallOffice(folder.resolve("office"));
    office.write(
        "registers/clients.csv",
        "client_id,name,email,phone,adviser,units\nash,Ash Yard,,,ruth,kg\nelm,Elm Yard,,,ruth,kg\n");
    office.write("registers/horses.csv", HORSES + horses);
    office.write(
        "registers/lots.csv",
        "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
            + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n"
            + "CALM,co-op,grass-hay,0,1,2025-07-01,300,18,200,yes,20,,\n"
            + "NEAR,co-op,grass-hay,0,1,2025-07-01,5000,18,150,yes,12,,\n"
            + "NEW,co-op,grass-hay,0,1,2025-07-01,4000,18,,yes,12,,\n"
            + "OWN,elm,grass-hay,0,1,2025-07-01,900,18,,no,12,,\n");
    office.write(
        "registers/deliveries.csv",
        "lot_id,client_id,kg,delivered_on,replaces,opens_on,opened_on,finished_on\n"
            + "CALM,ash,0.5,2026-03-02,,,2026-03-10,\n");
    office.write(
        "registers/rations.csv",
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "sage,CALM,,8,kg,forage,3,dry,2026-02-01\n"
            + "mint,CALM,,6,kg,forage,3,dry,2026-02-01\n"
            + "dill,CALM,,7,kg,forage,3,dry,2026-02-01\n"
            + "rue,OWN,,7,kg,forage,3,dry,2026-02-01\n");
    office.write(
        "registers/decisions.csv",
        "date,about,kind,value,start_on,by,why\n2026-03-05,mint,told,clears,,ruth,by telephone\n");
    office.write("inbox/calm.csv", report("CALM", "Report no,V-1\n", 4.2));
    office.write("inbox/near.csv", report("NEAR", "Report no,V-2\n", 9.2));
    office.write("inbox/own.csv", report("OWN", "Report no,V-3\n", 12.5));
    return office;
  }

  private SmallOffice scarce() {
    return office(
        horse("sage", "elm", "insulin-dysregulation")
            + horse("mint", "ash", "laminitis-past")
            + horse("dill", "ash", "")
            + horse("rue", "elm", ""));
  }

  private static List<Map<String, String>> of(List<Map<String, String>> rows, String horse) {
    return rows.stream().filter(r -> r.get("horse").equals(horse)).toList();
  }

  private static double sum(List<Map<String, String>> rows, String lot) {
    return rows.stream()
        .filter(r -> r.get("lot").equals(lot) && r.get("from").isEmpty())
        .mapToDouble(r -> Double.parseDouble(r.get("kg")))
        .sum();
  }

  @Test
  void theMostSensitiveHorseComesFirstAndNobodyGetsHayThatDoesNotClearForIt() {
    MorningEnd end = scarce().run(DAY);
    List<Map<String, String>> rows = SmallOffice.rows(end, "share.csv");

    List<Map<String, String>> mint = of(rows, "mint");
    assertTrue(mint.stream().allMatch(r -> r.get("lot").equals("CALM")), mint::toString);
    double days = mint.stream().mapToDouble(r -> Double.parseDouble(r.get("days"))).sum();
    assertEquals(30, days, 0.11, mint::toString);
    List<Map<String, String>> sage = of(rows, "sage");
    assertEquals(List.of("CALM", ""), sage.stream().map(r -> r.get("lot")).toList());
    assertTrue(Double.parseDouble(sage.get(0).get("days")) < 16, sage::toString);
    assertTrue(sage.get(1).get("why").contains("no hay that clears for ID is left"));
    assertFalse(of(rows, "dill").stream().anyMatch(r -> r.get("lot").equals("CALM")));
    assertEquals("OWN", of(rows, "rue").get(0).get("lot"), "stays on its client's own hay");
    assertTrue(sum(rows, "CALM") <= 300, rows::toString);
    assertTrue(sum(rows, "CALM") > 290, rows::toString);
    for (Map<String, String> row : rows) {
      boolean isUncleared = !row.get("group").isEmpty() && !row.get("lot").isEmpty();
      assertTrue(!isUncleared || row.get("lot_verdict").equals("clears"), row::toString);
    }
    String page = SmallOffice.text(end, "summary.html");
    assertTrue(page.contains("The co-op's hay") || page.contains("The co-op&#39;s hay"));
  }

  @Test
  void theShortageIsThatOfTheLessSensitiveGroupAndAddsUp() {
    MorningEnd end = scarce().run(DAY);
    List<Map<String, String>> rows = SmallOffice.rows(end, "shortage.csv");

    assertEquals(1, rows.size(), rows::toString);
    Map<String, String> row = rows.get(0);
    assertEquals("ID", row.get("group"));
    assertEquals("sage", row.get("horses"));
    assertEquals("240", row.get("needed_kg"));
    // 300 kg and half a kilogram delivered, less 6 kg a day for mint, leave 120 kg for sage.
    assertEquals(120, Double.parseDouble(row.get("short_kg")), 1.0);
    assertEquals("2026-03-31", row.get("runs_out_on"));
  }

  @Test
  void theRetestThatMayFreeMostStandsFirstAndTheOneWithoutAnyFigureLast() {
    MorningEnd end = scarce().run(DAY);
    List<Map<String, String>> rows = SmallOffice.rows(end, "retests.csv");

    assertEquals("NEAR", rows.get(0).get("lot"), rows::toString);
    double chance = Double.parseDouble(rows.get(0).get("chance"));
    assertTrue(chance > 0 && chance < 0.6, rows::toString);
    double frees = Double.parseDouble(rows.get(0).get("frees_kg"));
    assertEquals(120, frees, 1.0);
    assertEquals(chance * frees, Double.parseDouble(rows.get(0).get("expected_kg")), 1.0);
    Map<String, String> last = rows.get(rows.size() - 1);
    assertEquals("NEW", last.get("lot"), rows::toString);
    assertEquals("", last.get("chance"));
    assertEquals("unknown", last.get("cost"));
  }

  @Test
  void aLotWhoseVerdictFellIsRecalledFromWhoeverHasItWithWhatWasTold() {
    SmallOffice office = scarce();
    assertTrue(SmallOffice.rows(office.run(DAY), "recalls.csv").isEmpty());
    office.write(
        "inbox/calm-2.csv", report("CALM", "Report no,V-1\nRevision,2\nStatus,amended\n", 13));

    List<Map<String, String>> rows = SmallOffice.rows(office.run(DAY.plusDays(1)), "recalls.csv");

    assertEquals(
        List.of("mint", "sage"),
        rows.stream().map(r -> r.get("horse")).toList(),
        "who was delivered it, and who is fed it without a delivery on record");
    Map<String, String> row = rows.get(0);
    assertEquals(
        List.of("CALM", "ash", "mint", "2026-03-02", "2026-03-05"),
        List.of(
            row.get("lot"),
            row.get("client"),
            row.get("horse"),
            row.get("delivered_on"),
            row.get("told_on")));
    assertTrue(row.get("what").contains("laminitis-nsc-lot: clears before, exceeds now"));
    assertTrue(row.get("what").contains("told on 2026-03-05 by ruth about mint: clears"));
  }

  private static final String TOLD_BEFORE = "2026-03-05,mint,told,clears,,ruth,by telephone\n";

  private static void decide(SmallOffice office, String rows) {
    office.write(
        "registers/decisions.csv", "date,about,kind,value,start_on,by,why\n" + TOLD_BEFORE + rows);
  }

  private static List<Map<String, String>> recalls(SmallOffice office, int day) {
    return SmallOffice.rows(office.run(DAY.plusDays(day)), "recalls.csv");
  }

  private static List<Map<String, String>> recallsOfMint(SmallOffice office, int day) {
    return of(recalls(office, day), "mint");
  }

  /** A row that a person works from does not go because a day passed. */
  @Test
  void aRecallStandsUntilTheHorseIsSpokenAboutWithTheFallKnown() {
    SmallOffice office = scarce();
    office.run(DAY);
    office.write(
        "inbox/calm-2.csv", report("CALM", "Report no,V-1\nRevision,2\nStatus,amended\n", 13));

    List<Map<String, String>> first = recallsOfMint(office, 1);
    assertEquals(1, first.size(), first::toString);
    assertEquals(first, recallsOfMint(office, 2), "the next day says the same");
    decide(office, "2026-03-17,rue,told,exceeds,,ruth,another horse\n");
    assertEquals(first, recallsOfMint(office, 3), "another horse was told about");

    decide(office, "2026-03-19,mint,told,exceeds,,ruth,rang at eight\n");
    assertEquals(List.of(), recallsOfMint(office, 4));
    assertEquals(List.of(), recallsOfMint(office, 5), "and it stays dealt with");
  }

  @Test
  void aRecallOfHayThatFallsFurtherIsToldAgainAndOneThatRecoversIsOver() {
    SmallOffice office = scarce();
    office.run(DAY);
    office.write(
        "inbox/calm-2.csv", report("CALM", "Report no,V-1\nRevision,2\nStatus,amended\n", 8.5));
    Map<String, String> fell = recallsOfMint(office, 1).get(0);
    decide(office, DAY.plusDays(2) + ",mint,told,borderline-under,,ruth,\n");
    assertEquals(List.of(), recallsOfMint(office, 2));

    office.write(
        "inbox/calm-3.csv", report("CALM", "Report no,V-1\nRevision,3\nStatus,amended\n", 13));
    List<Map<String, String>> further = recallsOfMint(office, 3);
    assertEquals(1, further.size(), further::toString);
    assertEquals(DAY.plusDays(1).toString(), fell.get("fell_on"));
    assertEquals(DAY.plusDays(3).toString(), further.get(0).get("fell_on"));
    assertTrue(
        further.get(0).get("what").contains("laminitis-nsc-lot: clears before, exceeds now"),
        further::toString);

    office.write(
        "inbox/calm-4.csv", report("CALM", "Report no,V-1\nRevision,4\nStatus,amended\n", 4));
    assertEquals(List.of(), recallsOfMint(office, 4));
  }

  @Test
  void whoHasTheHayButNoKnownHorseIsDealtWithByLotAndClient() {
    SmallOffice office =
        office(horse("sage", "elm", "insulin-dysregulation") + horse("dill", "ash", ""));
    office.run(DAY);
    office.write(
        "inbox/calm-2.csv", report("CALM", "Report no,V-1\nRevision,2\nStatus,amended\n", 13));

    List<Map<String, String>> rows = recalls(office, 1);
    assertEquals(
        List.of("ash ", "elm sage"),
        rows.stream().map(r -> r.get("client") + " " + r.get("horse")).toList());
    decide(office, DAY.plusDays(2) + ",CALM,told,exceeds,,ruth,to whom is not said\n");
    assertEquals(2, recalls(office, 2).size(), "two clients have it");
    decide(office, DAY.plusDays(2) + ",CALM ash,told,exceeds,,ruth,\n");
    assertEquals(List.of("elm"), recalls(office, 3).stream().map(r -> r.get("client")).toList());
  }

  @Test
  void whoNeedsNoClearedHayKeepsItsMixtureAndWhoCannotChewHayKeepsItsHay() {
    SmallOffice office =
        office(
            horse("dill", "ash", "")
                + horse("rue", "elm", "hypp")
                + horse("yarrow", "elm", "dental;insulin-dysregulation"));
    office.write(
        "registers/rations.csv",
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "dill,NEAR,,3,kg,forage,3,dry,2026-02-01\n"
            + "dill,CALM,,4,kg,forage,3,dry,2026-02-01\n"
            + "rue,NEAR,,7,kg,forage,3,dry,2026-02-01\n"
            + "yarrow,NEAR,,7,kg,forage,3,dry,2026-02-01\n");
    CoOpView view =
        OfficeShare.of(SmallOffice.folders(folder.resolve("office")), DAY, "kg", Progress.silent());

    List<String> rows =
        view.shares().stream().map(r -> r.horse() + " " + r.lot() + " " + r.kgPerDay()).toList();
    assertEquals(List.of("yarrow  null", "rue NEAR 7.0", "dill CALM 4.0", "dill NEAR 3.0"), rows);
    assertTrue(view.notes().stream().anyMatch(n -> n.startsWith("yarrow: no other hay")));
    assertTrue(view.retests().stream().anyMatch(r -> r.lot().equals("NEAR")), "what it eats now");
    assertFalse(view.retests().stream().anyMatch(r -> r.lot().equals("NEW")), "it cannot chew it");
  }

  @Test
  void anOfficeWithoutHayOfACoOpOrForSaleSharesNothing() {
    SmallOffice office = scarce();
    office.write(
        "registers/lots.csv",
        "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
            + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n"
            + "CALM,ash,grass-hay,0,1,2025-07-01,300,18,,no,20,,\n"
            + "OWN,elm,grass-hay,0,1,2025-07-01,900,18,,no,12,,\n");
    MorningEnd end = office.run(DAY);

    List<String> files = new ArrayList<>(List.of("share.csv", "shortage.csv", "retests.csv"));
    files.forEach(file -> assertEquals(List.of(), SmallOffice.rows(end, file), file));
    assertFalse(SmallOffice.text(end, "summary.html").contains("id=\"coop\""));
  }
}
