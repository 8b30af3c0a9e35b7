package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import rickyard.core.forage.Analysis;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Feed;
import rickyard.core.nutrition.FeedingStandards;
import rickyard.core.nutrition.Foodstuff;
import rickyard.core.nutrition.Foodstuffs;

/**
 * Everything that can be fed, with the values that are in force for it.
 *
 * <p>A lot without an analysis in force has typical values only, and no sugar value at all.
 */
public final class Larder {
  private final SortedMap<String, Lot> lots;
  private final List<Feed> feeds;
  private final SortedMap<String, Analysis> lotAnalyses;
  private final SortedMap<String, Analysis> certificates;
  private final Foodstuffs foodstuffs;

  /** What was made already; making is a pure function, so a second making would be equal. */
  private final Map<String, Optional<Foodstuff>> made = new ConcurrentHashMap<>();

  /**
   * Fills the larder.
   *
   * @param lots by id
   * @param feeds every batch of every feed
   * @param analyses in force; those of lots have no batch, certificates of feeds have one
   */
  public Larder(
      SortedMap<String, Lot> lots,
      List<Feed> feeds,
      List<Analysis> analyses,
      FeedingStandards standards) {
    this.lots = Collections.unmodifiableSortedMap(new TreeMap<>(lots));
    this.feeds = List.copyOf(feeds);
    this.foodstuffs = new Foodstuffs(requireNonNull(standards, "standards"));
    this.lotAnalyses = new TreeMap<>();
    this.certificates = new TreeMap<>();
    for (Analysis analysis : analyses) {
      if (this.lots.containsKey(analysis.subject())) {
        lotAnalyses.put(analysis.subject(), analysis);
      } else {
        certificates.put(key(analysis.subject(), analysis.batch()), analysis);
      }
    }
  }

  private Larder(Larder other) {
    this.lots = other.lots;
    this.feeds = other.feeds;
    this.foodstuffs = other.foodstuffs;
    this.lotAnalyses = new TreeMap<>();
    this.certificates = new TreeMap<>();
  }

  /** The same items as nobody had analysed any of them: typical values and labels only. */
  Larder unanalysed() {
    return new Larder(this);
  }

  private static String key(String feed, String batch) {
    return feed + "\u0001" + batch;
  }

  public SortedMap<String, Lot> lots() {
    return lots;
  }

  public List<Feed> feeds() {
    return feeds;
  }

  public Optional<Lot> findLot(String id) {
    return Optional.ofNullable(lots.get(id));
  }

  /**
   * The foodstuff of a ration item: a lot, the batch named, or the only batch where none is named.
   *
   * @return empty if no register knows it, or its batch is needed and not said
   */
  public Optional<Foodstuff> find(String item, String batch) {
    return made.computeIfAbsent(key(item, batch), k -> make(item, batch));
  }

  private Optional<Foodstuff> make(String item, String batch) {
    Lot lot = lots.get(item);
    if (lot != null) {
      Analysis analysis = lotAnalyses.get(item);
      return analysis == null ? foodstuffs.ofUnanalysedLot(lot) : foodstuffs.ofLot(lot, analysis);
    }
    return findFeed(item, batch).map(this::ofFeed);
  }

  private Foodstuff ofFeed(Feed feed) {
    Analysis certificate = certificates.get(key(feed.id(), feed.batch()));
    return certificate == null ? foodstuffs.ofFeed(feed) : foodstuffs.ofFeed(feed, certificate);
  }

  Optional<Feed> findFeed(String item, String batch) {
    List<Feed> all = feeds.stream().filter(f -> f.id().equals(item)).toList();
    Optional<Feed> named = all.stream().filter(f -> f.batch().equals(batch)).findFirst();
    return named.isPresent() || !batch.isEmpty() || all.size() != 1
        ? named
        : Optional.of(all.get(0));
  }
}
