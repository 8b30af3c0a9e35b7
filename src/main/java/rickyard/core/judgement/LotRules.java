package rickyard.core.judgement;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * What a lot is judged by.
 *
 * @param limits any limits; those of other subjects are passed over
 * @param settings the office's settings
 */
public record LotRules(List<Limit> limits, JudgementSettings settings) {
  public LotRules {
    limits = List.copyOf(limits);
    requireNonNull(settings, "settings");
  }
}
