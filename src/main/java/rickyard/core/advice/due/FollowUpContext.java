package rickyard.core.advice.due;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.DeliveredHay;
import rickyard.core.advice.HayEaten;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Lot;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Feed;
import rickyard.core.nutrition.Horse;
import rickyard.core.remedy.RemedySettings;

/**
 * All that decides what falls due.
 *
 * @param asOf the morning's day
 * @param horses by id
 * @param lots by id
 * @param feeds every batch
 * @param deliveries of lots
 * @param eaten what was fed of them before
 * @param decisions what clients were told and accepted
 * @param advice on every horse, with what it will be fed
 * @param verdicts by lot
 * @param sampledOn day of sampling of the analysis in force, by lot, where it is known
 * @param open questions that wait
 * @param remedy for the days of a changeover
 * @param settings how long things hold
 */
public record FollowUpContext(
    LocalDate asOf,
    SortedMap<String, Horse> horses,
    SortedMap<String, Lot> lots,
    List<Feed> feeds,
    List<Delivery> deliveries,
    HayEaten eaten,
    List<Decision> decisions,
    List<HorseAdvice> advice,
    SortedMap<String, List<Verdict>> verdicts,
    SortedMap<String, LocalDate> sampledOn,
    List<OpenPoint> open,
    RemedySettings remedy,
    FollowUpSettings settings) {

  public FollowUpContext {
    requireNonNull(asOf, "asOf");
    horses = Collections.unmodifiableSortedMap(new TreeMap<>(horses));
    lots = Collections.unmodifiableSortedMap(new TreeMap<>(lots));
    feeds = List.copyOf(feeds);
    deliveries = List.copyOf(deliveries);
    requireNonNull(eaten, "eaten");
    decisions = List.copyOf(decisions);
    advice = List.copyOf(advice);
    verdicts = Collections.unmodifiableSortedMap(new TreeMap<>(verdicts));
    sampledOn = Collections.unmodifiableSortedMap(new TreeMap<>(sampledOn));
    open = List.copyOf(open);
    requireNonNull(remedy, "remedy");
    requireNonNull(settings, "settings");
  }

  DeliveredHay delivered() {
    return new DeliveredHay(deliveries, eaten, asOf);
  }

  /** Whether a day has come or comes within the days that are looked ahead. */
  boolean isNear(LocalDate day) {
    return !day.isAfter(asOf.plusDays(settings.aheadDays()));
  }

  Optional<Horse> findHorse(String id) {
    return Optional.ofNullable(horses.get(id));
  }
}
