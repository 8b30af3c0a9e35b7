package rickyard.core.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.judgement.Judge;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Diet;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Floor;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.NutrientLine;
import rickyard.core.nutrition.NutrientStatus;
import rickyard.core.nutrition.Portion;
import rickyard.core.nutrition.Requirements;

/** The real diet code behind the seam, as the advice of a morning wires it. */
final class DietCode implements DietCheck {
  static final LocalDate DAY = LocalDate.of(2026, 11, 2);

  private final Horse horse;
  private final Map<String, Foodstuff> foods;
  private final List<Limit> limits;
  private final FeedingStandards standards;

  DietCode(Horse horse, List<Foodstuff> foods, List<Limit> limits, FeedingStandards standards) {
    this.horse = horse;
    this.foods = new TreeMap<>();
    foods.forEach(f -> this.foods.put(f.key(), f));
    this.limits = limits;
    this.standards = standards;
  }

  @Override
  public CheckedDiet check(List<Serving> ration) {
    List<Portion> portions = new ArrayList<>();
    for (Serving s : ration) {
      Candidate c = s.item();
      String key = c.batch().isEmpty() ? c.id() : c.id() + " " + c.batch();
      Foodstuff food = java.util.Objects.requireNonNull(foods.get(key), key);
      portions.add(new Portion(food, s.kg(), 0, s.fedAsForage(), s.meals()));
    }
    Diet diet = Diet.evaluate(horse, portions, Requirements.of(horse, DAY, standards), standards);
    List<CheckedLimit> checked =
        limits.stream()
            .filter(l -> l.subject() == LimitSubject.DIET)
            .map(l -> checked(Judge.judge(l, diet.content(l.analyte()), "")))
            .toList();
    return new CheckedDiet(checked, obstacles(diet), shortfalls(diet), new java.util.TreeSet<>());
  }

  private static CheckedLimit checked(Verdict v) {
    return new CheckedLimit(
        v.limit().id(),
        v.limit().words(),
        v.limit().value(),
        v.limit().unit().text(),
        v.value().isPresent()
            ? OptionalDouble.of(v.value().orElseThrow().best())
            : OptionalDouble.empty(),
        v.value().isPresent()
            ? OptionalDouble.of(v.value().orElseThrow().u())
            : OptionalDouble.empty(),
        v.pOver(),
        v.word().code(),
        v.limit().severity() == Severity.STOP || v.limit().severity() == Severity.CHANGE);
  }

  private static List<String> obstacles(Diet diet) {
    Floor floor = diet.intake().floor();
    return floor == Floor.FINE || floor == Floor.WARN ? List.of() : List.of(diet.intake().words());
  }

  private static SortedMap<String, Double> shortfalls(Diet diet) {
    SortedMap<String, Double> missing = new TreeMap<>();
    for (NutrientLine line : diet.lines().values()) {
      if (line.status() == NutrientStatus.BELOW && line.requirement().isPresent()) {
        missing.put(
            line.nutrient().code(), line.requirement().getAsDouble() - line.supply().best());
      }
    }
    return missing;
  }
}
