package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * A lot or batch whose value was replaced or taken away: what rested on the old value must be
 * looked at again.
 *
 * @param subject lot id or feed id
 * @param batch batch of a feed; empty for a lot
 * @param replaced the sample that counted before
 * @param by the document that took its place or withdrew it
 * @param why newer-revision, withdrawn or tests-disagree
 * @param decisionRows rows of decisions.csv about this lot that are older than the morning on which
 *     {@code by} was read, sorted
 */
public record Reopened(
    String subject,
    String batch,
    SampleKey replaced,
    String by,
    String why,
    List<Integer> decisionRows) {

  public Reopened {
    requireNonNull(subject, "subject");
    requireNonNull(batch, "batch");
    requireNonNull(replaced, "replaced");
    requireNonNull(by, "by");
    requireNonNull(why, "why");
    decisionRows = List.copyOf(decisionRows);
  }
}
