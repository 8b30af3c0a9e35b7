package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What horses take of lots per day.
 *
 * @param coming as they will be fed
 * @param today by the rations in force, before any delivery takes a place in them
 * @param either of each lot the larger of both, horse by horse
 * @param eaten what was taken on the days before
 */
public record HayUse(Day coming, Day today, Day either, HayEaten eaten) {
  public static final HayUse NONE = of(List.of(), List.of(), HayEaten.NONE);

  /** Adds up what horses take. */
  public static HayUse of(List<Taken> coming, List<Taken> today, HayEaten eaten) {
    Day then = Day.of(coming);
    Day now = Day.of(today);
    List<Taken> either = new ArrayList<>();
    Stream.concat(coming.stream(), today.stream())
        .map(t -> new Taken(t.horse(), t.client(), t.lot(), 0))
        .distinct()
        .map(
            t ->
                t.with(Math.max(then.ofHorse(t.lot(), t.horse()), now.ofHorse(t.lot(), t.horse()))))
        .forEach(either::add);
    return new HayUse(then, now, Day.of(either), eaten);
  }

  /**
   * What one horse takes of a lot.
   *
   * @param horse register key
   * @param client whose horse it is
   * @param lot register key
   * @param kg as fed per day, at least 0
   */
  public record Taken(String horse, String client, String lot, double kg) {
    private Taken with(double other) {
      return new Taken(horse, client, lot, other);
    }
  }

  /** Sums of what is taken on one day, kg as fed. */
  public static final class Day {
    private final Map<String, Double> byLot = new TreeMap<>();
    private final Map<String, Map<String, Double>> byClient = new TreeMap<>();
    private final Map<String, Map<String, Double>> byHorse = new TreeMap<>();

    private Day() {}

    /** Adds up what horses take. */
    public static Day of(List<Taken> all) {
      Day day = new Day();
      for (Taken taken : all) {
        day.byLot.merge(taken.lot(), taken.kg(), Double::sum);
        add(day.byClient, taken.client(), taken);
        add(day.byHorse, taken.horse(), taken);
      }
      return day;
    }

    private static void add(Map<String, Map<String, Double>> sums, String who, Taken taken) {
      sums.computeIfAbsent(who, w -> new TreeMap<>()).merge(taken.lot(), taken.kg(), Double::sum);
    }

    /** What all horses but one take of a lot. */
    double ofOthers(String lot, String horse) {
      return rest(byLot.getOrDefault(lot, 0.0), ofHorse(lot, horse));
    }

    /** What the other horses of a client take of a lot. */
    double ofOthersAt(String client, String lot, String horse) {
      return rest(ofClient(lot, client), ofHorse(lot, horse));
    }

    /** What all horses of a client take of a lot. */
    double ofClient(String lot, String client) {
      return byClient.getOrDefault(client, Map.of()).getOrDefault(lot, 0.0);
    }

    private double ofHorse(String lot, String horse) {
      return byHorse.getOrDefault(horse, Map.of()).getOrDefault(lot, 0.0);
    }

    /** Nothing where only binary rounding is left. */
    private static double rest(double all, double own) {
      double rest = all - own;
      return rest > 1e-9 * all ? rest : 0;
    }
  }
}
