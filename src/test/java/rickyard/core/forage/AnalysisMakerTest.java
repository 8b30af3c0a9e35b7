package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

class AnalysisMakerTest {

  private static Measured get(AccountedAnalysis made, AnalyteCode code) {
    return made.analysis().find(code).orElseThrow();
  }

  private static boolean has(AccountedAnalysis made, AnalyteCode code) {
    return made.analysis().find(code).isPresent();
  }

  @Test
  void anAsFedReportIsJudgedOnDryMatter() {
    // acceptance question: as-fed 9.2 % WSC + starch at DM 88 is 10.45 % DM
    var made =
        Samples.analysis(
            Samples.of(
                "N2", Samples.af("DM", 88), Samples.af("WSC", 8.2), Samples.af("STARCH", 1.0)));

    assertEquals(10.4545, get(made, AnalyteCode.NSC_WSC).best(), 0.0001);
    assertEquals(Basis.DRY_MATTER, get(made, AnalyteCode.NSC_WSC).basis());
    assertEquals("derived", get(made, AnalyteCode.NSC_WSC).evidence().origin());
  }

  @Test
  void dryMatterFollowsFromMoisture() {
    var made =
        Samples.analysis(Samples.of("N2", Samples.af("MOISTURE", 12), Samples.af("WSC", 8.8)));

    assertEquals(88, made.analysis().dryMatter().orElseThrow().best(), 1e-9);
    assertEquals(10, get(made, AnalyteCode.WSC).best(), 1e-9);
  }

  @Test
  void uncertaintyHoldsLaboratorySamplingAndRounding() {
    var made =
        Samples.analysis(Samples.of("N2", Samples.dm("WSC", 9.4), Samples.dm("STARCH", 1.2)));

    double round = 0.05 / Math.sqrt(3);
    double wsc = Math.sqrt(1.5 * 1.5 + 4.0 / 3 + round * round);
    double starch = Math.sqrt(0.36 + 0.25 / 3 + round * round);
    assertEquals(wsc, get(made, AnalyteCode.WSC).u(), 1e-12);
    assertEquals(Math.hypot(wsc, starch), get(made, AnalyteCode.NSC_WSC).u(), 1e-12);
    assertEquals(
        Math.hypot(wsc, starch), made.findBudget(AnalyteCode.NSC_WSC).orElseThrow().u(), 1e-12);
  }

  @Test
  void coresComeFromTheReportElseTheRegisterElseAreAssumed() {
    Sample plain = Samples.of("N2", Samples.dm("WSC", 9.4));
    Subject registered = new Subject("N2", "", MaterialClass.GRASS, OptionalInt.of(12));
    AnalysisMaker maker = new AnalysisMaker(Samples.UNCERTAINTIES);

    assertEquals("assumed", maker.make(plain, Samples.lot("N2")).coresFrom());
    assertEquals(
        "number of cores unknown, 3 assumed", maker.make(plain, Samples.lot("N2")).assumption());
    assertEquals(12, maker.make(plain, registered).cores());
    assertEquals("lots.csv", maker.make(plain, registered).coresFrom());
    assertEquals(20, maker.make(Samples.cores(plain, 20), registered).cores());
  }

  @Test
  void wetChemistryIsMoreCertainAndNirOnLegumeLess() {
    AnalysisMaker maker = new AnalysisMaker(Samples.UNCERTAINTIES);
    Sample nir = Samples.of("N2", Samples.reading("WSC", Basis.DRY_MATTER, 9.4, Method.NIR));
    Sample wet = Samples.of("N2", Samples.reading("WSC", Basis.DRY_MATTER, 9.4, Method.WET));
    Sample unknown = Samples.of("N2", Samples.dm("WSC", 9.4));
    Subject legume = new Subject("N2", "", MaterialClass.LEGUME, OptionalInt.empty());

    double asNir = get(maker.make(nir, Samples.lot("N2")), AnalyteCode.WSC).u();
    assertTrue(get(maker.make(wet, Samples.lot("N2")), AnalyteCode.WSC).u() < asNir);
    assertEquals(asNir, get(maker.make(unknown, Samples.lot("N2")), AnalyteCode.WSC).u());
    assertTrue(get(maker.make(nir, legume), AnalyteCode.WSC).u() > asNir);
  }

  @Test
  void aMissingStarchIsNotZero() {
    var made = Samples.analysis(Samples.of("N2", Samples.dm("WSC", 9.4)));

    Measured nsc = get(made, AnalyteCode.NSC_WSC);
    assertFalse(nsc.isBoundedAbove());
    assertEquals(9.4, nsc.lower(), 1e-12);
  }

