package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Measured;

/** What a horse eats beside the ration recorded: grass, treats, other hay, a bale it shares. */
final class FedOutside {
  private static final String RECORDED =
      "judged is the ration recorded: no grass, treats or other hay";

  private FedOutside() {}

  static List<DietNote> notes(Horse horse, List<DietItem> items, Settings settings) {
    List<DietNote> notes = new ArrayList<>();
    addGrass(horse, items, settings, notes);
    addExtras(horse, notes);
    if (!horse.herd().isEmpty()) {
      notes.add(
          new DietNote(
              "shared-bale",
              horse.herd(),
              "it shares a bale with others: its own amount is not known, the most sensitive of"
                  + " the herd decides"));
    }
    return notes;
  }

  /** Whether it eats grass that no item of the ration stands for. */
  static boolean grazesUncounted(Horse horse, List<DietItem> items) {
    return horse.grazingHoursPerDay().orElse(0) > 0 && !hasPasture(items);
  }

  private static boolean hasPasture(List<DietItem> items) {
    return items.stream().anyMatch(i -> i.portion().food().role().equals("pasture"));
  }

  private static void addGrass(
      Horse horse, List<DietItem> items, Settings settings, List<DietNote> notes) {
    if (horse.grazingHoursPerDay().isEmpty()) {
      notes.add(
          new DietNote("grazing-not-asked", "", RECORDED + "; nobody asked whether it grazes"));
      return;
    }
    double hours = horse.grazingHoursPerDay().getAsDouble();
    if (hours <= 0 || hasAnalysedPasture(items)) {
      return;
    }
    notes.add(
        new DietNote(
            "grazing-not-analysed",
            "",
            RECORDED
                + "; it grazes "
                + number(hours)
                + " hours a day, and the pasture is not analysed"
                + (hasPasture(items) ? "" : ": intake, floors and energy are without the grass")));
    if (hours <= settings.number("grazing_short_hours")) {
      notes.add(new DietNote("grazing-few-hours", "", fewHours(settings)));
    }
    if (horse.muzzle()) {
      notes.add(new DietNote("grazing-muzzled", "", muzzled(settings)));
    }
  }

  private static String fewHours(Settings settings) {
    return "few hours of grass are no small amount: ponies have eaten up to "
        + number(settings.number("grazing_short_dm_pct_bw"))
        + " % of body weight as dry matter in "
        + number(settings.number("grazing_short_hours"))
        + " hours ("
        + settings.get("grazing_short_dm_pct_bw").source().standing().words()
        + ")";
  }

  private static String muzzled(Settings settings) {
    return "a muzzle cuts what it grazes by about "
        + number(settings.number("muzzle_intake_cut_pct"))
        + " % ("
        + settings.get("muzzle_intake_cut_pct").source().standing().words()
        + "): less grass, not none";
  }

  private static boolean hasAnalysedPasture(List<DietItem> items) {
    return items.stream()
        .map(i -> i.portion().food())
        .filter(f -> f.role().equals("pasture"))
        .anyMatch(f -> f.find(AnalyteCode.NSC_WSC).map(Measured::isBoundedAbove).orElse(false));
  }

  private static void addExtras(Horse horse, List<DietNote> notes) {
    switch (horse.extras()) {
      case UNKNOWN -> add(notes, "extras-unknown", "extras are not on record");
      case TREATS -> add(notes, "extras-treats", "it gets treats that nobody weighs");
      case SHARED -> add(notes, "extras-shared", "it eats of other horses' hay");
      case NONE -> {}
    }
  }

  private static void add(List<DietNote> notes, String code, String words) {
    notes.add(new DietNote(code, "", RECORDED + "; " + words));
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
