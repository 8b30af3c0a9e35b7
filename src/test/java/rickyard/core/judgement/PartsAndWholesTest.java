package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** What a report that lacks something lets a lot be told, word for word. */
class PartsAndWholesTest {
  private static final OptionalDouble NO_GUARD = OptionalDouble.empty();
  private static final Limit NSC_10 = Limits.nsc(10, NO_GUARD);
  private static final Limit ESC_SUM_10 = Limits.of("nsc_esc", Bound.MAX, 10, "% DM", NO_GUARD);
  private static final Limit WSC_12 = Limits.of("wsc", Bound.MAX, 12, "% DM", NO_GUARD);

  private static String rest(String soluble) {
    return "; a report with " + soluble + " and starch on dry matter would settle it";
  }

  @Test
  void whatALotLacksIsNamedByTheDefinitionOfItsLimit() {
    Hay plain = Hay.of().dm("CP", 9);

    assertEquals(
        "WSC is not reported, starch is not reported" + rest("WSC"), plain.judge(NSC_10).reason());
    assertEquals(
        "ESC is not reported, starch is not reported" + rest("ESC"),
        plain.judge(ESC_SUM_10).reason());
  }

  @Test
  void escIsSaidToBeALowerBoundOfWscWhereWscIsMissingOnly() {
    String hint = " (ESC + starch is only a lower bound of WSC + starch)";

    assertEquals(
        "WSC is not reported, starch is not reported" + hint + rest("WSC"),
        Hay.of().dm("ESC", 6).judge(NSC_10).settle());
    assertEquals(
        "starch is not reported" + rest("WSC"),
        Hay.of().dm("ESC", 6).dm("WSC", 8).judge(NSC_10).settle());
    assertEquals(
        "starch is not reported" + rest("ESC"), Hay.of().dm("ESC", 6).judge(ESC_SUM_10).settle());
  }

  @Test
  void whyAFigureWasLeftOutStandsBesideItsName() {
    Limit potassium = Limits.of("k", Bound.MAX, 1.1, "% DM", NO_GUARD);

    assertEquals(
        "potassium: as fed, and no dry matter to convert it by",
        Hay.of().af("K", 1).judge(potassium).reason());
  }

  /** NFC and the allowance of 3 points: 7 + 3 is the limit, 7.1 + 3 is over it. */
  @ParameterizedTest
  @CsvSource({
    "7, 'makes it very probable that it is under, provisionally,'",
    "7.1, does not bound it"
  })
  void nfcIsAHintUpToItsAllowanceUnderTheLimit(double nfc, String hint) {
    assertEquals(
        "WSC is not reported, starch is not reported; NFC of "
            + Words.number(nfc)
            + " % "
            + hint
            + " and never clears"
            + rest("WSC"),
        Hay.of().dm("NFC", nfc).judge(NSC_10).reason());
  }

  @ParameterizedTest
  @CsvSource({"6, 9, fructan", "9, 6, ESC", "9, 9, ESC"})
  void wscIsAtLeastTheGreaterOfItsParts(double esc, double fructan, String greater) {
    Verdict verdict = Hay.of().dm("ESC", esc).dm("FRUCTAN", fructan).judge(WSC_12);

    Measured value = verdict.value().orElseThrow();
    assertEquals(Word.CANNOT_JUDGE, verdict.word());
    assertEquals(9, value.lower());
    assertFalse(value.isBoundedAbove());
    assertEquals("at least " + greater, ((Evidence.Derived) value.evidence()).formula());
  }

  @Test
  void aWholeThatClearsClearsItsPartFromWhatIsKnownOfItUpwards() {
    Verdict verdict = Hay.of().dm("ESC", 5).dm("NSC_WSC", 8).judge(WSC_12);

    Measured value = verdict.value().orElseThrow();
    assertEquals(Word.CLEARS, verdict.word());
    assertEquals(List.of(5.0, 8.0), List.of(value.lower(), value.upper()));
    assertEquals(5, value.low());
    assertTrue(
        verdict
            .reason()
            .startsWith("WSC is not reported in full; it is at most WSC + starch; WSC up to 8 ±"),
        verdict.reason());
  }

