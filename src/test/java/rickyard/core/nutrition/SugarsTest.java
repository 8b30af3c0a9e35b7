package rickyard.core.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** What partial reports say of WSC + starch, and what of it may be held against a limit. */
class SugarsTest {

  private static Map<AnalyteCode, Measured> sums(String given) {
    Map<AnalyteCode, Measured> contents = new TreeMap<>();
    for (String one : given.split(" ", -1)) {
      String[] pair = one.split("=", -1);
      double value = Double.parseDouble(pair[1]);
      contents.put(
          new AnalyteCode(pair[0]),
          Measured.of(Unit.PERCENT, Basis.DRY_MATTER, value, 0, 0.5, Foods.reported("" + value)));
    }
    Sugars.addSums(contents, 0);
    return contents;
  }

  private static String ends(Map<AnalyteCode, Measured> contents, AnalyteCode code) {
    return Optional.ofNullable(contents.get(code))
        .map(v -> v.lower() + ".." + v.upper())
        .orElse("none");
  }

  @ParameterizedTest
  @CsvSource({
    // the parts beat a printed sum
    "NSC_WSC=12 WSC=9 STARCH=1, 10.0..10.0",
    // a printed sum stands where a part is missing
    "NSC_WSC=12 WSC=9, 12.0..12.0",
    "NSC_WSC=12, 12.0..12.0",
    // and is not believed where a part is more than it
    "NSC_WSC=8 WSC=9, 9.0..Infinity",
    "NSC_WSC=8 ESC=9, 9.0..Infinity",
    "NSC_WSC=8 NSC_ESC=9, 9.0..Infinity",
    "NSC_WSC=8 ESC=8, 8.0..8.0",
    // ESC + starch is a lower bound, the higher of two counts
    "ESC=5 STARCH=1, 6.0..Infinity",
    "WSC=9 ESC=5, 9.0..Infinity",
    "WSC=5 NSC_ESC=9, 9.0..Infinity",
    "STARCH=3, 3.0..Infinity",
    "WSC=9, 9.0..Infinity"
  })
  void wscAndStarchIsWhatTheReportAllows(String given, String ends) {
    assertEquals(ends, ends(sums(given), AnalyteCode.NSC_WSC));
  }

  @ParameterizedTest
  @CsvSource({
    "ESC=5 STARCH=1, 6.0..6.0",
    // WSC + starch bounds it from above
    "WSC=9 STARCH=1, 1.0..10.0",
    "NSC_WSC=12 ESC=5, 5.0..12.0",
    "NSC_WSC=12, 0.0..12.0",
    "NSC_ESC=4 ESC=5, 5.0..Infinity",
    "WSC=9, none"
  })
  void escAndStarchIsWhatTheReportAllows(String given, String ends) {
    assertEquals(ends, ends(sums(given), AnalyteCode.NSC_ESC));
  }

  private static LimitContents forLimit(AnalyteCode code, Portion... portions) {
    double total = List.of(portions).stream().mapToDouble(Portion::kgDm).sum();
    List<DietItem> items =
        List.of(portions).stream().map(p -> new DietItem(p, p.kgDm(), p.kgDm() / total)).toList();
    return LimitContents.of(code, items, Foods.STANDARDS);
  }

  private static Portion hay(AnalyteCode code, double value, double kg) {
    return Portion.of(Foods.of("hay", "grass-hay").dm(100).with(code, value, 0).lot(), kg, true);
  }

  private static Portion feed(Foods made, double kg) {
    return Portion.of(made.dm(100).feed(), kg, false);
  }

  @Test
  void ergovalineComesWithForageAlone() {
    Portion oats = feed(Foods.of("oats", "concentrate"), 3);
    Portion unknown = Portion.of(Foods.of("b", "grass-hay").dm(100).lot(), 1, true);

    LimitContents found =
        forLimit(AnalyteCode.ERGOVALINE, hay(AnalyteCode.ERGOVALINE, 0.1, 7), oats, unknown);

    assertEquals(List.of("b"), found.missing(), "the oats are not asked");
  }

