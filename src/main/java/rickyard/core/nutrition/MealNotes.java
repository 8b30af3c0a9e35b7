package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is said of bucket meals; forage eaten over hours is no meal. */
final class MealNotes {
  private MealNotes() {}

  static List<DietNote> of(Diet diet, Horse horse, Settings settings) {
    List<DietNote> notes = new ArrayList<>();
    boolean isUnsaid =
        horse.mealsPerDay().isEmpty()
            && diet.items().stream()
                .map(DietItem::portion)
                .anyMatch(p -> !p.asForage() && p.kgAsFed() > 0 && p.meals().isEmpty());
    if (isUnsaid) {
      notes.add(
          new DietNote(
              "meals-unknown", "", "the number of bucket meals is not on record: taken as one"));
    }
    addMealSize(diet, settings, notes);
    addStarch(diet, settings, notes);
    return notes;
  }

  private static void addMealSize(Diet diet, Settings settings, List<DietNote> notes) {
    double percent = 100 * diet.bucketMeal().kgAsFed() / diet.intake().bodyWeightKg();
    double most = settings.number("bucket_meal_max_pct_bw");
    if (percent > most * (1 + 1e-9)) {
      notes.add(
          new DietNote(
              "bucket-meal-large",
              "",
              String.format(
                  Locale.ROOT,
                  "the largest bucket meal makes %.2f %% of body weight as fed; at most %.1f %% is"
                      + " advised: give it in more meals",
                  percent,
                  most)));
    }
  }

  /** By the upper end of what is known: an open sum says nothing here, its items are named. */
  private static void addStarch(Diet diet, Settings settings, List<DietNote> notes) {
    Amount perKg = diet.starchPerKgBodyWeight();
    double most = settings.number("starch_per_day_max_g_per_kg");
    double known = perKg.isComplete() ? perKg.best() : perKg.lower();
    if (known > most * (1 + 1e-9)) {
      notes.add(
          new DietNote(
              "starch-day",
              "",
              String.format(
                  Locale.ROOT,
                  "starch makes %s%.1f g per kg of body weight a day; more than %.0f g was tied to"
                      + " gastric ulcers",
                  perKg.isComplete() ? "" : "at least ",
                  known,
                  most)));
    }
  }
}
