package rickyard.core.nutrition;

import java.util.List;
import rickyard.core.quantity.Evidence;

/** Whether a figure of a diet rests on reports, on assumptions, or on both. */
public enum Origin {
  REPORTED("reported"),
  PART_ASSUMED("part-assumed"),
  ASSUMED("assumed");

  private final String code;

  Origin(String code) {
    this.code = code;
  }

  /** The word of the column {@code origin} of diets.csv. */
  public String code() {
    return code;
  }

  /** Of a figure that rests on both: assumed and reported together are part-assumed. */
  public Origin and(Origin other) {
    return this == other ? this : PART_ASSUMED;
  }

  /** What a number rests on, through all formulas down to its cells and table rows. */
  public static Origin of(Evidence evidence) {
    if (evidence instanceof Evidence.Assumed) {
      return ASSUMED;
    }
    if (evidence instanceof Evidence.Derived derived) {
      List<Evidence.Term> inputs = derived.inputs();
      return inputs.stream()
          .map(term -> of(term.value().evidence()))
          .reduce(Origin::and)
          .orElse(REPORTED);
    }
    return REPORTED;
  }
}
