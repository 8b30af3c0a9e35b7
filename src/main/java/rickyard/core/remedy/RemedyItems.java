package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Lists a changed ration beside the one of today, with bags per month, cost and days of stock. */
final class RemedyItems {
  private RemedyItems() {}

  /** The whole changed ration: today's items in their order, then the new ones by id. */
  static List<RemedyItem> of(List<Serving> now, List<Serving> then, RemedySettings settings) {
    List<RemedyItem> items = new ArrayList<>();
    for (Serving a : now) {
      double kg =
          then.stream()
              .filter(t -> t.item().isSameAs(a.item()) && t.fedAsForage() == a.fedAsForage())
              .mapToDouble(Serving::kg)
              .sum();
      items.add(item(a.item(), a.kg(), kg, a.fedAsForage(), settings.monthDays()));
    }
    then.stream()
        .filter(
            t ->
                now.stream()
                    .noneMatch(
                        a -> a.item().isSameAs(t.item()) && a.fedAsForage() == t.fedAsForage()))
        .sorted(Comparator.comparing(Serving::item, Candidate.BY_KEY))
        .forEach(t -> items.add(item(t.item(), 0, t.kg(), t.fedAsForage(), settings.monthDays())));
    return items;
  }

  private static RemedyItem item(
      Candidate item, double nowKg, double thenKg, boolean fedAsForage, double days) {
    Stock stock = item.stock();
    return new RemedyItem(
        item,
        nowKg,
        thenKg,
        fedAsForage,
        stock.unitKg().isPresent()
            ? OptionalDouble.of(thenKg * days / stock.unitKg().getAsDouble())
            : OptionalDouble.empty(),
        stock.pricePerKg().isPresent()
            ? OptionalDouble.of(thenKg * stock.pricePerKg().getAsDouble())
            : OptionalDouble.empty(),
        thenKg > 0 ? stock.daysAt(thenKg) : OptionalDouble.empty());
  }
}