  @Test
  void aLimitWithoutGuardBandSaysSo() {
    assertEquals(
        "NSC (WSC + starch) 9 ± 1 % DM; limit 10 % DM, no guard band; chance of being over, from"
            + " this test alone, 16 %",
        Judge.judge(NSC_10, Optional.of(Limits.percent(9, 1)), "").reason());
  }

  @Test
  void whatTheEvidenceDoesNotBoundSaysBetweenWhichEndsItLies() {
    Measured open = Measured.atLeast(Unit.PERCENT, Basis.DRY_MATTER, 1, 0, Limits.SAID);
    Measured label = Measured.atMost(Unit.PERCENT, Basis.DRY_MATTER, 9, Limits.SAID);
    Limit protein = Limits.of("cp", Bound.MIN, 8, "% DM", NO_GUARD);

    assertEquals(
        "NSC (WSC + starch) is at least 1 % DM; limit 10 % DM; not bounded",
        Judge.judge(NSC_10, Optional.of(open), "").reason());
    assertEquals(
        "CP lies somewhere from 0 to 9 % DM; minimum 8 % DM; a test is missing",
        Judge.judge(protein, Optional.of(label), "a test is missing").reason());
  }

  /** Dry matter printed as 88 lies from 87.95 to 88.05. */
  @Test
  void moistureHasTheRoundingOfTheDryMatterThatItComesFrom() {
    Limit moisture = Limits.of("moisture", Bound.MAX, 15, "% AF", NO_GUARD);

    Measured value = Hay.of().af("DM", 88).judge(moisture).value().orElseThrow();

    assertEquals(12, value.best(), 1e-12);
    assertEquals(11.95, value.low(), 1e-12);
    assertEquals(12.05, value.high(), 1e-12);
  }

  @Test
  void coresThatWereAssumedStandBesideTheVerdictThatRestsOnThem() {
    Hay unknown = Hay.of().unknownCores().dm("WSC", 3).dm("STARCH", 1);

    assertTrue(
        unknown.judge(NSC_10).reason().endsWith(" %; number of cores unknown, 3 assumed"),
        unknown.judge(NSC_10).reason());
    assertFalse(Hay.of().dm("WSC", 3).dm("STARCH", 1).judge(NSC_10).reason().contains("cores"));
    assertFalse(
        Hay.of().unknownCores().dm("WSC", 3).judge(NSC_10).reason().contains("cores"),
        "nothing rests on them there");
  }

  @Test
  void verdictsAreSortedByGroupAndThenByLimit() {
    LotRules rules =
        new LotRules(
            List.of(
                limit("1", "b", LimitSubject.LOT, IfMissing.ASK),
                limit("3", "a", LimitSubject.LOT, IfMissing.ASK),
                limit("2", "a", LimitSubject.LOT, IfMissing.ASK),
                limit("4", "a", LimitSubject.DIET, IfMissing.ASK)),
            Hay.TABLES.settings());

    var analysis = Hay.of().dm("WSC", 8).dm("STARCH", 1).analysis();
    assertEquals(List.of("2", "3", "1"), ids(LotJudge.judge(analysis, rules)));
    assertEquals(List.of("2", "3", "1"), ids(LotJudge.unanalysed("lost", rules)));
  }

  @Test
  void ofALotWithoutAnalysisOnlyTheLimitsOfLotsThatAskAreSaid() {
    LotRules rules =
        new LotRules(
            List.of(
                limit("asks", "a", LimitSubject.LOT, IfMissing.ASK),
                limit("silent", "a", LimitSubject.LOT, IfMissing.SILENT),
                limit("diet", "a", LimitSubject.DIET, IfMissing.ASK)),
            Hay.TABLES.settings());

    assertEquals(List.of("asks"), ids(LotJudge.unanalysed("lost", rules)));
  }

  private static Limit limit(String id, String group, LimitSubject subject, IfMissing missing) {
    return Limits.named(id, group, subject, Severity.CHANGE, missing);
  }

  private static List<String> ids(List<Verdict> verdicts) {
    return verdicts.stream().map(v -> v.limit().id()).toList();
  }
}
