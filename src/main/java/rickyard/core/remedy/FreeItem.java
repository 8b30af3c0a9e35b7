package rickyard.core.remedy;

import java.util.OptionalInt;

/**
 * An item whose amount the search may choose.
 *
 * @param leastDmKg least dry matter per day, kg
 * @param mostDmKg most dry matter per day, kg; infinite where nothing bounds it
 */
record FreeItem(
    Candidate item, boolean fedAsForage, OptionalInt meals, double leastDmKg, double mostDmKg) {
  FreeItem {
    if (!(leastDmKg >= 0) || Double.isNaN(mostDmKg)) {
      throw new IllegalArgumentException(
          "bounds of " + item.id() + ": " + leastDmKg + " to " + mostDmKg);
    }
  }

  FreeItem between(double least, double most) {
    return new FreeItem(item, fedAsForage, meals, least, most);
  }

  Serving at(double dmKg) {
    return new Serving(item, Math.max(0, dmKg) / item.dryMatterFraction(), fedAsForage, meals);
  }

  /** Whether a serving is the same item, fed the same way. */
  boolean isOf(Serving serving) {
    return serving.item().isSameAs(item) && serving.fedAsForage() == fedAsForage;
  }

  boolean isForage() {
    return item.isForage() && fedAsForage;
  }
}
