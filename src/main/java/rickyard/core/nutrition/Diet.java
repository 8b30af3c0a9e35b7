package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;

/**
 * A ration evaluated: amounts, nutrients against requirements and tolerances, sugars of the whole
 * and of the bucket, and what must be said beside them.
 *
 * @param horseId whose
 * @param items the portions with their shares, in the order given
 * @param intake how much, and how the forage stands against the floors
 * @param lines every nutrient in the order of {@link Nutrient}
 * @param contents content of the whole diet on dry matter, as a limit may be held against it: by
 *     analyte, in the canonical unit; open above where an item has no value
 * @param missing for each of those the items without a value, sorted; empty lists are left out
 * @param gramsPerDay NSC_WSC, NSC_ESC, STARCH, WSC, ESC and K, g per day
 * @param bucketMeal the largest bucket meal
 * @param energy energy against body condition, in words
 * @param notes what must be said, in a fixed order
 */
public record Diet(
    String horseId,
    List<DietItem> items,
    Intake intake,
    Map<Nutrient, NutrientLine> lines,
    SortedMap<AnalyteCode, Measured> contents,
    SortedMap<AnalyteCode, List<String>> missing,
    SortedMap<AnalyteCode, Amount> gramsPerDay,
    BucketMeal bucketMeal,
    EnergyView energy,
    List<DietNote> notes) {

  public Diet {
    requireNonNull(horseId, "horseId");
    items = List.copyOf(items);
    requireNonNull(intake, "intake");
    lines = Collections.unmodifiableMap(new EnumMap<>(lines));
    contents = Collections.unmodifiableSortedMap(new TreeMap<>(contents));
    missing = Collections.unmodifiableSortedMap(new TreeMap<>(missing));
    gramsPerDay = Collections.unmodifiableSortedMap(new TreeMap<>(gramsPerDay));
    requireNonNull(bucketMeal, "bucketMeal");
    requireNonNull(energy, "energy");
    notes = List.copyOf(notes);
  }

  /**
   * Evaluates what a horse is given per day.
   *
   * @param horse as the register describes it
   * @param portions what it is given; may be empty
   * @param requirements of this horse at the day in question
   * @param standards all tables
   */
  public static Diet evaluate(
      Horse horse, List<Portion> portions, Requirements requirements, FeedingStandards standards) {
    return new DietEvaluation(horse, portions, requirements, standards).diet();
  }

  /**
   * The same without what must be said beside it: for a search that looks at many rations and shows
   * few of them.
   */
  public static Diet withoutNotes(
      Horse horse, List<Portion> portions, Requirements requirements, FeedingStandards standards) {
    return new DietEvaluation(horse, portions, requirements, standards).figures();
  }

  Diet withNotes(List<DietNote> said) {
    return new Diet(
        horseId, items, intake, lines, contents, missing, gramsPerDay, bucketMeal, energy, said);
  }

  /** The line of a nutrient; every diet has them all. */
  public NutrientLine line(Nutrient nutrient) {
    return requireNonNull(lines.get(nutrient));
  }

  /**
   * Content of the whole diet for a limit: {@code Σ share x content}, {@code u = √Σ(share x u)²}.
   *
   * @return empty for an empty diet or an analyte that no item knows
   */
  public Optional<Measured> content(AnalyteCode code) {
    return Optional.ofNullable(contents.get(code));
  }

  /** The items that keep a content open; empty if none does. */
  public List<String> missingFor(AnalyteCode code) {
    return missing.getOrDefault(code, List.of());
  }

  /** Grams per day of NSC_WSC, NSC_ESC, STARCH, WSC, ESC or K, as for a limit. */
  public Amount gramsPerDay(AnalyteCode code) {
    Amount found = gramsPerDay.get(code);
    if (found == null) {
      throw new IllegalArgumentException("daily grams are not summed for " + code);
    }
    return found;
  }

  /** Starch per day, g per kg of body weight. */
  public Amount starchPerKgBodyWeight() {
    return gramsPerDay(AnalyteCode.STARCH).per(intake.bodyWeightKg());
  }

  /** Whether nothing is eaten beside the ration, as far as the register says. */
  public boolean isWhole() {
    return notes.stream().noneMatch(n -> DietNotes.NOT_IN_THE_BUCKET.contains(n.code()));
  }

  public boolean hasNote(String code) {
    return notes.stream().anyMatch(n -> n.code().equals(code));
  }
}
