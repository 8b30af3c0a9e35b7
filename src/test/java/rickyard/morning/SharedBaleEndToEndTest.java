package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A yard with a bale that several horses eat of, through whole mornings: register, diets, page,
 * horses.csv and calls. Rich hay is G-1 (14 % WSC + starch), poor hay G-2 (6 %).
 */
class SharedBaleEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final String HORSES =
      "horse_id,client_id,name,type,birth_month,body_weight_kg,weight_by,weighed_on,"
          + "target_weight_kg,mature_weight_kg,status,level,month,body_condition,conditions,"
          + "meals_per_day,vet_plan,grazing_hours_per_day,muzzle,extras,herd,trip_from,trip_to\n";
  private static final String RATIONS =
      "horse_id,item,batch,amount,unit,fed,meals,prepared,since\n";

  @TempDir Path folder;
  private SmallOffice office;

  @BeforeEach
  void furnish() {
    office = new SmallOffice(folder);
    office.lots(List.of("G-1", "G-2"));
    office.write(
        "registers/clients.csv",
        "client_id,name,email,phone,adviser,units\nhill,Hill Yard,,,,kg\ndale,Dale Yard,,,,kg\n");
    office.write("inbox/g1.csv", report("V-1", "G-1", 13));
    office.write("inbox/g2.csv", report("V-2", "G-2", 5));
  }

  private static String report(String number, String lot, double wsc) {
    return "Brook Vale Forage Laboratory\nReport no,"
        + number
        + "\nMethod,wet chemistry\nLot,"
        + lot
        + "\nAnalyte,Result,Unit,Basis\nDry matter,90.0,%,as fed\nWSC,"
        + wsc
        + ",%,dry matter\nStarch,1.0,%,dry matter\nCrude protein,9.9,%,dry matter\n";
  }

  private static String horse(String id, String client, String conditions, String herd) {
    return id
        + ","
        + client
        + ","
        + id.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
        + id.substring(1)
        + ",pony,2012-05,300,scale,2026-03-01,,,maintenance,average,,5,"
        + conditions
        + ",2,no,0,no,none,"
        + herd
        + ",,\n";
  }

  private void horses(String... rows) {
    office.write("registers/horses.csv", HORSES + String.join("", rows));
  }

  private void rations(String... rows) {
    office.write("registers/rations.csv", RATIONS + String.join("", rows));
  }

  private static String kg(String horse, String lot, String prepared) {
    return horse + "," + lot + ",,6,kg,forage,3," + prepared + ",2026-02-01\n";
  }

  private static String adLib(String horse, String lot) {
    return horse + "," + lot + ",,,ad-lib,forage,,dry,2026-02-01\n";
  }

  private static Map<String, String> row(MorningEnd end, String horse) {
    return SmallOffice.rows(end, "horses.csv").stream()
        .filter(r -> horse.equals(r.get("horse")))
        .findFirst()
        .orElseThrow();
  }

  private static JsonNode details(MorningEnd end, String horse) {
    JsonNode all = new JsonMapper().readTree(SmallOffice.text(end, "summary.json"));
    for (JsonNode node : all.get("horse_details")) {
      if (node.get("horse").asString().equals(horse)) {
        return node;
      }
    }
    throw new AssertionError("no horse " + horse);
  }

  private static List<String> notes(MorningEnd end, String horse, String code) {
    List<String> words = new ArrayList<>();
    for (JsonNode note : details(end, horse).get("after").get("notes")) {
      if (note.get("code").asString().equals(code)) {
        words.add(note.get("words").asString());
      }
    }
    return words;
  }

  private static String text(Map<String, String> row, String column) {
    return row.getOrDefault(column, "");
  }

  @Test
  void theBaleIsJudgedForTheMostSensitiveOfTheHerd() {
    horses(
        horse("moss", "hill", "", "top"),
        horse("fern", "hill", "laminitis-past", "top"),
        horse("solo", "hill", "", ""),
        horse("far", "dale", "", "top"));
    rations(
        adLib("moss", "G-1"), kg("fern", "G-2", "dry"), adLib("solo", "G-1"), adLib("far", "G-1"));

    MorningEnd end = office.run(DAY);

    for (String id : List.of("moss", "fern")) {
      Map<String, String> row = row(end, id);
      assertEquals("exceeds", row.get("verdict_after"), id);
      assertEquals("laminitis-nsc-lot", row.get("limit_id"), id);
      assertEquals("call-now", row.get("priority"), id);
      assertTrue(text(row, "reason").contains("shared bale G-1, for Fern: "), row::toString);
      assertEquals("none", row.get("remedy"), id);
    }
    assertEquals("no-limit", row(end, "solo").get("verdict_after"));
    assertEquals("no-limit", row(end, "far").get("verdict_after"), "another yard's herd");
    assertEquals(
        List.of(
            "the herd top shares G-1; it is judged for its most sensitive: Fern (laminitis); a"
                + " ration of its own holds only for a horse that is fed apart"),
        notes(end, "moss", "shared-bale-for"));
    assertTrue(
        details(end, "moss")
            .get("say")
            .asString()
            .contains("Its shared bale holds 14.0 % of starch and sugar"),
        () -> details(end, "moss").get("say").asString());
    Map<String, String> remedy =
        SmallOffice.rows(end, "remedies.csv").stream()
            .filter(r -> "moss".equals(r.get("horse")))
            .findFirst()
            .orElseThrow();
    assertEquals(
        "G-1 is shared by Fern, Moss and does not clear for all of them: feed Fern apart from it,"
            + " or put out a bale that clears for the whole herd: G-2.",
        remedy.get("why"));
    assertEquals("", text(remedy, "then_kg"));
    assertTrue(SmallOffice.rows(end, "changeover.csv").isEmpty());
    assertTrue(SmallOffice.text(end, "summary.html").contains("shared bale G-1, for Fern"));
  }

  @Test
  void aBaleThatClearsForAllOfThemClearsForEach() {
    horses(horse("moss", "hill", "", "top"), horse("fern", "hill", "laminitis-past", "top"));
    rations(adLib("moss", "G-2"), adLib("fern", "G-2"));

    MorningEnd end = office.run(DAY);

    assertEquals("clears", row(end, "moss").get("verdict_after"));
    assertEquals("clears", row(end, "fern").get("verdict_after"));
    assertEquals("", row(end, "moss").get("remedy"));
  }

  @Test
  void aBaleThatNobodyAnalysedIsNotClearedForTheHerd() {
    office.lots(List.of("G-1", "G-2", "G-3"));
    horses(horse("moss", "hill", "", "top"), horse("fern", "hill", "laminitis-past", "top"));
    rations(adLib("moss", "G-3"), kg("fern", "G-2", "dry"));

    MorningEnd end = office.run(DAY);

    assertEquals("cannot-judge", row(end, "moss").get("verdict_after"));
    assertEquals("cannot-judge", row(end, "fern").get("verdict_after"));
  }

  @Test
  void whereNoRationSaysWhichIsSharedEveryForageOfTheHerdIs() {
    horses(horse("moss", "hill", "", "top"), horse("fern", "hill", "laminitis-past", "top"));
    rations(kg("moss", "G-1", "dry"), kg("fern", "G-2", "dry"));

    assertEquals("exceeds", row(office.run(DAY), "fern").get("verdict_after"));
  }

  @Test
  void soakingIsRecordedAndNeverClears() {
    horses(horse("fern", "hill", "laminitis-past", ""));
    rations(kg("fern", "G-1", "soaked"));

    MorningEnd end = office.run(DAY);

    assertEquals("exceeds", row(end, "fern").get("verdict_after"));
    assertEquals("14", row(end, "fern").get("nsc_wsc_pct_dm"));
    assertEquals(1, notes(end, "fern", "soaked").size());
    JsonNode portion = details(end, "fern").get("after").get("portions").get(0);
    assertEquals("soaked", portion.get("prepared").asString());
    assertTrue(SmallOffice.text(end, "summary.html").contains("G-1, soaked"));
  }

  private static List<String> changes(MorningEnd end, String horse) {
    List<String> words = new ArrayList<>();
    details(end, horse).get("changes").forEach(n -> words.add(n.asString()));
    return words;
  }

  @Test
  void eachMorningSaysWhatChangedInADietAndWhy() {
    horses(horse("fern", "hill", "laminitis-past", ""));
    rations(kg("fern", "G-2", "dry"));
    MorningEnd first = office.run(DAY);
    assertTrue(changes(first, "fern").get(0).startsWith("no earlier morning on record"));
    assertTrue(text(row(first, "fern"), "reason").contains("; why: no earlier morning on record"));

    assertEquals(List.of(), changes(office.run(DAY.plusDays(1)), "fern"));

    office.write(
        "inbox/g2b.csv",
        report("V-2", "G-2", 13).replace("Method,", "Revision,2\nStatus,amended\nMethod,"));
    MorningEnd amended = office.run(DAY.plusDays(2));
    assertEquals(
        List.of(
            "WSC + starch of G-2 was 6.0 % of dry matter and is 14.0 % of dry matter: an amended or"
                + " newer report is in force and turns its verdict",
            "verdict: clears before, exceeds now"),
        changes(amended, "fern"));

    rations(kg("fern", "G-2", "dry"), "fern,G-1,,7.5,kg,forage,3,dry," + DAY.plusDays(3) + "\n");
    MorningEnd other = office.run(DAY.plusDays(3));
    assertEquals(
        "the ration changed (ration since 2026-03-19): G-1 is new in it, G-2 no longer",
        changes(other, "fern").get(0));

    rations("fern,G-1,,6,kg,forage,3,dry," + DAY.plusDays(3) + "\n");
    horses(horse("fern", "hill", "insulin-dysregulation", "").replace(",300,", ",320,"));
    List<String> less = changes(office.run(DAY.plusDays(4)), "fern");
    assertEquals(
        "the ration changed (ration since 2026-03-19): G-1 20 % less", less.get(0), less::toString);
    assertTrue(less.get(1).startsWith("what it needs changed: its weight"), less::toString);
    assertTrue(less.contains("groups whose limits did not hold for it before: ID"), less::toString);
    assertTrue(
        less.contains("groups whose limits no longer hold for it: laminitis"), less::toString);
  }

  @Test
  void acuteLaminitisWithoutAVetPlanGetsNoKilogramsInAnyOutput() {
    horses(horse("fern", "hill", "laminitis-acute", ""));
    rations(kg("fern", "G-1", "dry"));

    MorningEnd end = office.run(DAY);

    JsonNode fern = details(end, "fern");
    assertTrue(fern.get("vet_first").asBoolean());
    assertTrue(fern.get("after").get("portions").get(0).get("kg").isNull());
    assertTrue(fern.get("after").get("dm_kg").isNull());
    assertFalse(fern.toString().matches(".*[0-9] ?(kg|lb)\\b.*"), fern::toString);
    assertEquals("", text(row(end, "fern"), "dm_kg"));
    assertTrue(SmallOffice.rows(end, "changeover.csv").isEmpty());
    for (Map<String, String> remedy : SmallOffice.rows(end, "remedies.csv")) {
      assertEquals("", text(remedy, "now_kg") + text(remedy, "then_kg") + text(remedy, "then_lb"));
    }
    assertTrue(
        SmallOffice.rows(end, "diets.csv").stream().noneMatch(r -> "kg".equals(r.get("unit"))));
  }
}
