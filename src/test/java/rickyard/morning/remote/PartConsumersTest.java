package rickyard.morning.remote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.repository.support.ResourcelessJobRepository;
import org.springframework.batch.integration.partition.StepExecutionRequest;
import org.springframework.integration.channel.QueueChannel;
import org.springframework.messaging.Message;
import org.springframework.messaging.support.GenericMessage;
import rickyard.ledger.Channel;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import rickyard.ledger.Rescue;
import rickyard.ledger.Sharing;
import rickyard.ledger.Task;
import rickyard.ledger.TestIndex;

/** What comes over the channel, and what is not taken from it; runs only where a server is. */
class PartConsumersTest {
  private static final Task TASK = new Task("r1", "p", "t", "no ocr", 1, "2026-03-16");

  @TempDir Path temp;

  @BeforeEach
  void onAServer() {
    assumeTrue(TestIndex.isOnServer(), "rickyard.test.postgresql names no server");
  }

  /** Bytes from elsewhere may be of any class; this one would be found if it were allowed. */
  private record Foreign(String word) implements java.io.Serializable {}

  private static final class NoRescue implements Rescue {
    @Override
    public Optional<byte[]> find(String sha256) {
      return Optional.empty();
    }

    @Override
    public void say(String line) {}
  }

  private Ledger open() {
    Ledger ledger = Ledger.open(TestIndex.place(temp.resolve("ledger")), new NoRescue());
    sharing(ledger).open(TASK, List.of(), ledger.originals());
    return ledger;
  }

  private static Sharing sharing(Ledger ledger) {
    return ledger.sharing().orElseThrow();
  }

  @Test
  void aMessageComesOverOnceAndOnlyToTheReaderItIsFor() {
    try (Ledger ledger = open();
        Channel channel = sharing(ledger).channel(2)) {
      QueueChannel queue = PartChannel.of(channel, "r1");
      queue.send(new GenericMessage<>(new StepExecutionRequest("read-part", 7)));

      assertEquals(null, PartChannel.of(channel, "r2").receive(0));
      Message<?> received = PartChannel.of(channel, "r1").receive(0);
      assertEquals(7L, ((StepExecutionRequest) received.getPayload()).getStepExecutionId());
      assertEquals(null, queue.receive(0));
    }
  }

  @Test
  void whatIsNoMessageOfOursIsNeverMadeOfItsBytes() {
    try (Ledger ledger = open();
        Channel channel = sharing(ledger).channel(1)) {
      QueueChannel queue = PartChannel.of(channel, "r1");
      queue.send(new GenericMessage<>(new Foreign("x")));

      RuntimeException refusal = assertThrows(RuntimeException.class, () -> queue.receive(0));

      assertTrue(story(refusal).contains("Attempt to deserialize unauthorized"), story(refusal));
    }
  }

  private static String story(Throwable thrown) {
    StringBuilder story = new StringBuilder();
    for (Throwable at = thrown; at != null; at = at.getCause()) {
      story.append(at).append('\n');
    }
    return story.toString();
  }

  @Test
  void aMessageThatComesBackAgainAndAgainStopsTheWorker() throws InterruptedException {
    try (Ledger ledger = open();
        Channel channel = sharing(ledger).channel(1)) {
      PartChannel.of(channel, "r1").send(new GenericMessage<>(new Foreign("x")));
      JobRepository none = new ResourcelessJobRepository();
      try (PartConsumers consumers =
          new PartConsumers(
              channel,
              "r1",
              none,
              hold ->
                  execution -> {
                    throw new LedgerException("never called");
                  },
              1)) {
        assertTrue(consumers.failure().isEmpty());
        consumers.start();
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (consumers.failure().isEmpty() && System.nanoTime() < until) {
          TimeUnit.MILLISECONDS.sleep(20);
        }

        assertTrue(consumers.failure().isPresent(), "it would go round for ever");
      }
    }
  }
}
