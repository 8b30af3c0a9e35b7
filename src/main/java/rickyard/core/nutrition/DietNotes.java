package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;

/** What must be said beside a diet, in a fixed order. */
final class DietNotes {
  /** Codes of what is eaten but not in the ration. */
  static final Set<String> NOT_IN_THE_BUCKET =
      Set.of(
          "grazing-not-analysed",
          "grazing-not-asked",
          "extras-unknown",
          "extras-treats",
          "extras-shared",
          "shared-bale");

  private DietNotes() {}

  /**
   * The notes of a diet.
   *
   * @param diet all of it but its notes
   * @param forLimits what of each item may be held against a limit
   */
  static List<DietNote> of(
      Diet diet,
      Horse horse,
      Map<AnalyteCode, LimitContents> forLimits,
      Requirements requirements,
      FeedingStandards standards) {
    Settings settings = standards.settings();
    List<DietNote> notes = new ArrayList<>();
    notes.addAll(FedOutside.notes(horse, diet.items(), settings));
    notes.addAll(PreparationNotes.of(diet.items(), settings));
    notes.addAll(AmountNotes.of(diet, horse, settings));
    notes.addAll(MealNotes.of(diet, horse, settings));
    notes.addAll(standIns(forLimits));
    notes.addAll(NutrientNotes.of(diet, horse, settings));
    notes.addAll(RequirementNotes.of(horse, requirements, standards));
    notes.addAll(OtherSources.of(horse, requirements, diet.lines(), diet.intake(), standards));
    notes.addAll(EnergyComparison.notes(diet.items(), standards));
    return notes;
  }

  private static List<DietNote> standIns(Map<AnalyteCode, LimitContents> forLimits) {
    Set<String> keys = new TreeSet<>();
    for (AnalyteCode code : Sugars.CODES) {
      LimitContents contents = forLimits.get(code);
      if (contents != null) {
        keys.addAll(contents.stoodIn());
      }
    }
    return keys.stream()
        .map(
            key ->
                new DietNote(
                    "role-high-value",
                    key,
                    "no value for starch or sugar: the high end of its role is taken"))
        .toList();
  }
}
