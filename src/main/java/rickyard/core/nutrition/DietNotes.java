package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;

/** What must be said beside a diet. */
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

  private static final String RECORDED =
      "judged is the ration recorded: no grass, treats or other hay";

  private final List<DietNote> notes = new ArrayList<>();

  private DietNotes() {}

  static List<DietNote> of(
      Horse horse,
      List<DietItem> items,
      Intake intake,
      Map<Nutrient, NutrientLine> lines,
      Map<AnalyteCode, LimitContents> forLimits,
      Requirements requirements,
      FeedingStandards standards) {
    DietNotes out = new DietNotes();
    out.grass(horse, items);
    out.extras(horse);
    out.amounts(intake);
    out.ratio(Objects.requireNonNull(lines.get(Nutrient.CA_P)), standards.settings());
    out.meals(horse, items);
    out.standIns(forLimits);
    out.notes.addAll(RequirementNotes.of(horse, requirements, standards));
    out.notes.addAll(OtherSources.of(horse, requirements, lines, intake, standards));
    out.notes.addAll(EnergyComparison.notes(items, standards));
    return List.copyOf(out.notes);
  }

  private void note(String code, String about, String words) {
    notes.add(new DietNote(code, about, words));
  }

  private void grass(Horse horse, List<DietItem> items) {
    if (horse.grazingHoursPerDay().isEmpty()) {
      note("grazing-not-asked", "", RECORDED + "; nobody asked whether it grazes");
    } else if (horse.grazingHoursPerDay().getAsDouble() > 0 && !hasAnalysedPasture(items)) {
      note("grazing-not-analysed", "", RECORDED + "; it grazes, and the pasture is not analysed");
    }
  }

  private static boolean hasAnalysedPasture(List<DietItem> items) {
    return items.stream()
        .map(i -> i.portion().food())
        .filter(f -> f.role().equals("pasture"))
        .anyMatch(f -> f.find(AnalyteCode.NSC_WSC).map(Measured::isBoundedAbove).orElse(false));
  }

  private void extras(Horse horse) {
    switch (horse.extras()) {
      case UNKNOWN -> note("extras-unknown", "", RECORDED + "; extras are not on record");
      case TREATS -> note("extras-treats", "", RECORDED + "; it gets treats that nobody weighs");
      case SHARED -> note("extras-shared", "", RECORDED + "; it eats of other horses' hay");
      case NONE -> {}
    }
    if (!horse.herd().isEmpty()) {
      note(
          "shared-bale",
          horse.herd(),
          "it shares a bale with others: its own amount is not known, the most sensitive of the"
              + " herd decides");
    }
  }

  private void amounts(Intake intake) {
    if (intake.floor() != Floor.FINE) {
      note("forage-" + intake.floor().code(), "", intake.words());
    }
    if (intake.judgedWeightKg() < intake.bodyWeightKg()) {
      note("weight-low-end", "", "floors are held against the low end of the weight");
    }
    if (intake.isStrawOverHardCap()) {
      note("straw-over-hard-cap", "", "straw makes more of the forage than is allowed");
    } else if (intake.isStrawOverUsualCap()) {
      note("straw-over-usual-cap", "", "straw makes more of the forage than is usual");
    }
    if (intake.dmPercentOfWeight() > intake.rule().usualMax() * (1 + 1e-9)) {
      note("intake-over-usual", "", "this is more dry matter than horses usually eat");
    }
  }

  private void ratio(NutrientLine line, Settings settings) {
    if (line.supply().isComplete() && line.supply().best() < settings.number("ca_p_refuse_below")) {
      note("ca-p-inverted", "", "there is less calcium than phosphorus");
    }
  }

  private void meals(Horse horse, List<DietItem> items) {
    boolean isUnsaid =
        horse.mealsPerDay().isEmpty()
            && items.stream()
                .map(DietItem::portion)
                .anyMatch(p -> !p.asForage() && p.kgAsFed() > 0 && p.meals().isEmpty());
    if (isUnsaid) {
      note("meals-unknown", "", "the number of bucket meals is not on record: taken as one");
    }
  }

  private void standIns(Map<AnalyteCode, LimitContents> forLimits) {
    Set<String> keys = new TreeSet<>();
    Sugars.CODES.forEach(
        code -> {
          LimitContents contents = forLimits.get(code);
          if (contents != null) {
            keys.addAll(contents.stoodIn());
          }
        });
    keys.forEach(
        key ->
            note(
                "role-high-value",
                key,
                "no value for starch or sugar: the high end of its role is taken"));
  }
}
