package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AccountedAnalysis;
import rickyard.core.forage.AnalysisMaker;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Method;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Sample;
import rickyard.core.forage.Subject;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Place;
import rickyard.core.quantity.Unit;
import rickyard.tables.JudgementTables;
import rickyard.tables.UncertaintyTable;

/** Lots against the built-in tables. */
class LotJudgeTest {
  private static final JudgementTables TABLES = JudgementTables.load(Optional.empty());
  private static final AnalysisMaker MAKER =
      new AnalysisMaker(UncertaintyTable.load(Optional.empty()).uncertainties());

  private static Reading reading(String code, Unit unit, Basis basis, double value, Method method) {
    Place place = new Place("d0c", 1, 1, code);
    return new Reading(
        new AnalyteCode(code),
        Double.toString(value),
        unit.code(),
        basis.code(),
        method,
        place,
        Optional.of(
            Measured.of(unit, basis, value, 0.05, 0.03, new Evidence.Reported(place, value + ""))),
        "");
  }

  private static Reading dm(String code, double value) {
    return reading(code, Unit.PERCENT, Basis.DRY_MATTER, value, Method.UNKNOWN);
  }

  private static Reading wet(String code, double value) {
    return reading(code, Unit.PERCENT, Basis.DRY_MATTER, value, Method.WET);
  }

  private static Reading af(String code, double value) {
    return reading(code, Unit.PERCENT, Basis.AS_FED, value, Method.UNKNOWN);
  }

  private static AccountedAnalysis analysis(MaterialClass material, Reading... readings) {
    Sample sample =
        new Sample(
            "N2",
            "",
            "",
            "",
            Optional.empty(),
            OptionalInt.empty(),
            List.of(readings),
            List.of(),
            List.of());
    return MAKER.make(sample, new Subject("N2", "", material, OptionalInt.of(20)));
  }

  private static List<Verdict> judge(Reading... readings) {
    return LotJudge.judge(analysis(MaterialClass.GRASS, readings), TABLES.lotRules());
  }

  private static LotRules rules(Limit limit) {
    return new LotRules(List.of(limit), TABLES.settings());
  }

  private static Verdict verdict(String limit, List<Verdict> verdicts) {
    return verdicts.stream()
        .filter(v -> v.limit().id().equals(limit))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no verdict on " + limit + " in " + verdicts));
  }

  private static boolean mentions(String limit, List<Verdict> verdicts) {
    return verdicts.stream().anyMatch(v -> v.limit().id().equals(limit));
  }

  @Test
  void aLotThatIsOverAsDryMatterIsNotClearedByItsAsFedFigure() {
    var verdicts = judge(af("DM", 88), af("WSC", 8.2), af("STARCH", 1.0));

    Verdict id = verdict("id-nsc-lot", verdicts);
    assertEquals(10.4545, id.value().orElseThrow().best(), 0.0001);
    assertEquals(Word.BORDERLINE_OVER, id.word());
  }

  @Test
  void escAndStarchNeverClearAWscLimitAndSayWhatIsNeeded() {
    Verdict id = verdict("id-nsc-lot", judge(dm("ESC", 6), dm("STARCH", 1)));

    assertEquals(Word.CANNOT_JUDGE, id.word());
    assertTrue(id.reason().contains("at least 7 % DM"), id.reason());
    assertTrue(id.reason().contains("WSC is not reported"), id.reason());
    assertTrue(id.settle().contains("a report with WSC and starch"), id.settle());
    assertTrue(id.pOver().isEmpty());
  }

  @Test
  void escAndStarchMayCondemnUnderAWscLimit() {
    assertEquals(Word.EXCEEDS, verdict("id-nsc-lot", judge(dm("ESC", 14), dm("STARCH", 1))).word());
  }

  @Test
  void wscAloneCondemnsOrCannotJudge() {
    assertEquals(Word.EXCEEDS, verdict("laminitis-nsc-lot", judge(dm("WSC", 14))).word());
    assertEquals(Word.CANNOT_JUDGE, verdict("laminitis-nsc-lot", judge(dm("WSC", 5))).word());
    assertEquals(
        Word.CANNOT_JUDGE,
        verdict("laminitis-nsc-lot", judge(dm("WSC", 10.5))).word(),
        "over the limit, but not by the guard band");
  }

  @Test
  void anAsFedFigureWithoutDryMatterMayOnlyCondemn() {
    Verdict over = verdict("id-nsc-lot", judge(af("WSC", 14), af("STARCH", 1)));
    Verdict under = verdict("id-nsc-lot", judge(af("WSC", 5), af("STARCH", 1)));

    assertEquals(Word.EXCEEDS, over.word());
    assertEquals(Word.CANNOT_JUDGE, under.word());
    assertTrue(under.reason().contains("dry matter is missing"), under.reason());
  }

  @Test
  void nfcAloneNeverClears() {
    Verdict id = verdict("id-nsc-lot", judge(dm("NFC", 3)));

    assertEquals(Word.CANNOT_JUDGE, id.word());
    assertTrue(id.reason().contains("NFC of 3 %"), id.reason());
    assertTrue(id.reason().contains("never clears"), id.reason());
  }

