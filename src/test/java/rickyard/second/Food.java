package rickyard.second;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A food with its contents on dry matter in canonical units.
 *
 * @param key id, with the batch where there is one
 * @param role role of a feed, material of a lot
 * @param isForage whether it counts as forage
 * @param isStraw whether it counts as straw
 * @param dryMatter % as fed
 * @param given what a report or a label says and what follows from it: may be held against a limit
 * @param supply the same, completed by typical values of the material: for nutrients only
 */
record Food(
    String key,
    String role,
    boolean isForage,
    boolean isStraw,
    Num dryMatter,
    SortedMap<String, Num> given,
    SortedMap<String, Num> supply) {

  Food {
    given = new TreeMap<>(given);
    supply = new TreeMap<>(supply);
  }

  Optional<Num> findGiven(String code) {
    return Optional.ofNullable(given.get(code));
  }

  Optional<Num> findSupply(String code) {
    return Optional.ofNullable(supply.get(code));
  }
}
