package rickyard.core.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.quantity.Cites;

/** What would open the way where nothing in reach is enough: a test, more stock, another forage. */
final class WayOut {
  private static final int MOST_NAMED = 3;

  private final RemedyRequest request;

  WayOut(RemedyRequest request) {
    this.request = request;
  }

  /** A sentence with a space before it; empty where nothing can be told. */
  String sentence() {
    List<String> ways = new ArrayList<>();
    ways.addAll(firstTests());
    ways.addAll(secondTests());
    ways.addAll(moreStock());
    ways.addAll(otherForage());
    return ways.isEmpty() ? "" : " What would open the way: " + String.join("; ", ways) + ".";
  }

  /** Lots in reach, fed or not, whose contents nobody knows. */
  private List<String> firstTests() {
    List<Candidate> unknown = lots().filter(c -> !request.isKnown(c)).toList();
    return unknown.isEmpty() ? List.of() : List.of("a test of " + names(unknown));
  }

  private Stream<Candidate> lots() {
    return Stream.concat(request.ration().stream().map(Serving::item), request.reach().stream())
        .filter(c -> c.kind() == CandidateKind.LOT && c.isForage() && !c.isStraw())
        .collect(Collectors.toMap(Candidate::key, c -> c, (a, b) -> a, TreeMap::new))
        .values()
        .stream();
  }

  /** Lots that lie under every limit of the diet, some of them by less than the guard band. */
  private List<String> secondTests() {
    List<Candidate> near =
        lots()
            .filter(request::isKnown)
            .filter(c -> isWithin(c, 0))
            .filter(c -> !isWithin(c, 1))
            .toList();
    return near.isEmpty() ? List.of() : List.of("a second test of " + names(near));
  }

  /** Whether a forage alone keeps every limit with a part of the guard band. */
  private boolean isWithin(Candidate item, double part) {
    return request.dietLimits().stream()
        .allMatch(
            l ->
                item.findContent(l.quantity())
                    .map(
                        c ->
                            l.isMaximum()
                                ? c.value() + part * l.z() * c.u() <= l.value()
                                : c.value() - part * l.z() * c.u() >= l.value())
                    .orElse(true));
  }

  /** Lots that would be enough as all of the hay if more of them were there. */
  private List<String> moreStock() {
    double days = request.settings().stockHorizonDays();
    double target = request.replaceable().stream().mapToDouble(Serving::dmKg).sum();
    List<String> words = new ArrayList<>();
    lots()
        .filter(c -> request.isKnown(c) && isWithin(c, 1))
        .forEach(
            c -> {
              double kgPerDay = target / c.dryMatterFraction();
              double missing = (kgPerDay - c.stock().mostKgPerDay(days)) * days;
              if (missing > 0 && target > 0) {
                words.add(
                    Figures.number(Math.ceil(missing))
                        + " kg more of "
                        + c.name()
                        + " for "
                        + Figures.number(days)
                        + " days");
              }
            });
    return words.stream().limit(MOST_NAMED).toList();
  }

  /** The content up to which a forage in place of all hay is enough. */
  private List<String> otherForage() {
    List<String> words = new ArrayList<>();
    for (DietLimit limit : request.dietLimits()) {
      OptionalDouble most = mostContent(limit);
      if (limit.isMaximum() && most.isPresent() && most.getAsDouble() > 0) {
        words.add(limit.words() + " of at most " + Figures.rounded(most.getAsDouble()));
      }
    }
    return words.isEmpty()
        ? List.of()
        : List.of(
            "a forage in place of the hay with "
                + words.stream().distinct().collect(Collectors.joining(" and "))
                + " (% of dry matter, tested to "
                + Figures.percent(request.settings().assumedRelativeU())
                + " of the limit)");
  }

  /**
   * The largest content c of a forage of dry matter T with which the whole diet keeps a limit L:
   * {@code c = L − (Σ d·(cᵢ − L) + z·√(Σ (d·uᵢ)² + (T·u)²)) / T} over what is fed besides.
   */
  @Cites(source = "definition", locator = "mean of a mix by dry matter, guard band z times u")
  private OptionalDouble mostContent(DietLimit limit) {
    List<Serving> replaced = request.replaceable();
    double target = replaced.stream().mapToDouble(Serving::dmKg).sum();
    double excess = 0;
    double variance = 0;
    for (Serving a : request.ration()) {
      if (!replaced.contains(a)) {
        Content c = a.item().findContent(limit.quantity()).orElse(new Content(0, 0));
        excess += a.dmKg() * (c.value() - limit.value());
        variance += a.dmKg() * c.u() * a.dmKg() * c.u();
      }
    }
    double own = target * request.settings().assumedRelativeU() * limit.value();
    return target <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            limit.value() - (excess + limit.z() * StrictMath.sqrt(variance + own * own)) / target);
  }

  private static String names(List<Candidate> items) {
    String named =
        items.stream().limit(MOST_NAMED).map(Candidate::name).collect(Collectors.joining(" or "));
    return items.size() > MOST_NAMED
        ? named + " or one of " + (items.size() - MOST_NAMED) + " more"
        : named;
  }
}
