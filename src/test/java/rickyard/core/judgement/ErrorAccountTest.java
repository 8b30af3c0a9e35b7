package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.ErrorBudget;
import rickyard.core.forage.Method;

/** What the account of the errors says; the parts are rows of the built-in uncertainties. */
class ErrorAccountTest {
  private static final OptionalDouble FIVE = OptionalDouble.of(0.05);

  private static List<String> account(Hay hay, Limit... limits) {
    return account(hay.analysis(), limits);
  }

  private static List<String> account(AccountedAnalysis analysis, Limit... limits) {
    List<Verdict> verdicts =
        LotJudge.judge(analysis, new LotRules(List.of(limits), Hay.TABLES.settings()));
    return ErrorAccount.of(
        verdicts, analysis, Hay.UNCERTAINTY.uncertainties(), Hay.TABLES.settings());
  }

  /**
   * Laboratory root(0.6² + 0.3²) = 0.6708; cores root(2² + 0.5²) = 2.06, by root 20 0.461; both
   * 0.8139. With r = 0.5: u_ESC² = 0.36 + 4/20, u_starch² = 0.09 + 0.25/20, together root(0.6625 +
   * 0.7483 · 0.3202) = 0.9498, and 8 + 1.645 · 0.9498 is still under 10.
   */
  @Test
  void ofEscAndStarchTheMethodOfEscCounts() {
    Hay hay = Hay.of().method(Method.WET).dm("ESC", 7).dm("STARCH", 1);

    assertEquals(
        List.of(
            "NSC (ESC + starch): ± 0.81 (k = 1) from laboratory 0.67 (wet chemistry, grass,"
                + " from memory), sampling 0.46 (2.06 between cores, assumed, 20 cores by"
                + " lots.csv), rounding and conversion 0; if the errors of its parts went together"
                + " by r = 0.5, ± 0.95 and no verdict changes"),
        account(hay, Limits.of("nsc_esc", Bound.MAX, 10, "% DM", FIVE)));
  }

  /** Minerals by wet chemistry: 8 % of the figure; no spread between cores is known. */
  @Test
  void whatHasNoKnownSpreadBetweenCoresSaysSoAndLinesAreSorted() {
    Hay hay = Hay.of().method(Method.WET).af("DM", 88).dm("NO3_N", 6000);

    assertEquals(
        List.of(
            "moisture: ± 0.7 (k = 1) from laboratory 0.7 (dry matter: as of NIR, whatever the method,"
                + " grass, from memory), no sampling part known, rounding and conversion 0",
            "nitrate-nitrogen: ± 480 (k = 1) from laboratory 480 (wet chemistry, grass, from"
                + " memory), no sampling part known, rounding and conversion 0"),
        account(hay, limit("no3_n", "a", 1000, "mg/kg DM"), limit("moisture", "b", 15, "% AF")));
  }

  private static Limit limit(String quantity, String group, double value, String unit) {
    Limit like = Limits.of(quantity, Bound.MAX, value, unit, OptionalDouble.empty());
    return new Limit(
        like.id(),
        group,
        like.subject(),
        quantity,
        like.bound(),
        value,
        like.unit(),
        like.risk(),
        like.severity(),
        like.ifMissing(),
        "",
        "assumed",
        "",
        "assumed",
        false);
  }

  @Test
  void aSumThatIsOpenAboveIsNotTriedWithAnotherCorrelation() {
    List<String> open = account(Hay.of().af("WSC", 8).af("STARCH", 1), Limits.nsc(10, FIVE));

    assertEquals(1, open.size());
    assertEquals(-1, open.get(0).indexOf("went together"), open.get(0));
  }

  /** Minerals by NIR: 15 % of 6000, which 400 of several tests together replace. */
  @Test
  void severalTestsTogetherSayWhichTheyAreMadeOf() {
    AccountedAnalysis one = Hay.of().dm("NO3_N", 6000).analysis();
    AnalyteCode code = new AnalyteCode("NO3_N");
    SortedMap<AnalyteCode, ErrorBudget> budgets = new TreeMap<>(one.budgets());
    budgets.put(code, one.findBudget(code).orElseThrow().withStanding(400));
    AccountedAnalysis several =
        new AccountedAnalysis(
            one.analysis(),
            one.material(),
            one.cores(),
            one.coresFrom(),
            one.methods(),
            budgets,
            one.leftOut());

    assertEquals(
        List.of(
            "nitrate-nitrogen: ± 400 (k = 1) from several tests weighted by 1/u²; the most certain:"
                + " laboratory 900 (NIR, grass, from memory), no sampling part known, rounding and"
                + " conversion 0"),
        account(several, limit("no3_n", "a", 1000, "mg/kg DM")));
  }

  @Test
  void oneCoreIsSaidAsOne() {
    String line =
        account(Hay.of().cores(1).dm("WSC", 8).dm("STARCH", 1), Limits.nsc(10, FIVE)).get(0);

    assertTrue(line.contains("(2.06 between cores, from memory, 1 core by lots.csv)"), line);
  }

  @Test
  void aQuantityOfTwoLimitsHasOneLine() {
    Hay hay = Hay.of().dm("WSC", 8).dm("STARCH", 1);

    assertEquals(1, account(hay, Limits.nsc(10, FIVE), Limits.nsc(12, FIVE)).size());
  }
}
