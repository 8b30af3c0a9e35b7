package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Measured;

/** What must hold for every hay and every report of it. Seeded; the seed is in each message. */
class LotJudgePropertyTest {
  private static final long SEED = 20261126L;
  private static final int CASES = 1_500;
  private static final List<MaterialClass> MATERIALS =
      List.of(
          MaterialClass.GRASS,
          MaterialClass.LEGUME,
          MaterialClass.CEREAL,
          MaterialClass.HAYLAGE,
          MaterialClass.STRAW);
  private static final List<String> SUGARS = List.of("WSC", "ESC", "STARCH");
  private static final List<String> HAZARDS =
      List.of("NO3_N", "SE", "FE", "ERGOVALINE", "OXALATE", "CA", "MOULD");

  private interface Case {
    void check(Random random, String message);
  }

  private static void times(Case one) {
    Random random = new Random(SEED);
    for (int i = 0; i < CASES; i++) {
      one.check(random, "seed " + SEED + ", case " + i);
    }
  }

  /** The true contents of one hay, on dry matter; ESC is a part of WSC. */
  private static Map<String, Double> hay(Random random) {
    TreeMap<String, Double> hay = new TreeMap<>();
    double wsc = 1 + 19 * random.nextDouble();
    hay.put("WSC", wsc);
    hay.put("ESC", wsc * (0.3 + 0.7 * random.nextDouble()));
    hay.put("STARCH", 4 * random.nextDouble());
    hay.put("NO3_N", 5000 * random.nextDouble());
    hay.put("SE", 4 * random.nextDouble());
    hay.put("FE", 900 * random.nextDouble());
    hay.put("ERGOVALINE", 0.8 * random.nextDouble());
    hay.put("OXALATE", 0.01 + 1.5 * random.nextDouble());
    hay.put("CA", 0.2 + random.nextDouble());
    hay.put("MOULD", 2e6 * random.nextDouble());
    return hay;
  }

  private static Hay report(Map<String, Double> figures, Random like) {
    Hay hay =
        Hay.of()
            .material(MATERIALS.get(like.nextInt(MATERIALS.size())))
            .method(like.nextBoolean() ? Method.WET : Method.NIR)
            .cores(1 + like.nextInt(25));
    figures.forEach(hay::dm);
    return hay;
  }

  private static Map<String, Word> words(Hay hay) {
    return hay.judge().stream()
        .collect(Collectors.toMap(v -> v.limit().id(), Verdict::word, (a, b) -> a, TreeMap::new));
  }

  @Test
  void moreOfWhatIsLimitedNeverImprovesAVerdict() {
    times(
        (random, message) -> {
          Map<String, Double> hay = hay(random);
          long like = random.nextLong();
          List<String> all = new ArrayList<>(SUGARS);
          all.addAll(HAZARDS);
          all.remove("CA");
          String code = all.get(random.nextInt(all.size()));
          if (code.equals("ESC")) {
            hay.put("WSC", 25.0);
          }
          Map<String, Word> before = words(report(hay, new Random(like)));
          hay.compute(code, (k, v) -> v * (1 + random.nextDouble()));
          Map<String, Word> after = words(report(hay, new Random(like)));
          before.forEach(
              (limit, word) ->
                  assertTrue(
                      word.compareTo(after.getOrDefault(limit, word)) <= 0,
                      message + ": " + code + ", " + limit + " " + word + " -> " + after));
        });
  }

  @Test
  void moreCalciumNeverMakesTheRatioToOxalateWorse() {
    times(
        (random, message) -> {
          Map<String, Double> hay = hay(random);
          long like = random.nextLong();
          Word before = words(report(hay, new Random(like))).get("all-ca-oxalate-lot");
          if (before == null) {
            return;
          }
          hay.compute("CA", (k, v) -> v * (1 + random.nextDouble()));
          Word after = words(report(hay, new Random(like))).get("all-ca-oxalate-lot");
          assertTrue(after.compareTo(before) <= 0, message + " " + before + " -> " + after);
        });
  }

  @Test
  void aReportThatSaysLessNeverClearsWhatAFullerOneDoesNot() {
    times(
        (random, message) -> {
          Map<String, Double> hay = hay(random);
          long like = random.nextLong();
          Map<String, Word> full = words(report(hay, new Random(like)));
          TreeMap<String, Double> less = new TreeMap<>(hay);
          less.keySet().removeIf(k -> random.nextInt(3) == 0);
          Map<String, Word> part = words(report(less, new Random(like)));
          part.forEach(
              (limit, word) -> {
                if (word == Word.CLEARS) {
                  assertEquals(Word.CLEARS, full.get(limit), message + ": " + limit);
                }
              });
        });
  }

