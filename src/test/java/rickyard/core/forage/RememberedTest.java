package rickyard.core.forage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RememberedTest {
  private final AtomicInteger made = new AtomicInteger();
  private final Remembered<Integer, Object> known =
      new Remembered<>(
          key -> {
            made.incrementAndGet();
            return "made of " + key;
          });

  @Test
  void whatWasMadeOnceIsNotMadeAgain() {
    Object first = known.of(7);
    assertEquals("made of 7", first);
    assertSame(first, known.of(7));
    assertEquals(1, made.get());
  }

  @Test
  void itForgetsAllWhenItIsFull() {
    IntStream.range(0, 20_000).forEach(known::of);
    known.of(0);
    assertEquals(20_000, made.get(), "the first is still known");
    known.of(20_000);
    known.of(0);
    assertEquals(20_002, made.get(), "the first was made again");
  }

  @Test
  void allThreadsGetTheSame() throws Exception {
    ExecutorService hands = Executors.newFixedThreadPool(8);
    try {
      Remembered<Integer, Object> fresh = new Remembered<>(key -> new Object());
      List<Future<List<Object>>> answers =
          IntStream.range(0, 8)
              .mapToObj(
                  i -> hands.submit(() -> IntStream.range(0, 10_000).mapToObj(fresh::of).toList()))
              .toList();
      Set<List<Object>> different = new HashSet<>();
      for (Future<List<Object>> answer : answers) {
        different.add(answer.get());
      }
      assertEquals(1, different.size());
    } finally {
      hands.shutdownNow();
    }
  }
}
