package rickyard.core.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rickyard.core.quantity.Cites;

/** What is said of nutrients: short, not assured, not known, assumed, too much; ratios; salt. */
final class NutrientNotes {
  private final Diet diet;
  private final Horse horse;
  private final Settings settings;
  private final List<DietNote> notes = new ArrayList<>();

  private NutrientNotes(Diet diet, Horse horse, Settings settings) {
    this.diet = diet;
    this.horse = horse;
    this.settings = settings;
  }

  static List<DietNote> of(Diet diet, Horse horse, Settings settings) {
    NutrientNotes made = new NutrientNotes(diet, horse, settings);
    made.addStatuses();
    made.addInvertedRatio();
    made.addZincToCopper();
    made.addSalt();
    made.addVitaminE();
    made.addEnergyFactor();
    return made.notes;
  }

  private void note(String code, String words, Object... values) {
    notes.add(new DietNote(code, "", String.format(Locale.ROOT, words, values)));
  }

  private void addStatuses() {
    list("below", "falls short by the best value: %s", has(NutrientStatus.BELOW), this::percent);
    list(
        "not-assured",
        "enough by the best value, but not assured (two standard uncertainties below it is too"
            + " little): %s",
        has(NutrientStatus.NOT_ASSURED),
        NutrientNotes::name);
    list(
        "unknown",
        "not known of all that is fed, and not counted as nothing: %s",
        has(NutrientStatus.UNKNOWN),
        NutrientNotes::name);
    list(
        "above-ceiling",
        "may pass what is tolerated: %s",
        has(NutrientStatus.ABOVE_CEILING),
        NutrientNotes::name);
    list(
        "assumed",
        "wholly or in part from typical values of the material, with a wide uncertainty, and not"
            + " from a report: %s",
        line -> line.nutrient() != Nutrient.DM && line.supply().origin() != Origin.REPORTED,
        NutrientNotes::name);
  }

  /** Energy and dry matter have sentences of their own. */
  private static Predicate<NutrientLine> has(NutrientStatus status) {
    return line ->
        line.status() == status && line.nutrient() != Nutrient.DM && line.nutrient() != Nutrient.DE;
  }

  private void list(
      String code,
      String words,
      Predicate<NutrientLine> which,
      Function<NutrientLine, String> name) {
    String names =
        diet.lines().values().stream().filter(which).map(name).collect(Collectors.joining(", "));
    if (!names.isEmpty()) {
      note("nutrients-" + code, words, names);
    }
  }

  private static String name(NutrientLine line) {
    return NutrientWords.of(line.nutrient());
  }

  private String percent(NutrientLine line) {
    OptionalDouble percent = line.percentOfRequirement();
    return percent.isEmpty() || line.nutrient() == Nutrient.CA_P
        ? name(line)
        : name(line) + String.format(Locale.ROOT, " (%.0f %% of the need)", percent.getAsDouble());
  }

  private void addInvertedRatio() {
    Amount ratio = diet.line(Nutrient.CA_P).supply();
    if (ratio.isComplete() && ratio.best() < settings.number("ca_p_refuse_below")) {
      note("ca-p-inverted", "there is less calcium than phosphorus");
    }
  }

  /** No published bound was found; the requirement tables stand at 4:1. */
  @Cites(source = "common-practice", locator = "zinc to copper about 4:1")
  private void addZincToCopper() {
    Amount zinc = diet.line(Nutrient.ZN).supply();
    Amount copper = diet.line(Nutrient.CU).supply();
    if (!zinc.isComplete() || !copper.isComplete() || !(copper.best() > 0)) {
      return;
    }
    double ratio = zinc.best() / copper.best();
    double low = settings.number("zn_cu_usual_low");
    double high = settings.number("zn_cu_usual_high");
    if (ratio < low * (1 - 1e-9) || ratio > high * (1 + 1e-9)) {
      note(
          "zn-cu-unusual",
          "zinc to copper is %.1f to 1; %.0f to 1 up to %.0f to 1 is usual (common practice, no"
              + " source)",
          ratio,
          low,
          high);
    }
  }

  /** Grams of plain salt for the sodium that is missing: {@code NaCl = Na x 58.44 / 22.99}. */
  @Cites(source = "atomic-masses", locator = "NaCl 58.44, Na 22.99 g/mol: factor 2.542")
  private void addSalt() {
    NutrientLine sodium = diet.line(Nutrient.NA);
    boolean isShort =
        sodium.status() == NutrientStatus.BELOW
            || (sodium.status() == NutrientStatus.NOT_ASSURED && !hasSalt());
    if (!isShort || diet.items().isEmpty()) {
      return;
    }
    String start =
        hasSalt()
            ? "the salt fed does not make up for the little sodium of hay"
            : "hay holds little sodium and no salt is in the ration";
    double missing = sodium.requirement().orElse(0) - sodium.supply().best();
    if (sodium.status() == NutrientStatus.BELOW && !isVetFirst()) {
      note(
          "salt",
          start + ": about %.0f g of plain salt a day would meet the need; water at hand",
          Math.ceil(missing * settings.number("salt_per_sodium")));
    } else {
      note("salt", start + ": offer plain salt, with water at hand");
    }
  }

  private boolean hasSalt() {
    return diet.items().stream()
        .anyMatch(i -> i.portion().food().role().equals("salt") && i.kgDm() > 0);
  }

  /** Without a vet plan nothing that can be weighed out is said of acute laminitis. */
  private boolean isVetFirst() {
    return horse.has("laminitis-acute") && !horse.vetPlan();
  }

  private void addVitaminE() {
    NutrientLine line = diet.line(Nutrient.VIT_E);
    boolean isFine =
        line.status() == NutrientStatus.MEETS
            || line.status() == NutrientStatus.ABOVE_CEILING
            || line.status() == NutrientStatus.NO_REQUIREMENT;
    if (isFine || diet.intake().forageKgDm() <= 0) {
      return;
    }
    String grass =
        horse.grazingHoursPerDay().orElse(0) > 0 ? "; what it grazes brings some, not counted" : "";
    note(
        "vitamin-e",
        "hay loses vitamin E in storage and its reports seldom give it: only what labels and"
            + " reports give is counted, against a need of %.0f IU a day%s",
        line.requirement().orElse(0),
        grass);
  }

  private void addEnergyFactor() {
    double factor = settings.energyFactor(horse.type());
    if (factor != 1) {
      note(
          "energy-factor",
          "a %s is no small horse: its energy need is taken as %.2f of a horse's",
          horse.type().code(),
          factor);
    }
  }
}
