package rickyard.registers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.core.forage.Answer;
import rickyard.tables.UnusableTablesException;

class AnswerSheetTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 16);

  @TempDir Path folder;

  private static String with(String before, Answer... answers) {
    byte[] bytes = AnswerSheet.of(before.getBytes(StandardCharsets.UTF_8)).with(List.of(answers));
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static Answer answer(String id, String said) {
    return new Answer(id, said, "ruth", DAY, "");
  }

  @Test
  void aSheetThatIsNotThereStartsWithItsHeader() {
    AnswerSheet sheet = AnswerSheet.read(folder.resolve("answers.csv"));

    assertEquals(
        "question_id,answer,by,on,note\nq-1,as fed,ruth,2026-03-16,\n",
        new String(sheet.with(List.of(answer("q-1", "as fed"))), StandardCharsets.UTF_8));
  }

  @Test
  void whatWasThereStaysByteForByte() {
    String before =
        "\uFEFFby;Shelf;question_id;on;answer\r\n"
            + "tarn; \"a;b\" ;q-0;2026-01-02;\"yes\"\r\n"
            + "\r\n"
            + "tarn;9;q-9;2026-01-02;no";

    assertEquals(
        before + "\r\nruth;;q-1;2026-03-16;\"x;y\"\r\n", with(before, answer("q-1", "x;y")));
  }

  @Test
  void aBlankRowOfTheQuestionIsFilledInAndItsOtherCellsAreKept() {
    String before =
        "question_id,answer,by,on,note,shelf\nq-1,,,,ask Tom,7\nq-2,no,tarn,2026-01-01,,\n";

    assertEquals(
        "question_id,answer,by,on,note,shelf\nq-1,as fed,ruth,2026-03-16,ask Tom,7\n"
            + "q-2,no,tarn,2026-01-01,,\n",
        with(before, answer("q-1", "as fed")));
  }

  @Test
  void aFormulaIsWrittenHarmlessAndReadBackAsItWas() {
    String after = with("question_id,answer,by,on\n", answer("q-1", "=1+1"));

    assertEquals("question_id,answer,by,on\nq-1,'=1+1,ruth,2026-03-16\n", after);
    assertEquals(after, with(after, answer("q-1", "=1+1")));
  }

  @Test
  void quotesAndLineBreaksOfOtherRowsDoNotMoveAnything() {
    String before =
        "question_id,answer,by,on,note\nq-0,no,tarn,2026-01-01,\"two\nlines, \"\"x\"\"\"\n";

    assertEquals(
        before + "q-1,\"say \"\"hay\"\"\",ruth,2026-03-16,\n",
        with(before, answer("q-1", "say \"hay\"")));
  }

  @Test
  void anUnreadableRegisterIsRefusedAndNamed() {
    UnusableTablesException broken =
        assertThrows(
            UnusableTablesException.class, () -> with("question_id,answer,by,on\nq-1,\"open"));
    assertTrue(broken.getMessage().startsWith("answers.csv, row 2"), broken.getMessage());

    UnusableTablesException other =
        assertThrows(UnusableTablesException.class, () -> with("horse,feed\na,b\n"));
    assertTrue(other.getMessage().contains("question_id"), other.getMessage());
  }

  @Test
  void aRegisterThatCannotBeDecodedIsRefused() throws Exception {
    Path file = folder.resolve("answers.csv");
    Files.write(file, new byte[] {'q', (byte) 0xff, (byte) 0xfe});

    assertThrows(UnusableTablesException.class, () -> AnswerSheet.read(file));
  }
}
