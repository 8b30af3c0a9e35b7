package rickyard.core.remedy.share;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;

/** Random problems of sharing, from a seed: ranks that nest in what clears, as limits do. */
final class Offices {
  private Offices() {}

  /**
   * A problem.
   *
   * @param horses how many needs
   * @param lots how many lots, each with a pile for anybody or for one client
   */
  static ShareProblem random(long seed, int horses, int lots) {
    Random random = new Random(seed);
    int clients = Math.max(1, horses / 3);
    List<SortedSet<String>> cleared = new ArrayList<>();
    for (int rank = 0; rank < 5; rank++) {
      cleared.add(new TreeSet<>());
    }
    for (int lot = 0; lot < lots; lot++) {
      int grade = random.nextInt(5);
      for (int rank = grade; rank < 5; rank++) {
        cleared.get(rank).add("L" + lot);
      }
    }
    List<Need> needs = new ArrayList<>();
    long total = 0;
    for (int h = 0; h < horses; h++) {
      int rank = random.nextInt(5);
      long grams = 90_000L + random.nextInt(240_000);
      total += grams;
      SortedSet<String> now = new TreeSet<>(List.of("L" + random.nextInt(lots)));
      String client = "C" + random.nextInt(clients);
      needs.add(new Need("H" + h, client, rank, rank < 4, grams, cleared.get(rank), now));
    }
    return new ShareProblem(needs, piles(random, lots, clients, total));
  }

  private static List<Pile> piles(Random random, int lots, int clients, long total) {
    List<Pile> piles = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      long grams = (long) (1.0 * total / lots * random.nextDouble() * 2.2);
      boolean isOpen = random.nextInt(5) > 0;
      OptionalDouble price =
          random.nextInt(10) == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of(120 + random.nextInt(150));
      piles.add(
          new Pile(
              "L" + lot,
              isOpen ? "" : "C" + random.nextInt(clients),
              grams,
              isOpen ? price : OptionalDouble.of(0)));
      if (isOpen && random.nextInt(3) == 0) {
        piles.add(
            new Pile("L" + lot, "C" + random.nextInt(clients), grams / 8, OptionalDouble.of(0)));
      }
    }
    return piles;
  }
}