  /**
   * From a part alone it may exceed where the sum is just within the guard band, since the sum's
   * error is the greater; but what is condemned from a part is over the limit in the sum too.
   */
  @Test
  void whatAPartCondemnsIsOverTheLimitInTheFullReport() {
    times(
        (random, message) -> {
          Map<String, Double> hay = hay(random);
          long like = random.nextLong();
          Map<String, Word> full = words(report(hay, new Random(like)));
          TreeMap<String, Double> less = new TreeMap<>(hay);
          less.keySet().removeIf(k -> random.nextInt(3) == 0);
          Map<String, Word> part = words(report(less, new Random(like)));
          part.forEach(
              (limit, word) -> {
                if (word == Word.EXCEEDS) {
                  Word whole = full.get(limit);
                  assertTrue(
                      whole == Word.EXCEEDS || whole == Word.BORDERLINE_OVER,
                      message + ": " + limit + " is " + whole);
                }
              });
        });
  }

  @Test
  void escAndStarchNeverClearALimitOnWscAndStarch() {
    times(
        (random, message) -> {
          Map<String, Double> hay = hay(random);
          hay.keySet().retainAll(List.of("ESC", "STARCH"));
          Map<String, Word> words = words(report(hay, random));
          words.forEach(
              (limit, word) -> {
                if (limit.contains("nsc")) {
                  assertFalse(word.isCleared(), message + ": " + limit);
                }
              });
        });
  }

  @Test
  void fewerCoresOrTheLessCertainMethodNeverClearWhatWasNotCleared() {
    times(
        (random, message) -> {
          Map<String, Double> hay = hay(random);
          int cores = 1 + random.nextInt(30);
          MaterialClass material = MATERIALS.get(random.nextInt(MATERIALS.size()));
          Hay sure = Hay.of().material(material).method(Method.WET).cores(cores + 5);
          Hay unsure = Hay.of().material(material).method(Method.NIR).cores(cores);
          hay.forEach(sure::dm);
          hay.forEach(unsure::dm);
          Map<String, Word> certain = words(sure);
          words(unsure)
              .forEach(
                  (limit, word) -> {
                    if (word == Word.CLEARS) {
                      assertEquals(Word.CLEARS, certain.get(limit), message + ": " + limit);
                    }
                  });
        });
  }

  @Test
  void theOrderOfFiguresAndOfLimitsChangesNothing() {
    times(
        (random, message) -> {
          Map<String, Double> hay = hay(random);
          List<String> codes = new ArrayList<>(hay.keySet());
          Collections.shuffle(codes, random);
          Hay one = Hay.of();
          Hay other = Hay.of();
          hay.forEach(one::dm);
          codes.forEach(c -> other.dm(c, hay.get(c)));
          List<Limit> limits = new ArrayList<>(Hay.TABLES.limits());
          Collections.shuffle(limits, random);
          AccountedAnalysis analysis = other.analysis();
          assertEquals(
              one.judge(),
              LotJudge.judge(analysis, new LotRules(limits, Hay.TABLES.settings())),
              message);
          assertEquals(Suitability.of(one.judge()), Suitability.of(other.judge()), message);
        });
  }

  /** The advice is held against the judging itself: with one core less the value does not clear. */
  @Test
  void theCoresThatSettleAValueAreTheFewestThatDo() {
    Random random = new Random(SEED);
    int settled = 0;
    for (int i = 0; i < CASES; i++) {
      double wsc = 6 + 4 * random.nextDouble();
      int cores = 1 + random.nextInt(4);
      Method method = random.nextBoolean() ? Method.WET : Method.NIR;
      Limit limit = Limits.nsc(10, OptionalDouble.of(0.02 + 0.4 * random.nextDouble()));
      Verdict verdict = sugar(wsc, cores, method).judge(limit);
      String message = "seed " + SEED + ", case " + i + ": " + verdict;
      if (verdict.word() == Word.BORDERLINE_UNDER) {
        int needed = needed(wsc, cores, method, limit);
        String words = verdict.settle();
        assertEquals(
            needed > 0,
            words.contains(" cores by the same method") && !words.startsWith("wet"),
            message);
        if (needed > 0) {
          settled++;
          assertTrue(words.startsWith("a new sample of " + needed + " cores"), message);
        }
      }
    }
    assertTrue(settled > 50, "settled " + settled);
  }

  private static Hay sugar(double wsc, int cores, Method method) {
    return Hay.of().method(method).cores(cores).dm("WSC", wsc).dm("STARCH", 0.5);
  }

  /** Found by judging, not by the advice: the fewest cores that clear; 0 if 40 do not. */
  private static int needed(double wsc, int from, Method method, Limit limit) {
    for (int n = from; n <= 40; n++) {
      if (sugar(wsc, n, method).judge(limit).word() == Word.CLEARS) {
        return n;
      }
    }
    return 0;
  }

  @Test
  void aDerivedSumIsNeverBelowItsParts() {
    times(
        (random, message) -> {
          AccountedAnalysis made = report(hay(random), random).analysis();
          Measured sum = made.analysis().find(AnalyteCode.NSC_WSC).orElseThrow();
          for (String part : SUGARS) {
            Measured value = made.analysis().find(new AnalyteCode(part)).orElseThrow();
            assertTrue(sum.lower() >= value.lower() - 1e-12, message + " " + part);
          }
        });
  }
}
