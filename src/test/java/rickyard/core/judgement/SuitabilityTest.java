package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which groups a lot suits, and which of several limits it is placed worst against. */
class SuitabilityTest {

  private static Verdict verdict(String group, Severity severity, Word word) {
    return verdict(group, severity, IfMissing.ASK, word);
  }

  private static Verdict verdict(String group, Severity severity, IfMissing missing, Word word) {
    String id = group + "-" + severity.code();
    return Limits.verdict(Limits.named(id, group, LimitSubject.LOT, severity, missing), word);
  }

  @Test
  void onlyStopAndChangeDecideWhomALotSuits() {
    Suitability found =
        Suitability.of(
            List.of(
                verdict("ID", Severity.CHANGE, Word.CLEARS),
                verdict("ID", Severity.WATCH, Word.EXCEEDS),
                verdict("ID", Severity.INFO, Word.EXCEEDS),
                verdict("pregnant", Severity.WATCH, Word.EXCEEDS)));

    assertEquals(new Suitability(set("ID"), set(), set()), found);
  }

  @Test
  void whatIsSeldomTestedHoldsNoLotBack() {
    Verdict silent = verdict("ID", Severity.STOP, IfMissing.SILENT, Word.CANNOT_JUDGE);
    Verdict asked = verdict("ID", Severity.STOP, IfMissing.ASK, Word.CANNOT_JUDGE);
    Verdict clears = verdict("ID", Severity.CHANGE, Word.CLEARS);

    assertEquals(new Suitability(set("ID"), set(), set()), Suitability.of(List.of(silent, clears)));
    assertEquals(new Suitability(set(), set(), set("ID")), Suitability.of(List.of(asked, clears)));
  }

  @Test
  void aLimitOfAllHorsesCountsInEveryGroupAndIsNone() {
    Suitability found =
        Suitability.of(
            List.of(
                verdict(Limit.ALL, Severity.STOP, Word.EXCEEDS),
                verdict("ID", Severity.CHANGE, Word.CLEARS),
                verdict("PSSM", Severity.CHANGE, Word.BORDERLINE_UNDER)));

    assertEquals(new Suitability(set(), set("ID", "PSSM"), set()), found);
  }

  @Test
  void ofTwoThatStandAlikeTheOneWithTheFirstIdIsTheWorst() {
    Verdict a = verdict("ID", Severity.STOP, Word.EXCEEDS);
    Verdict b = verdict("PSSM", Severity.STOP, Word.EXCEEDS);
    Verdict milder = verdict("EMS", Severity.CHANGE, Word.EXCEEDS);

    assertEquals(Optional.of(a), WorstVerdict.find(List.of(milder, b, a)));
    assertEquals(Optional.of(a), WorstVerdict.find(List.of(a, b, milder)));
  }

  @Test
  void aVerdictThatIsNotShownIsNotTheWorst() {
    Verdict silent = verdict("ID", Severity.STOP, IfMissing.SILENT, Word.CANNOT_JUDGE);
    Verdict clears = verdict("ID", Severity.CHANGE, Word.CLEARS);

    assertEquals(Optional.of(clears), WorstVerdict.find(List.of(silent, clears)));
    assertEquals(Optional.empty(), WorstVerdict.find(List.of(silent)));
  }

  private static SortedSet<String> set(String... names) {
    return new TreeSet<>(Set.of(names));
  }
}
