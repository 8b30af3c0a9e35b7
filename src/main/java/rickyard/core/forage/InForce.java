package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

/**
 * The analysis that counts for a lot or a batch now, or why there is none.
 *
 * @param subject lot id or feed id
 * @param batch batch of a feed; empty for a lot
 * @param analysis the values; empty if none counts
 * @param from the samples that it rests on, sorted; several when tests that agree were combined
 * @param why in plain words why there is none, or how it came about
 * @param provisional whether no register knows the lot yet
 */
public record InForce(
    String subject,
    String batch,
    Optional<AccountedAnalysis> analysis,
    List<SampleKey> from,
    String why,
    boolean provisional) {

  public InForce {
    requireNonNull(subject, "subject");
    requireNonNull(batch, "batch");
    requireNonNull(analysis, "analysis");
    from = List.copyOf(from);
    requireNonNull(why, "why");
  }

  /** Whether several tests of the lot were combined into this analysis. */
  public boolean isCombined() {
    return from.size() > 1;
  }
}
