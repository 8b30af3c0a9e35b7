package rickyard.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {
  @ParameterizedTest
  @CsvSource({
    "9.4,9.4",
    "10.4545,10.45",
    "0.005,0.005",
    "0.0123,0.012",
    "729.84,729.8",
    "2050.4,2050",
    "0,0",
    "9.995,10",
    "-1.005,-1.01"
  })
  void numbersHaveFewDigits(double number, String expected) {
    assertEquals(expected, Shown.number(number));
  }

  // P over = 5.05 % at y = 8.36, u = 1.0, L = 10: docs of the limits, decision rules, worked
  // example
  @ParameterizedTest
  @CsvSource({
    "0.0505,5.1 %", "0.2,20 %", "0.00001,less than 0.1 %", "0,less than 0.1 %",
        "1,more than 99.9 %",
    "0.996,99.6 %", "0.9995,more than 99.9 %", "0.5,50 %", "0.0999,10 %", "0.001,0.1 %"
  })
  void aChanceIsNeverNoneAndNeverCertain(double chance, String expected) {
    assertEquals(expected, Shown.chance(chance));
  }

  @Test
  void whatIsUnknownSaysSo() {
    assertEquals("unknown", Shown.number(null));
    assertEquals("unknown", Shown.chance(null));
    assertEquals("unknown", Shown.withUncertainty(null, 0.4));
    assertEquals("9.4", Shown.withUncertainty(9.4, null));
    assertEquals("9.4 ± 1.03", Shown.withUncertainty(9.4, 1.03));
    assertEquals("unknown", Shown.share(1, 0));
  }

  @ParameterizedTest
  @CsvSource({
    "8.75,8.75 kg,19.29 lb",
    "0.03,0.03 kg,0.066 lb",
    "500,500 kg,1102 lb",
    "0,0 kg,0 lb"
  })
  void amountsAreShownInBothUnits(double kg, String metric, String pounds) {
    // 1 lb = 0.45359237 kg, exact by definition
    assertEquals(metric, Mass.KG.words(kg));
    assertEquals(pounds, Mass.named("lb").words(kg));
  }

  @Test
  void anUnknownCodeIsShownAsItIs() {
    assertEquals("WSC + starch", Words.of("quantity", "nsc_wsc"));
    assertEquals("% of dry matter", Words.of("unit", "% DM"));
    assertEquals("new_one", Words.of("quantity", "new_one"));
  }
}
