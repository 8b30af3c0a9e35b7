package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/**
 * Something that a horse is fed, with all that is known or assumed of it: a lot or a feed.
 *
 * @param id lot or feed id
 * @param batch batch of a feed; empty for a lot
 * @param name for a page
 * @param role role of a feed or material of a lot
 * @param form long-stem, chopped, cubes, pellets or meal
 * @param isForage whether it counts as forage
 * @param isStraw whether it counts as straw
 * @param dryMatter % as fed, above 0
 * @param contents on dry matter in canonical units; reported, derived and typical ones, told apart
 *     by their evidence; what is missing is unknown, not zero
 */
public record Foodstuff(
    String id,
    String batch,
    String name,
    String role,
    String form,
    boolean isForage,
    boolean isStraw,
    Measured dryMatter,
    SortedMap<AnalyteCode, Measured> contents) {

  public Foodstuff {
    requireNonNull(id, "id");
    requireNonNull(batch, "batch");
    requireNonNull(name, "name");
    requireNonNull(role, "role");
    requireNonNull(form, "form");
    if (dryMatter.unit() != Unit.PERCENT
        || dryMatter.basis() != Basis.AS_FED
        || !(dryMatter.best() > 0 && dryMatter.best() <= 100)) {
      throw new IllegalArgumentException(
          "dry matter of " + id + " must be in (0, 100] % as fed, was " + dryMatter.best());
    }
    contents = Collections.unmodifiableSortedMap(new TreeMap<>(contents));
    contents.forEach(
        (code, value) -> {
          if (value.basis() == Basis.AS_FED) {
            throw new IllegalArgumentException(code + " of a foodstuff is not on dry matter");
          }
        });
  }

  /** The content on dry matter, known or assumed. */
  public Optional<Measured> find(AnalyteCode code) {
    return Optional.ofNullable(contents.get(code));
  }

  /** Id and batch together: what tells two items of a ration apart. */
  public String key() {
    return batch.isEmpty() ? id : id + " " + batch;
  }
}
