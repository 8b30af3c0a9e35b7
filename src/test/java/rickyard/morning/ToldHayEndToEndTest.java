package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The plan of a co-op's hay beside what owners are told, and what is left at a yard: a horse with
 * HYPP whose next hay is too rich, a horse that left its hay a fortnight ago, one on sweet hay.
 */
class ToldHayEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  @TempDir Path folder;

  private static String horse(String id, String conditions) {
    return id
        + ",ash,"
        + id
        + ",horse,2010-05,400,scale,2026-03-01,,,maintenance,low,,6,"
        + conditions
        + ",2,no,0,no,none,,,\n";
  }

  private static String report(String no, String lot, double wsc, double potassium) {
    return "Brook Vale Forage Laboratory\nReport no,"
        + no
        + "\nLot,"
        + lot
        + "\nAnalyte,Result,Unit,Basis\nDry matter,88.0,%,as fed\nWSC,"
        + wsc
        + ",%,dry matter\nStarch,0.6,%,dry matter\nPotassium,"
        + potassium
        + ",%,dry matter\nCrude protein,9.9,%,dry matter\n";
  }

  private MorningEnd run(int calmKg) {
    SmallOffice office = new SmallOffice(folder.resolve("office"));
    office.write(
        "registers/clients.csv",
        "client_id,name,email,phone,adviser,units\nash,Ash Yard,,,ruth,kg\n");
    office.write(
        "registers/horses.csv",
        "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
            + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
            + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to\n"
            + horse("weak", "hypp")
            + horse("moved", "")
            + horse("sweet", "insulin-dysregulation"));
    office.write(
        "registers/lots.csv",
        "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
            + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n"
            + "POOR,co-op,grass-hay,0,1,2025-07-01,5000,18,200,yes,20,,\n"
            + "RICH,co-op,grass-hay,0,1,2025-07-01,5000,18,100,yes,20,,\n"
            + "CALM,co-op,grass-hay,0,1,2025-07-01,"
            + calmKg
            + ",18,300,yes,20,,\n"
            + "SWEET,ash,grass-hay,0,1,2025-07-01,900,18,,no,20,,\n");
    office.write(
        "registers/deliveries.csv",
        "lot_id,client_id,kg,delivered_on,replaces,opens_on,opened_on,finished_on\n"
            + "POOR,ash,700,2026-01-28,,,2026-01-30,\n"
            + "RICH,ash,1000,2026-03-13,POOR,2026-03-20,,\n");
    office.write(
        "registers/rations.csv",
        "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n"
            + "weak,POOR,,7,kg,forage,3,dry,2026-02-01\n"
            + "moved,POOR,,6,kg,forage,3,dry,2025-11-01\n"
            + "moved,SWEET,,6,kg,forage,3,dry,2026-03-02\n"
            + "sweet,SWEET,,7,kg,forage,3,dry,2026-02-01\n");
    office.write("inbox/poor.csv", report("V-1", "POOR", 8.9, 0.9));
    office.write("inbox/rich.csv", report("V-2", "RICH", 9.1, 2.4));
    office.write("inbox/calm.csv", report("V-3", "CALM", 4.2, 1.6));
    office.write("inbox/sweet.csv", report("V-4", "SWEET", 13.5, 1.7));
    return office.run(DAY);
  }

  private static List<Map<String, String>> of(MorningEnd end, String file, String horse) {
    return SmallOffice.rows(end, file).stream().filter(r -> r.get("horse").equals(horse)).toList();
  }

  /**
   * 700 kg, 45 days of 7 kg since it was opened, and 31 days of 6 kg until the other horse left.
   */
  @Test
  void whatIsLeftCountsAHorseThatEatsItNoMoreWhereverItIsSaid() {
    MorningEnd end = run(5000);
    double left = 700 - 45 * 7 - 31 * 6;

    Map<String, String> hold =
        of(end, "remedies.csv", "weak").stream()
            .filter(r -> r.get("kind").equals("hold") && r.get("item").equals("POOR"))
            .findFirst()
            .orElseThrow();
    assertEquals(left / 7, Double.parseDouble(hold.get("days_of_stock")), 1e-6);
    Map<String, String> share = of(end, "share.csv", "weak").get(0);
    assertEquals("ash", share.get("from"));
    assertEquals(left / 7, Double.parseDouble(share.get("days")), 0.06);
    String stock =
        SmallOffice.rows(end, "follow-ups.csv").stream()
            .filter(r -> r.get("kind").equals("stock") && r.get("about").equals("POOR"))
            .map(r -> r.get("why"))
            .findFirst()
            .orElseThrow();
    assertTrue(stock.startsWith("199 kg left for weak, enough until 2026-04-12"), stock);
    assertTrue(stock.contains("RICH, there to take its place, is not for weak"), stock);
  }

  @Test
  void noHorseIsDealtHayOnWhichItsDietIsOver() {
    List<Map<String, String>> rows = of(run(5000), "share.csv", "weak");

    assertEquals(Set.of("POOR"), lots(rows));
    assertTrue(rows.stream().allMatch(r -> r.get("verdict").equals("clears")), rows::toString);
    assertEquals("HYPP", rows.get(0).get("group"), "it needs a cleared diet");
  }

  private static Set<String> lots(List<Map<String, String>> rows) {
    Set<String> lots = new TreeSet<>();
    rows.forEach(r -> lots.add(r.get("lot")));
    return lots;
  }

  @Test
  void whereThereIsEnoughThePlanSaysWhatTheFirstProposalSays() {
    MorningEnd end = run(5000);

    Set<String> proposed = new TreeSet<>();
    of(end, "remedies.csv", "sweet").stream()
        .filter(r -> r.get("rank").equals("1") && Double.parseDouble(r.get("now_kg")) >= 0)
        .filter(r -> Double.parseDouble(r.get("then_kg")) > 0)
        .forEach(r -> proposed.add(r.get("item") + " " + r.get("then_kg")));
    Set<String> dealt = new TreeSet<>();
    of(end, "share.csv", "sweet").forEach(r -> dealt.add(r.get("lot") + " " + r.get("kg_per_day")));
    assertEquals(proposed, dealt);
  }
}
