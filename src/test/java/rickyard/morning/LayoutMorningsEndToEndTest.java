package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.ledger.TestIndex;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Layouts over whole mornings of an office: shown, remembered, asked, answered. */
class LayoutMorningsEndToEndTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);
  private static final String REPORT =
      """
      Brook Vale Forage Laboratory
      Report no,%s,Lot,%s
      Analyte,Result,Unit,Basis
      Dry matter,88.0,%%,as fed
      WSC,7.0,%%,dry matter
      Starch,0.6,%%,dry matter
      Crude protein,9.9,%%,dry matter
      """;
  private static final String OPEN =
      """
      Brook Vale Forage Laboratory
      Report no,%s,Lot,%s
      Analyte,Result,Unit
      Dry matter,88.0,%%
      WSC,%s,%%
      Starch,0.6,%%
      """;

  @TempDir Path office;

  @BeforeEach
  void anOfficeWithThreeLots() {
    write("registers/clients.csv", "client_id,name,email,phone,adviser,units\n");
    new SmallOffice(office).lots(List.of("A-1", "A-2", "A-3"));
  }

  private void write(String file, String text) {
    new SmallOffice(office).write(file, text);
  }

  private MorningEnd run(LocalDate day) {
    return SmallOffice.run(office, day);
  }

  private void report(String number, String lot) {
    write("inbox/" + number + ".csv", REPORT.formatted(number, lot));
  }

  private void openReport(String number, String lot, String wsc) {
    write("inbox/" + number + ".csv", OPEN.formatted(number, lot, wsc));
  }

  private static Map<String, String> outcome(MorningEnd end, String number) {
    return SmallOffice.rows(end, "outcomes.csv").stream()
        .filter(r -> (number + ".csv").equals(r.get("file")))
        .findFirst()
        .orElseThrow();
  }

  private static String note(MorningEnd end, String number) {
    return String.valueOf(outcome(end, number).get("layout_note"));
  }

  private static Optional<Map<String, String>> question(MorningEnd end, String kind) {
    return SmallOffice.rows(end, "questions.csv").stream()
        .filter(r -> kind.equals(r.get("kind")))
        .findFirst();
  }

  private static String page(MorningEnd end) {
    return SmallOffice.text(end, "summary.html");
  }

  private void delete(String folder) {
    if (folder.startsWith("ledger")) {
      TestIndex.lose(office.resolve("ledger"));
    }
    if (!Files.exists(office.resolve(folder))) {
      return;
    }
    try (Stream<Path> files = Files.walk(office.resolve(folder))) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aNewLayoutIsNotedAndKnownFromTheNextMorningOn() {
    report("r1", "A-1");
    MorningEnd first = run(DAY);
    report("r2", "A-2");
    MorningEnd second = run(DAY.plusDays(1));

    assertEquals("new", note(first, "r1"));
    assertEquals("known", note(second, "r2"));
    assertEquals(outcome(first, "r1").get("layout"), outcome(second, "r2").get("layout"));
    assertFalse(page(first).contains("Layout L-"));
    assertFalse(page(second).contains("Layout L-"));
    assertEquals(List.of(), SmallOffice.rows(second, "questions.csv"));
  }

  @Test
  void aChangedUnitIsAskedAlsoWhenTheDatabaseWasLostMeanwhile() {
    report("r1", "A-1");
    run(DAY);
    delete("ledger/db");
    write("inbox/r2.csv", REPORT.formatted("r2", "A-2").replace("WSC,7.0,%", "WSC,70.0,g/kg"));

    MorningEnd second = run(DAY.plusDays(1));

    assertEquals("changed; unit of WSC is g/kg, was %", note(second, "r2"));
    assertEquals("question", outcome(second, "r2").get("outcome"));
    Map<String, String> question = question(second, "layout-changed").orElseThrow();
    assertEquals("r2.csv", question.get("file"));
    assertEquals("as read|leave out", question.get("choices"));
    assertTrue(page(second).contains("unit of WSC is g/kg, was %"));

    write(
        "registers/answers.csv",
        "question_id,answer,by,on,note\n"
            + question.get("question_id")
            + ",as read,ruth,2026-03-17,\n");
    MorningEnd third = run(DAY.plusDays(2));
    write("inbox/r3.csv", REPORT.formatted("r3", "A-3").replace("WSC,7.0,%", "WSC,68.0,g/kg"));
    MorningEnd fourth = run(DAY.plusDays(3));

    assertEquals(Optional.empty(), question(third, "layout-changed"));
    assertEquals("known", note(fourth, "r3"));
    assertEquals(Optional.empty(), question(fourth, "layout-changed"));
  }

  @Test
  void aJournalWrittenBeforeLayoutsWereRememberedIsReadAndAsksNothing() throws IOException {
    report("r1", "A-1");
    run(DAY);
    Path journal = office.resolve("ledger/journal/1.json");
    JsonMapper json = JsonMapper.builder().build();
    ObjectNode entry = (ObjectNode) json.readTree(Files.readString(journal));
    ObjectNode state = (ObjectNode) json.readTree(entry.get("state").asString());
    JsonNode layouts = state.remove("layouts");
    entry.put("state", json.writeValueAsString(state));
    Files.writeString(journal, json.writeValueAsString(entry));
    write("inbox/r2.csv", REPORT.formatted("r2", "A-2").replace("WSC,7.0,%", "WSC,70.0,g/kg"));

    MorningEnd second = run(DAY.plusDays(1));

    assertTrue(layouts.toString().contains("brook vale forage laboratory"), layouts::toString);
    assertEquals("new", note(second, "r2"));
    assertEquals(Optional.empty(), question(second, "layout-changed"));
  }

  @Test
  void anAnswerForTheLayoutIsUsedForTheNextReportAndListedWhereItIsUsed() {
    openReport("r1", "A-1", "7.0");
    MorningEnd first = run(DAY);
    String id =
        String.valueOf(question(first, "basis-not-stated").orElseThrow().get("question_id"));
    write(
        "registers/answers.csv",
        "question_id,answer,by,on,note,scope\n" + id + ",dry matter,ruth,2026-03-16,,layout\n");
    openReport("r2", "A-2", "8.1");

    MorningEnd second = run(DAY.plusDays(1));

    assertEquals(List.of(), SmallOffice.rows(second, "questions.csv"));
    assertTrue(note(second, "r2").startsWith("new; answer \"dry matter\" of ruth, 2026-03-16 ("));
    assertTrue(page(second).contains("used for report"), () -> note(second, "r2"));
    Map<String, String> wsc =
        SmallOffice.rows(second, "analyses.csv").stream()
            .filter(r -> "r2.csv".equals(r.get("file")) && "WSC".equals(r.get("analyte")))
            .findFirst()
            .orElseThrow();
    assertEquals("answered", wsc.get("origin"));
    assertEquals("dm", wsc.get("basis"));
    List<String> trace =
        OfficeTrace.of(
            SmallOffice.folders(office),
            DAY.plusDays(1),
            "A-2",
            Optional.of("WSC"),
            Progress.silent());
    assertTrue(
        trace.stream()
            .anyMatch(l -> l.contains("answered by ruth") && l.contains("for layout brook vale")),
        trace::toString);
    assertTrue(trace.stream().anyMatch(l -> l.startsWith("layout of r2.csv: ")), trace::toString);
  }

  @Test
  void twoReportsOfOneMorningAreTheSameInEitherOrder() {
    report("a", "A-1");
    write("inbox/b.csv", REPORT.formatted("b", "A-2").replace("WSC,7.0,%", "WSC,70.0,g/kg"));
    MorningEnd one = run(DAY);
    List<String> notes = List.of(note(one, "a"), note(one, "b"));
    delete("ledger");
    delete("inbox");
    report("z", "A-1");
    write("inbox/b.csv", REPORT.formatted("b", "A-2").replace("WSC,7.0,%", "WSC,70.0,g/kg"));

    MorningEnd two = run(DAY);

    assertEquals(List.of("new", "new"), notes);
    assertEquals(List.of("new", "new"), List.of(note(two, "z"), note(two, "b")));
    assertEquals(List.of(), SmallOffice.rows(two, "questions.csv"));
  }
}
