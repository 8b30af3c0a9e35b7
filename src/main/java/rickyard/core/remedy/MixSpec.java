package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One support of the search: which items may change, which stay, and what the free forage must add
 * up to.
 *
 * @param free items with a choice, at most {@link #MOST}
 * @param fixed the rest of the ration
 * @param freeForageDmKg dry matter of the free forage together, kg per day; empty if only the
 *     intake range binds it
 * @param hasWishes whether unmet needs are priced
 */
record MixSpec(
    List<FreeItem> free, List<Serving> fixed, OptionalDouble freeForageDmKg, boolean hasWishes) {
  /** Items of a support. */
  static final int MOST = 4;

  MixSpec {
    free = List.copyOf(free);
    fixed = List.copyOf(fixed);
    if (free.isEmpty() || free.size() > MOST) {
      throw new IllegalArgumentException("a support has 1 to 4 items, not " + free.size());
    }
  }

  /** The support with other bounds of one item. */
  MixSpec with(int place, FreeItem item) {
    List<FreeItem> other = new ArrayList<>(free);
    other.set(place, item);
    return new MixSpec(other, fixed, freeForageDmKg, hasWishes);
  }

  MixSpec withFixed(List<Serving> other) {
    return new MixSpec(free, other, freeForageDmKg, hasWishes);
  }

  /** The whole ration at a choice of dry matter, what is not fed left out. */
  List<Serving> ration(double[] dmKg) {
    List<Serving> ration = new ArrayList<>();
    for (int i = 0; i < free.size(); i++) {
      ration.add(free.get(i).at(dmKg[i]));
    }
    ration.addAll(fixed);
    return ration.stream().filter(a -> a.kg() > 0).toList();
  }
}
