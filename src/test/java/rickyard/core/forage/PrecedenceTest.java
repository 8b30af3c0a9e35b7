package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rickyard.core.forage.ReportStatus.AMENDED;
import static rickyard.core.forage.ReportStatus.FINAL;
import static rickyard.core.forage.ReportStatus.PRELIMINARY;
import static rickyard.core.forage.ReportStatus.WITHDRAWN;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which of two reports is the newer: by what they say, and by nothing where that contradicts. */
class PrecedenceTest {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 5);

  private static Report report(String number, String replaces) {
    return report(number, replaces, FINAL, 0, Optional.empty());
  }

  private static Report report(ReportStatus status, int revision) {
    return report("R-1", "", status, revision, Optional.empty());
  }

  private static Report issued(ReportStatus status, int revision, int day) {
    return report("R-1", "", status, revision, Optional.of(DAY.plusDays(day)));
  }

  private static Report report(
      String number, String replaces, ReportStatus status, int revision, Optional<LocalDate> on) {
    return Reports.replacing(
            "d", number, revision, replaces, status, on, Reports.sugars("N2", 8, 1))
        .report();
  }

  private static void assertNewer(Report a, Report b) {
    Precedence precedence = new Precedence(List.of(a, b));
    assertTrue(precedence.isNewer(a, b), "forth");
    assertFalse(precedence.isNewer(b, a), "back");
  }

  private static void assertUndecided(Report a, Report b) {
    Precedence precedence = new Precedence(List.of(a, b));
    assertFalse(precedence.isNewer(a, b), "forth");
    assertFalse(precedence.isNewer(b, a), "back");
  }

  private static void assertReplaces(boolean expected, Report a, Report b, Report... others) {
    List<Report> series = new java.util.ArrayList<>(List.of(a, b));
    series.addAll(List.of(others));
    assertEquals(expected, new Precedence(series).replaces(a, b));
  }

  @Test
  void theHigherRevisionIsNewer() {
    assertNewer(report(FINAL, 1), report(FINAL, 0));
    assertNewer(report(FINAL, 3), report(AMENDED, 2));
  }

  @Test
  void ofOneRevisionTheLaterStatusIsNewer() {
    assertNewer(report(FINAL, 0), report(PRELIMINARY, 0));
    assertNewer(report(AMENDED, 0), report(FINAL, 0));
    assertNewer(report(AMENDED, 1), report(FINAL, 1));
    assertNewer(report(WITHDRAWN, 2), report(AMENDED, 2));
    assertUndecided(report(FINAL, 1), report(FINAL, 1));
  }

  @Test
  void whereNothingElseTellsTheLaterIssueIsNewer() {
    assertNewer(issued(FINAL, 0, 1), issued(FINAL, 0, 0));
    assertUndecided(issued(FINAL, 0, 1), issued(FINAL, 0, 1));
    assertUndecided(issued(FINAL, 0, 1), report(FINAL, 0));
  }

  @Test
  void aHigherRevisionOfTheSameDayIsNewerAndOfAnEarlierDayContradictsItself() {
    assertNewer(issued(FINAL, 1, 0), issued(FINAL, 0, 0));
    assertNewer(issued(FINAL, 1, 4), issued(FINAL, 0, 0));
    assertUndecided(issued(FINAL, 1, 0), issued(FINAL, 0, 4));
  }

  @Test
  void anAmendmentWithoutANumberIsNotOrderedAgainstNumberedRevisions() {
    assertUndecided(report(AMENDED, 0), report(FINAL, 1));
    assertUndecided(report(AMENDED, 0), report(AMENDED, 2));
    assertNewer(issued(AMENDED, 0, 3), issued(FINAL, 1, 0));
    assertNewer(issued(FINAL, 1, 3), issued(AMENDED, 0, 0));
  }

  @Test
  void aWithdrawalWithoutANumberTakesWhatWasIssuedBefore() {
    assertNewer(report(WITHDRAWN, 0), report(FINAL, 3));
    assertNewer(report(WITHDRAWN, 0), report(AMENDED, 0));
    assertNewer(issued(WITHDRAWN, 0, 2), issued(AMENDED, 3, 0));
    assertUndecided(report(WITHDRAWN, 0), report(WITHDRAWN, 0));
  }

  @Test
  void aReportIssuedAfterAWithdrawalWithoutANumberIsNewer() {
    assertNewer(issued(FINAL, 0, 2), issued(WITHDRAWN, 0, 0));
    assertNewer(issued(AMENDED, 3, 2), issued(WITHDRAWN, 0, 0));
  }

  @Test
  void aNumberedWithdrawalIsARevisionAmongOthers() {
    assertNewer(report(FINAL, 3), report(WITHDRAWN, 2));
    assertNewer(report(WITHDRAWN, 2), report(FINAL, 1));
    assertUndecided(issued(FINAL, 3, 0), issued(WITHDRAWN, 2, 5));
  }

  @Test
  void aReportReplacesTheOneThatItNames() {
    assertReplaces(true, report("R-2", "R-1"), report("R-1", ""));
    assertReplaces(false, report("R-2", "R-1"), report("R-3", ""));
    assertReplaces(false, report("R-2", ""), report("R-1", ""));
    assertReplaces(false, report("R-2", ""), report("", ""));
  }

  @Test
  void aReportReplacesWhatTheOneItNamesHadReplaced() {
    Report middle = report("R-2", "R-1");

    assertReplaces(true, report("R-3", "R-2"), report("R-1", ""), middle);
    assertReplaces(false, report("R-3", "R-2"), report("R-1", ""), report("R-7", "R-1"));
    assertReplaces(true, report("R-3", "R-2"), report("R-1", ""), report("R-2", ""), middle);
  }

  @Test
  void whatNamesItselfReplacesNothing() {
    assertReplaces(false, report("R-1", "R-1"), report("R-1", ""));
    assertReplaces(false, report("R-1", "R-0"), report("R-1", ""), report("R-0", "R-1"));
  }

  @Test
  void namesThatGoRoundInACircleEnd() {
    assertReplaces(
        false, report("R-5", "R-1"), report("R-9", ""), report("R-1", "R-2"), report("R-2", "R-1"));
  }

  @Test
  void twoThatNameOneAnotherContradictThemselves() {
    assertUndecided(report("R-1", "R-2"), report("R-2", "R-1"));
  }

  @Test
  void aNamedReportIsOlderWhateverItsRevision() {
    assertNewer(
        report("R-2", "R-1", FINAL, 0, Optional.of(DAY)),
        report("R-1", "", AMENDED, 4, Optional.of(DAY.plusDays(9))));
  }

  @ParameterizedTest
  @CsvSource({"' r-1 ',R-1", "R  1,R 1", "'R\t1',R 1", "R-1,R-1", "'',''"})
  void aNumberIsTheSameWithOtherCaseAndSpaces(String printed, String number) {
    assertEquals(number, Precedence.number(printed));
  }
}
