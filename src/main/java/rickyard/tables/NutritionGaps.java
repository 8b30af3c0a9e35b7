package rickyard.tables;

import java.util.ArrayList;
import java.util.List;
import rickyard.core.nutrition.HorseType;
import rickyard.core.nutrition.IntakeRule;
import rickyard.core.nutrition.KindRule;
import rickyard.core.nutrition.Settings.Setting;

/** Finds rows that every evaluation needs and that the tables, after the office's, lack. */
final class NutritionGaps {
  private static final List<String> WORDS =
      List.of("de_preference", "protected_conditions", "forage_only_contents");
  private static final List<String> NUMBERS =
      List.of(
          "de_model_u",
          "weight_error_scale_pct",
          "weight_error_tape_pct",
          "weight_error_guess_pct",
          "sugar_silent_pct_dm",
          "nsc_correlation",
          "ca_p_warn_below",
          "ca_p_refuse_below",
          "ca_p_max_adult",
          "ca_p_max_growing",
          "energy_even_pct",
          "condition_thin_at_most",
          "condition_fat_at_least",
          "opens_within_days",
          "vet_told_days",
          "meals_when_unknown",
          "starch_per_day_max_g_per_kg",
          "bucket_meal_max_pct_bw",
          "forage_share_min_pct",
          "zn_cu_usual_low",
          "zn_cu_usual_high",
          "salt_per_sodium",
          "grazing_short_hours",
          "grazing_short_dm_pct_bw",
          "muzzle_intake_cut_pct",
          "soak_sugar_loss_low_pct",
          "soak_sugar_loss_high_pct",
          "soak_energy_loss_low_pct",
          "soak_energy_loss_high_pct",
          "soak_protein_loss_pct",
          "steam_wsc_before_g_per_kg",
          "steam_wsc_after_g_per_kg",
          "de_large_difference",
          "growth_off_curve_pct");

  private NutritionGaps() {}

  static List<TableProblem> in(
      List<Setting> settings, List<IntakeRule> intake, List<KindRule> kinds) {
    List<TableProblem> gaps = new ArrayList<>();
    for (String name : WORDS) {
      if (settings.stream().noneMatch(s -> s.name().equals(name))) {
        gaps.add(gap("nutrition-settings.csv", "a row " + name));
      }
    }
    for (String name : NUMBERS) {
      if (settings.stream().noneMatch(s -> s.name().equals(name) && Double.isFinite(s.number()))) {
        gaps.add(gap("nutrition-settings.csv", "a row " + name + " with a number"));
      }
    }
    boolean isKnownWord =
        settings.stream()
            .filter(s -> s.name().equals("de_preference"))
            .allMatch(s -> List.of("report", "formula").contains(s.text()));
    if (!isKnownWord) {
      gaps.add(gap("nutrition-settings.csv", "de_preference report or formula"));
    }
    for (HorseType type : HorseType.values()) {
      if (intake.stream().filter(r -> r.type() == type).count() != 2) {
        gaps.add(gap("intake.csv", "a row any and a row protected for " + type.code()));
      }
    }
    for (String kind : List.of("batch", "typical")) {
      if (kinds.stream().noneMatch(k -> k.kind().equals(kind) && k.analyte().equals("*"))) {
        gaps.add(gap("feed-kinds.csv", "a row " + kind + " with analyte *"));
      }
    }
    return gaps;
  }

  static TableProblem gap(String file, String expected) {
    return new TableProblem(file, 0, "", "missing-row", expected, "none");
  }
}
