package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;

/** What of a sample may not be used yet, and why. */
class WithheldTest {
  private static final Reading WSC = Samples.dm("WSC", 8);
  private static final Reading DM = Samples.af("DM", 88);
  private static final Reading MOISTURE = Samples.af("MOISTURE", 12);

  private static Doubt doubt(String code, String about) {
    return new Doubt(code, about, Optional.empty(), "?", List.of("yes"), "", "");
  }

  private static Check broken(Check.Kind kind) {
    return new Check(
        "sum", kind, false, List.of(AnalyteCode.WSC, AnalyteCode.NSC_WSC), "8 + 1 is not 12");
  }

  private static Map<AnalyteCode, String> reasons(
      List<Doubt> doubts, List<Check> checks, Reading... readings) {
    return new Withheld(Samples.with(Samples.of("N2", readings), doubts, checks)).reasons();
  }

  private static Reading leftOut(Reading reading) {
    return reading.with(reading.analyte(), reading.rawBasis(), Optional.empty(), "left-out");
  }

  private static Reading answered(Reading reading) {
    Measured value =
        reading.value().orElseThrow().withEvidence(new Evidence.Answered("q", "ruth", "today"));
    return reading.with(reading.analyte(), reading.rawBasis(), Optional.of(value), "");
  }

  @Test
  void whatIsSettledIsUsed() {
    assertEquals(Map.of(), reasons(List.of(), List.of(), WSC, DM));
  }

  @Test
  void aDoubtThatNoReadingCarriesHoldsTheAnalyte() {
    assertEquals(
        Map.of(AnalyteCode.WSC, "waits for an answer: two-values"),
        reasons(List.of(doubt("two-values", "WSC")), List.of(), WSC));
  }

  @Test
  void aDoubtOfOneOfTwoReadingsLeavesTheOther() {
    Reading open = Samples.inDoubt(Samples.af("WSC", 7), "two-values");

    assertEquals(Map.of(), reasons(List.of(doubt("two-values", "WSC")), List.of(), WSC, open));
    assertEquals(
        Map.of(AnalyteCode.WSC, "waits for an answer: two-values"),
        reasons(List.of(doubt("two-values", "WSC")), List.of(), open));
    assertEquals(
        Map.of(AnalyteCode.WSC, "waits for an answer: other"),
        reasons(List.of(doubt("other", "WSC")), List.of(), WSC, open));
    assertEquals(
        Map.of(AnalyteCode.WSC, "waits for an answer: two-values"),
        reasons(
                List.of(doubt("two-values", "WSC")),
                List.of(),
                WSC,
                Samples.inDoubt(Samples.dm("ESC", 6), "two-values")
                    .with(new AnalyteCode("CP"), "dm", Optional.empty(), "two-values"))
            .entrySet()
            .stream()
            .filter(e -> e.getKey().equals(AnalyteCode.WSC))
            .collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
  }

  @Test
  void whatAPersonLeftOutIsSaidToBeLeftOut() {
    assertEquals(
        Map.of(AnalyteCode.WSC, "left out by a person"),
        reasons(List.of(), List.of(), leftOut(WSC)));
  }

  @Test
  void figuresThatContradictEachOtherAreHeldTogether() {
    String words = "the figures contradict each other: 8 + 1 is not 12";

    for (Check.Kind kind : List.of(Check.Kind.EXACT, Check.Kind.ORDER)) {
      assertEquals(
          Map.of(AnalyteCode.WSC, words, AnalyteCode.NSC_WSC, words),
          reasons(List.of(), List.of(broken(kind)), WSC));
    }
    assertEquals(Map.of(), reasons(List.of(), List.of(broken(Check.Kind.SOFT)), WSC));
    Check holds = new Check("sum", Check.Kind.EXACT, true, List.of(AnalyteCode.WSC), "");
    assertEquals(Map.of(), reasons(List.of(), List.of(holds), WSC));
  }

  @Test
  void anAnswerAboutOneOfThemIsAnAnswerAboutTheContradiction() {
    List<Check> broken = List.of(broken(Check.Kind.EXACT));
    Reading nsc = Samples.dm("NSC_WSC", 12);
    Reading open = Samples.inDoubt(nsc, "identity-broken");

    assertEquals(Map.of(), reasons(List.of(), broken, answered(WSC), nsc));
    assertFalse(reasons(List.of(), broken, leftOut(WSC), nsc).containsKey(AnalyteCode.NSC_WSC));
    assertTrue(reasons(List.of(), broken, answered(WSC), open).containsKey(AnalyteCode.WSC));
    assertTrue(reasons(List.of(), broken, WSC, nsc, answered(DM)).containsKey(AnalyteCode.WSC));
  }

  @Test
  void sugarsHangOnADryMatterInDoubt() {
    for (Reading water : List.of(DM, MOISTURE)) {
      Map<AnalyteCode, String> reasons =
          reasons(List.of(), List.of(), Samples.inDoubt(water, "identity-broken"), WSC);

      assertEquals("dry matter is in doubt", reasons.get(AnalyteCode.WSC));
      assertEquals("dry matter is in doubt", reasons.get(AnalyteCode.NSC_ESC));
    }
  }

  @Test
  void oneOfDryMatterAndMoistureLeftOutIsNoDoubt() {
    assertFalse(
        reasons(List.of(), List.of(), leftOut(DM), MOISTURE, WSC).containsKey(AnalyteCode.WSC));
    assertFalse(
        reasons(List.of(), List.of(), DM, leftOut(MOISTURE), WSC).containsKey(AnalyteCode.WSC));
    assertTrue(
        reasons(List.of(), List.of(), leftOut(DM), leftOut(MOISTURE), WSC)
            .containsKey(AnalyteCode.WSC));
    assertTrue(
        reasons(List.of(), List.of(), leftOut(DM), Samples.inDoubt(MOISTURE, "x"), WSC)
            .containsKey(AnalyteCode.WSC));
    assertTrue(
        reasons(List.of(), List.of(), Samples.inDoubt(DM, "x"), leftOut(MOISTURE), WSC)
            .containsKey(AnalyteCode.WSC));
  }

  @Test
  void heldIsWhatHasAReason() {
    Withheld withheld = new Withheld(Samples.of("N2", leftOut(WSC), DM));

    assertTrue(withheld.holds(AnalyteCode.WSC));
    assertFalse(withheld.holds(AnalyteCode.DM));
  }
}
