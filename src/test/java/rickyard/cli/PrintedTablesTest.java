package rickyard.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.BuiltJar;
import rickyard.report.about.AboutCard;
import rickyard.report.csv.CsvOut;
import rickyard.report.csv.Table;
import rickyard.report.view.LotRow;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What commands print: 80 columns for eyes, CSV and JSON for programs, all of one content. */
class PrintedTablesTest {
  private static final Path SKELETON = Path.of("src", "test", "resources", "skeleton-office");

  @TempDir Path folder;

  private record Printed(int status, String text) {}

  private Path office() {
    Path office = folder.resolve("office");
    if (!Files.exists(office)) {
      try {
        BuiltJar.copy(SKELETON, office);
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }
    return office;
  }

  private Printed run(String command, String... more) {
    List<String> args = new ArrayList<>(List.of(command, office().toString()));
    args.addAll(List.of(more));
    return run(args);
  }

  private static Printed run(List<String> args) {
    PrintStream before = System.out;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    System.setOut(new PrintStream(out, true, UTF_8));
    try {
      return new Printed(Rickyard.run(args), out.toString(UTF_8));
    } finally {
      System.setOut(before);
    }
  }

  /** What a table and its lines have to hold to, whatever they are of. */
  private static List<CSVRecord> assertOneContent(Table table, List<String> lines)
      throws IOException {
    for (String line : lines) {
      assertTrue(line.length() <= 80, line);
    }
    List<CSVRecord> csv = csv(Shape.csv(table));
    JsonNode json = JsonMapper.shared().readTree(Shape.json(Shape.rows(table)));
    assertEquals(table.rows().size(), csv.size());
    assertEquals(csv.size(), json.size());
    for (int i = 0; i < csv.size(); i++) {
      assertEquals(csv.get(i).toMap().size(), json.get(i).size());
      for (String column : table.columns()) {
        JsonNode value = json.get(i).get(column);
        String text = value.isNull() ? "" : value.asString();
        assertEquals(CsvOut.unguarded(csv.get(i).get(column)), text, column);
      }
    }
    return csv;
  }

  private static List<CSVRecord> csv(String text) throws IOException {
    try (var parser =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(text))) {
      return parser.getRecords();
    }
  }

  private static LotRow lot(String id, List<String> suits, List<String> notFor) {
    return new LotRow(
        id,
        "co-op",
        "grass-hay-of-a-long-kind",
        "1",
        null,
        9.25,
        null,
        0.8,
        suits,
        notFor,
        List.of("HYPP"),
        "a reason ".repeat(12),
        List.of(),
        List.of(LotRow.PROVISIONAL),
        "",
        "");
  }

  @Test
  void lotsFitTheScreenAndSayHowTheyStandForAGroup() throws IOException {
    List<LotRow> lots =
        List.of(
            lot("L-1", List.of("ID", "PSSM", "laminitis", "pregnant-late"), List.of()),
            lot("=a-lot-with-a-very-long-key", List.of(), List.of("ID")),
            lot("L-3", List.of(), List.of()));

    assertOneContent(LotList.table(lots, Optional.empty()), LotList.of(lots, Optional.empty()));
    List<String> lines = LotList.of(lots, Optional.of("ID"));
    List<CSVRecord> csv = assertOneContent(LotList.table(lots, Optional.of("ID")), lines);
    assertEquals(
        List.of("clears", "exceeds", "no limit"), csv.stream().map(r -> r.get("stands")).toList());
    assertTrue(lines.get(1).endsWith("clears (provisional)"), lines.get(1));
    assertTrue(String.join(" ", LotList.of(lots, Optional.empty())).contains("pregnant-late"));
  }

  @Test
  void aTraceKeepsItsDepth() throws IOException {
    List<String> trace =
        List.of("NSC = 9, derived", "  WSC = 8, printed " + "in a place ".repeat(9), "limit x");

    List<CSVRecord> csv = assertOneContent(TraceList.table("=L-1", trace), TraceList.of(trace));
    assertEquals(List.of("0", "1", "0"), csv.stream().map(r -> r.get("depth")).toList());
  }

  @Test
  void aCardAndAListOfCardsFitTheScreen() throws IOException {
    AboutCard card =
        new AboutCard(
            "horse",
            "merlin",
            "Merlin " + "of the long name ".repeat(6),
            "tollow",
            "+44 555",
            "clears",
            "id-nsc-diet",
            8.2,
            1.6,
            0.13,
            "",
            null,
            List.of(
                new AboutCard.Line("a label that is long", "words ".repeat(40)),
                new AboutCard.Line("hay", "x".repeat(200))));
    AboutCard other = AboutCard.listed("client", "c".repeat(90), "Dell End", "dell", "\u001b[31m");

    List<String> lines = AboutList.of(List.of(card));
    assertOneContent(AboutList.table(List.of(card)), lines);
    assertTrue(lines.get(0).startsWith("horse Merlin"), lines.get(0));
    List<String> several = AboutList.of(List.of(card, other));
    assertOneContent(AboutList.table(List.of(card, other)), several);
    assertEquals(3, several.size());
    assertTrue(several.get(0).contains("2"), several.get(0));
    assertTrue(String.join("", several).indexOf('\u001b') < 0);
  }

  @Test
  void checkPrintsEveryProblemInThreeShapes() throws IOException {
    Path horses = office().resolve("registers").resolve("horses.csv");
    String text = Files.readString(horses, UTF_8);
    Files.writeString(horses, text.replaceFirst(",horse,", ",unicorn,"), UTF_8);

    Printed lines = run("check", "--as-of", "2026-03-16");
    assertEquals(2, lines.status());
    lines.text().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    assertTrue(lines.text().contains("unicorn"), lines.text());
    JsonNode json =
        JsonMapper.shared().readTree(run("check", "--as-of", "2026-03-16", "--json").text());
    CSVRecord row = csv(run("check", "--as-of", "2026-03-16", "--csv").text()).get(0);
    assertEquals("error", row.get("kind"));
    assertEquals("horses.csv", row.get("file"));
    assertEquals("3", row.get("row"));
    assertEquals("unicorn", row.get("found"));
    assertEquals("unicorn", json.get(0).get("found").asString());
  }

  @Test
  void csvAndJsonTogetherAreWrongUsage() {
    for (String command : List.of("sort", "check")) {
      assertEquals(2, run(command, "--csv", "--json").status(), command);
    }
    assertEquals(2, run("about", "SK-1", "--csv", "--json").status());
  }

  @Test
  void theCompletionKnowsEveryCommand() {
    String script = run(List.of("completion")).text();

    for (String command :
        List.of("morning", "about", "settle", "sort", "check", "worker", "completion")) {
      assertTrue(script.contains(command), command);
    }
    assertTrue(script.startsWith("#!/usr/bin/env bash"), script.substring(0, 40));
    assertTrue(script.contains("--as-of"));
  }
}
