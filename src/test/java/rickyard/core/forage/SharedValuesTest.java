package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class SharedValuesTest {
  private final SharedValues shared = new SharedValues();

  private static LayoutLine line() {
    return new LayoutLine(
        "WSC",
        new TreeSet<>(List.of("sugars")),
        new TreeSet<>(List.of("%")),
        new TreeSet<>(List.of("dm")));
  }

  private static String text(int i) {
    return "text " + i;
  }

  @Test
  void equalValuesOfManyReportsAreOne() {
    assertSame(shared.one(line()), shared.one(line()));
    assertSame(shared.one(new AnalyteCode("WSC")), shared.one(new AnalyteCode("WSC")));
    assertSame(shared.one(LocalDate.of(2026, 3, 1)), shared.one(LocalDate.of(2026, 3, 1)));
    assertSame(shared.one(text(7)), shared.one(text(7)));
    assertSame(shared.one(Optional.of(text(7))), shared.one(Optional.of(text(7))));
    assertSame(shared.number(1234.5 + 0), shared.number(1234.5 + 0));
  }

  @Test
  void whatIsNotEqualStaysAsItIs() {
    assertEquals(text(1), shared.one(text(1)));
    assertEquals(text(2), shared.one(text(2)));
    assertEquals(-0.0, shared.number(-0.0));
    assertEquals(0.0, shared.number(0.0));
    assertNull(shared.number(null));
  }

  @Test
  void longTextsAreNotKept() {
    String once = "x".repeat(61);
    String again = "x".repeat(61);
    assertSame(once, shared.one(once));
    assertSame(again, shared.one(again));
  }

  @Test
  void itForgetsAllWhenItIsFull() {
    Object first = shared.one(text(0));
    for (int i = 1; i <= 20_000; i++) {
      shared.one(text(i));
    }
    assertNotSame(first, shared.one(text(0)));
  }
}
