package rickyard.post;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.ledger.PostBook;

/** Which message goes when, over crashes and restarts: the design's rule of intent and mark. */
class PostRoundTest {
  private static final String A = "a".repeat(32);
  private static final String B = "b".repeat(32);

  @TempDir Path ledger;
  private final List<String> carried = new ArrayList<>();
  private Trouble trouble = Trouble.NONE;

  private enum Trouble {
    NONE,
    REFUSES,
    DOWN,
    DOUBT,
    /** The process dies before the server hears of it. */
    DIES_BEFORE,
    /** The process dies after the server took it. */
    DIES_AFTER
  }

  private static final class Death extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private final class Fake implements Carrier {
    @Override
    public void carry(Message message) throws RefusedException, InDoubtException {
      switch (trouble) {
        case REFUSES -> throw new RefusedException("550 no", false, new IllegalStateException());
        case DOWN -> throw new RefusedException("no route", true, new IllegalStateException());
        case DIES_BEFORE -> throw new Death();
        default -> carried.add(message.id());
      }
      if (trouble == Trouble.DOUBT) {
        throw new InDoubtException("no answer", new IllegalStateException());
      }
      if (trouble == Trouble.DIES_AFTER) {
        throw new Death();
      }
    }

    @Override
    public void close() {}
  }

  private static Message letter(String id) {
    return new Message(
        id,
        Message.Kind.LETTER,
        "mill",
        "letters/mill.eml",
        "mill@example.invalid",
        new Eml("x".getBytes(StandardCharsets.UTF_8)));
  }

  private static Message alert(String id) {
    return new Message(
        id,
        Message.Kind.ALERT,
        "ada",
        "alerts/ada.eml",
        "ada@example.invalid",
        new Eml("x".getBytes(StandardCharsets.UTF_8)));
  }

  private static Release release(String value) {
    return Release.of("mill", value, "Ada").orElseThrow();
  }

  private PostReport round(List<Release> releases, Message... messages) {
    return new PostRound(new PostBook(ledger), releases, () -> new Fake(), "2026-03-16", () -> {})
        .send(List.of(messages));
  }

  private static PostReport.Outcome outcome(PostReport report) {
    return report.lines().get(0).outcome();
  }

  @Test
  void anAlertGoesOnceAndWithoutARelease() {
    assertEquals(PostReport.Outcome.SENT, outcome(round(List.of(), alert(A))));
    assertEquals(PostReport.Outcome.SENT_BEFORE, outcome(round(List.of(), alert(A))));

    assertEquals(List.of(A), carried);
  }

  @Test
  void aLetterGoesOnlyWhenExactlyItsContentWasReleased() {
    assertEquals(PostReport.Outcome.NOT_RELEASED, outcome(round(List.of(), letter(A))));
    PostReport changed = round(List.of(release(A)), letter(B));
    assertEquals(PostReport.Outcome.CHANGED, outcome(changed));
    assertTrue(
        changed
            .words()
            .contains(
                "         letters/mill.eml: changed since it was released; its new row is in"
                    + " letters.csv"));
    assertEquals(List.of(), carried);

    assertEquals(PostReport.Outcome.SENT, outcome(round(List.of(release(A)), letter(A))));
    assertEquals(List.of(A), carried);
  }

  @Test
  void whatWasReleasedIsWrittenDownWithWhoDidIt() {
    round(List.of(release(A)), letter(A));

    PostBook.Entry entry = new PostBook(ledger).entries().get(0);
    assertEquals(PostBook.State.SENT, entry.state());
    assertEquals(
        new PostBook.Attempt(A, "letter", "mill", "letters/mill.eml", "2026-03-16", "Ada"),
        entry.attempt());
  }

  @Test
  void aDeathBeforeOrAfterTheServerTookItLeavesItInDoubtAndItIsNeverSentAgainByItself() {
    for (Trouble death : List.of(Trouble.DIES_BEFORE, Trouble.DIES_AFTER)) {
      String id = death == Trouble.DIES_BEFORE ? A : B;
      trouble = death;
      assertThrows(Death.class, () -> round(List.of(), alert(id)));
      trouble = Trouble.NONE;

      PostReport next = round(List.of(), alert(id));

      assertEquals(PostReport.Outcome.IN_DOUBT, outcome(next));
      assertTrue(next.words().stream().anyMatch(w -> w.contains("may have been sent")), "listed");
    }
    assertEquals(List.of(B), carried);
  }

