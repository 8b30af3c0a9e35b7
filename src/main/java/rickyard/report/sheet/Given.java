package rickyard.report.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;
import rickyard.core.advice.ProposalItem;
import rickyard.report.view.Serving;

/**
 * An item that a sheet speaks of.
 *
 * @param isForage fed as forage, not in the bucket
 * @param nowKg as fed per day before a change
 * @param kg as fed per day; 0 if it is fed no longer
 */
record Given(
    String item,
    String batch,
    String name,
    String role,
    boolean isForage,
    double nowKg,
    double kg,
    Serving serving) {
  private static final Serving UNSAID = new Serving(null, "", false);
  private static final double EQUAL_KG = 1e-9;

  boolean isChanged() {
    return Math.abs(kg - nowKg) > EQUAL_KG;
  }

  boolean isStopped() {
    return kg <= 0 && nowKg > 0;
  }

  /** The ration that a course tells, forage first, the most first; empty where it tells none. */
  static List<Given> of(HorseAdvice horse, Course course, Map<String, Serving> servings) {
    Stream<Given> items =
        switch (course) {
          case CHANGE, HOLD ->
              Course.chosen(horse).stream()
                  .flatMap(p -> p.items().stream())
                  .map(i -> proposed(i, servings));
          case KEEP, BORDERLINE ->
              Optional.ofNullable(horse.after()).stream()
                  .flatMap(d -> d.portions().stream())
                  .map(p -> fed(p, before(horse, p), servings));
          case VET_FIRST, MISSING, NOT_CLEARED -> Stream.empty();
        };
    return sorted(items);
  }

  /** Forage first, the most first; what is stopped last. */
  static List<Given> sorted(Stream<Given> items) {
    return items
        .filter(g -> g.kg() > 0 || g.nowKg() > 0)
        .sorted(
            Comparator.comparing(Given::isStopped)
                .thenComparing(Given::isForage, Comparator.reverseOrder())
                .thenComparing(Given::kg, Comparator.reverseOrder())
                .thenComparing(Given::item)
                .thenComparing(Given::batch))
        .toList();
  }

  private static double before(HorseAdvice horse, PortionLine portion) {
    DietSummary before = horse.before();
    return before == null
        ? portion.kg()
        : before.portions().stream()
            .filter(p -> p.item().equals(portion.item()) && p.batch().equals(portion.batch()))
            .mapToDouble(PortionLine::kg)
            .sum();
  }

  private static Given fed(PortionLine portion, double before, Map<String, Serving> servings) {
    return new Given(
        portion.item(),
        portion.batch(),
        portion.name(),
        portion.role(),
        portion.asForage(),
        before,
        portion.kg(),
        serving(portion.item(), portion.asForage(), servings));
  }

  private static Given proposed(ProposalItem item, Map<String, Serving> servings) {
    boolean isForage = isForage(item, servings);
    return new Given(
        item.item(),
        item.batch(),
        item.name(),
        item.role(),
        isForage,
        item.nowKg(),
        item.thenKg(),
        serving(item.item(), isForage, servings));
  }

  private static boolean isForage(ProposalItem item, Map<String, Serving> servings) {
    return isForage(item.item(), item.role(), servings);
  }

  static boolean isForage(String item, String role, Map<String, Serving> servings) {
    Serving known = servings.get(item);
    return known == null
        ? role.endsWith("hay")
            || role.endsWith("forage")
            || role.equals("haylage")
            || role.equals("straw")
        : known.asForage();
  }

  /** A forage that is new is given in as many meals as the forage before it. */
  static Serving serving(String item, boolean isForage, Map<String, Serving> servings) {
    Serving known = servings.get(item);
    if (known != null) {
      return known;
    }
    return isForage
        ? servings.values().stream()
            .filter(s -> s.asForage() && s.meals() != null)
            .max(Comparator.comparingInt(s -> s.meals() == null ? 0 : s.meals()))
            .map(s -> new Serving(s.meals(), "", true))
            .orElse(UNSAID)
        : UNSAID;
  }
}
