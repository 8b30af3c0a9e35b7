package rickyard.core.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class WordsTest {

  @Test
  void anOpenEndIsUnboundedAndNoNumber() {
    assertEquals("unbounded", Words.number(Double.POSITIVE_INFINITY));
    assertEquals("unbounded", Words.number(Double.POSITIVE_INFINITY, 0));
  }

  @Test
  void smallNumbersKeepMoreDecimalsThanLargeOnes() {
    assertEquals("0.9999", Words.number(0.99994));
    assertEquals("1.23", Words.number(1.2345));
    assertEquals("99.99", Words.number(99.994));
    assertEquals("101", Words.number(100.6));
    assertEquals("-12.35", Words.number(-12.345));
    assertEquals("0", Words.number(0.00004));
  }

  @Test
  void aChanceThatIsNotCertainIsNeverSaidToBe() {
    assertEquals("below 1 %", Words.percent(1e-9));
    assertEquals("below 1 %", Words.percent(0.0049));
    assertEquals("99 %", Words.percent(0.9949));
    assertEquals("above 99 %", Words.percent(0.995));
    assertEquals("above 99 %", Words.percent(0.999999));
  }

  @Test
  void halfAPerCentIsRoundedUpAndCertaintyIsSaid() {
    assertEquals("0 %", Words.percent(0));
    assertEquals("1 %", Words.percent(0.005));
    assertEquals("50 %", Words.percent(0.5));
    assertEquals("100 %", Words.percent(1));
  }
}
