package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HandsTest {
  private static final List<Integer> MANY = IntStream.range(0, 200).boxed().toList();

  @Test
  void resultsComeInTheOrderOfTheThings() {
    assertEquals(MANY.stream().map(i -> i * i).toList(), Hands.map(8, MANY, i -> i * i));
    assertEquals(List.of(), Hands.map(8, List.<Integer>of(), i -> i));
  }

  @Test
  void soManyWorkAtOnce() {
    CountDownLatch all = new CountDownLatch(3);

    List<Boolean> met =
        Hands.map(
            3,
            List.of(1, 2, 3),
            i -> {
              all.countDown();
              try {
                return all.await(20, TimeUnit.SECONDS);
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
            });

    assertEquals(List.of(true, true, true), met);
  }

  @Test
  void theFirstFailureIsToldAndNothingRunsOnAfterIt() {
    AtomicInteger running = new AtomicInteger();

    IllegalArgumentException told =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                Hands.map(
                    4,
                    MANY,
                    i -> {
                      running.incrementAndGet();
                      try {
                        if (i == 7 || i == 9) {
                          throw new IllegalArgumentException("thing " + i);
                        }
                        return i;
                      } finally {
                        running.decrementAndGet();
                      }
                    }));

    assertEquals("thing 7", told.getMessage());
    assertEquals(0, running.get());
  }
}
