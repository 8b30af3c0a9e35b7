package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Method;
import rickyard.core.quantity.Basis;

/** What is judged beside sugar, and the sentences that stand beside it. */
class HazardsTest {

  private static List<String> notes(Hay hay) {
    return LotNotes.of(hay.judge(), hay.analysis(), Hay.TABLES.notes());
  }

  private static boolean says(Hay hay, String words) {
    return notes(hay).stream().anyMatch(n -> n.contains(words));
  }

  @ParameterizedTest
  @CsvSource({
    "NO3_N, 3400, all-nitrate-lot-3390, exceeds",
    "NO3_N, 3380, all-nitrate-lot-3390, clears",
    "NO3_N, 2300, all-nitrate-lot-2260, exceeds",
    "NO3_N, 2100, pregnant-nitrate-lot-2000, exceeds",
    "NO3_N, 900, all-nitrate-lot-1000, clears",
    "SE, 2.1, all-se-lot, exceeds",
    "SE, 1.9, all-se-lot, clears",
    "FE, 520, all-fe-lot, exceeds",
    "FE, 320, id-fe-lot, exceeds",
    "ERGOVALINE, 0.21, pregnant-late-ergovaline-lot, exceeds",
    "ERGOVALINE, 0.51, pregnant-late-ergovaline-lot-500, exceeds",
    "ERGOVALINE, 0.19, pregnant-late-ergovaline-lot, clears",
    "OXALATE, 0.6, all-oxalate-lot, exceeds",
    "MOULD, 600000, all-mould-lot-500k, exceeds",
    "MOULD, 600000, all-mould-lot-1m, clears",
    "MOULD, 1100000, all-mould-lot-1m, exceeds"
  })
  void aHazardIsHeldAgainstItsLimitWithoutGuardBand(
      String code, double value, String limit, String word) {
    assertEquals(word, Hay.of().dm(code, value).judge(limit).word().code());
  }

  @ParameterizedTest
  @CsvSource({"0.40, 1.0, exceeds", "0.60, 1.0, clears", "0.30, 0.5, clears", "0.20, 0.5, exceeds"})
  void calciumToOxalateIsJudgedWhereBothAreReported(double ca, double oxalate, String word) {
    Hay hay = Hay.of().dm("CA", ca).dm("OXALATE", oxalate);

    assertEquals(word, hay.judge("all-ca-oxalate-lot").word().code());
    assertEquals(
        ca / oxalate,
        hay.analysis().analysis().find(AnalyteCode.CA_OXALATE).orElseThrow().best(),
        1e-12);
  }

  @Test
  void oxalateThatWasNotFoundGivesNoRatio() {
    Hay hay = Hay.of().dm("CA", 0.4).below("OXALATE", 0.1, Basis.DRY_MATTER);

    assertTrue(hay.analysis().analysis().find(AnalyteCode.CA_OXALATE).isEmpty());
    assertFalse(hay.isJudged("all-ca-oxalate-lot"));
  }

  @Test
  void whatIsSeldomTestedIsSilentWhereMissing() {
    Hay plain = Hay.of().dm("WSC", 6).dm("STARCH", 1).af("DM", 90);
    Set<String> quantities =
        plain.judge().stream()
            .map(v -> v.limit().quantity())
            .collect(Collectors.toCollection(TreeSet::new));

    assertEquals(Set.of("moisture", "nsc_wsc"), quantities);
  }

  /** Design: only sugar, potassium for HYPP and ergovaline late in pregnancy ask when missing. */
  @Test
  void onlySugarPotassiumAndErgovalineAskWhenMissing() {
    Set<String> asking =
        Hay.TABLES.limits().stream()
            .filter(l -> l.ifMissing() == IfMissing.ASK)
            .map(l -> l.group() + " " + l.quantity())
            .collect(Collectors.toCollection(TreeSet::new));

    assertEquals(
        new TreeSet<>(
            Set.of(
                "laminitis nsc_wsc",
                "ID nsc_wsc",
                "PSSM nsc_wsc",
                "HYPP k",
                "pregnant-late ergovaline")),
        asking);
  }

  @Test
  void ironAskedOfAHayWithMuchAshIsSoil() {
    assertTrue(says(Hay.of().dm("FE", 800).dm("ASH", 12), "mostly soil in the hay"));
    assertFalse(says(Hay.of().dm("FE", 800).dm("ASH", 8), "mostly soil in the hay"));
    assertFalse(says(Hay.of().dm("FE", 100).dm("ASH", 12), "soil"));
  }

  @Test
  void wetHaySendsSomebodyToTheStackAndHaylageDoesNot() {
    assertTrue(says(Hay.of().af("DM", 80), "66 °C (150 °F)"));
    assertTrue(says(Hay.of().af("DM", 84), "66 °C (150 °F)"));
    assertFalse(says(Hay.of().af("DM", 88), "°C"));
    assertFalse(says(Hay.of().material(MaterialClass.HAYLAGE).af("DM", 30), "°C"));
  }