  @Test
  void theWiderDefinitionClearsTheNarrowerAndNeverCondemnsIt() {
    Limit esc = Limits.of("nsc_esc", Bound.MAX, 10, "% DM", java.util.OptionalDouble.of(0.05));

    var low =
        LotJudge.judge(analysis(MaterialClass.GRASS, wet("WSC", 5), wet("STARCH", 1)), rules(esc));
    var high =
        LotJudge.judge(analysis(MaterialClass.GRASS, wet("WSC", 15), wet("STARCH", 1)), rules(esc));

    assertEquals(Word.CLEARS, low.get(0).word());
    assertEquals(Word.CANNOT_JUDGE, high.get(0).word());
  }

  @Test
  void whatNobodyMeasuredIsSilentUnlessTheLimitAsks() {
    var verdicts = judge(dm("CP", 9));

    assertFalse(mentions("all-nitrate-lot-3390", verdicts));
    assertEquals(Word.CANNOT_JUDGE, verdict("id-nsc-lot", verdicts).word());
    assertFalse(mentions("pregnant-late-ergovaline-lot", verdicts));
  }

  @Test
  void hazardsAreJudged() {
    var verdicts =
        judge(
            af("DM", 80),
            reading("NO3_N", Unit.MG_PER_KG, Basis.DRY_MATTER, 6000, Method.WET),
            reading("SE", Unit.MG_PER_KG, Basis.DRY_MATTER, 3, Method.WET));

    assertEquals(Word.EXCEEDS, verdict("all-nitrate-lot-3390", verdicts).word());
    assertEquals(Word.EXCEEDS, verdict("all-se-lot", verdicts).word());
    assertEquals(Word.EXCEEDS, verdict("all-moisture-lot-18", verdicts).word());
    assertEquals(Word.CLEARS, verdict("all-moisture-lot-25", verdicts).word());
  }

  @Test
  void moistureOfHayIsNotAskedOfHaylage() {
    var verdicts = LotJudge.judge(analysis(MaterialClass.HAYLAGE, af("DM", 60)), TABLES.lotRules());

    assertFalse(mentions("all-moisture-lot-25", verdicts));
    assertEquals(Word.CLEARS, verdict("all-haylage-moisture-lot-65", verdicts).word());
  }

  @Test
  void hyppHasNoLimitForALot() {
    var verdicts = judge(dm("K", 3));

    assertTrue(verdicts.stream().noneMatch(v -> v.limit().group().equals("HYPP")));
  }

  @Test
  void aBorderlineVerdictSaysWhatWouldSettleIt() {
    Verdict close = verdict("id-nsc-lot", judge(dm("WSC", 8), dm("STARCH", 1)));

    assertEquals(Word.BORDERLINE_UNDER, close.word());
    assertEquals(
        "wet chemistry on a new sample of 20 cores would clear if it gives 9 % DM again; by the same"
            + " method no number of cores up to 40 does: with 20 it clears up to 8.59 % DM",
        close.settle());
  }

  @Test
  void whatNoTestCanClearIsSaidSo() {
    Verdict close = verdict("id-nsc-lot", judge(dm("WSC", 8.9), dm("STARCH", 1)));
    Verdict over = verdict("id-nsc-lot", judge(dm("WSC", 9.9), dm("STARCH", 1)));

    assertEquals(
        "a new test that gives 9.9 % DM again cannot clear it, however it is sampled: 40 cores by wet chemistry clear only up"
            + " to 9.3 % DM",
        close.settle());
    assertEquals(Word.BORDERLINE_OVER, over.word());
    assertEquals(
        "a new test that gives 10.9 % DM again cannot clear it; 20 cores by wet chemistry would clear up"
            + " to 9.25 % DM; a new sample of 20 cores by wet chemistry would show that it exceeds",
        over.settle());
  }

  @Test
  void suitabilityTellsGroupsApart() {
    // u about 1.7: 7.8 clears at 20 % risk against 10 %, 5 % risk does not
    Suitability grass = Suitability.of(judge(dm("WSC", 7), dm("STARCH", 0.8)));

    assertTrue(grass.suits().contains("ID"), grass.toString());
    assertTrue(grass.suits().contains("PSSM"), grass.toString());
    assertTrue(grass.undecided().contains("laminitis"), grass.toString());

    Suitability rich = Suitability.of(judge(dm("WSC", 18), dm("STARCH", 2)));
    assertTrue(rich.notFor().containsAll(List.of("ID", "PSSM", "laminitis")), rich.toString());
  }

  @Test
  void aLotWithoutAnalysisCannotBeJudged() {
    var verdicts = LotJudge.unanalysed("two tests disagree", TABLES.lotRules());

    assertEquals("two tests disagree", verdict("laminitis-nsc-lot", verdicts).reason());
    assertTrue(verdicts.stream().allMatch(v -> v.word() == Word.CANNOT_JUDGE));
    assertTrue(Suitability.of(verdicts).undecided().contains("ID"));
  }

  @Test
  void theWorstPlacedLimitIsTheOneNotCleared() {
    Verdict worst = WorstVerdict.find(judge(dm("WSC", 18), dm("STARCH", 2))).orElseThrow();

    assertEquals(Word.EXCEEDS, worst.word());
    assertEquals(Severity.STOP, worst.limit().severity());
  }
}
