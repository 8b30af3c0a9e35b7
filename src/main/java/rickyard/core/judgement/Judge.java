package rickyard.core.judgement;

import java.util.Optional;
import java.util.OptionalDouble;
import rickyard.core.quantity.Measured;

/** Holds one number against one limit, whatever the number belongs to. */
public final class Judge {

  private Judge() {}

  /**
   * The verdict on a value.
   *
   * @param limit the limit
   * @param value on the limit's basis; empty if nothing is known, which is never zero
   * @param missing what is missing and what would settle it, in plain words; used where the
   *     evidence does not bound the value; may be empty
   * @throws rickyard.core.quantity.UnlikeQuantitiesException if unit or basis do not fit the limit
   */
  public static Verdict judge(Limit limit, Optional<Measured> value, String missing) {
    if (value.isEmpty()) {
      String what = missing.isEmpty() ? limit.words() + " is not reported" : missing;
      return new Verdict(
          limit, value, OptionalDouble.empty(), Word.CANNOT_JUDGE, what, "a report that gives it");
    }
    Measured v = limit.unit().of(value.get());
    Finding finding = DecisionRule.find(v, limit);
    return new Verdict(
        limit,
        Optional.of(v),
        finding.chanceWrong(),
        finding.word(),
        Reasons.of(limit, v, finding, missing),
        finding.word() == Word.CANNOT_JUDGE ? missing : "");
  }
}