  @Test
  void silenceOfALabelIsNoneInASupplyAndUnknownAgainstALimit() {
    Portion hay = hay(AnalyteCode.K, 2, 8);
    Foods silent = Foods.of("mix", "supplement");

    assertEquals(0, silent.feed().find(AnalyteCode.K).orElseThrow().best());
    assertEquals(List.of("mix b1"), forLimit(AnalyteCode.K, hay, feed(silent, 2)).missing());
    LimitContents little = forLimit(AnalyteCode.K, hay, feed(silent, 0.1));
    assertEquals(List.of("mix b1"), little.stoodIn());
    assertEquals(5, Optional.ofNullable(little.byItem().get("mix b1")).orElseThrow().upper());
  }

  @Test
  void saltHoldsNoPotassiumByDefinitionAndALabelMaySayNone() {
    Portion hay = hay(AnalyteCode.K, 2, 8);
    Portion salt = feed(Foods.of("salt", "salt"), 1);
    Portion none = feed(Foods.of("oil", "concentrate").with(AnalyteCode.K, 0, 0), 1);

    assertEquals(List.of(), forLimit(AnalyteCode.K, hay, salt, none).missing());
    assertEquals(List.of(), forLimit(AnalyteCode.K, hay, salt, none).stoodIn());
  }

  /** A count of moulds is no content of dry matter. */
  @Test
  void onlyContentsOfDryMatterAreMixed() {
    Measured count = Measured.of(Unit.CFU_PER_G, Basis.NONE, 1000, 0, 0, Foods.reported("1000"));
    Portion counted =
        Portion.of(
            Foods.of("a", "grass-hay").dm(100).with(new AnalyteCode("MOULD"), count).lot(),
            8,
            true);

    LimitContents found = forLimit(new AnalyteCode("MOULD"), counted);

    assertEquals(Map.of(), found.byItem());
    assertEquals(List.of("a"), found.missing());
  }

  @Test
  void whatIsNotFedLeavesNothingOpen() {
    Foodstuff open = Foods.of("z", "grass-hay").with(AnalyteCode.WSC, 30, 0).lot();
    Portion hay =
        Portion.of(
            Foods.of("hay", "grass-hay")
                .dm(100)
                .with(AnalyteCode.WSC, 9, 0)
                .with(AnalyteCode.STARCH, 1, 0)
                .lot(),
            8,
            true);
    Portion none = Portion.of(open, 0, true);
    Horse horse = Horses.adult(500).build();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);

