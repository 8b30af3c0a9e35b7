package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What falls due, and when, from an office's registers and reports. */
class FollowUpsEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  @TempDir Path folder;
  private SmallOffice office;

  @BeforeEach
  void anOfficeWithAllThatCanFallDue() {
    office = new SmallOffice(folder);
    office.write(
        "registers/clients.csv",
        "client_id,name,email,phone,adviser,units\nmill,Old Mill,m@mill.example,555-7,quist,kg\n");
    office.write(
        "registers/horses.csv",
        "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,status,"
            + "level,month,body_condition,conditions,meals_per_day,vet_plan,"
            + "grazing_hours_per_day,extras\n"
            + "ada,mill,Ada,horse,2015-05,500,scale,2025-10-01,maintenance,average,,5,"
            + "insulin-dysregulation,2,no,0,none\n"
            + "bay,mill,Bay,horse,2015-05,500,guess,,maintenance,average,,5,,2,no,0,none\n"
            + "cob,mill,Cob,horse,2015-05,500,tape,2026-02-20,maintenance,average,,5,"
            + "dental;overweight,2,no,0,none\n");
    office.write(
        "registers/lots.csv",
        "lot_id,holder,material,cutting,harvested_on,stock_kg,for_sale,cores,sampled_on\n"
            + "HAY-1,mill,grass-hay,1,2025-07-01,120,no,20,2026-02-17\n"
            + "HAY-2,co-op,grass-hay,1,2024-07-01,5000,yes,20,2025-04-02\n"
            + "HAY-3,mill,grass-hay,1,2025-07-01,90000,no,20,2026-02-17\n");
    office.write(
        "registers/deliveries.csv",
        "lot_id,client_id,kg,delivered_on,replaces,opens_on,opened_on,finished_on\n"
            + "HAY-2,mill,260,2026-03-08,,,2026-03-10,\n");
    office.write(
        "registers/rations.csv",
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "ada,HAY-1,,8,kg,forage,2,dry,2026-01-01\n"
            + "bay,HAY-3,,8,kg,forage,2,dry,2026-01-01\n"
            + "bay,BAL,B1,0.5,kg,bucket,2,dry,2026-01-01\n"
            + "cob,HAY-2,,10,kg,forage,2,dry,2026-01-01\n");
    office.write(
        "registers/feeds.csv",
        "feed_id,name,role,form,batch,dm_pct,wsc_pct_dm,starch_pct_dm,bagged_on,"
            + "shelf_life_months\n"
            + "BAL,Balancer,balancer,pellets,B1,90,5,4,2025-06-20,9\n"
            + "BAL,Balancer,balancer,pellets,B2,90,5,4,2026-02-20,9\n");
    office.write(
        "registers/decisions.csv",
        "date,about,kind,value,start_on,by,why\n"
            + "2026-03-05,ada,told,borderline-under,,quist,by telephone\n"
            + "2026-02-20,cob,accepted,HAY-2,2026-02-22,quist,\n");
    report("HAY-1", "8.4", "1.0");
    report("HAY-2", "7.0", "1.0");
    report("HAY-3", "5.0", "1.0");
  }

  private void report(String lot, String wsc, String starch) {
    office.write(
        "inbox/" + lot + ".csv",
        "Lot,"
            + lot
            + "\nAnalyte,Unit,Dry matter\nDry matter,%,88.0\nWSC,%,"
            + wsc
            + "\nStarch,%,"
            + starch
            + "\n");
  }

  private static Map<String, String> row(
      List<Map<String, String>> rows, String kind, String about) {
    List<Map<String, String>> found =
        rows.stream()
            .filter(r -> kind.equals(r.get("kind")) && about.equals(r.get("about")))
            .toList();
    assertEquals(1, found.size(), kind + " " + about + " in " + rows);
    return found.get(0);
  }

  @Test
  void eachKindFallsDueOnItsDayAndSaysWhy() {
    List<Map<String, String>> rows = SmallOffice.rows(office.run(DAY), "follow-ups.csv");

    // 120 kg at 8 kg a day last 15 days; 12 days of changeover before that
    Map<String, String> own = row(rows, "stock", "HAY-1");
    assertEquals("2026-03-19", own.get("due"));
    assertEquals(
        "120 kg left for ada, enough until 2026-03-30; a changeover takes 12 days", own.get("why"));
    // 260 kg less six days of 10 kg last 20 days; a horse with bad teeth takes 21 for a changeover
    Map<String, String> delivered = row(rows, "stock", "HAY-2");
    assertEquals("2026-03-15", delivered.get("due"));
    assertEquals(
        "200 kg left for cob, enough until 2026-04-04; a changeover takes 21 days; only 20 are left"
            + " for it; 5000 kg of it are for sale",
        delivered.get("why"));
    assertEquals("2026-03-30", row(rows, "weight", "ada").get("due"));
    assertEquals("2026-03-16", row(rows, "weight", "bay").get("due"));
    assertEquals("2026-03-22", row(rows, "weight", "cob").get("due"));
    Map<String, String> bag = row(rows, "shelf-life", "BAL B1");
    assertEquals("2026-03-20", bag.get("due"));
    assertEquals("bagged on 2025-06-20, keeps 9 months; fed to bay", bag.get("why"));
    Map<String, String> open = row(rows, "retest", "HAY-1");
    assertEquals("2026-03-16", open.get("due"));
    assertTrue(String.valueOf(open.get("why")).endsWith("; fed to ada"), open.get("why"));
    Map<String, String> old = row(rows, "retest", "HAY-2");
    assertEquals("2026-04-02", old.get("due"));
    assertEquals("2026-03-19", row(rows, "recheck", "ada").get("due"));
    // 22 February, 21 days of changeover, 14 days on
    assertEquals("2026-03-29", row(rows, "recheck", "cob").get("due"));
    assertTrue(rows.stream().noneMatch(r -> "HAY-3".equals(r.get("about"))), rows.toString());
    assertTrue(rows.stream().noneMatch(r -> "BAL B2".equals(r.get("about"))), rows.toString());

    // the next morning: the same ids, other figures
    Map<String, String> next =
        row(SmallOffice.rows(office.run(DAY.plusDays(1)), "follow-ups.csv"), "stock", "HAY-2");
    assertEquals(delivered.get("id"), next.get("id"));
    assertEquals(delivered.get("due"), next.get("due"));
    assertTrue(String.valueOf(next.get("why")).startsWith("190 kg left"), next.get("why"));
  }

  @Test
  void theOfficeChangesHowLongThingsHoldAndANewDecisionEndsTheRecheckOfARemedy() {
    office.write(
        "registers/decisions.csv",
        "date,about,kind,value,start_on,by,why\n"
            + "2026-02-01,cob,accepted,HAY-2,2026-02-02,quist,\n"
            + "2026-03-15,cob,override,eats well,,quist,seen\n");
    office.write(
        "config/follow-ups.csv",
        "setting,key,value,unit,source,locator,status\n"
            + "weight-days,,400,days,assumed,ours,assumed\n"
            + "ahead-days,,1,days,assumed,ours,assumed\n");
    List<Map<String, String>> rows = SmallOffice.rows(office.run(DAY), "follow-ups.csv");

    assertEquals(
        List.of("bay"),
        rows.stream()
            .filter(r -> "weight".equals(r.get("kind")))
            .map(r -> r.get("about"))
            .toList());
    assertTrue(rows.stream().noneMatch(r -> "shelf-life".equals(r.get("kind"))), rows.toString());
    assertTrue(rows.stream().noneMatch(r -> "recheck".equals(r.get("kind"))), rows.toString());
  }
}
