package rickyard.core.advice.due;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;

/** Who eats what, as it will be fed: the horses with computed diets only. */
final class Fed {
  private final SortedMap<String, List<Meal>> byItem;

  /** What one horse takes of one item in a day, kg as fed. */
  record Meal(String horse, String client, String batch, double kg) {}

  private Fed(SortedMap<String, List<Meal>> byItem) {
    this.byItem = byItem;
  }

  static Fed of(List<HorseAdvice> all) {
    return of(all, HorseAdvice::after);
  }

  /** The same, but who is told to stay on the present hay is fed on with that. */
  static Fed ofStay(List<HorseAdvice> all) {
    return of(all, a -> a.held().or(() -> Optional.ofNullable(a.after())).orElse(null));
  }

  private static Fed of(
      List<HorseAdvice> all, Function<HorseAdvice, @Nullable DietSummary> dietOf) {
    SortedMap<String, List<Meal>> byItem = new TreeMap<>();
    for (HorseAdvice advice : all) {
      @Nullable DietSummary diet = dietOf.apply(advice);
      if (diet != null) {
        for (PortionLine line : diet.portions()) {
          byItem
              .computeIfAbsent(line.item(), i -> new ArrayList<>())
              .add(new Meal(advice.horse(), advice.client(), line.batch(), line.kg()));
        }
      }
    }
    byItem.values().forEach(meals -> meals.sort(Comparator.comparing(Meal::horse)));
    return new Fed(byItem);
  }

  List<Meal> of(String item) {
    return byItem.getOrDefault(item, List.of());
  }

  SortedMap<String, List<Meal>> byItem() {
    return Collections.unmodifiableSortedMap(byItem);
  }

  /** {@code amber, toggle}: the horses, each once. */
  static String names(List<Meal> meals) {
    return String.join(", ", meals.stream().map(Meal::horse).distinct().toList());
  }

  static double kgPerDay(List<Meal> meals) {
    return meals.stream().mapToDouble(Meal::kg).sum();
  }
}