    LimitContents found = forLimit(AnalyteCode.NSC_WSC, hay, none);
    assertEquals(List.of(), found.missing());
    assertEquals(List.of(), found.stoodIn());
    Measured whole =
        Diet.evaluate(horse, List.of(hay, none), needs, Foods.STANDARDS)
            .content(AnalyteCode.NSC_WSC)
            .orElseThrow();
    assertEquals(10, whole.upper(), 1e-12);
    assertEquals(10, whole.high(), 1e-12);
  }

  /** 6 kg of 900 and 4 kg of 1900 mg/kg: 1300 mg/kg. A count of moulds is not mixed. */
  @Test
  void whateverIsKnownOfDryMatterIsMixed() {
    Measured nitrate =
        Measured.of(Unit.MG_PER_KG, Basis.DRY_MATTER, 900, 0, 0, Foods.reported("900"));
    Measured more =
        Measured.of(Unit.MG_PER_KG, Basis.DRY_MATTER, 1900, 0, 0, Foods.reported("1900"));
    Measured count = Measured.of(Unit.CFU_PER_G, Basis.NONE, 1000, 0, 0, Foods.reported("1000"));
    Foods first = Foods.of("a", "grass-hay").dm(100).with(AnalyteCode.NO3_N, nitrate);
    Foods second = Foods.of("b", "grass-hay").dm(100).with(AnalyteCode.NO3_N, more);
    Horse horse = Horses.adult(500).build();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);

    Diet diet =
        Diet.evaluate(
            horse,
            List.of(
                Portion.of(first.with(new AnalyteCode("MOULD"), count).lot(), 6, true),
                Portion.of(second.lot(), 4, true)),
            needs,
            Foods.STANDARDS);

    assertEquals(1300, diet.content(AnalyteCode.NO3_N).orElseThrow().best(), 1e-9);
    assertEquals(List.of(), diet.missingFor(new AnalyteCode("MOULD")));
  }

  @Test
  void nothingFedHasNoContentAndLeavesNoNutrientOpen() {
    Foodstuff hay =
        Foods.of("a", "grass-hay")
            .with(AnalyteCode.NSC_WSC, 9, 0)
            .with(AnalyteCode.VIT_E, 90, 0)
            .lot();
    Foodstuff silent = Foods.of("b", "grass-hay").lot();
    Horse horse = Horses.adult(500).build();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);

    Diet empty = Diet.evaluate(horse, List.of(Portion.of(hay, 0, true)), needs, Foods.STANDARDS);
    Diet some =
        Diet.evaluate(
            horse,
            List.of(Portion.of(hay, 10, true), Portion.of(silent, 0, true)),
            needs,
            Foods.STANDARDS);

    assertEquals(Optional.empty(), empty.content(AnalyteCode.NSC_WSC));
    assertEquals(List.of(), some.line(Nutrient.VIT_E).supply().missing());
  }

  @Test
  void anItemWithoutAValueLeavesTheWholeOpenAbove() {
    Portion oats = feed(Foods.of("oats", "concentrate"), 3);
    Horse horse = Horses.adult(500).build();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);

    Measured whole =
        Diet.evaluate(horse, List.of(hay(AnalyteCode.NSC_WSC, 10, 7), oats), needs, Foods.STANDARDS)
            .content(AnalyteCode.NSC_WSC)
            .orElseThrow();

    assertEquals(7, whole.lower(), 1e-12);
    assertEquals(Double.POSITIVE_INFINITY, whole.high());
    assertFalse(whole.isBoundedAbove());
  }

  /**
   * Twice 5 ± 1 kg of one lot with 90 ± 2 % of dry matter: 9 kg ± (1.8 of kilograms, 0.2 of DM).
   */
  @Test
  void oneLotFedTwiceIsOffInTheSameDirectionTwice() {
    Foodstuff lot = Foods.of("a", "grass-hay").dm(90, 2).lot();
    Portion five = new Portion(lot, 5, 1, true, OptionalInt.empty());
    Foodstuff rich = Foods.of("r", "grass-hay").dm(100).with(AnalyteCode.NSC_WSC, 20, 0).lot();
    Portion richTwice = new Portion(rich, 1, 0.1, true, OptionalInt.empty());
    Horse horse = Horses.adult(500).build();
    Requirements needs = Requirements.of(horse, Horses.DAY, Foods.STANDARDS);

    Diet same = Diet.evaluate(horse, List.of(five, five), needs, Foods.STANDARDS);
    assertEquals(2 * Math.hypot(0.9, 0.1), same.line(Nutrient.DM).supply().u(), 1e-12);

    // 2 kg of 20 % beside 8 kg of 10 %: 12 %; ± 0.2 kg of the rich one moves it by 8 x 0.2 / 10
    Diet mixed =
        Diet.evaluate(
            horse,
            List.of(richTwice, richTwice, hay(AnalyteCode.NSC_WSC, 10, 8)),
            needs,
            Foods.STANDARDS);
    assertEquals(0.16, mixed.content(AnalyteCode.NSC_WSC).orElseThrow().u(), 1e-12);
  }
}
