package rickyard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.ledger.OfficeLock;
import rickyard.morning.OfficeFolders;
import rickyard.morning.OfficeSettle;
import rickyard.morning.Progress;

/** The questions of a small office, talked through. */
class SettleTalkTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  @TempDir Path office;

  @BeforeEach
  void twoQuestions() throws IOException {
    Files.createDirectories(office.resolve("inbox"));
    Files.createDirectories(office.resolve("registers"));
    Files.writeString(
        office.resolve("registers/lots.csv"),
        "lot_id,holder,material,stock_kg\nTAR-2,co-op,grass-hay,900\n");
    Files.writeString(
        office.resolve("inbox/a.csv"),
        """
        Lot,TAR-2
        Analyte,Unit,Result
        Dry matter,%,88.0
        WSC,%,8.8
        Starch,%,0.8
        Copper,mg/kg,4.S
        """);
  }

  private OfficeSettle open() {
    return OfficeSettle.open(OfficeFolders.of(office), DAY, Progress.silent());
  }

  private String talk(String typed) throws IOException {
    StringWriter shown = new StringWriter();
    new SettleTalk(open(), new BufferedReader(new StringReader(typed)), new PrintWriter(shown), DAY)
        .talk("");
    return shown.toString();
  }

  private String answers() throws IOException {
    Path file = office.resolve("registers/answers.csv");
    return Files.exists(file) ? Files.readString(file) : "";
  }

  private static int count(String text, String part) {
    return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
  }

  @Test
  void eachQuestionShowsTheCellsTheChoicesAndWhatFollows() throws IOException {
    String shown = talk("ruth\n\n\n").replaceAll("\\s+", " ");

    assertTrue(shown.contains("WSC \"8.8 %\" in a.csv, page 1, row 4, column \"Result\""), shown);
    assertTrue(shown.contains("1 as fed then TAR-2: WSC + starch 10.9 % of dry matter"), shown);
    assertTrue(shown.contains("2 dry matter then TAR-2: WSC + starch 9.6 % of dry matter"), shown);
    assertTrue(shown.contains("3 leave out then TAR-2: NSC not known"), shown);
    assertEquals("", answers());
  }

  @Test
  void aChoiceByItsNumberIsKeptAtOnceAndTheEndOfTheInputLosesNothing() throws IOException {
    talk("ruth\n1\n");

    assertEquals(1, count(answers(), ",as fed,ruth,2026-03-16,\n"), answers());
    assertFalse(open().questions().stream().anyMatch(q -> q.kind().equals("basis-not-stated")));
  }

  @Test
  void stoppingKeepsWhatWasAnswered() throws IOException {
    talk("ruth\n2\nq\n");

    assertEquals(1, count(answers(), "dry matter"), answers());
  }

  @Test
  void wordsThatSettleNothingAreRefusedAndAskedAgain() throws IOException {
    String shown = talk("ruth\nperhaps\ndry matter\nq\n");

    assertTrue(shown.contains("\"perhaps\" does not settle"), shown);
    assertEquals(1, count(answers(), "dry matter"), answers());
  }

  @Test
  void aNumberOfOnesOwnIsTakenWhereTheQuestionTakesOne() throws IOException {
    talk("ruth\n2\n4.5\n");

    assertEquals(1, count(answers(), ",4.5,ruth,"), answers());
  }

  @Test
  void aNumberThatLooksLikeAChoiceIsWrittenWithAnEqualsSign() throws IOException {
    talk("ruth\n2\n=2\n");

    assertEquals(1, count(answers(), ",2,ruth,"), answers());
  }

  @Test
  void withoutANameNothingIsAsked() throws IOException {
    talk("\n1\n");

    assertEquals("", answers());
  }

  @Test
  void anEmptyInputEndsCleanly() throws IOException {
    talk("");

    assertEquals("", answers());
  }

  @Test
  void theCommandTakesAnswersAndRefusesWhatIsNone() throws IOException {
    String id = open().questions().get(0).id();
    String here = office.toString();

    assertEquals(2, Rickyard.run(List.of("settle", here, id + "=as fed")));
    assertEquals(2, Rickyard.run(List.of("settle", here, id + "=wet", "--by", "ruth")));
    assertEquals(2, Rickyard.run(List.of("settle", here, "q-gone=as fed", "--by", "ruth")));
    assertEquals(
        2, Rickyard.run(List.of("settle", here, id + "=as fed", "q-gone=x", "--by", "ruth")));
    assertEquals("", answers());
    assertEquals(
        0,
        Rickyard.run(
            List.of(
                "settle",
                here,
                id + "=af",
                "--by",
                "ruth",
                "--on",
                "2026-03-15",
                "--note",
                "rang")));
    assertEquals(
        "question_id,answer,by,on,note\n" + id + ",as fed,ruth,2026-03-15,rang\n", answers());
    assertEquals(2, Rickyard.run(List.of("settle", here, id + "=as fed", "--by", "ruth")));
  }

  @Test
  void theListFitsEightyColumns() {
    String list = QuestionList.of(open().questions());

    list.lines().forEach(line -> assertTrue(line.length() <= 80, line));
    assertTrue(list.contains("basis-not-stated"), list);
    assertTrue(
        QuestionList.csv(open().questions())
            .startsWith("question_id,kind,file,part,about,question,choices,proposed,why\n"));
    assertTrue(QuestionList.json(open().questions()).contains("\"as fed\""));
  }

  @Test
  void anOfficeThatARunHoldsIsLeftAlone() throws IOException {
    OfficeSettle before = open();
    Files.createDirectories(office.resolve("ledger"));
    try (OfficeLock lock = OfficeLock.take(office.resolve("ledger")).orElseThrow()) {
      String id = before.questions().get(0).id();
      assertEquals(
          3, Rickyard.run(List.of("settle", office.toString(), id + "=as fed", "--by", "ruth")));
    }
    assertEquals("", answers());
  }

  @Test
  void aRegisterThatCannotBeReadIsLeftAsItIs() throws IOException {
    Path file = office.resolve("registers/answers.csv");
    Files.writeString(file, "question_id,answer,by,on\nq-1,\"open\n");

    assertEquals(2, Rickyard.run(List.of("settle", office.toString(), "--list")));
    assertEquals("question_id,answer,by,on\nq-1,\"open\n", Files.readString(file));
  }
}
