package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Two tests of one lot: whether they agree, and what they make together. */
class CombiningTest {
  private static final Evidence SAID = new Evidence.Assumed("test", "row");
  private static final ErrorBudget BUDGET = new ErrorBudget(0.6, 0.5, 1.6, 4, 0);

  private static Measured dm(double best, double u) {
    return Measured.of(Unit.PERCENT, Basis.DRY_MATTER, best, 0, u, SAID);
  }

  private static Measured below(double x, double u) {
    return Measured.below(Unit.PERCENT, Basis.DRY_MATTER, x, u, SAID);
  }

  private static Measured atLeast(double x) {
    return Measured.atLeast(Unit.PERCENT, Basis.DRY_MATTER, x, 1, SAID);
  }

  private static AccountedAnalysis test(Map<AnalyteCode, Measured> contents) {
    return test(contents, 10, "report", Map.of());
  }

  private static AccountedAnalysis test(
      Map<AnalyteCode, Measured> contents,
      int cores,
      String coresFrom,
      Map<AnalyteCode, Method> methods,
      AccountedAnalysis.LeftOut... leftOut) {
    TreeMap<AnalyteCode, ErrorBudget> budgets = new TreeMap<>();
    contents.forEach((code, v) -> budgets.put(code, BUDGET));
    return new AccountedAnalysis(
        new Analysis("N2", "", Optional.empty(), new TreeMap<>(contents)),
        MaterialClass.GRASS,
        cores,
        coresFrom,
        new TreeMap<>(methods),
        budgets,
        List.of(leftOut));
  }

  private static AccountedAnalysis wsc(Measured value) {
    return test(Map.of(AnalyteCode.WSC, value));
  }

  private static Measured together(Measured... values) {
    return Combining.combine(List.of(values).stream().map(CombiningTest::wsc).toList(), false, 0)
        .analysis()
        .find(AnalyteCode.WSC)
        .orElseThrow();
  }

  @Test
  void testsAgreeUpToTwiceTheirJointUncertainty() {
    assertEquals("", Combining.disagreement(wsc(dm(10, 3)), wsc(dm(20, 4)), false));
    assertEquals(
        "WSC 10 and 20.1 %", Combining.disagreement(wsc(dm(10, 3)), wsc(dm(20.1, 4)), false));
    assertEquals(
        "WSC 20.1 and 10 %", Combining.disagreement(wsc(dm(20.1, 3)), wsc(dm(10, 4)), false));
    assertEquals("", Combining.disagreement(wsc(dm(10, 4)), wsc(dm(20, 3)), false));
  }

  @Test
  void aDisagreementIsSaidWithFourDigits() {
    assertEquals(
        "WSC 6.667 and 14.33 %",
        Combining.disagreement(wsc(dm(20.0 / 3, 0.1)), wsc(dm(43.0 / 3, 0.1)), false));
  }

  @Test
  void censoredTestsAgreeWhereTheirIntervalsMeet() {
    assertEquals("", Combining.disagreement(wsc(below(5, 0)), wsc(dm(4, 0)), false));
    assertEquals("WSC 2.5 and 6 %", Combining.disagreement(wsc(below(5, 0)), wsc(dm(6, 0)), false));
  }

  @Test
  void onlyWhatDecidesAndIsKnownByBothIsCompared() {
    AnalyteCode cp = new AnalyteCode("CP");

    assertEquals(
        "",
        Combining.disagreement(test(Map.of(cp, dm(8, 0.1))), test(Map.of(cp, dm(16, 0.1))), false));
    assertEquals("", Combining.disagreement(wsc(atLeast(20)), wsc(dm(5, 0.1)), false));
    assertEquals(
        "",
        Combining.disagreement(
            wsc(dm(8, 0.1)), test(Map.of(AnalyteCode.STARCH, dm(16, 0.1))), false));
  }

  @Test
  void theMoreCertainTestWeighsMore() {
    Measured mean = together(dm(8, 1), dm(11, 2));

    assertEquals((8 + 11 / 4.0) / 1.25, mean.best(), 1e-12);
    assertEquals(Math.sqrt(1 / 1.25), mean.u(), 1e-12);
    assertEquals(mean.best(), mean.lower());
    assertEquals(mean.best(), mean.upper());
  }

