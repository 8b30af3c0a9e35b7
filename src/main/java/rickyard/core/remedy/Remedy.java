package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

/**
 * A proposal that was checked by the diet code.
 *
 * @param kind what is done
 * @param items the whole changed ration, unchanged items and those that fall away too; empty for
 *     retest and none
 * @param then the changed ration as it is fed, without what falls away; empty for retest and none
 * @param isEnough whether it clears every binding limit and nothing stands against it
 * @param why one sentence: what changes and why that is enough, or why it is not
 * @param diet what the diet code says of it; empty for retest and none
 * @param change kg of dry matter per day taken away or added
 */
public record Remedy(
    RemedyKind kind,
    List<RemedyItem> items,
    List<Serving> then,
    boolean isEnough,
    String why,
    Optional<CheckedDiet> diet,
    double change) {
  public Remedy {
    requireNonNull(kind, "kind");
    items = List.copyOf(items);
    then = List.copyOf(then);
    requireNonNull(why, "why");
    requireNonNull(diet, "diet");
    if (isEnough && !diet.map(CheckedDiet::isEnough).orElse(false)) {
      throw new IllegalArgumentException("only the diet code can say that a proposal is enough");
    }
  }
}
