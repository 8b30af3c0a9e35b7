package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;

/**
 * A feed, in one batch, as the register describes it.
 *
 * @param id feed id
 * @param batch batch; empty for feeds without batches
 * @param name as sold
 * @param role controlled-forage, balancer, concentrate, supplement, salt, straw, chaff, beet-pulp …
 * @param form long-stem, chopped, cubes, pellets or meal
 * @param dryMatterPercent % as fed
 * @param contents on the dry-matter basis in canonical units, converted by the loader; {@code u}
 *     from the kind of value
 * @param kinds batch, typical, max or min for each content
 * @param bagKg kg as fed
 * @param pricePerBag in the office's money
 * @param baggedOn day of bagging
 * @param shelfLifeMonths months it keeps
 * @param fullRateLow kg as fed per 100 kg of body weight at which it is a whole ration, low end
 * @param fullRateHigh high end
 * @param doseLowKg label dose, kg a day for a 500-kg horse, low end
 * @param doseHighKg high end
 * @param complete whether the label calls it a complete feed
 */
public record Feed(
    String id,
    String batch,
    String name,
    String role,
    String form,
    Measured dryMatterPercent,
    Map<AnalyteCode, Measured> contents,
    Map<AnalyteCode, String> kinds,
    OptionalDouble bagKg,
    OptionalDouble pricePerBag,
    Optional<LocalDate> baggedOn,
    OptionalInt shelfLifeMonths,
    OptionalDouble fullRateLow,
    OptionalDouble fullRateHigh,
    OptionalDouble doseLowKg,
    OptionalDouble doseHighKg,
    boolean complete) {

  public Feed {
    requireNonNull(id, "id");
    requireNonNull(batch, "batch");
    requireNonNull(role, "role");
    requireNonNull(form, "form");
    requireNonNull(dryMatterPercent, "dryMatterPercent");
    contents = java.util.Collections.unmodifiableMap(new TreeMap<>(contents));
    kinds = java.util.Collections.unmodifiableMap(new TreeMap<>(kinds));
  }
}
