package rickyard.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.ChangeoverLine;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.report.text.Harmless;
import rickyard.report.text.Mass;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;

/** What could put a diet right, best first, with the days of the change. */
public final class ProposalPages {
  private static final String NOTHING = "–";

  /** An item now and then. */
  public record Item(
      String item, String role, String now, String then, String units, String cost, String days) {}

  /** A day of the changeover: one amount for each item. */
  public record Day(String day, List<String> amounts) {}

  /** One proposal. */
  public record Entry(
      String heading,
      String enough,
      String why,
      String after,
      String cost,
      List<Item> items,
      List<String> changeoverItems,
      List<Day> changeover) {}

  private ProposalPages() {}

  static List<Entry> of(HorseAdvice horse, Mass mass) {
    return horse.proposals().stream().map(proposal -> entry(horse, proposal, mass)).toList();
  }

  private static Entry entry(HorseAdvice horse, Proposal proposal, Mass mass) {
    List<ChangeoverLine> lines =
        horse.changeovers().stream().filter(line -> line.rank() == proposal.rank()).toList();
    Set<String> items = new LinkedHashSet<>();
    lines.forEach(line -> items.add(line.item()));
    return new Entry(
        proposal.rank() + ". " + Words.of("kind", proposal.kind()),
        enough(proposal),
        Plain.sentence(proposal.why()),
        after(proposal.diet()),
        cost(proposal),
        proposal.items().stream().map(item -> item(item, mass)).toList(),
        items.stream().map(item -> name(proposal, item)).toList(),
        days(lines, items, mass));
  }

  private static String enough(Proposal proposal) {
    if (proposal.diet() == null) {
      return "changes no amounts";
    }
    return proposal.enough()
        ? "enough: clears every limit that stops or asks for a change"
        : "not enough on its own";
  }

  private static String after(@Nullable DietSummary diet) {
    if (diet == null) {
      return "";
    }
    var worst = diet.worst();
    String nsc =
        "WSC + starch "
            + Shown.withUncertainty(diet.nscWscPercent(), diet.nscWscU())
            + " % of dry matter; "
            + Words.of("verdict", diet.verdict());
    if (worst == null) {
      return nsc;
    }
    String limit =
        " ("
            + Words.of("quantity", worst.quantity())
            + ", limit "
            + Shown.number(Double.valueOf(worst.limit()))
            + " "
            + Words.of("unit", worst.unit())
            + ")";
    String chance =
        worst.pOver() == null ? "" : "; chance of being over: " + Shown.chance(worst.pOver());
    return nsc + limit + chance;
  }

  /** The whole ration's cost; only where every item has a price. */
  private static String cost(Proposal proposal) {
    double sum = 0;
    for (ProposalItem item : proposal.items()) {
      Double cost = item.costPerDay();
      if (cost == null) {
        return "";
      }
      sum += cost;
    }
    return proposal.items().isEmpty() ? "" : Shown.twoDecimals(Double.valueOf(sum));
  }

  private static Item item(ProposalItem item, Mass mass) {
    return new Item(
        name(item),
        Harmless.line(item.role()).replace('-', ' '),
        mass.digits(item.nowKg()),
        mass.digits(item.thenKg()),
        item.unitsPerMonth() == null ? NOTHING : Shown.number(item.unitsPerMonth()),
        item.costPerDay() == null ? NOTHING : Shown.twoDecimals(item.costPerDay()),
        item.daysOfStock() == null ? NOTHING : Shown.number(item.daysOfStock()));
  }

  private static String name(ProposalItem item) {
    String id = Harmless.line(item.item());
    String name = Harmless.line(item.name());
    String batch = item.batch().isBlank() ? "" : ", batch " + Harmless.line(item.batch());
    return (name.isEmpty() || name.equals(id) ? id : name + " (" + id + ")") + batch;
  }

  private static String name(Proposal proposal, String item) {
    return proposal.items().stream()
        .filter(other -> other.item().equals(item))
        .findFirst()
        .map(ProposalPages::name)
        .orElse(Harmless.line(item));
  }

  private static List<Day> days(List<ChangeoverLine> lines, Set<String> items, Mass mass) {
    Map<Integer, Map<String, Double>> byDay = new TreeMap<>();
    for (ChangeoverLine line : lines) {
      byDay
          .computeIfAbsent(line.day(), d -> new LinkedHashMap<>())
          .merge(line.item(), line.kg(), Double::sum);
    }
    List<Day> days = new ArrayList<>();
    byDay.forEach(
        (day, amounts) ->
            days.add(
                new Day(
                    "Day " + day,
                    items.stream()
                        .map(
                            item ->
                                amounts.containsKey(item)
                                    ? mass.digits(amounts.getOrDefault(item, 0.0))
                                    : NOTHING)
                        .toList())));
    return days;
  }
}
