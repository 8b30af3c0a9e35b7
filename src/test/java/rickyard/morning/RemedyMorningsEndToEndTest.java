package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Proposals, changes that were accepted, and trips over whole mornings of a small office. */
class RemedyMorningsEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final String HORSES =
      "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
          + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
          + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to\n";
  private static final String DECISIONS = "date,about,kind,value,start_on,by,why\n";

  @TempDir Path folder;

  private SmallOffice office;

  private static String horse(String id, String conditions, String trip) {
    return id
        + ",ash,"
        + id
        + ",horse,2010-05,400,scale,2026-03-01,,,maintenance,low,,6,"
        + conditions
        + ",2,no,0,no,none,,"
        + trip
        + "\n";
  }

  private static String report(String lot, String number, double wsc) {
    return "Brook Vale Forage Laboratory\nReport no,"
        + number
        + "\nLot,"
        + lot
        + "\nAnalyte,Result,Unit,Basis\nDry matter,88.0,%,as fed\nWSC,"
        + wsc
        + ",%,dry matter\nStarch,0.6,%,dry matter\nCrude protein,9.9,%,dry matter\n";
  }

  private void horses(String rows) {
    office.write("registers/horses.csv", HORSES + rows);
  }

  private void lots(String stockOfCalm, String stockOfHome) {
    office.write(
        "registers/lots.csv",
        "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
            + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n"
            + "CALM,co-op,grass-hay,0,1,2025-07-01,"
            + stockOfCalm
            + ",18,200,yes,20,,\n"
            + "HOME,ash,grass-hay,0,1,2025-07-01,"
            + stockOfHome
            + ",18,,no,12,,\n");
  }

  @BeforeEach
  void anOfficeWithHomeHayThatExceeds() {
    office = new SmallOffice(folder.resolve("office"));
    office.write(
        "registers/clients.csv",
        "client_id,name,email,phone,adviser,units\nash,Ash Yard,,,ruth,kg\n");
    horses(horse("sage", "insulin-dysregulation", ",") + horse("dill", "", ","));
    lots("5000", "900");
    office.write(
        "registers/feeds.csv",
        "feed_id,name,role,form,batch,dm_pct,wsc_pct_dm,wsc_kind,starch_pct_dm,starch_kind,"
            + "cp_pct_dm,bag_kg,price_per_bag,complete\n"
            + "CHOP,Brook Chop,controlled-forage,chopped,B7,90,5,batch,1,batch,9,20,13,no\n");
    office.write(
        "registers/rations.csv",
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "sage,HOME,,8,kg,forage,3,dry,2026-02-01\n"
            + "dill,HOME,,6,kg,forage,3,dry,2026-02-01\n");
    office.write("inbox/calm.csv", report("CALM", "V-1", 5));
    office.write("inbox/home.csv", report("HOME", "V-2", 13));
  }

  private static List<Map<String, String>> rows(MorningEnd end, String file, String horse) {
    return SmallOffice.rows(end, file).stream().filter(r -> r.get("horse").equals(horse)).toList();
  }

  private static double kg(List<Map<String, String>> rows, String key, String value, String item) {
    return rows.stream()
        .filter(r -> r.get(key).equals(value) && r.get("item").equals(item))
        .mapToDouble(r -> Double.parseDouble(r.get("kg")))
        .findFirst()
        .orElseThrow();
  }

  private static Map<String, String> first(MorningEnd end, String kind) {
    return rows(end, "remedies.csv", "sage").stream()
        .filter(r -> r.get("kind").equals(kind))
        .findFirst()
        .orElseThrow();
  }

  /** 30 days of 8 kg need 240 kg; 6 kg a day that others eat of it would need 180 kg more. */
  @Test
  void aLotThatTheOtherHorsesEatUpIsNotProposed() {
    office.write(
        "registers/rations.csv",
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "sage,HOME,,8,kg,forage,3,dry,2026-02-01\n"
            + "dill,CALM,,6,kg,forage,3,dry,2026-02-01\n");
    lots("421", "900");
    assertEquals("yes", first(office.run(DAY), "swap").get("enough"));

    lots("300", "900");
    for (Map<String, String> row : rows(office.run(DAY.plusDays(1)), "remedies.csv", "sage")) {
      boolean isCalm = row.get("item").equals("CALM");
      double kg = isCalm ? Double.parseDouble(row.get("then_kg")) : 0;
      assertTrue(kg <= 4 || row.get("enough").equals("no"), row::toString);
    }
  }

  @Test
  void theDraftOfTheBestProposalIsFollowedDayByDayOnceItHasADay() {
    MorningEnd proposed = office.run(DAY);
    Map<String, String> draft =
        SmallOffice.rows(proposed.out().resolve("drafts/decisions.csv")).get(0);
    String value = draft.get("value");
    assertEquals("sage", draft.get("about"));
    assertEquals("", draft.get("start_on"));
    List<Map<String, String>> best =
        rows(proposed, "remedies.csv", "sage").stream()
            .filter(r -> r.get("rank").equals("1") && !r.get("then_kg").equals("0"))
            .toList();
    assertEquals(best.size(), value.split(";").length, value);

    office.write(
        "registers/decisions.csv",
        DECISIONS + "2026-03-17,sage,accepted,\"" + value + "\",,ruth,\n");
    String blank = SmallOffice.text(office.run(DAY.plusDays(1)), "summary.html");
    assertTrue(blank.contains("start_on is blank"), "a row that is not followed is named");

    office.write(
        "registers/decisions.csv",
        DECISIONS + "2026-03-17,sage,accepted,\"" + value + "\",2026-03-18,ruth,\n");
    MorningEnd followed = office.run(DAY.plusDays(2));
    assertEquals(
        first(proposed, best.get(0).get("kind")).get("nsc_wsc_after"),
        rows(followed, "horses.csv", "sage").get(0).get("nsc_wsc_pct_dm"),
        "hay that exceeds is not phased out slowly: day 1 is the whole change");
    assertTrue(SmallOffice.text(followed, "summary.html").contains("day 1 of the changeover"));
    assertEquals(List.of(), rows(followed, "remedies.csv", "sage"), "it clears now");
  }

  @Test
  void aShareThatDoesNotExceedIsPhasedInByTheDay() {
    office.write(
        "registers/decisions.csv", DECISIONS + "2026-03-16,dill,accepted,CALM,2026-03-16,ruth,\n");
    office.write("inbox/home.csv", report("HOME", "V-2", 8));

    // HOME has 8.6 % and CALM 5.6 %, of one dry matter: 1.5 of 6 kg, 3 of 6 kg, all of it.
    assertEquals(8.6 - 3 * 0.25, nsc(office.run(DAY)), 1e-6);
    assertEquals(8.6 - 3 * 0.25, nsc(office.run(DAY.plusDays(3))), 1e-6);
    assertEquals(8.6 - 3 * 0.5, nsc(office.run(DAY.plusDays(4))), 1e-6);
    assertEquals(5.6, nsc(office.run(DAY.plusDays(12))), 1e-6);
  }

  private static double nsc(MorningEnd end) {
    return Double.parseDouble(rows(end, "horses.csv", "dill").get(0).get("nsc_wsc_pct_dm"));
  }

  @Test
  void anAcceptanceThatNamesNothingIsNotFollowedAndSaysSo() {
    office.write(
        "registers/decisions.csv",
        DECISIONS + "2026-03-16,sage,accepted,the other hay,2026-03-16,ruth,\n");

    String page = SmallOffice.text(office.run(DAY), "summary.html");

    assertTrue(page.contains("names no ration"), "named on the page");
    assertTrue(page.contains("decisions.csv, row 2"), "with its row");
  }

  /** Quarters over 12 days before, all away, quarters over 12 days after; with its whole ration. */
  @Test
  void aTripRaisesTheBaggedForageFeedsItAwayAndComesBack() {
    horses(
        horse("sage", "insulin-dysregulation", ",") + horse("dill", "", "2026-03-28,2026-03-30"));

    MorningEnd end = office.run(DAY);
    List<Map<String, String>> trip = rows(end, "trips.csv", "dill");

    assertEquals("2026-03-16", trip.get(0).get("day"), "12 days before");
    assertEquals(1.5, kg(trip, "day", "2026-03-16", "CHOP"), 0.11);
    assertEquals(4.5, kg(trip, "day", "2026-03-16", "HOME"), 0.11);
    assertEquals("before", phase(trip, "2026-03-27"));
    assertEquals("away", phase(trip, "2026-03-28"));
    assertEquals(0, kg(trip, "day", "2026-03-29", "HOME"), 0);
    assertEquals(6, kg(trip, "day", "2026-03-29", "CHOP"), 0.26);
    assertEquals("back", phase(trip, "2026-03-31"));
    assertEquals("2026-04-12", trip.get(trip.size() - 1).get("day"));
    assertEquals(6, kg(trip, "day", "2026-04-12", "HOME"), 0);
    for (String day : trip.stream().map(r -> r.get("day")).distinct().toList()) {
      double dm = 0.9 * kg(trip, "day", day, "CHOP") + 0.88 * kg(trip, "day", day, "HOME");
      assertTrue(dm >= 0.0125 * 400 - 1e-9, day + ": no day below the forage floor, " + dm);
    }
    assertTrue(rows(end, "trips.csv", "sage").isEmpty());
    String page = SmallOffice.text(end, "summary.html");
    assertTrue(page.contains("Trip from 2026-03-28 to 2026-03-30"));
    assertTrue(page.contains("kg (0.9 bags) of Brook Chop along for 3 days away"), "what to take");
    assertTrue(
        SmallOffice.rows(end, "follow-ups.csv").stream()
            .anyMatch(r -> r.get("kind").equals("trip") && r.get("about").equals("dill")));
  }

  private static String phase(List<Map<String, String>> trip, String day) {
    return trip.stream()
        .filter(r -> r.get("day").equals(day))
        .findFirst()
        .orElseThrow()
        .get("phase");
  }

  @Test
  void theSamePlanIsPrintedWhileItIsUnderWay() {
    horses(horse("dill", "", "2026-03-28,2026-03-30"));
    List<Map<String, String>> first = rows(office.run(DAY), "trips.csv", "dill");

    MorningEnd later = office.run(DAY.plusDays(5));

    List<Map<String, String>> rest = rows(later, "trips.csv", "dill");
    assertEquals(
        first.stream().filter(r -> r.get("day").compareTo("2026-03-21") >= 0).toList(), rest);
    assertTrue(SmallOffice.text(later, "summary.html").contains("only 7 days are left"));
  }

  /** What does not clear at home is not what a horse comes back to. */
  @Test
  void aHorseDoesNotComeBackToHayThatDoesNotClear() {
    horses(horse("sage", "insulin-dysregulation", "2026-03-28,2026-03-30"));

    MorningEnd end = office.run(DAY);

    assertFalse(
        rows(end, "trips.csv", "sage").stream().anyMatch(r -> r.get("phase").equals("back")));
    assertTrue(
        SmallOffice.text(end, "summary.html").contains("put that right before it goes back to it"));
  }

  @Test
  void whereTheOldHayIsUsedUpNoChangeoverIsPossible() {
    lots("5000", "0");

    Map<String, String> swap = first(office.run(DAY), "swap");

    assertTrue(swap.get("why").contains("No changeover is possible"), swap.get("why"));
    assertEquals(
        1,
        rows(office.run(DAY.plusDays(1)), "changeover.csv", "sage").stream()
            .filter(r -> r.get("rank").equals(swap.get("rank")))
            .map(r -> r.get("day"))
            .distinct()
            .count());
  }
}