  @Test
  void aMeanNamesItsTestsInTheirOrder() {
    Evidence.Derived derived = (Evidence.Derived) together(dm(8, 1), dm(9, 1)).evidence();

    assertEquals(
        List.of("test 1", "test 2"), derived.inputs().stream().map(Evidence.Term::name).toList());
  }

  @Test
  void aCensoredTestOpensTheMeansEnds() {
    Measured mean = together(below(4, 1), dm(3, 1));

    assertEquals(2.5, mean.best(), 1e-12);
    assertEquals(1.5, mean.lower(), 1e-12);
    assertEquals(3.5, mean.upper(), 1e-12);
    assertEquals(1.5, mean.low(), 1e-12);
    assertEquals(3.5, mean.high(), 1e-12);
  }

  @Test
  void aBoundedTestCountsBeforeAnOpenOne() {
    assertEquals(dm(9, 1), together(atLeast(5), dm(9, 1)));
    assertEquals(dm(9, 1), together(dm(9, 1), atLeast(5)));
    assertEquals(9, together(dm(8, 1), atLeast(5), dm(10, 1)).best(), 1e-12);
    assertEquals(Math.sqrt(0.5), together(dm(8, 1), atLeast(5), dm(10, 1)).u(), 1e-12);
  }

  @Test
  void ofOpenTestsTheHigherBoundCounts() {
    assertEquals(atLeast(7), together(atLeast(5), atLeast(7)));
  }

  @Test
  void aSumIsMadeOfTheCombinedParts() {
    AccountedAnalysis both =
        Combining.combine(
            List.of(
                test(
                    Map.of(
                        AnalyteCode.WSC, dm(8, 1),
                        AnalyteCode.ESC, dm(5, 1),
                        AnalyteCode.STARCH, dm(1, 1),
                        AnalyteCode.NSC_WSC, dm(9, 1),
                        AnalyteCode.NSC_ESC, dm(6, 1))),
                test(
                    Map.of(
                        AnalyteCode.WSC, dm(11, 2),
                        AnalyteCode.ESC, dm(7, 2),
                        AnalyteCode.STARCH, dm(2, 1),
                        AnalyteCode.NSC_WSC, dm(13, 1),
                        AnalyteCode.NSC_ESC, dm(9, 1)))),
            false,
            0.5);

    Measured nsc = both.analysis().find(AnalyteCode.NSC_WSC).orElseThrow();
    assertEquals(8.6 + 1.5, nsc.best(), 1e-12);
    assertEquals(Math.sqrt(0.8 + 0.5 + 2 * 0.5 * Math.sqrt(0.8 * 0.5)), nsc.u(), 1e-12);
    assertEquals(nsc.u(), both.findBudget(AnalyteCode.NSC_WSC).orElseThrow().u(), 1e-12);
    assertEquals(5.4 + 1.5, both.analysis().find(AnalyteCode.NSC_ESC).orElseThrow().best(), 1e-12);
    assertEquals("WSC + starch", ((Evidence.Derived) nsc.evidence()).formula());
  }

  @Test
  void aSumThatATestKnowsWithoutItsPartsStaysAMeanOfSums() {
    AccountedAnalysis both =
        Combining.combine(
            List.of(
                test(
                    Map.of(
                        AnalyteCode.WSC, dm(8, 1),
                        AnalyteCode.STARCH, dm(1, 1),
                        AnalyteCode.NSC_WSC, dm(9, 1))),
                test(Map.of(AnalyteCode.NSC_WSC, dm(11, 1)))),
            false,
            0);

    assertEquals(10, both.analysis().find(AnalyteCode.NSC_WSC).orElseThrow().best(), 1e-12);
  }

  @Test
  void whereAPartIsMissingNoSumIsMade() {
    for (AnalyteCode part : List.of(AnalyteCode.WSC, AnalyteCode.STARCH)) {
      AccountedAnalysis one = test(Map.of(part, dm(8, 1)));

      assertTrue(
          Combining.combine(List.of(one, one), false, 0)
              .analysis()
              .find(AnalyteCode.NSC_WSC)
              .isEmpty());
    }
  }

  @Test
  void coresAddUnlessBothAreOfOneBag() {
    AccountedAnalysis six = test(Map.of(), 6, "report", Map.of());
    AccountedAnalysis ten = test(Map.of(), 10, "lots.csv", Map.of());

    assertEquals(16, Combining.combine(List.of(six, ten), false, 0).cores());
    assertEquals(6, Combining.combine(List.of(six, ten), true, 0).cores());
    assertEquals("report", Combining.combine(List.of(six, ten), false, 0).coresFrom());
    assertEquals("lots.csv", Combining.combine(List.of(ten, six), false, 0).coresFrom());
  }

