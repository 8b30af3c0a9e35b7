package rickyard.core.remedy;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.Comparator;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.quantity.Unit;

/**
 * An item that a ration may hold: hay of a lot, or a batch of a feed.
 *
 * @param id lot or feed id
 * @param batch batch of a feed; empty otherwise
 * @param name as people call it
 * @param kind lot or feed
 * @param role material of a lot; controlled-forage, balancer, concentrate, supplement, salt … of a
 *     feed
 * @param form long-stem, chopped, cubes, pellets or meal
 * @param isForage whether it counts as forage
 * @param isStraw whether it counts as straw
 * @param dryMatterFraction dry matter per as-fed mass, in (0, 1]
 * @param contents by quantity of a limit, on dry matter; what is missing is unknown, not zero
 * @param nutrientsPerKgDm by nutrient code, amount per kg of dry matter in the need's unit
 * @param stock how much there is and what it costs
 * @param label what the label says of amounts
 */
public record Candidate(
    String id,
    String batch,
    String name,
    CandidateKind kind,
    String role,
    String form,
    boolean isForage,
    boolean isStraw,
    double dryMatterFraction,
    SortedMap<String, Content> contents,
    SortedMap<String, Double> nutrientsPerKgDm,
    Stock stock,
    Label label) {

  static final Comparator<Candidate> BY_KEY =
      Comparator.comparing(Candidate::id).thenComparing(Candidate::batch);

  public Candidate {
    requireNonNull(id, "id");
    requireNonNull(batch, "batch");
    requireNonNull(name, "name");
    requireNonNull(kind, "kind");
    requireNonNull(role, "role");
    requireNonNull(form, "form");
    requireNonNull(stock, "stock");
    requireNonNull(label, "label");
    if (!(dryMatterFraction > 0 && dryMatterFraction <= 1)) {
      throw new IllegalArgumentException(
          "dry matter of " + id + " must be in (0, 1], was " + dryMatterFraction);
    }
    contents = Collections.unmodifiableSortedMap(new TreeMap<>(contents));
    nutrientsPerKgDm = Collections.unmodifiableSortedMap(new TreeMap<>(nutrientsPerKgDm));
  }

  /**
   * The item of a foodstuff.
   *
   * <p>As in the diet code, a typical value of a forage never counts for a limit; a feed without a
   * bounded value takes the high value of its role. A maximum counts the upper end of a censored
   * content; a content open above stays unknown.
   *
   * @param food with known and assumed contents
   * @param kind lot or feed
   * @param units by quantity of every limit, the unit that the limit is in
   * @param stock how much there is
   * @param label what the label says
   * @param standards the tables with the high values
   */
  public static Candidate ofFood(
      Foodstuff food,
      CandidateKind kind,
      SortedMap<String, Unit> units,
      Stock stock,
      Label label,
      FeedingStandards standards) {
    return new Candidate(
        food.id(),
        food.batch(),
        food.name(),
        kind,
        food.role(),
        food.form(),
        food.isForage(),
        food.isStraw(),
        food.dryMatter().best() / 100,
        FoodContents.forLimits(food, units, standards),
        FoodContents.perKgDm(food),
        stock,
        label);
  }

  public Optional<Content> findContent(String quantity) {
    return Optional.ofNullable(contents.get(quantity));
  }

  /** Serving of a nutrient per kg of dry matter; 0 where nothing is known. */
  double nutrient(String code) {
    return nutrientsPerKgDm.getOrDefault(code, 0.0);
  }

  boolean isControlled() {
    return kind == CandidateKind.FEED && isForage && role.equals("controlled-forage");
  }

  /** Whether it brings the vitamins and minerals of a whole ration at its full rate. */
  boolean isFortified() {
    return isForage
        && label.isComplete()
        && label.fullRateLow().isPresent()
        && label.fullRateHigh().isPresent();
  }

  boolean isBalancer() {
    return role.equals("balancer");
  }

  /** What tells two items apart. */
  String key() {
    return id + "\u0000" + batch;
  }

  boolean isSameAs(Candidate other) {
    return id.equals(other.id) && batch.equals(other.batch);
  }
}