  @Test
  void whatIsInDoubtGoesOnceMoreForEachRowThatSaysAgain() {
    trouble = Trouble.DOUBT;
    PostReport first = round(List.of(release(A)), letter(A));
    assertTrue(first.isTroubled());
    assertEquals(1, first.doubts().size());

    List<Release> again = List.of(release(A), release(A + " again"));
    assertEquals(PostReport.Outcome.IN_DOUBT, outcome(round(again, letter(A))));
    assertEquals(List.of(A, A), carried);
    // The same row does not do it a second time.
    trouble = Trouble.NONE;
    PostReport still = round(again, letter(A));
    assertEquals(PostReport.Outcome.IN_DOUBT, outcome(still));
    assertFalse(still.isTroubled(), "nothing new went wrong");
    assertEquals(List.of(A, A), carried);

    List<Release> third = List.of(release(A), release(A + " again"), release(A + " again"));
    PostReport done = round(third, letter(A));
    assertEquals(PostReport.Outcome.SENT, outcome(done));
    assertEquals(List.of(), done.doubts());
    assertEquals(PostReport.Outcome.SENT_BEFORE, outcome(round(third, letter(A))));
    assertEquals(List.of(A, A, A), carried);
  }

  @Test
  void whatIsInDoubtAndArrivedCountsAsSent() {
    trouble = Trouble.DOUBT;
    round(List.of(release(A)), letter(A));
    trouble = Trouble.NONE;

    PostReport report = round(List.of(release(A), release(A + " arrived")), letter(A));

    assertEquals(PostReport.Outcome.SENT_BEFORE, outcome(report));
    assertEquals(List.of(), report.doubts());
    assertEquals(List.of(A), carried);
  }

  @Test
  void aRefusalIsNoDoubtAndIsTriedAgainNextTime() {
    trouble = Trouble.REFUSES;
    PostReport report = round(List.of(), alert(A));
    assertEquals(PostReport.Outcome.REFUSED, outcome(report));
    assertTrue(report.isTroubled());
    assertEquals(List.of(), report.doubts());
    trouble = Trouble.NONE;

    assertEquals(PostReport.Outcome.SENT, outcome(round(List.of(), alert(A))));
  }

  @Test
  void afterAServerThatCannotBeReachedTheRestWaitsUntouched() {
    trouble = Trouble.DOWN;
    PostReport report = round(List.of(release(B)), alert(A), letter(B));

    assertEquals(
        List.of(PostReport.Outcome.SERVER_DOWN, PostReport.Outcome.SERVER_DOWN),
        report.lines().stream().map(PostReport.Line::outcome).toList());
    assertEquals(List.of(), new PostBook(ledger).entries());
    assertTrue(report.words().contains("         the server: no route"));
  }

  @Test
  void withoutAnAddressNothingIsTriedAndTheRemedyIsNamed() {
    Message nobody =
        new Message(A, Message.Kind.ALERT, "ada", "alerts/ada.eml", "", new Eml(new byte[0]));

    PostReport report = round(List.of(), nobody);

    assertEquals(PostReport.Outcome.NO_ADDRESS, outcome(report));
    assertTrue(
        report
            .words()
            .contains(
                "         alerts/ada.eml: no address that can be used; give adviser.ada in"
                    + " config/mail.properties"));
    assertEquals(List.of(), new PostBook(ledger).entries());
  }

  @Test
  void anEntryThatWasDamagedStillKeepsItsMessageFromGoing() throws Exception {
    trouble = Trouble.DOUBT;
    round(List.of(), alert(A));
    trouble = Trouble.NONE;
    Files.writeString(ledger.resolve("post").resolve(A + ".intent"), "{");

    PostReport report = round(List.of(), alert(A));

    assertEquals(PostReport.Outcome.IN_DOUBT, outcome(report));
    assertEquals("unreadable", report.doubts().get(0).kind());
  }

  @Test
  void alertsGoBeforeLetters() {
    round(List.of(release(A)), letter(A), alert(B));

    assertEquals(List.of(B, A), carried);
  }

  @Test
  void aReleaseNamesAContentOrIsNone() {
    assertEquals(Optional.empty(), Release.of("mill", "yes", "Ada"));
    assertEquals(Optional.empty(), Release.of("mill", A + " maybe", "Ada"));
    assertEquals(Optional.empty(), Release.of("mill", A.substring(1), "Ada"));
    assertEquals(Release.Word.AGAIN, release(" " + A.toUpperCase(Locale.ROOT) + "  Again ").word());
  }
}
