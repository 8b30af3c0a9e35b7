package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The words that the tables are written in and the outputs are read by; they are a contract. */
class CodesTest {

  @Test
  void limitsAreWrittenInTheWordsOfTheTable() {
    assertEquals(List.of("max", "min"), Arrays.stream(Bound.values()).map(Bound::code).toList());
    assertEquals(
        List.of("ask", "silent"), Arrays.stream(IfMissing.values()).map(IfMissing::code).toList());
    assertEquals(
        List.of("lot", "diet", "bucket-meal"),
        Arrays.stream(LimitSubject.values()).map(LimitSubject::code).toList());
  }

  @Test
  void onlyTwoWordsLetALotBeFed() {
    assertEquals(
        List.of(Word.NO_LIMIT, Word.CLEARS),
        Arrays.stream(Word.values()).filter(Word::isCleared).toList());
  }

  @Test
  void severitiesGoFromTheGravestDown() {
    assertEquals(
        List.of("stop", "change", "watch", "info"),
        Arrays.stream(Severity.values()).map(Severity::code).toList());
  }
}
