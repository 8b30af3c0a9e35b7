package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What is said of hay that is soaked or steamed before it is fed. The values of the dry hay judge
 * it: a loss of sugar is never counted. Cubes, pellets and meals are eaten with their water and
 * lose nothing.
 */
final class PreparationNotes {
  private static final Set<String> EATEN_WITH_THE_WATER = Set.of("cubes", "pellets", "meal");

  private PreparationNotes() {}

  static List<DietNote> of(List<DietItem> items, Settings settings) {
    List<DietNote> notes = new ArrayList<>();
    for (DietItem item : items) {
      Portion portion = item.portion();
      Foodstuff food = portion.food();
      if (!food.isForage()
          || portion.kgAsFed() == 0
          || EATEN_WITH_THE_WATER.contains(food.form())) {
        continue;
      }
      if (portion.prepared().equals("soaked")) {
        notes.add(new DietNote("soaked", food.key(), soaked(food.key(), settings)));
      } else if (portion.prepared().equals("steamed")) {
        notes.add(new DietNote("steamed", food.key(), steamed(food.key(), settings)));
      }
    }
    return notes;
  }

  private static String soaked(String key, Settings settings) {
    return String.format(
        Locale.ROOT,
        "%s is soaked and is judged with its dry values: no loss of sugar is counted (single hays"
            + " lost %.0f to %.0f %%). Soaking takes dry matter, minerals, energy (%.0f to %.0f %%)"
            + " and digestible protein (%.0f %%), so the horse may get less of them than is shown,"
            + " and restricted soaked hay may be too little. Only a soaked, drained sample that was"
            + " tested may be judged by its own values",
        key,
        settings.number("soak_sugar_loss_low_pct"),
        settings.number("soak_sugar_loss_high_pct"),
        settings.number("soak_energy_loss_low_pct"),
        settings.number("soak_energy_loss_high_pct"),
        settings.number("soak_protein_loss_pct"));
  }

  private static String steamed(String key, Settings settings) {
    return String.format(
        Locale.ROOT,
        "%s is steamed and is judged with its dry values: steaming alone hardly changes sugar"
            + " (%.0f to %.0f g/kg WSC in one trial) and none is counted as lost",
        key,
        settings.number("steam_wsc_before_g_per_kg"),
        settings.number("steam_wsc_after_g_per_kg"));
  }
}
