package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Who is called, on a first morning that knows nothing but registers: horses with acute laminitis,
 * a client who was told the wrong thing, hay of which half is known, hay whose two tests disagree.
 */
class CallsEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final String HORSES =
      "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
          + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
          + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to\n";

  @TempDir Path folder;

  private static String horse(String id, String conditions, String vetPlan) {
    return id
        + ",ash,"
        + id
        + ",horse,2010-05,400,scale,2026-03-01,,,maintenance,low,,6,"
        + conditions
        + ",2,"
        + vetPlan
        + ",0,no,none,,,\n";
  }

  private static String report(String no, String day, String lot, String... lines) {
    return "Brook Vale Forage Laboratory\nReport no,"
        + no
        + "\nSampled on,"
        + day
        + "\nLot,"
        + lot
        + "\nAnalyte,Result,Unit,Basis\nDry matter,88.0,%,as fed\n"
        + String.join("\n", lines)
        + "\nCrude protein,9.9,%,dry matter\n";
  }

  private static String sugar(double wsc) {
    return "WSC," + wsc + ",%,dry matter\nStarch,0.6,%,dry matter";
  }

  private MorningEnd run(String decisions) {
    SmallOffice office = new SmallOffice(folder.resolve("office"));
    office.write(
        "registers/clients.csv",
        "client_id,name,email,phone,adviser,units\nash,Ash Yard,,,ruth,kg\n");
    office.write(
        "registers/horses.csv",
        HORSES
            + horse("acute", "laminitis-acute", "no")
            + horse("planned", "laminitis-acute", "yes")
            + horse("sweet", "insulin-dysregulation", "no")
            + horse("half", "pssm", "no")
            + horse("twice", "insulin-dysregulation", "no")
            + horse("lost", "", "no"));
    office.write(
        "registers/lots.csv",
        "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
            + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n"
            + "CALM,ash,grass-hay,0,1,2025-07-01,9000,18,,no,20,,\n"
            + "SWEET,ash,grass-hay,0,1,2025-07-01,9000,18,,no,20,,\n"
            + "HALF,ash,grass-hay,0,1,2025-07-01,9000,18,,no,20,,\n"
            + "LOST,ash,grass-hay,0,1,2025-07-01,9000,18,,no,20,,\n"
            + "TWICE,ash,grass-hay,0,1,2025-07-01,9000,18,,no,20,,\n");
    office.write(
        "registers/rations.csv",
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "acute,CALM,,7,kg,forage,3,dry,2026-02-01\n"
            + "planned,CALM,,7,kg,forage,3,dry,2026-02-01\n"
            + "sweet,SWEET,,7,kg,forage,3,dry,2026-02-01\n"
            + "lost,LOST,,7,kg,forage,3,dry,2026-02-01\n"
            + "half,HALF,,7,kg,forage,3,dry,2026-02-01\n"
            + "twice,TWICE,,7,kg,forage,3,dry,2026-02-01\n");
    office.write("registers/decisions.csv", "date,about,kind,value,start_on,by,why\n" + decisions);
    office.write("inbox/calm.csv", report("V-1", "2026-02-20", "CALM", sugar(4.2)));
    office.write("inbox/sweet.csv", report("V-2", "2026-02-20", "SWEET", sugar(10.1)));
    office.write("inbox/half.csv", report("V-3", "2026-02-20", "HALF", "WSC,12.9,%,dry matter"));
    office.write("inbox/twice.csv", report("V-4", "2026-02-20", "TWICE", sugar(6.2)));
    office.write("inbox/again.csv", report("V-5", "2026-03-04", "TWICE", sugar(13.4)));
    office.write("inbox/lost.csv", report("V-6", "2026-02-20", "LOST", sugar(6.2)));
    office.write(
        "inbox/lost-2.csv",
        report("V-6\nRevision,2\nStatus,withdrawn", "2026-02-20", "LOST", sugar(6.2)));
    office.write("inbox/empty.csv", "");
    return office.run(DAY);
  }

  private static Map<String, String> horse(MorningEnd end, String id) {
    return SmallOffice.rows(end, "horses.csv").stream()
        .filter(r -> r.get("horse").equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static String priority(MorningEnd end, String id) {
    return horse(end, id).get("priority");
  }

  @Test
  void acuteLaminitisWithoutAPlanIsACallOfItsOwn() {
    MorningEnd end = run("");

    assertEquals("call-now", priority(end, "acute"));
    assertTrue(
        horse(end, "acute").get("reason").contains("nothing is on record of a call to the vet"));
    assertFalse(horse(end, "acute").get("reason").contains("clears"));
    assertFalse(priority(end, "planned").startsWith("call"));
    assertTrue(SmallOffice.text(end, "summary.html").contains("Is the veterinarian in charge?"));
  }

  @Test
  void aVetCalledDaysAgoIsAskedAbout() {
    MorningEnd old = run("2026-03-11,acute,told,vet called,,ruth,same hour\n");
    assertEquals("call-today", priority(old, "acute"));
    assertTrue(
        horse(old, "acute")
            .get("reason")
            .contains("on record of 2026-03-11, by ruth: vet called (same hour)"));
  }

  @Test
  void aVetCalledLatelyStands() {
    MorningEnd end = run("2026-03-14,acute,told,vet called,,ruth,\n");

    assertEquals("standing", priority(end, "acute"));
    assertTrue(horse(end, "acute").get("reason").contains("on record of 2026-03-14"));
  }

  @Test
  void whatWasToldAndDoesNotHoldIsARecallOnTheFirstMorningToo() {
    MorningEnd end = run("2026-03-02,sweet,told,clears,,ruth,by telephone\n");

    List<Map<String, String>> recalls = SmallOffice.rows(end, "recalls.csv");
    assertEquals(1, recalls.size(), recalls::toString);
    assertEquals("SWEET", recalls.get(0).get("lot"));
    assertEquals("sweet", recalls.get(0).get("horse"));
    assertEquals("2026-03-02", recalls.get(0).get("told_on"));
    assertTrue(horse(end, "sweet").get("reason").contains("'clears', no longer holds"));
  }

  @Test
  void whatWasSaidOfALotIsARecallForWhoeverEatsItUntilTheyAreTold() {
    MorningEnd end = run("2026-03-02,SWEET,told,clears,,ruth,\n");
    List<Map<String, String>> recalls = SmallOffice.rows(end, "recalls.csv");
    assertEquals(List.of("sweet"), recalls.stream().map(r -> r.get("horse")).toList());
  }

  @Test
  void whoWasToldSinceThenIsNotRecalled() {
    MorningEnd end =
        run(
            "2026-03-02,SWEET,told,clears,,ruth,\n"
                + "2026-03-09,sweet,told,borderline-over,,ruth,\n");
    assertEquals(List.of(), SmallOffice.rows(end, "recalls.csv"));
  }

  @Test
  void aLowerEndOverAStopLimitCallsNowAndTwoTestsThatDisagreeCallToday() {
    MorningEnd end = run("");

    assertEquals("call-now", priority(end, "half"));
    assertTrue(horse(end, "half").get("reason").contains("at least "));
    assertEquals("call-today", priority(end, "twice"));
    assertEquals("note", priority(end, "lost"));
    assertTrue(horse(end, "lost").get("reason").contains("withdrew the report of LOST"));
    List<String> drafts =
        SmallOffice.rows(end, "drafts/decisions.csv").stream().map(r -> r.get("about")).toList();
    assertTrue(drafts.contains("half"), drafts::toString);
    assertFalse(drafts.contains("twice"), "nobody is told to change what cannot be judged");
    assertTrue(
        SmallOffice.rows(end, "follow-ups.csv").stream()
            .anyMatch(
                r -> r.get("about").equals("empty.csv") && r.get("what").contains("file again")));
  }
}
