package rickyard.core.remedy.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SharerPropertyTest {

  private static ShareProblem problem(long seed) {
    return Offices.random(seed, 20 + (int) (seed % 30), 4 + (int) (seed % 12));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void noPileGivesMoreThanItHasAndNobodyGetsWhatItMayNotHave(long seed) {
    ShareProblem problem = problem(seed);
    Sharing sharing = Sharer.share(problem);
    Map<String, Need> needs = new HashMap<>();
    problem.needs().forEach(n -> needs.put(n.id(), n));
    Map<List<String>, Long> given = new HashMap<>();
    Map<String, Long> got = new HashMap<>();
    for (Allotment a : sharing.allotments()) {
      Need need = needs.get(a.need());
      assertTrue(need.may().contains(a.lot()), () -> a + " for " + need);
      assertTrue(a.client().isEmpty() || a.client().equals(need.client()), a::toString);
      assertTrue(a.grams() > 0);
      given.merge(List.of(a.lot(), a.client()), a.grams(), Long::sum);
      got.merge(a.need(), a.grams(), Long::sum);
    }
    for (Pile pile : problem.piles()) {
      long from = given.getOrDefault(List.of(pile.lot(), pile.client()), 0L);
      assertTrue(from <= pile.grams(), () -> from + " g of " + pile);
    }
    for (Need need : problem.needs()) {
      long all = got.getOrDefault(need.id(), 0L) + sharing.shortGrams().getOrDefault(need.id(), 0L);
      assertEquals(Units.needed(need) * Units.GRAMS, all, need.id());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void noExchangeMakesItBetterAndAWorseSharingIsToldFromIt(long seed) {
    ShareProblem problem = problem(seed);
    Sharing sharing = Sharer.share(problem);
    assertTrue(new NoBetter(problem, sharing).holds());

    List<Allotment> fewer = sharing.allotments().subList(1, sharing.allotments().size());
    Allotment dropped = sharing.allotments().get(0);
    SortedMap<String, Long> without = new TreeMap<>(sharing.shortGrams());
    without.merge(dropped.need(), dropped.grams(), Long::sum);
    assertFalse(new NoBetter(problem, new Sharing(fewer, without)).holds());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void theOrderOfInputDoesNotCount(long seed) {
    ShareProblem problem = problem(seed);
    List<Need> needs = new ArrayList<>(problem.needs());
    List<Pile> piles = new ArrayList<>(problem.piles());
    Collections.shuffle(needs, new Random(seed));
    Collections.shuffle(piles, new Random(seed + 1));

    assertEquals(Sharer.share(problem), Sharer.share(new ShareProblem(needs, piles)));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void moreStockNeverMakesAShortageLarger(long seed) {
    ShareProblem problem = problem(seed);
    Random random = new Random(seed);
    List<Pile> piles = new ArrayList<>(problem.piles());
    int grown = random.nextInt(piles.size());
    Pile old = piles.get(grown);
    piles.set(
        grown,
        new Pile(
            old.lot(),
            old.client(),
            old.grams() + 100L * random.nextInt(5000),
            old.pricePerTonneDm()));

    SortedMap<Integer, Long> before = Sharer.shortByRank(problem);
    SortedMap<Integer, Long> after = Sharer.shortByRank(new ShareProblem(problem.needs(), piles));

    assertFalse(isWorse(after, before), before + " then " + after);
    assertTrue(sum(after) <= sum(before), before + " then " + after);
  }

  /** Whether the first rank in which they differ lacks more. */
  private static boolean isWorse(SortedMap<Integer, Long> a, SortedMap<Integer, Long> b) {
    for (int rank = 0; rank < 5; rank++) {
      int order = Long.compare(a.getOrDefault(rank, 0L), b.getOrDefault(rank, 0L));
      if (order != 0) {
        return order > 0;
      }
    }
    return false;
  }

  private static long sum(SortedMap<Integer, Long> grams) {
    return grams.values().stream().mapToLong(Long::longValue).sum();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aFurtherHorseOfALaterRankTakesNothingFromThoseBefore(long seed) {
    ShareProblem problem = problem(seed);
    List<Need> needs = new ArrayList<>(problem.needs());
    needs.removeIf(n -> n.rank() == 4);

    SortedMap<Integer, Long> without = Sharer.shortByRank(new ShareProblem(needs, problem.piles()));
    SortedMap<Integer, Long> with = Sharer.shortByRank(problem);
    with.remove(4);

    assertEquals(without, with);
  }
}
