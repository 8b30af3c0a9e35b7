package rickyard.registers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DecimalMarkTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  @Test
  void aFileThatUsesTheCommaThroughoutIsReadWithIt() {
    DecimalMark mark = DecimalMark.of(Stream.of("12", "3,5", "1,200", "text"));

    assertEquals(DecimalMark.COMMA, mark);
    assertEquals(OptionalDouble.of(3.5), mark.parse("3,5"));
    assertEquals(OptionalDouble.of(1.2), mark.parse("1,200"));
    assertEquals(NONE, mark.parse("1.200"));
    assertEquals(NONE, mark.parse("3.5"));
  }

  @Test
  void aFileThatUsesThePointThroughoutIsReadWithIt() {
    DecimalMark mark = DecimalMark.of(Stream.of("3.5", "1.200"));

    assertEquals(DecimalMark.POINT, mark);
    assertEquals(OptionalDouble.of(1.2), mark.parse("1.200"));
    assertEquals(NONE, mark.parse("1,200"));
  }

  @Test
  void aNumberThatMayBeThousandsAloneIsNotRead() {
    DecimalMark mark = DecimalMark.of(Stream.of("1.200", "12", "1,200"));

    assertEquals(DecimalMark.UNSETTLED, mark);
    assertEquals(NONE, mark.parse("1.200"));
    assertEquals(NONE, mark.parse("1,200"));
    assertEquals(OptionalDouble.of(1200), mark.parse("1200"));
  }

  @Test
  void whereBothMarksOccurOnlyAPointThatCannotGroupIsRead() {
    DecimalMark mark = DecimalMark.of(Stream.of("3.5", "2,5"));

    assertEquals(DecimalMark.MIXED, mark);
    assertEquals(NONE, mark.parse("2,5"));
    assertEquals(NONE, mark.parse("1.200"));
    assertEquals(OptionalDouble.of(3.5), mark.parse("3.5"));
  }

  @Test
  void whatIsNoPlainNumberIsNotRead() {
    for (String text :
        new String[] {
          "1e3",
          "+5",
          "1 200",
          "0x10",
          "NaN",
          "Infinity",
          "5 kg",
          "½",
          "٣",
          ".5",
          "5.",
          "--5",
          "",
          "1.2.3",
          "1,200.5"
        }) {
      assertEquals(NONE, DecimalMark.POINT.parse(text), text);
    }
  }

  @Test
  void theHalfWidthIsHalfOfTheLastPrintedDigit() {
    assertEquals(0.5, DecimalMark.halfWidth("350"));
    assertEquals(0.05, DecimalMark.halfWidth("9.4"), 1e-15);
    assertEquals(0.005, DecimalMark.halfWidth("9,40"), 1e-15);
  }
}
