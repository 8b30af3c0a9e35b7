package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * One figure that a person corrected, with what was read.
 *
 * @param key the sample
 * @param subject lot or feed
 * @param read the reading as it was read
 * @param decision row of decisions.csv that corrects it
 */
public record Corrected(SampleKey key, String subject, Reading read, Decision decision) {
  public Corrected {
    requireNonNull(key, "key");
    requireNonNull(subject, "subject");
    requireNonNull(read, "read");
    requireNonNull(decision, "decision");
  }
}
