package rickyard.core.judgement;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.OptionalDouble;
import rickyard.core.quantity.Measured;

/**
 * One value held against one limit.
 *
 * @param limit the limit
 * @param value in the limit's unit; empty if nothing is known. A value that is open above is a
 *     lower bound from partial evidence
 * @param pOver chance of being on the wrong side of the limit, in [0, 1], from this evidence alone;
 *     at least that where the value is open above; empty where the evidence does not tell
 * @param word the zone
 * @param reason why, in plain words, with what is missing
 * @param settle what would settle it, in plain words; empty where nothing is open
 */
public record Verdict(
    Limit limit,
    Optional<Measured> value,
    OptionalDouble pOver,
    Word word,
    String reason,
    String settle) {

  public Verdict {
    requireNonNull(limit, "limit");
    requireNonNull(value, "value");
    requireNonNull(pOver, "pOver");
    requireNonNull(word, "word");
    requireNonNull(reason, "reason");
    requireNonNull(settle, "settle");
  }

  /**
   * Whether too little was measured to judge it and the limit asks for nothing then: not to be
   * shown.
   */
  public boolean isSilent() {
    return word == Word.CANNOT_JUDGE && limit.ifMissing() == IfMissing.SILENT;
  }
}
