package rickyard.core.remedy.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class SharerTest {

  private static Need need(String id, int rank, long grams, String now, String... may) {
    return new Need(
        id, "ash", rank, true, grams, new TreeSet<>(List.of(may)), new TreeSet<>(Set.of(now)));
  }

  private static Pile pile(String lot, long grams, double price) {
    return new Pile(lot, "", grams, OptionalDouble.of(price));
  }

  private static Sharing share(List<Need> needs, Pile... piles) {
    return Sharer.share(new ShareProblem(needs, List.of(piles)));
  }

  private static Allotment of(String need, String lot, long grams) {
    return new Allotment(need, lot, "", grams);
  }

  @Test
  void aHundredthOfPriceIsSavedThoughItTakesTwoChanges() {
    Sharing sharing =
        share(
            List.of(need("a", 1, 1000, "X", "X", "Y"), need("b", 1, 1000, "Y", "Y", "Z")),
            pile("X", 1000, 100.01),
            pile("Y", 1000, 100),
            pile("Z", 1000, 100));

    assertEquals(List.of(of("a", "Y", 1000), of("b", "Z", 1000)), sharing.allotments());
  }

  @Test
  void atEqualPricesEveryHorseStaysOnItsHay() {
    Sharing sharing =
        share(
            List.of(need("a", 1, 1000, "X", "X", "Y"), need("b", 1, 1000, "Y", "Y", "X")),
            pile("X", 1000, 100),
            pile("Y", 1000, 100));

    assertEquals(List.of(of("a", "X", 1000), of("b", "Y", 1000)), sharing.allotments());
  }

  @Test
  void theLaterRankGivesWayOnlyForWhatTheFirstCannotHaveElsewhere() {
    Sharing sharing =
        share(
            List.of(need("late", 2, 1000, "X", "X"), need("first", 1, 1000, "X", "X", "Y")),
            pile("X", 1000, 100),
            pile("Y", 400, 300));

    assertEquals(
        List.of(of("first", "X", 600), of("first", "Y", 400), of("late", "X", 400)),
        sharing.allotments());
    assertEquals(new TreeMap<>(Map.of("late", 600L)), sharing.shortGrams());
  }

  @Test
  void ofEqualsTheLastByIdGoesShort() {
    Sharing sharing =
        share(
            List.of(
                need("c", 1, 500, "X", "X"),
                need("a", 1, 500, "X", "X"),
                need("b", 1, 500, "X", "X")),
            pile("X", 1200, 100));

    assertEquals(new TreeMap<>(Map.of("c", 300L)), sharing.shortGrams());
  }

  @Test
  void aLotWithoutAPriceCountsAsTheDearest() {
    Sharing sharing =
        Sharer.share(
            new ShareProblem(
                List.of(need("a", 1, 1000, "Q", "X", "Y")),
                List.of(
                    new Pile("X", "", 1000, OptionalDouble.empty()),
                    pile("Y", 1000, 250),
                    pile("Q", 1000, 260))));

    assertEquals(List.of(of("a", "Y", 1000)), sharing.allotments());
  }

  @Test
  void oneWhoNeedsNoClearedHayStaysHoweverDear() {
    Need other =
        new Need(
            "o",
            "ash",
            9,
            false,
            1000,
            new TreeSet<>(Set.of("X", "Y")),
            new TreeSet<>(Set.of("X")));

    assertEquals(
        List.of(of("o", "X", 1000)),
        share(List.of(other), pile("X", 1000, 400), pile("Y", 1000, 1)).allotments());
  }

  @Test
  void aNeedRoundsUpAndAPileDownToATenthOfAKilogram() {
    Sharing sharing = share(List.of(need("a", 1, 1001, "X", "X")), pile("X", 1099, 100));

    assertEquals(List.of(of("a", "X", 1000)), sharing.allotments());
    assertEquals(new TreeMap<>(Map.of("a", 100L)), sharing.shortGrams());
  }

  @Test
  void aNeedGivenTwiceIsRefused() {
    Need once = need("a", 1, 1000, "X", "X");

    assertThrows(
        IllegalArgumentException.class, () -> new ShareProblem(List.of(once, once), List.of()));
  }
}
