package rickyard.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
  /** Proposals shown with their tables where there are very many horses. */
  static final int FIRST = 3;

  private static final String NOTHING = "–";

  /** To a reader of amounts 'weighed' is done on a scale. */
  private static final String NOT_WEIGHED = "Not weighed: ";

  /** An item now and then; {@code other} is what it is then in the other unit. */
  public record Item(
      String item,
      String anchor,
      String role,
      String now,
      String then,
      String other,
      String units,
      String cost,
      String days) {}

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

  static List<Entry> of(HorseAdvice horse, Mass mass, int most, Anchors anchors) {
    return horse.proposals().stream()
        .limit(most)
        .map(proposal -> entry(horse, proposal, mass, anchors))
        .toList();
  }

  /** What was left out after so many, and where it stands; empty where nothing was. */
  static String more(HorseAdvice horse, int most) {
    List<String> left = horse.proposals().stream().skip(most).map(ProposalPages::heading).toList();
    return left.isEmpty()
        ? ""
        : Shown.count(left.size(), "more proposal stands", "more proposals stand")
            + " in remedies.csv and changeover.csv: "
            + String.join("; ", left)
            + ".";
  }

  private static String heading(Proposal proposal) {
    return proposal.rank() + ". " + Words.of("kind", proposal.kind());
  }

  private static Entry entry(HorseAdvice horse, Proposal proposal, Mass mass, Anchors anchors) {
    List<ChangeoverLine> lines =
        horse.changeovers().stream().filter(line -> line.rank() == proposal.rank()).toList();
    Set<String> items = new LinkedHashSet<>();
    lines.forEach(line -> items.add(line.item()));
    return new Entry(
        heading(proposal),
        enough(proposal),
        Plain.sentence(proposal.why()).replace(NOT_WEIGHED, "Not reckoned with: "),
        after(proposal.diet()),
        cost(proposal),
        proposal.items().stream().map(item -> item(item, mass, anchors)).toList(),
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

  /** The ration's cost, with what is not in it. */
  private static String cost(Proposal proposal) {
    List<ProposalItem> fed = proposal.items().stream().filter(i -> i.thenKg() > 0).toList();
    List<ProposalItem> priced = fed.stream().filter(i -> i.costPerDay() != null).toList();
    if (priced.isEmpty()) {
      return "";
    }
    double sum = priced.stream().mapToDouble(ProposalPages::costPerDay).sum();
    String without =
        fed.stream()
            .filter(i -> i.costPerDay() == null)
            .map(i -> Harmless.line(i.name()))
            .collect(Collectors.joining(", "));
    String whole = without.isEmpty() ? "The whole ration costs " : "What has a price costs ";
    return whole
        + Shown.twoDecimals(Double.valueOf(sum))
        + " a day at the registers’ prices, in their currency"
        + (without.isEmpty() ? "." : "; without " + without + ".");
  }

  private static double costPerDay(ProposalItem item) {
    @Nullable Double cost = item.costPerDay();
    return cost == null ? 0 : cost;
  }

  private static Item item(ProposalItem item, Mass mass, Anchors anchors) {
    return new Item(
        name(item),
        anchors.findLot(item.item()),
        Harmless.line(item.role()).replace('-', ' '),
        mass.digits(item.nowKg()),
        mass.digits(item.thenKg()),
        item.thenKg() > 0 ? mass.other().words(item.thenKg()) : "",
        item.unitsPerMonth() == null ? NOTHING : Shown.number(item.unitsPerMonth()),
        item.costPerDay() == null ? NOTHING : Shown.twoDecimals(item.costPerDay()),
        item.daysOfStock() == null ? NOTHING : Shown.days(item.daysOfStock()));
  }

  static String name(ProposalItem item) {
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