  @Test
  void coresThatOneTestOnlyAssumedAreAssumed() {
    AccountedAnalysis known = test(Map.of(), 6, "report", Map.of());
    AccountedAnalysis assumed = test(Map.of(), 10, "assumed", Map.of());

    assertEquals("assumed", Combining.combine(List.of(known, assumed), false, 0).coresFrom());
  }

  @Test
  void aMethodIsWetChemistryWhereOneTestIs() {
    AccountedAnalysis nir =
        test(Map.of(AnalyteCode.WSC, dm(8, 1)), 6, "report", Map.of(AnalyteCode.WSC, Method.NIR));
    AccountedAnalysis wet =
        test(Map.of(AnalyteCode.WSC, dm(8, 1)), 6, "report", Map.of(AnalyteCode.WSC, Method.WET));

    assertEquals(
        Map.of(AnalyteCode.WSC, Method.WET),
        Combining.combine(List.of(nir, wet), false, 0).methods());
    assertEquals(
        Map.of(AnalyteCode.WSC, Method.WET),
        Combining.combine(List.of(wet, nir), false, 0).methods());
    assertEquals(
        Map.of(AnalyteCode.WSC, Method.NIR),
        Combining.combine(List.of(nir, nir), false, 0).methods());
  }

  @Test
  void whatOneTestLeftOutIsStillSaidUnlessTheOtherHasIt() {
    AccountedAnalysis.LeftOut wsc = new AccountedAnalysis.LeftOut(AnalyteCode.WSC, "in doubt");
    AccountedAnalysis.LeftOut se = new AccountedAnalysis.LeftOut(AnalyteCode.SE, "in doubt");
    AccountedAnalysis first = test(Map.of(), 6, "report", Map.of(), wsc, se);
    AccountedAnalysis second = test(Map.of(AnalyteCode.WSC, dm(8, 1)), 6, "report", Map.of(), se);

    assertEquals(List.of(se), Combining.combine(List.of(first, second), false, 0).leftOut());
  }

  @Test
  void aValueOfOneTestKeepsItsBudgetAndOfSeveralItsTotal() {
    AccountedAnalysis one = wsc(dm(8, 1));
    AccountedAnalysis other = test(Map.of(AnalyteCode.SE, dm(1, 1)));

    assertEquals(
        BUDGET,
        Combining.combine(List.of(one, other), false, 0).findBudget(AnalyteCode.WSC).orElseThrow());
    assertEquals(
        Math.sqrt(0.5),
        Combining.combine(List.of(one, one), false, 0)
            .findBudget(AnalyteCode.WSC)
            .orElseThrow()
            .u(),
        1e-12);
  }

  @Test
  void testsOfOneBagShareTheErrorOfSampling() {
    TreeMap<AnalyteCode, ErrorBudget> budgets = new TreeMap<>();
    budgets.put(AnalyteCode.WSC, new ErrorBudget(3, 3, 8, 4, 0));
    TreeMap<AnalyteCode, Measured> contents = new TreeMap<>();
    contents.put(AnalyteCode.WSC, dm(8, 5));
    AccountedAnalysis one =
        new AccountedAnalysis(
            new Analysis("N2", "", Optional.empty(), contents),
            MaterialClass.GRASS,
            4,
            "report",
            new TreeMap<>(),
            budgets,
            List.of());

    double apart =
        Combining.combine(List.of(one, one), false, 0)
            .analysis()
            .find(AnalyteCode.WSC)
            .orElseThrow()
            .u();
    double together =
        Combining.combine(List.of(one, one), true, 0)
            .analysis()
            .find(AnalyteCode.WSC)
            .orElseThrow()
            .u();
    assertEquals(Math.sqrt(25 / 2.0), apart, 1e-12);
    assertEquals(Math.sqrt(9 / 2.0 + 16), together, 1e-12);
  }

  @Test
  void testsThatDisagreeAreAtLeastHalfTheirSpreadUncertain() {
    assertEquals(4, together(dm(6, 0.1), dm(14, 0.1)).u(), 1e-12);
    assertFalse(together(dm(6, 3), dm(14, 3)).u() > 3);
  }
}
