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
  void anUncertaintyKeepsTwoFiguresThatCount() {
    assertEquals("0", Words.uncertainty(0));
    assertEquals("0.33", Words.uncertainty(0.3311));
    assertEquals("0.05", Words.uncertainty(0.04996));
    assertEquals("0.00052", Words.uncertainty(0.000518868));
    assertEquals("1.74", Words.uncertainty(1.742603));
    assertEquals("12.08", Words.uncertainty(12.083449));
  }
}