  @Test
  void everyNoteIsSaidOnceHoweverManyLimitsCallForIt() {
    List<String> notes = notes(Hay.of().dm("NO3_N", 5000));

    assertEquals(1, notes.stream().filter(n -> n.contains("NO3")).count(), notes.toString());
  }

  /** Source of 37 %: mass balance, 15 to 10 % needs f = 0.370. */
  @Test
  void soakingIsSaidToBeNoWayToClear() {
    Hay rich = Hay.of().method(Method.WET).dm("WSC", 14).dm("STARCH", 1);

    assertTrue(says(rich, "would have to wash out at least 37 %"), notes(rich).toString());
    assertTrue(notes(rich).stream().noneMatch(n -> n.contains("{")), notes(rich).toString());
    assertFalse(says(Hay.of().dm("WSC", 5).dm("STARCH", 1), "oaking"));
  }

  @Test
  void ofWhatIsKnownInPartTheLeastLossIsSaid() {
    Hay open = Hay.of().dm("WSC", 14);

    assertTrue(says(open, "wash out at least 32 %"), notes(open).toString());
  }

  @Test
  void anErgovalineAsFedWithoutDryMatterMayOnlyCondemn() {
    assertEquals(
        Word.EXCEEDS, Hay.of().af("ERGOVALINE", 0.3).judge("pregnant-late-ergovaline-lot").word());
    assertFalse(Hay.of().af("ERGOVALINE", 0.1).isJudged("pregnant-late-ergovaline-lot"));
  }

  @Test
  void aRegionNotSaidMakesCautionsGeneral() {
    JudgementSettings none = Hay.TABLES.settings();

    assertFalse(none.isRegionKnown());
    assertTrue(Hay.TABLES.cautions().stream().allMatch(c -> c.isGeneral(none)));
    assertTrue(Hay.TABLES.cautions().stream().noneMatch(c -> c.isFor("legume-hay", none)));
  }

  @Test
  void aRegionSaidMakesThemStandAtTheLotsTheyConcern() {
    JudgementSettings beetles = region("blister-beetle");
    Caution beetle = caution("blister-beetle");
    Caution fescue = caution("fescue-endophyte");

    assertFalse(beetle.isGeneral(beetles));
    assertTrue(beetle.isFor("legume-hay", beetles));
    assertTrue(beetle.isFor("mixed-hay", beetles));
    assertFalse(beetle.isFor("grass-hay", beetles));
    assertFalse(fescue.isGeneral(beetles));
    assertFalse(fescue.isFor("grass-hay", beetles));
    assertTrue(caution("toxic-weeds").isGeneral(beetles));
    assertFalse(caution("toxic-weeds").isFor("grass-hay", beetles));
  }

  private static Caution caution(String id) {
    return Hay.TABLES.cautions().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
  }

  private static JudgementSettings region(String code) {
    JudgementSettings s = Hay.TABLES.settings();
    return new JudgementSettings(
        s.nfcAllowance(),
        s.mostCores(),
        s.adviceCores(),
        s.sensitivity(),
        new TreeSet<>(Set.of(code)));
  }

  @Test
  void theAccountSaysWhatAnUncertaintyIsMadeOfAndWhatItRestsOn() {
    Hay hay = Hay.of().unknownCores().dm("WSC", 7.1).dm("STARCH", 1);

    List<String> account =
        ErrorAccount.of(
            hay.judge(), hay.analysis(), Hay.UNCERTAINTY.uncertainties(), Hay.TABLES.settings());

    // root(1.5² + 0.6²) = 1.62; root(2² + 0.5²) / root 3 = 1.19; both: 2.01; with r = 0.5: 2.30
    assertEquals(
        List.of(
            "NSC (WSC + starch): ± 2.01 (k = 1) from laboratory 1.62 (NIR, grass, from memory),"
                + " sampling 1.19 (2.06 between cores, from memory, 3 cores assumed), rounding and"
                + " conversion 0; if the errors of its parts went together by r = 0.5, ± 2.3:"
                + " id-nsc-lot would be borderline-under, pssm-nsc-lot would be borderline-under"),
        account);
  }

  @Test
  void whatHasNoBudgetHasNoAccount() {
    Hay hay = Hay.of().dm("CA", 0.4).dm("OXALATE", 1);

    assertTrue(
        ErrorAccount.of(
                hay.judge(), hay.analysis(), Hay.UNCERTAINTY.uncertainties(), Hay.TABLES.settings())
            .stream()
            .noneMatch(a -> a.startsWith("calcium to oxalate")));
    assertEquals(Optional.empty(), hay.analysis().findBudget(AnalyteCode.CA_OXALATE));
  }
}
