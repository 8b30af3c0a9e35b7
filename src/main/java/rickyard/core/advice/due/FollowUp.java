package rickyard.core.advice.due;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Comparator;
import rickyard.core.forage.QuestionId;

/**
 * Something that somebody has to come back to.
 *
 * @param due the day; it may have passed
 * @param kind what sort of thing
 * @param about lot, feed with batch, horse, or what a question is about
 * @param what to do, in words that stay the same from one morning to the next
 * @param why with the figures of this morning
 * @param id of the question, or made of kind, about and what: the same every morning
 */
public record FollowUp(
    LocalDate due, FollowUpKind kind, String about, String what, String why, String id) {

  /** By day, then in the order of kinds' codes, then by what they are about. */
  static final Comparator<FollowUp> ORDER =
      Comparator.comparing(FollowUp::due)
          .thenComparing(f -> f.kind().code())
          .thenComparing(FollowUp::about)
          .thenComparing(FollowUp::what)
          .thenComparing(FollowUp::id);

  public FollowUp {
    requireNonNull(due, "due");
    requireNonNull(kind, "kind");
    requireNonNull(about, "about");
    requireNonNull(what, "what");
    requireNonNull(why, "why");
    requireNonNull(id, "id");
  }

  /** One whose id follows from what it is. */
  static FollowUp of(LocalDate due, FollowUpKind kind, String about, String what, String why) {
    return new FollowUp(
        due, kind, about, what, why, "f-" + QuestionId.digest(kind.code(), about, what));
  }

  static FollowUp of(LocalDate asOf, OpenPoint open) {
    return new FollowUp(
        asOf, FollowUpKind.QUESTION, open.about(), open.question(), open.why(), open.id());
  }
}
