package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is said of how much a horse is given: floors, forage and straw shares, its weight. */
final class AmountNotes {
  private AmountNotes() {}

  static List<DietNote> of(Diet diet, Horse horse, Settings settings) {
    List<DietNote> notes = new ArrayList<>();
    Intake intake = diet.intake();
    if (intake.floor() != Floor.FINE) {
      notes.add(new DietNote("forage-" + intake.floor().code(), "", intake.words()));
    }
    addWeight(intake, horse, settings, notes);
    addStraw(intake, notes);
    double share = 100 * intake.forageShare();
    if (intake.kgDm() > 0 && share < settings.number("forage_share_min_pct") * (1 - 1e-9)) {
      add(
          notes,
          "forage-share-low",
          "forage makes %.0f %% of the dry matter; at least %.0f %% is usual",
          share,
          settings.number("forage_share_min_pct"));
    }
    if (intake.dmPercentOfJudgedWeight() > intake.rule().usualMax() * (1 + 1e-9)) {
      add(
          notes,
          "intake-over-usual",
          "this is more dry matter than horses usually eat: %.2f %% of body weight, usually at most"
              + " %.1f %%",
          intake.dmPercentOfJudgedWeight(),
          intake.rule().usualMax());
    }
    if (diet.items().stream().anyMatch(i -> i.portion().kgU() > 0)) {
      add(
          notes,
          "amount-assumed",
          "an amount was not weighed: fed ad lib, taken as %.2f %% of body weight of dry matter in"
              + " all, give or take %.0f %% (assumed for a %s)",
          intake.rule().adlib(),
          intake.rule().adlibU(),
          horse.type().code());
    }
    return notes;
  }

  private static void addWeight(
      Intake intake, Horse horse, Settings settings, List<DietNote> notes) {
    if (intake.judgedWeightKg() < intake.bodyWeightKg()) {
      add(
          notes,
          "weight-low-end",
          "the weight is by %s and may be %.0f %% off: floors are held against the low end of the"
              + " weight",
          horse.weightBy().code(),
          settings.weightErrorPercent(horse));
    }
  }

  private static void addStraw(Intake intake, List<DietNote> notes) {
    String words = "straw makes %.0f %% of the forage, more than %s (%.0f %% for its type)";
    double share = 100 * intake.strawShareOfForage();
    IntakeRule rule = intake.rule();
    if (intake.isStrawOverHardCap()) {
      add(notes, "straw-over-hard-cap", words, share, "is allowed", rule.strawHardPercent());
    } else if (intake.isStrawOverUsualCap()) {
      add(notes, "straw-over-usual-cap", words, share, "is usual", rule.strawUsualPercent());
    }
  }

  private static void add(List<DietNote> notes, String code, String words, Object... values) {
    notes.add(new DietNote(code, "", String.format(Locale.ROOT, words, values)));
  }
}
