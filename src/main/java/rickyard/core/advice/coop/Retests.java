package rickyard.core.advice.coop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.remedy.share.Need;
import rickyard.core.remedy.share.Pile;
import rickyard.core.remedy.share.ShareProblem;
import rickyard.core.remedy.share.Sharer;

/**
 * Which one lot, tested again, would free most hay for horses that lack it: the chance that it then
 * clears, times what it would bring them in a sharing solved anew.
 */
final class Retests {
  private static final double KG_PER_GRAM = 0.001;

  /** Less than this is not worth a line. */
  private static final double LEAST_KG = 1;

  private final CoOpContext context;
  private final LotStandings standings;
  private final List<Eater> eaters;
  private final List<Pile> piles;
  private final long shortNow;
  private final Map<String, Double> freed = new HashMap<>();

  Retests(CoOpContext context, LotStandings standings, List<Eater> eaters, List<Pile> piles) {
    this.context = context;
    this.standings = standings;
    // Who needs no cleared hay comes last and takes nothing from the others: it is left out.
    this.eaters = eaters.stream().filter(e -> !e.limited().isEmpty() && !e.mixed()).toList();
    this.piles = piles;
    this.shortNow = shortGrams(Set.of(), "");
  }

  /** One lot with what a test of it may say. */
  private record Candidate(String lot, RetestOutlook outlook, double mostGrams) {
    double bound() {
      return outlook.best() * mostGrams;
    }
  }

  List<RetestLine> lines() {
    if (shortNow == 0) {
      return List.of();
    }
    List<Candidate> candidates = candidates();
    List<RetestLine> found = new ArrayList<>();
    for (Candidate candidate : candidates) {
      if (found.size() < context.share().retestsShown() || mayPass(candidate, found)) {
        line(candidate).ifPresent(found::add);
      }
    }
    found.sort(
        Comparator.comparing((RetestLine l) -> l.chance() == null)
            .thenComparing(
                l -> l.expectedKg() == null ? l.freesKg() : l.expectedKg(),
                Comparator.reverseOrder())
            .thenComparing(RetestLine::lot));
    List<RetestLine> ranked = new ArrayList<>();
    for (RetestLine line :
        found.subList(0, Math.min(found.size(), context.share().retestsShown()))) {
      ranked.add(
          new RetestLine(
              ranked.size() + 1,
              line.lot(),
              line.groups(),
              line.chance(),
              line.freesKg(),
              line.expectedKg(),
              line.why()));
    }
    return ranked;
  }

  /** Whether more than the least of those found could come of it; saves solving what cannot. */
  private boolean mayPass(Candidate candidate, List<RetestLine> found) {
    double least =
        found.stream()
            .map(RetestLine::expectedKg)
            .mapToDouble(kg -> kg == null ? 0 : kg)
            .sorted()
            .skip(Math.max(0, found.size() - context.share().retestsShown()))
            .findFirst()
            .orElse(0);
    return candidate.bound() * KG_PER_GRAM / fraction(candidate.lot) >= least;
  }

  private List<Candidate> candidates() {
    SortedSet<String> wanted =
        eaters.stream()
            .flatMap(e -> e.limited().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    List<Candidate> candidates = new ArrayList<>();
    for (String lot : piles.stream().map(Pile::lot).distinct().toList()) {
      RetestOutlook outlook =
          RetestOutlook.of(
              lot,
              wanted,
              standings,
              Optional.ofNullable(context.analyses().get(lot)),
              context.share().retestCores());
      long grams = piles.stream().filter(p -> p.lot().equals(lot)).mapToLong(Pile::grams).sum();
      if (!outlook.groups().isEmpty() && isHay(lot)) {
        candidates.add(new Candidate(lot, outlook, Math.min(grams, shortNow)));
      }
    }
    candidates.sort(
        Comparator.comparingDouble((Candidate c) -> -c.bound())
            .thenComparing(c -> -c.mostGrams)
            .thenComparing(Candidate::lot));
    return candidates;
  }

  private boolean isHay(String lot) {
    return context.larder().find(lot, "").filter(f -> f.isForage() && !f.isStraw()).isPresent();
  }

  private Optional<RetestLine> line(Candidate candidate) {
    RetestOutlook outlook = candidate.outlook;
    double frees = freed(candidate.lot, outlook.groups());
    if (frees <= 0) {
      return Optional.empty();
    }
    @Nullable Double chance = null;
    @Nullable Double expected = null;
    if (!outlook.chances().isEmpty()) {
      chance = outlook.best();
      expected =
          outlook.outcomes().stream()
              .mapToDouble(o -> o.chance() * freed(candidate.lot, o.cleared()))
              .sum();
    }
    if (expected != null && expected < LEAST_KG) {
      return Optional.empty();
    }
    List<String> groups = List.copyOf(outlook.groups());
    return Optional.of(
        new RetestLine(0, candidate.lot, groups, chance, frees, expected, words(outlook)));
  }

  private String words(RetestOutlook outlook) {
    String cost = "; what a test costs is not known here";
    if (outlook.chances().isEmpty()) {
      return "nothing is known that a chance could rest on; kg are what it would bring if it cleared"
          + cost;
    }
    SortedMap<String, Double> chances = outlook.chances();
    String each =
        chances.entrySet().stream()
            .map(e -> String.format(Locale.ROOT, "%.0f %% for %s", 100 * e.getValue(), e.getKey()))
            .collect(Collectors.joining(", "));
    return "chance that both tests together clear: "
        + each
        + " (new sample of "
        + context.share().retestCores()
        + " cores, wet chemistry)"
        + cost;
  }

  /** Kg as fed of the lot that would go to horses that lack hay. */
  private double freed(String lot, Set<String> groups) {
    return freed.computeIfAbsent(
        lot + " " + new TreeSet<>(groups),
        key -> Math.max(0, shortNow - shortGrams(groups, lot)) * KG_PER_GRAM / fraction(lot));
  }

  private double fraction(String lot) {
    return context
        .larder()
        .find(lot, "")
        .map(Foodstuff::dryMatter)
        .map(d -> d.best() / 100)
        .orElse(1.0);
  }

  /** What is short of hay that clears, with one lot cleared for some groups besides. */
  private long shortGrams(Set<String> groups, String lot) {
    List<Need> needs = new ArrayList<>();
    IdentityHashMap<Set<String>, Set<String>> besides = new IdentityHashMap<>();
    for (Eater eater : eaters) {
      boolean isNew =
          !lot.isEmpty()
              && !eater.may().contains(lot)
              && isChewable(eater, lot)
              && eater.groups().stream()
                  .allMatch(g -> groups.contains(g) || standings.isCleared(lot, List.of(g)));
      Eater then = eater;
      if (isNew) {
        // Most eaters share one set of thousands of lots: it is copied once for all of them.
        then = eater.withMay(besides.computeIfAbsent(eater.may(), may -> with(may, lot)));
      }
      needs.add(then.need(context.horizonDays()));
    }
    return Sharer.shortByRank(new ShareProblem(needs, piles)).values().stream()
        .mapToLong(Long::longValue)
        .sum();
  }

  private static Set<String> with(Set<String> lots, String lot) {
    return Stream.concat(lots.stream(), Stream.of(lot)).collect(Collectors.toUnmodifiableSet());
  }

  private boolean isChewable(Eater eater, String lot) {
    return eater.now().contains(lot)
        || eater.members().stream().noneMatch(m -> m.horse().has("dental"))
        || context
            .larder()
            .find(lot, "")
            .map(Foodstuff::form)
            .filter(context.remedy().chewableForms()::contains)
            .isPresent();
  }
}
