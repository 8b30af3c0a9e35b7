package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What must be said of the requirements themselves: where they are missing, and where stretched.
 */
final class RequirementNotes {
  private final Horse horse;
  private final Requirements needs;
  private final FeedingStandards standards;
  private final List<DietNote> notes = new ArrayList<>();

  private RequirementNotes(Horse horse, Requirements needs, FeedingStandards standards) {
    this.horse = horse;
    this.needs = needs;
    this.standards = standards;
  }

  static List<DietNote> of(Horse horse, Requirements needs, FeedingStandards standards) {
    RequirementNotes out = new RequirementNotes(horse, needs, standards);
    out.each("no-requirement", "no requirement", RequirementNotes::missing);
    out.each("needs-enclosed", "no figure", RequirementNotes::enclosed);
    out.each("beyond-tables", "beyond the tables", Requirement::caveat);
    if (needs.stage().gap().isEmpty()) {
      out.size();
      out.matureWeight();
      out.curve();
    }
    return List.copyOf(out.notes);
  }

  private static String missing(Requirement need) {
    return need.perDay().isEmpty() && need.bracket().isEmpty() ? need.reason() : "";
  }

  private static String enclosed(Requirement need) {
    return need.bracket().isPresent() ? need.reason() : "";
  }

  /** One note for each sentence, with the nutrients that it is about unless it is about all. */
  private void each(String code, String start, Function<Requirement, String> sentence) {
    Map<String, List<Nutrient>> byWords = new LinkedHashMap<>();
    needs
        .byNutrient()
        .forEach(
            (nutrient, need) -> {
              String words = sentence.apply(need);
              if (!words.isEmpty()) {
                byWords.computeIfAbsent(words, w -> new ArrayList<>()).add(nutrient);
              }
            });
    byWords.forEach(
        (words, nutrients) -> {
          boolean isAll = nutrients.size() == needs.byNutrient().size();
          String of = nutrients.stream().map(Nutrient::code).collect(Collectors.joining(", "));
          notes.add(new DietNote(code, "", start + (isAll ? "" : " of " + of) + ": " + words));
        });
  }

  private void size() {
    double kg = horse.matureWeightKg().orElse(horse.bodyWeightKg());
    double least = parameter("table_smallest_kg");
    double most = parameter("table_largest_kg");
    if (kg < least || kg > most) {
      notes.add(
          new DietNote(
              "size-outside-tables",
              "",
              String.format(
                  Locale.ROOT,
                  "the printed tables are for horses of %.0f to %.0f kg; the needs per kg are"
                      + " carried on to %.0f kg, so go by weight and body condition first",
                  least,
                  most,
                  kg)));
    }
  }

  private double parameter(String name) {
    return standards.requirements().getParameter(name, needs.stage());
  }

  private void matureWeight() {
    if (horse.status() == HorseStatus.PREGNANT && horse.matureWeightKg().isEmpty()) {
      notes.add(
          new DietNote(
              "mature-weight-unknown",
              "",
              "the needs of pregnancy go by the weight of the mare when not in foal, which is not"
                  + " on record: her weight now is taken, and late in pregnancy that is too much"));
    }
  }

  private void curve() {
    if (horse.status() != HorseStatus.GROWING || horse.matureWeightKg().isEmpty()) {
      return;
    }
    double mature = horse.matureWeightKg().getAsDouble();
    double expected = Growth.weightKg(mature, needs.stage().month(), standards.requirements());
    double off = 100 * Math.abs(horse.bodyWeightKg() / expected - 1);
    if (off > standards.settings().number("growth_off_curve_pct")) {
      notes.add(
          new DietNote(
              "growth-off-curve",
              "",
              String.format(
                  Locale.ROOT,
                  "at %d months a horse that grows to %.0f kg weighs about %.0f kg, not %.0f:"
                      + " look at weight, mature weight and birth month",
                  needs.stage().month(),
                  mature,
                  expected,
                  horse.bodyWeightKg())));
    }
  }
}
