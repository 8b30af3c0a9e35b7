package rickyard.core.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PriorityRuleTest {

  private static LimitLine line(String severity, String verdict, @Nullable Double chance) {
    return line("nsc_wsc", severity, verdict, chance);
  }

  private static LimitLine line(
      String quantity, String severity, String verdict, @Nullable Double chance) {
    return new LimitLine(
        "limit-1", "ID", "diet", quantity, 10, "% DM", 12.0, 11.9, 12.1, 1.0, chance, verdict,
        severity, "why");
  }

  private static DietSummary diet(double potassium, LimitLine line) {
    DietLine k =
        new DietLine("K", "g", potassium, potassium, potassium, 25.0, null, "meets", "reported");
    return new DietSummary(
        10,
        8.8,
        1.8,
        12.0,
        1.0,
        null,
        900.0,
        List.of(),
        List.of(k),
        List.of(line),
        line,
        List.of());
  }

  private static PriorityRule.Facts facts(
      LimitLine line, boolean fedSoon, @Nullable String told, boolean changed) {
    return new PriorityRule.Facts(
        diet(100, line("nsc_wsc", "change", "clears", 0.0)),
        diet(100, line),
        diet(100, line),
        List.of(),
        fedSoon,
        told,
        false,
        changed,
        false,
        false,
        List.of());
  }

  private static Priority of(PriorityRule.Facts facts) {
    return PriorityRule.rule(facts).priority();
  }

  @Test
  void aStopLimitMoreLikelyPassedThanNotCallsNowWhenItIsFedSoon() {
    assertEquals(Priority.CALL_NOW, of(facts(line("stop", "exceeds", 0.5), true, null, true)));
    assertEquals(Priority.CALL_TODAY, of(facts(line("stop", "exceeds", 0.99), false, null, true)));
  }

  @Test
  void aChangeLimitCallsTodayAndNeverNow() {
    assertEquals(Priority.CALL_TODAY, of(facts(line("change", "exceeds", 0.99), true, null, true)));
  }

  @Test
  void lessThanEvenChanceIsANoteNotACall() {
    assertEquals(
        Priority.NOTE, of(facts(line("stop", "borderline-under", 0.49), true, null, false)));
  }

  @Test
  void whatWasToldAndIsUnchangedStands() {
    assertEquals(Priority.STANDING, of(facts(line("stop", "exceeds", 0.9), true, "exceeds", true)));
    assertEquals(Priority.CALL_NOW, of(facts(line("stop", "exceeds", 0.9), true, "clears", true)));
  }

  @Test
  void anAskedLimitThatCannotBeJudgedForWhatIsFedCallsToday() {
    assertEquals(
        Priority.CALL_TODAY, of(facts(line("stop", "cannot-judge", null), true, null, false)));
    assertEquals(Priority.ASK, of(facts(line("stop", "cannot-judge", null), false, null, false)));
  }

  @Test
  void aStopLimitMoreLikelyPassedByALowerEndCallsNow() {
    assertEquals(
        Priority.CALL_NOW, of(facts(line("stop", "cannot-judge", 0.66), true, null, false)));
  }

  @Test
  void anOpenQuestionKeepsNobodyFromCallingAboutWhatIsFed() {
    LimitLine open = line("stop", "cannot-judge", null);
    assertEquals(Priority.CALL_TODAY, of(asked(open, true)));
    assertEquals(Priority.ASK, of(asked(open, false)));
  }

  private static PriorityRule.Facts asked(LimitLine line, boolean fedSoon) {
    DietSummary diet = diet(100, line);
    return new PriorityRule.Facts(
        diet, diet, diet, List.of(), fedSoon, null, false, false, true, true, List.of());
  }

  @Test
  void potassiumCallsOnlyWhenItRisesWithANewForage() {
    LimitLine k = line("k", "change", "exceeds", 1.0);
    PriorityRule.Facts same =
        new PriorityRule.Facts(
            diet(100, k),
            diet(100, k),
            diet(100, k),
            List.of(),
            true,
            null,
            false,
            true,
            false,
            false,
            List.of());
    PriorityRule.Facts risen =
        new PriorityRule.Facts(
            diet(100, k),
            diet(100, k),
            diet(120, k),
            List.of(),
            true,
            null,
            false,
            true,
            false,
            false,
            List.of());
    PriorityRule.Facts sameHay =
        new PriorityRule.Facts(
            diet(100, k),
            diet(100, k),
            diet(120, k),
            List.of(),
            true,
            null,
            false,
            false,
            false,
            false,
            List.of());

    assertEquals(Priority.CALL_TODAY, of(risen));
    assertEquals(Priority.NOTE, of(same));
    assertEquals(Priority.NONE, of(sameHay));
  }

  @Test
  void aClearedDietThatChangedIsANote() {
    assertEquals(Priority.NOTE, of(facts(line("stop", "clears", 0.01), true, null, true)));
    assertEquals(Priority.NONE, of(facts(line("stop", "clears", 0.01), true, null, false)));
  }

  @Test
  void aProblemWithTheRegistersAsksAndSaysWhich() {
    PriorityRule.Ruling ruling =
        PriorityRule.rule(
            new PriorityRule.Facts(
                null,
                null,
                null,
                List.of(),
                true,
                null,
                false,
                false,
                false,
                false,
                List.of("row 3")));

    assertEquals(Priority.ASK, ruling.priority());
    assertEquals("cannot be judged: row 3", ruling.reason());
  }
}
