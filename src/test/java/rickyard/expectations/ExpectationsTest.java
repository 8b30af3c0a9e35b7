package rickyard.expectations;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.Method;
import rickyard.core.judgement.LotRules;
import rickyard.core.judgement.Suitability;
import rickyard.core.quantity.Normal;

/**
 * Holds {@code docs/expectations.md} to the tables, and its integrals to lots judged one by one.
 * With {@code -Drickyard.expectations.page=FILE} the page is written first.
 */
class ExpectationsTest {
  private static final Path PAGE = Path.of("docs", "expectations.md");
  private static final long SEED = 20261126L;

  @Test
  void thePageSaysWhatTheTablesMakeOfTheHays() throws IOException {
    String made = ExpectationsPage.make();
    String target = System.getProperty("rickyard.expectations.page", "");
    if (!target.isEmpty()) {
      Files.writeString(Path.of(target), made, StandardCharsets.UTF_8);
    }

    assertEquals(Files.readString(PAGE, StandardCharsets.UTF_8), made);
  }

  /** The edges by judging are those of the rule in closed form: 10 − z u and 12 − z u. */
  @Test
  void theEdgesAreThoseOfTheRule() {
    for (HayKind hay : HayKind.all()) {
      for (Method method : ExpectationsPage.METHODS) {
        Rule strict = Rule.ofGroup("laminitis", hay.material(), method, 3);
        Rule steps = Rule.ofGroup("ID", hay.material(), method, 3);
        double u = strict.u();
        assertEquals(Math.max(0, 10 - Normal.guardFactor(0.05) * u), strict.clearsTo(), 1e-6);
        assertEquals(10 + Normal.guardFactor(0.05) * u, strict.exceedsFrom(), 1e-6);
        assertEquals(
            Math.max(
                0, Math.min(10 - Normal.guardFactor(0.2) * u, 12 - Normal.guardFactor(0.025) * u)),
            steps.clearsTo(),
            1e-6);
      }
    }
  }

  /** Lots drawn and judged one by one agree with the integrals within their own chance error. */
  @Test
  void lotsJudgedOneByOneAgree() {
    HayKind hay = HayKind.all().get(0);
    Rule rule = Rule.ofGroup("ID", hay.material(), Method.NIR, 3);
    Expectation expected = Expectation.of(hay, rule);
    Random random = new Random(SEED);
    LotRules rules = new LotRules(Rule.TABLES.limits(), Rule.TABLES.settings());
    int lots = 20_000;
    int cleared = 0;
    int exceeded = 0;
    int clearedOver = 0;
    for (int i = 0; i < lots; i++) {
      double truth = draw(hay, random);
      double figure = Math.max(0, truth + rule.u() * random.nextGaussian());
      Suitability found = Rule.suitability(figure, rules, hay.material(), Method.NIR, 3);
      cleared += found.suits().contains("ID") ? 1 : 0;
      exceeded += found.notFor().contains("ID") ? 1 : 0;
      clearedOver += found.suits().contains("ID") && truth > 10 ? 1 : 0;
    }
    assertEquals(expected.clears(), cleared / (double) lots, 0.013, "seed " + SEED);
    assertEquals(expected.exceeds(), exceeded / (double) lots, 0.014, "seed " + SEED);
    assertEquals(expected.clearedOver10(), clearedOver / (double) cleared, 0.02, "seed " + SEED);
  }

  private static double draw(HayKind hay, Random random) {
    double truth = hay.low() - 1;
    while (truth < hay.low() || truth > hay.high()) {
      truth = hay.mean() + hay.sd() * random.nextGaussian();
    }
    return truth;
  }

  @Test
  void moreCoresAndBetterMethodsClearMoreOfWhatIsUnder() {
    for (HayKind hay : HayKind.all()) {
      for (String group : ExpectationsPage.GROUPS) {
        double before = -1;
        for (int cores : ExpectationsPage.CORES) {
          double nir = under(hay, group, Method.NIR, cores);
          assertTrue(nir >= before, hay.name() + " " + group + " " + cores);
          assertTrue(under(hay, group, Method.WET, cores) >= nir, hay.name() + " " + cores);
          before = nir;
        }
      }
    }
  }

  private static double under(HayKind hay, String group, Method method, int cores) {
    return Expectation.of(hay, Rule.ofGroup(group, hay.material(), method, cores)).underThatClear();
  }

  @Test
  void aSmallerRiskClearsLessAndErrsLess() {
    HayKind hay = HayKind.all().get(0);
    Expectation none = one(hay, OptionalDouble.empty());
    Expectation five = one(hay, OptionalDouble.of(0.05));

    assertTrue(five.underThatClear() < none.underThatClear());
    assertTrue(five.clearedOver10() < none.clearedOver10());
  }

  private static Expectation one(HayKind hay, OptionalDouble risk) {
    return Expectation.of(hay, Rule.ofOne(10, risk, hay.material(), Method.NIR, 3));
  }
}