  @Test
  void escAndStarchAreALowerBoundOfTheOtherDefinition() {
    var made = Samples.analysis(Samples.of("N2", Samples.dm("ESC", 6), Samples.dm("STARCH", 1)));

    assertEquals(7, get(made, AnalyteCode.NSC_ESC).best(), 1e-12);
    assertTrue(get(made, AnalyteCode.NSC_ESC).isBoundedAbove());
    assertEquals(7, get(made, AnalyteCode.NSC_WSC).lower(), 1e-12);
    assertFalse(get(made, AnalyteCode.NSC_WSC).isBoundedAbove());
  }

  @Test
  void anAsFedSugarWithoutDryMatterIsALowerBound() {
    var made = Samples.analysis(Samples.of("N2", Samples.af("WSC", 11), Samples.af("STARCH", 1)));

    assertEquals(12, get(made, AnalyteCode.NSC_WSC).lower(), 1e-12);
    assertFalse(get(made, AnalyteCode.NSC_WSC).isBoundedAbove());
  }

  @Test
  void anAsFedMineralWithoutDryMatterIsUnknownAndSaysWhy() {
    var made = Samples.analysis(Samples.of("N2", Samples.af("CA", 0.4)));

    assertFalse(has(made, AnalyteCode.CA));
    assertEquals("as fed, and no dry matter to convert it by", made.whyLeftOut(AnalyteCode.CA));
  }

  @Test
  void aPrintedNscCountsOnlyWhereAPartIsMissing() {
    var both =
        Samples.analysis(
            Samples.of(
                "N2",
                Samples.dm("NSC_WSC", 10.7),
                Samples.dm("WSC", 9.4),
                Samples.dm("STARCH", 1.2)));
    var alone = Samples.analysis(Samples.of("N2", Samples.dm("NSC_WSC", 10.7)));

    assertEquals(10.6, get(both, AnalyteCode.NSC_WSC).best(), 1e-12);
    assertEquals(10.7, get(alone, AnalyteCode.NSC_WSC).best(), 1e-12);
    assertEquals("reported", get(alone, AnalyteCode.NSC_WSC).evidence().origin());
  }

  @Test
  void aPrintedNscBelowOneOfItsPartsIsNotBelieved() {
    var made =
        Samples.analysis(Samples.of("N2", Samples.dm("NSC_WSC", 8.0), Samples.dm("WSC", 9.4)));

    assertFalse(get(made, AnalyteCode.NSC_WSC).isBoundedAbove());
    assertEquals(9.4, get(made, AnalyteCode.NSC_WSC).lower(), 1e-12);
  }

  // ESC is a part of WSC: 6.1 % ESC and 1.2 % starch are at least 7.3 % WSC + starch.
  @Test
  void aPrintedSumBelowEscAndStarchDoesNotClear() {
    AccountedAnalysis made =
        Samples.analysis(
            Samples.of(
                "N2",
                Samples.dm("NSC_WSC", 6.3),
                Samples.dm("ESC", 6.1),
                Samples.dm("STARCH", 1.2)));

    assertFalse(get(made, AnalyteCode.NSC_WSC).isBoundedAbove());
    assertEquals(7.3, get(made, AnalyteCode.NSC_WSC).lower(), 1e-12);
  }

  // However wet it was, on dry matter there is more of it than as fed.
  @Test
  void withoutDryMatterAnAsFedHazardIsALowerBound() {
    AccountedAnalysis made = Samples.analysis(Samples.of("N2", Samples.af("SE", 3.0)));

    assertFalse(get(made, AnalyteCode.SE).isBoundedAbove());
    assertEquals(3.0, get(made, AnalyteCode.SE).lower(), 1e-12);
  }

  @Test
  void aFigureInDoubtIsLeftOutWithWhatHangsOnIt() {
    var made =
        Samples.analysis(
            Samples.of(
                "N2",
                Samples.inDoubt(Samples.dm("WSC", 9.4), "basis-not-stated"),
                Samples.dm("STARCH", 1.2),
                Samples.dm("NSC_WSC", 10.6),
                Samples.dm("CP", 11)));

    assertFalse(has(made, AnalyteCode.WSC));
    assertFalse(get(made, AnalyteCode.NSC_WSC).isBoundedAbove());
    assertTrue(has(made, AnalyteCode.CP));
    assertEquals("waits for an answer: basis-not-stated", made.whyLeftOut(AnalyteCode.WSC));
  }

