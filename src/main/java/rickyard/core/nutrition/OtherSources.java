package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/** Where sources disagree on a number that a diet is held against: both are named. */
final class OtherSources {
  private static final String CODE = "sources-differ";

  private final List<DietNote> notes = new ArrayList<>();

  private OtherSources() {}

  static List<DietNote> of(
      Horse horse,
      Requirements needs,
      Map<Nutrient, NutrientLine> lines,
      Intake intake,
      FeedingStandards standards) {
    OtherSources out = new OtherSources();
    needs.byNutrient().values().forEach(out::need);
    for (Nutrient nutrient : Nutrient.values()) {
      standards
          .findTolerance(nutrient.analyte())
          .ifPresent(t -> out.tolerance(t, line(lines, nutrient), horse, intake));
    }
    if (horse.status() != HorseStatus.GROWING) {
      out.ratio(line(lines, Nutrient.CA_P), standards.settings().get("ca_p_max_adult"));
    }
    return List.copyOf(out.notes);
  }

  private static NutrientLine line(Map<Nutrient, NutrientLine> lines, Nutrient nutrient) {
    return Objects.requireNonNull(lines.get(nutrient));
  }

  private void need(Requirement need) {
    for (Requirement.Other other : need.others()) {
      note(
          need.nutrient(),
          "need of ",
          need.perDay().orElseThrow(),
          other.perDay(),
          other.value(),
          need.nutrient().unit() + " a day");
    }
  }

  /** A tolerance is disputed only where the supply comes near: above the lowest that is named. */
  private void tolerance(Tolerance tolerance, NutrientLine line, Horse horse, Intake intake) {
    if (!tolerance.alarms()) {
      return;
    }
    OptionalDouble max = line.maxTolerable();
    double supply = line.supply().ceiling();
    for (OtherValue other : OtherValue.said(tolerance.max(), tolerance.others())) {
      double level = tolerance.perDay(other, line.nutrient(), intake.kgDm(), horse.bodyWeightKg());
      if (supply > Math.min(level, max.orElse(level))) {
        note(
            line.nutrient(),
            "most tolerated of ",
            max.orElse(level),
            level,
            other,
            line.nutrient().unit() + " a day");
      }
    }
  }

  private void ratio(NutrientLine line, Settings.Setting setting) {
    if (!line.supply().isComplete()) {
      return;
    }
    for (OtherValue other : OtherValue.said(setting.number(), setting.others())) {
      if (line.supply().ceiling() > Math.min(other.value(), setting.number())) {
        note(line.nutrient(), "most tolerated of ", setting.number(), other.value(), other, ": 1");
      }
    }
  }

  private void note(
      Nutrient nutrient, String what, double used, double other, OtherValue value, String unit) {
    notes.add(
        new DietNote(
            CODE,
            nutrient.code(),
            String.format(
                Locale.ROOT,
                "sources differ on the %s%s: %s %s is used, another has %s (%s; %s, %s)",
                what,
                nutrient.code(),
                figure(used),
                unit,
                figure(other),
                value.words(),
                value.source().key(),
                value.source().standing().code())));
  }

  private static String figure(double value) {
    String pattern = value >= 1000 ? "%.0f" : value >= 100 ? "%.1f" : "%.2f";
    return String.format(Locale.ROOT, pattern, value);
  }
}
