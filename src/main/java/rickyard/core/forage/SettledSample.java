package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * One sample after settling.
 *
 * @param key which sample
 * @param sample with answers applied to its readings
 * @param standing where it stands
 * @param reasonCode stable code: in-force, combined, newer-revision, withdrawn, preliminary,
 *     same-content, tests-disagree, open-doubt, lot-near, lot-missing, lot-unknown …
 * @param reason in plain words
 * @param subject lot id or feed id; empty while it belongs to nothing
 * @param batch batch of a feed; empty for a lot
 */
public record SettledSample(
    SampleKey key,
    Sample sample,
    Standing standing,
    String reasonCode,
    String reason,
    String subject,
    String batch) {
  public SettledSample {
    requireNonNull(key, "key");
    requireNonNull(sample, "sample");
    requireNonNull(standing, "standing");
    requireNonNull(reasonCode, "reasonCode");
    requireNonNull(reason, "reason");
    requireNonNull(subject, "subject");
    requireNonNull(batch, "batch");
  }
}
