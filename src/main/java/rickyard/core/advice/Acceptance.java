package rickyard.core.advice;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rickyard.core.forage.Decision;
import rickyard.core.nutrition.ComingRation;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Ration;

/**
 * A remedy that the client accepted: from its first day on the diet follows its changeover, until a
 * newer ration stands in the register.
 *
 * @param food what takes the place of hay
 * @param share of the forage dry matter that it takes, in (0, 1]
 * @param day day of the changeover, from 1
 * @param decision the row of the register
 */
record Acceptance(Foodstuff food, double share, int day, Decision decision) {
  private static final Pattern VALUE =
      Pattern.compile("(?<item>\\S+)(?:\\s+(?<batch>[^\\s%]+))??(?:\\s+(?<share>[0-9]{1,3}) ?%)?");

  /** The words for the page. */
  String words() {
    return String.format(
        java.util.Locale.ROOT,
        "accepted on %s: %s for %.0f %% of the hay from %s, day %d of the changeover",
        decision.date(),
        food.key(),
        100 * share,
        decision.startOn().map(LocalDate::toString).orElse(""),
        day);
  }

  /**
   * The acceptance that holds for a horse.
   *
   * @param ration the ration in force; an acceptance that it already follows no longer counts
   * @return empty if there is none, or its value is not {@code ITEM}, {@code ITEM BATCH}, with an
   *     optional share such as {@code 50 %}
   */
  static Optional<Acceptance> find(
      String horseId, List<Decision> decisions, Ration ration, Larder larder, LocalDate asOf) {
    return decisions.stream()
        .filter(d -> d.kind().equals("accepted") && d.about().equals(horseId))
        .filter(d -> d.startOn().isPresent() && !d.startOn().get().isAfter(asOf))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
        .filter(d -> ration.since().isBefore(d.startOn().orElse(asOf)))
        .flatMap(d -> of(d, larder, asOf));
  }

  private static Optional<Acceptance> of(Decision decision, Larder larder, LocalDate asOf) {
    Matcher value = VALUE.matcher(decision.value().strip());
    if (!value.matches()) {
      return Optional.empty();
    }
    String batch = Optional.ofNullable(value.group("batch")).orElse("");
    double share =
        Optional.ofNullable(value.group("share")).map(Double::parseDouble).orElse(100.0) / 100;
    LocalDate start = decision.startOn().orElse(asOf);
    int day = (int) ChronoUnit.DAYS.between(start, asOf) + 1;
    return share > 0 && share <= 1
        ? larder
            .find(value.group("item"), batch)
            .map(food -> new Acceptance(food, share, day, decision))
        : Optional.empty();
  }

  /** The ration with its share of the hay changed for the accepted item, at equal dry matter. */
  List<Portion> applied(List<Portion> portions, Larder larder) {
    List<Portion> changed = new ArrayList<>();
    for (Portion portion : portions) {
      boolean isHay =
          portion.asForage()
              && larder.findLot(portion.food().id()).isPresent()
              && !portion.food().key().equals(food.key());
      if (!isHay) {
        changed.add(portion);
        continue;
      }
      Portion taken = portion.withKg(portion.kgAsFed() * share);
      if (share < 1) {
        changed.add(portion.withKg(portion.kgAsFed() * (1 - share)));
      }
      changed.add(ComingRation.atEqualDryMatter(taken, food));
    }
    return List.copyOf(changed);
  }
}