  @Test
  void sugarsHangOnADryMatterInDoubt() {
    var made =
        Samples.analysis(
            Samples.of(
                "N2",
                Samples.inDoubt(Samples.af("DM", 88), "ratio-off"),
                Samples.dm("WSC", 9.4),
                Samples.dm("STARCH", 1.2),
                Samples.dm("CP", 11)));

    assertFalse(has(made, AnalyteCode.NSC_WSC));
    assertTrue(has(made, AnalyteCode.CP));
  }

  @Test
  void aBrokenExactIdentityHoldsTheLinesThatItTouches() {
    Check broken =
        new Check(
            "NSC = WSC + starch",
            Check.Kind.EXACT,
            false,
            List.of(AnalyteCode.NSC_WSC, AnalyteCode.WSC, AnalyteCode.STARCH),
            "9.4 + 1.2 is not 14.6");
    Sample sample = Samples.of("N2", Samples.dm("WSC", 9.4), Samples.dm("STARCH", 1.2));

    var made = Samples.analysis(Samples.with(sample, List.of(), List.of(broken)));

    assertFalse(has(made, AnalyteCode.NSC_WSC));
    assertTrue(made.whyLeftOut(AnalyteCode.WSC).contains("9.4 + 1.2 is not 14.6"));
  }

  @Test
  void aDoubtAboutAnAnalyteHoldsIt() {
    Doubt doubt =
        new Doubt("unit-not-stated", "WSC", Optional.empty(), "Which unit?", List.of(), "", "");
    Sample sample = Samples.of("N2", Samples.dm("WSC", 9.4));

    var made = Samples.analysis(Samples.with(sample, List.of(doubt), List.of()));

    assertFalse(has(made, AnalyteCode.WSC));
  }

  @Test
  void twoFiguresThatDoNotAgreeAreNotChosenBetween() {
    var made = Samples.analysis(Samples.of("N2", Samples.dm("WSC", 9.4), Samples.dm("WSC", 12.4)));

    assertFalse(has(made, AnalyteCode.WSC));
    assertEquals(
        "the sample gives two figures that do not agree", made.whyLeftOut(AnalyteCode.WSC));
  }

  @Test
  void wetChemistryIsPreferredToNirOnTheSameSheet() {
    var made =
        Samples.analysis(
            Samples.of(
                "N2",
                Samples.reading("WSC", Basis.DRY_MATTER, 5.0, Method.NIR),
                Samples.reading("WSC", Basis.DRY_MATTER, 9.4, Method.WET)));

    assertEquals(9.4, get(made, AnalyteCode.WSC).best());
    assertEquals(Method.WET, made.methods().get(AnalyteCode.WSC));
  }

  @Test
  void nitrateBecomesNitrateNitrogen() {
    // forage-chemistry O6: 3500 ppm NO3-N is 1.549 % NO3
    var made = Samples.analysis(Samples.of("N2", Samples.dm("NO3", 1.549)));

    Measured nitrogen = get(made, AnalyteCode.NO3_N);
    assertEquals(Unit.MG_PER_KG, nitrogen.unit());
    assertEquals(3499, nitrogen.best(), 1);
  }

  @Test
  void nfcFollowsByDifference() {
    // forage-chemistry O2: CP 8.42, NDF 75.53, fat 0.95, ash 5.21 -> 9.89
    var made =
        Samples.analysis(
            Samples.of(
                "N2",
                Samples.dm("CP", 8.42),
                Samples.dm("NDF", 75.53),
                Samples.dm("EE", 0.95),
                Samples.dm("ASH", 5.21)));

    assertEquals(9.89, get(made, AnalyteCode.NFC).best(), 1e-9);
  }

  @Test
  void aCensoredStarchPutsItsUpperEndIntoTheSum() {
    var made =
        Samples.analysis(Samples.of("N2", Samples.dm("WSC", 8), Samples.below("STARCH", 0.5)));

    assertEquals(8.25, get(made, AnalyteCode.NSC_WSC).best(), 1e-12);
    assertEquals(8.5, get(made, AnalyteCode.NSC_WSC).upper(), 1e-12);
    assertEquals(8.0, get(made, AnalyteCode.NSC_WSC).lower(), 1e-12);
  }

  @Test
  void aDerivedValueLeadsBackToItsCells() {
    var made =
        Samples.analysis(
            Samples.of(
                "N2", Samples.af("DM", 88), Samples.af("WSC", 8.2), Samples.dm("STARCH", 1.0)));

    var sum = (Evidence.Derived) get(made, AnalyteCode.NSC_WSC).evidence();
    var wsc = (Evidence.Derived) sum.inputs().get(0).value().evidence();
    assertEquals("WSC + starch", sum.formula());
    assertEquals("100 × as fed / DM", wsc.formula());
    assertTrue(wsc.inputs().get(0).value().evidence() instanceof Evidence.Reported);
  }
}
