package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.Method;

/** When a sentence stands beside a lot. */
class LotNotesTest {
  private static final Limit NSC_10 = Limits.nsc(10, OptionalDouble.of(0.05));
  private static final Set<Word> CLOSE_OR_OVER =
      Set.of(Word.BORDERLINE_UNDER, Word.BORDERLINE_OVER, Word.EXCEEDS);

  private static LotNote note(String quantity, String text) {
    return new LotNote(
        text,
        quantity,
        CLOSE_OR_OVER,
        Optional.empty(),
        OptionalDouble.empty(),
        "",
        text,
        "memory",
        "memory");
  }

  private static LotNote besideAsh(double over) {
    return new LotNote(
        "soil",
        "fe",
        CLOSE_OR_OVER,
        Optional.of(AnalyteCode.ASH),
        OptionalDouble.of(over),
        "",
        "soil",
        "memory",
        "memory");
  }

  private static List<String> notes(Hay hay, Limit limit, LotNote... table) {
    return LotNotes.of(List.of(hay.judge(limit)), hay.analysis(), Arrays.asList(table));
  }

  private static Hay sugar(double wsc, double starch) {
    return Hay.of().method(Method.WET).dm("WSC", wsc).dm("STARCH", starch);
  }

  @Test
  void aNoteIsOfItsOwnQuantityOnly() {
    assertEquals(
        List.of("sugar"),
        notes(sugar(14, 1), NSC_10, note("no3_n", "nitrate"), note("nsc_wsc", "sugar")));
  }

  @Test
  void aSentenceOfTwoRowsIsSaidOnce() {
    assertEquals(
        List.of("first", "twice"),
        notes(
            sugar(14, 1),
            NSC_10,
            note("nsc_wsc", "first"),
            note("nsc_wsc", "twice"),
            note("nsc_wsc", "twice")));
  }

  @Test
  void theFigureBesideHasToBeOverItsLine() {
    Limit iron = Limits.of("fe", Bound.MAX, 500, "mg/kg DM", OptionalDouble.empty());
    Hay hay = Hay.of().dm("FE", 800).dm("ASH", 11);

    assertEquals(List.of("soil"), notes(hay, iron, besideAsh(10.9)));
    assertEquals(List.of(), notes(hay, iron, besideAsh(11)), "as much is not more");
    assertEquals(List.of(), notes(Hay.of().dm("FE", 800), iron, besideAsh(11)));
  }

  @Test
  void aNoteForHayIsNotSaidOfHaylage() {
    LotNote store =
        new LotNote(
            "store",
            "nsc_wsc",
            CLOSE_OR_OVER,
            Optional.empty(),
            OptionalDouble.empty(),
            "hay",
            "store",
            "memory",
            "memory");

    assertEquals(List.of("store"), notes(sugar(14, 1), NSC_10, store));
    assertEquals(List.of(), notes(sugar(14, 1).material(MaterialClass.HAYLAGE), NSC_10, store));
  }

  /** Mass balance: (0.16 − 0.10) / (0.16 · 0.90) = 0.417. */
  @Test
  void theLossThatSoakingNeedsIsSaidOfWhatIsOverTheLimitOnly() {
    LotNote soaking = note("nsc_wsc", "lose {soaking} %");

    assertEquals(List.of("lose 42 %"), notes(sugar(15, 1), NSC_10, soaking));
    assertEquals(List.of(), notes(sugar(9, 1), NSC_10, soaking), "borderline at the limit");
    assertEquals(List.of(), notes(sugar(8.5, 1), NSC_10, soaking), "borderline under it");
  }

  /** (0.21 − 0.10) / (0.21 · 0.90) = 0.582; to 12 % it would be 0.487. */
  @Test
  void ofSeveralLimitsTheLowestSaysWhatSoakingNeeds() {
    LotNote soaking = note("nsc_wsc", "lose {soaking} %");
    Limit twelve = Limits.nsc(12, OptionalDouble.of(0.025));
    Hay hay = sugar(20, 1);

    assertEquals(
        List.of("lose 58 %"),
        LotNotes.of(
            List.of(hay.judge(twelve), hay.judge(NSC_10)), hay.analysis(), List.of(soaking)));
  }

  @Test
  void theLossThatSoakingNeedsIsKnownOfSharesInPerCentOnly() {
    Limit grams = Limits.of("nsc_wsc", Bound.MAX, 100, "g/kg DM", OptionalDouble.of(0.05));

    assertEquals(
        List.of("sugar"),
        notes(sugar(15, 1), grams, note("nsc_wsc", "lose {soaking} %"), note("nsc_wsc", "sugar")));
  }
}
