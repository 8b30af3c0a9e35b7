package rickyard.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import rickyard.report.view.CoOpView;
import rickyard.report.view.MorningView;
import rickyard.report.view.RetestRow;
import rickyard.report.view.ShareRow;
import rickyard.report.view.ShortageRow;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class OutputsTest {
  /** Word for word as the contract of the outputs has them. */
  private static final Map<String, String> HEADERS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(
                  "outcomes.csv",
                  "file,part,sha256,bytes,kind,outcome,reason_code,reason,lab,report_no,revision,"
                      + "samples,layout,layout_note"),
              Map.entry(
                  "analyses.csv",
                  "file,part,page,row,column,lot,lab,report_no,revision,report_status,sampled_on,"
                      + "analyte,raw,raw_unit,raw_basis,basis,unit,value,low,high,u,origin,method,"
                      + "state,batch"),
              Map.entry(
                  "verdicts.csv",
                  "lot,group,limit_id,quantity,limit,unit,value,low,high,u,p_over,verdict,reason,"
                      + "risk,severity"),
              Map.entry(
                  "lots.csv",
                  "lot,holder,material,cutting,stock_kg,nsc_wsc,nsc_esc,starch,suits,not_for,"
                      + "undecided,reason"),
              Map.entry(
                  "horses.csv",
                  "horse,client,groups,priority,reason,verdict_before,verdict_after,dm_kg,"
                      + "dm_pct_bw,nsc_wsc_pct_dm,u,p_over,remedy,limit_id"),
              Map.entry(
                  "diets.csv",
                  "horse,when,nutrient,unit,supply,low,high,requirement,pct_of_requirement,"
                      + "max_tolerable,status,origin"),
              Map.entry(
                  "remedies.csv",
                  "horse,rank,kind,item,role,now_kg,then_kg,then_lb,units_per_month,cost_per_day,"
                      + "nsc_wsc_after,verdict_after,why,u_after,p_over_after,limit_id,"
                      + "batch,days_of_stock,enough"),
              Map.entry("changeover.csv", "horse,rank,day,item,kg,lb"),
              Map.entry("trips.csv", "horse,day,phase,item,kg,lb"),
              Map.entry(
                  "questions.csv",
                  "question_id,kind,file,part,about,question,choices,proposed,why"),
              Map.entry("follow-ups.csv", "due,kind,about,what,why,id"),
              Map.entry(
                  "share.csv",
                  "horse,lot,kg_per_day,days,kg,verdict,why,client,group,from,fed_now,"
                      + "lot_verdict"),
              Map.entry(
                  "shortage.csv",
                  "group,horses,needed_kg,found_kg,short_kg,why,short_t,runs_out_on,"
                      + "horizon_days"),
              Map.entry(
                  "retests.csv",
                  "lot,holder,due,what,why,stock_kg,lab,sampled_on,undecided,rank,groups,chance,"
                      + "frees_kg,expected_kg,cost"),
              Map.entry("recalls.csv", "lot,client,horse,delivered_on,told_on,what,fell_on"),
              Map.entry("season.csv", "by,of,quantity,unit,lots,mean,sd,lowest,highest"),
              Map.entry(
                  "season-clears.csv", "by,of,group,lots,clears,not_for,undecided,clears_pct"),
              Map.entry(
                  "over-time.csv",
                  "kind,about,other,quantity,unit,n,from,to,change,u,slope,slope_u,slope_per,t,"
                      + "df,chance,finding,words")));

  private static final Set<String> ALL = Set.of(Outputs.DATA, Outputs.PAGE);

  @Test
  void everyTableHasItsHeaderWordForWordEvenWithoutRows() throws Exception {
    SortedMap<String, byte[]> files = Outputs.of(SampleView.empty(), ALL);
    for (Map.Entry<String, String> expected : HEADERS.entrySet()) {
      assertEquals(expected.getValue() + "\n", text(files, expected.getKey()));
    }
    assertEquals(
        HEADERS.size() + 2, files.size(), "the tables, summary.json and summary.html, no more");
    String filled = text(Outputs.of(SampleView.of(12, 8), ALL), "remedies.csv");
    assertEquals(HEADERS.get("remedies.csv"), filled.lines().findFirst().orElseThrow());
  }

  @Test
  void familiesNotAskedForAreNotWritten() {
    assertEquals(
        Set.of("summary.html"), Outputs.of(SampleView.empty(), Set.of("page", "remote")).keySet());
    assertFalse(Outputs.of(SampleView.empty(), Set.of("data")).containsKey("summary.html"));
    assertTrue(Outputs.of(SampleView.empty(), Set.of("sheets")).isEmpty());
  }

  @Test
  void sameViewSameBytesWhateverTheLocaleAndZone() {
    MorningView view = SampleView.of(24, 12);
    SortedMap<String, byte[]> first = Outputs.of(view, ALL);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String tag : List.of("tr-TR", "ar-EG", "de-CH", "th-TH-u-nu-thai", "fa-IR")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        SortedMap<String, byte[]> again = Outputs.of(SampleView.of(24, 12), ALL);
        assertEquals(first.keySet(), again.keySet());
        first.forEach((file, bytes) -> assertArrayEquals(bytes, again.get(file), tag + " " + file));
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void verdictsAndLimitsKeepTheNumbersOfTheView() throws Exception {
    MorningView view = SampleView.of(12, 8);
    List<CSVRecord> rows = records(Outputs.of(view, ALL), "verdicts.csv");
    var expected = view.lots().stream().flatMap(l -> l.verdicts().stream()).toList();
    assertEquals(expected.size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      Double value = expected.get(i).value();
      assertEquals(value == null, rows.get(i).get("value").isEmpty());
      // six decimals are kept, so half of the last one may be lost
      if (value != null) {
        assertEquals(value, Double.parseDouble(rows.get(i).get("value")), 0.5e-6);
      }
      assertEquals(expected.get(i).limit(), Double.parseDouble(rows.get(i).get("limit")), 0.5e-6);
    }
  }

  @Test
  void remediesGiveKilogramsAndPoundsOfEveryItemOfARank() throws Exception {
    List<CSVRecord> rows = records(Outputs.of(SampleView.of(1, 3), ALL), "remedies.csv");
    assertEquals(9, rows.size(), "a hold without items, a swap and a blend of four items");
    assertEquals("", rows.get(0).get("item"));
    CSVRecord upper =
        rows.stream().filter(r -> r.get("item").equals("L1")).findFirst().orElseThrow();
    assertEquals("8.75", upper.get("then_kg"));
    // 1 lb = 0.45359237 kg: 8.75 / 0.45359237 = 19.2904479…
    assertEquals("19.290448", upper.get("then_lb"));
    assertEquals("7.4", upper.get("nsc_wsc_after"));
    assertEquals("clears", upper.get("verdict_after"));
    assertEquals("laminitis-nsc-diet", upper.get("limit_id"));
  }

  @Test
  void aHorseThatNeedsTheVetFirstShowsNoAmountsAnywhere() throws Exception {
    MorningView view = SampleView.of(12, 3);
    assertTrue(view.horses().stream().anyMatch(h -> h.vetFirst() && !h.changeovers().isEmpty()));
    SortedMap<String, byte[]> files = Outputs.of(view, ALL);
    for (CSVRecord row : records(files, "remedies.csv")) {
      if (row.get("horse").equals("H12")) {
        assertEquals("", row.get("then_kg") + row.get("now_kg") + row.get("then_lb"));
        assertEquals(Cautions.VET_FIRST, row.get("why"));
      }
    }
    assertTrue(
        records(files, "changeover.csv").stream().noneMatch(r -> r.get("horse").equals("H12")));
    for (CSVRecord row : records(files, "horses.csv")) {
      if (row.get("horse").equals("H12")) {
        assertEquals("", row.get("dm_kg"));
        assertFalse(row.get("dm_pct_bw").isEmpty());
      }
    }
    assertTrue(
        records(files, "diets.csv").stream()
            .noneMatch(r -> r.get("horse").equals("H12") && r.get("unit").equals("kg")));
    String horse = PageText.section(text(files, "summary.html"), "Ember (H12)");
    assertTrue(horse.contains("Vet first"), horse);
    assertFalse(horse.matches("(?s).*\\d ?(kg|lb)\\b.*"), horse);
    JsonNode details = json(files).get("horse_details");
    for (JsonNode node : details) {
      if (node.get("horse").asString().equals("H12")) {
        assertEquals(0, node.get("proposals").get(0).get("items").size());
        assertTrue(node.get("body_weight_kg").isNull());
        assertTrue(node.get("after").get("dm_kg").isNull());
        assertTrue(node.get("after").get("as_fed_kg").isNull());
        assertTrue(node.get("after").get("portions").get(0).get("kg").isNull());
        assertTrue(node.get("after").get("portions").get(0).get("dm_kg").isNull());
      }
    }
  }

  @Test
  void jsonHoldsTheSameRowsAsTheTables() throws Exception {
    SortedMap<String, byte[]> files = Outputs.of(SampleView.of(12, 8), ALL);
    JsonNode root = json(files);
    for (String file : HEADERS.keySet()) {
      JsonNode rows = root.get(file.replace(".csv", "").replace('-', '_'));
      List<CSVRecord> records = records(files, file);
      assertEquals(records.size(), rows.size(), file);
      for (int i = 0; i < records.size(); i++) {
        for (Map.Entry<String, String> cell : records.get(i).toMap().entrySet()) {
          JsonNode node = rows.get(i).get(cell.getKey());
          String shown =
              node.isNull()
                  ? ""
                  : node.isNumber() ? node.decimalValue().toPlainString() : node.asString();
          assertEquals(cell.getValue(), shown, file + " " + cell.getKey());
        }
      }
    }
    assertFalse(text(files, "summary.json").matches("(?s).*: -?[0-9.]+[eE].*"));
  }

  @Test
  void whatACoOpSharesIsWritten() throws Exception {
    CoOpView coOp =
        new CoOpView(
            List.of(
                new ShareRow(
                    "H1",
                    "L1",
                    8.75,
                    30.0,
                    262.5,
                    "clears",
                    "Lowest first.",
                    "C1",
                    "ID",
                    "",
                    List.of("L1", "L2"),
                    "clears")),
            List.of(
                new ShortageRow(
                    "laminitis",
                    List.of("H2", "H3"),
                    500,
                    120.5,
                    "Too few lots.",
                    "2026-03-20",
                    30)),
            List.of(new RetestRow(1, "L3", List.of("ID"), 0.25, 400, 100.0, "One of four.")),
            List.of("Something was not weighed."));
    SortedMap<String, byte[]> files = Outputs.of(SampleView.empty(), coOp, ALL);
    assertEquals(
        "H1,L1,8.75,30,262.5,clears,Lowest first.,C1,ID,,L1;L2,clears", line(files, "share.csv"));
    assertEquals(
        "laminitis,H2;H3,500,120.5,379.5,Too few lots.,0.3795,2026-03-20,30",
        line(files, "shortage.csv"));
    assertTrue(line(files, "retests.csv").endsWith(",,1,ID,0.25,400,100,unknown"));
    String page = text(files, "summary.html");
    assertTrue(page.contains("0.38") && page.contains("Something was not weighed."), page);
  }

  @Test
  void retestsAreTheFollowUpsThatAreTests() throws Exception {
    SortedMap<String, byte[]> files = Outputs.of(SampleView.of(2, 5), ALL);
    assertEquals(1, records(files, "retests.csv").size());
    assertEquals("L4", records(files, "retests.csv").get(0).get("lot"));
  }

  private static String line(SortedMap<String, byte[]> files, String file) {
    return text(files, file).lines().skip(1).findFirst().orElseThrow();
  }

  private static String text(SortedMap<String, byte[]> files, String file) {
    return new String(requireNonNull(files.get(file), file), UTF_8);
  }

  private static JsonNode json(SortedMap<String, byte[]> files) {
    return JsonMapper.shared().readTree(text(files, "summary.json"));
  }

  private static List<CSVRecord> records(SortedMap<String, byte[]> files, String file)
      throws Exception {
    String[] header = requireNonNull(HEADERS.get(file)).split(",", -1);
    try (var parser =
        CSVFormat.RFC4180
            .builder()
            .setHeader(Arrays.copyOf(header, header.length))
            .setSkipHeaderRecord(true)
            .get()
            .parse(new java.io.StringReader(text(files, file)))) {
      return parser.getRecords();
    }
  }
}
