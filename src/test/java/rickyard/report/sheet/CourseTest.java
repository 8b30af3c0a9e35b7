package rickyard.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.LimitLine;
import rickyard.core.advice.Priority;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;

class CourseTest {
  private static final LimitLine CLEARS = line("clears", "change", 0.01);
  private static final LimitLine EXCEEDS = line("exceeds", "change", 0.99);
  private static final LimitLine OPEN = line("cannot-judge", "stop", null);

  @Test
  void whatClearsIsKept() {
    assertEquals(Course.KEEP, course(Priority.NOTE, false, diet(CLEARS)));
    assertEquals(Course.KEEP, course(Priority.NONE, false, diet()));
  }

  @Test
  void acuteLaminitisWithoutAPlanComesBeforeEverything() {
    assertEquals(Course.VET_FIRST, course(Priority.NONE, true, diet(CLEARS)));
    assertEquals(Course.VET_FIRST, course(Priority.CALL_NOW, true, diet(EXCEEDS), swap(true)));
  }

  @Test
  void whatCannotBeJudgedGetsNoAmountsEvenWithAProposalThatIsEnough() {
    assertEquals(Course.MISSING, course(Priority.ASK, false, null));
    assertEquals(Course.MISSING, course(Priority.CALL_TODAY, false, diet(OPEN), swap(true)));
    assertEquals(Course.MISSING, course(Priority.NONE, false, diet(CLEARS, OPEN)));
  }

  @Test
  void whatIsOverOneLimitIsNotExcusedByAnotherThatIsOpen() {
    assertEquals(
        Course.CHANGE, course(Priority.CALL_TODAY, false, diet(EXCEEDS, OPEN), swap(true)));
    assertEquals(Course.NOT_CLEARED, course(Priority.CALL_TODAY, false, diet(EXCEEDS, OPEN)));
  }

  @Test
  void aProposalThatIsNotEnoughChangesNothing() {
    assertEquals(Course.NOT_CLEARED, course(Priority.CALL_NOW, false, diet(EXCEEDS), swap(false)));
  }

  @Test
  void aCallIsNeverAnsweredWithGoOn() {
    assertEquals(Course.NOT_CLEARED, course(Priority.CALL_NOW, false, diet(CLEARS)));
    assertEquals(Course.CHANGE, course(Priority.CALL_NOW, false, diet(CLEARS), swap(true)));
  }

  @Test
  void justUnderTheLimitIsNotCleared() {
    LimitLine under = line("borderline-under", "stop", 0.2);
    assertEquals(Course.BORDERLINE, course(Priority.NOTE, false, diet(CLEARS, under)));
  }

  @Test
  void aLimitToLookAtDecidesNothing() {
    LimitLine iron = line("exceeds", "info", 0.99);
    assertEquals(Course.KEEP, course(Priority.NONE, false, diet(CLEARS, iron)));
  }

  private static Course course(
      Priority priority,
      boolean vetFirst,
      @org.jspecify.annotations.Nullable DietSummary after,
      Proposal... proposals) {
    return Course.of(
        new HorseAdvice(
            "h",
            "c",
            List.of(),
            priority,
            "why",
            "",
            null,
            after,
            List.of(),
            List.of(),
            List.of(proposals),
            List.of(),
            vetFirst,
            true,
            List.of(),
            null));
  }

  private static Proposal swap(boolean enough) {
    ProposalItem item = new ProposalItem("L", "", "L", "grass-hay", 0, 5, null, null, null);
    return new Proposal(1, "swap", enough, "why", List.of(item), diet(CLEARS));
  }

  private static DietSummary diet(LimitLine... lines) {
    return new DietSummary(
        5,
        4,
        1.8,
        null,
        null,
        null,
        null,
        List.of(),
        List.of(),
        List.of(lines),
        lines.length == 0 ? null : lines[0],
        List.of());
  }

  private static LimitLine line(
      String verdict, String severity, @org.jspecify.annotations.Nullable Double over) {
    return new LimitLine(
        "id-" + verdict,
        "ID",
        "diet",
        "nsc_wsc",
        10,
        "% DM",
        9.0,
        8.0,
        10.0,
        1.0,
        over,
        verdict,
        severity,
        "reason");
  }
}
