package rickyard.morning.remote;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.batch.core.partition.PartitionHandler;
import org.springframework.batch.core.partition.StepExecutionSplitter;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.step.Step;
import org.springframework.batch.core.step.StepExecution;
import org.springframework.batch.integration.partition.MessageChannelPartitionHandler;
import org.springframework.integration.core.MessagingTemplate;
import rickyard.ledger.Channel;
import rickyard.ledger.Hold;
import rickyard.ledger.Originals;
import rickyard.ledger.Sharing;
import rickyard.ledger.Task;

/**
 * Has the parts of a step done by workers elsewhere, and by the run itself where none comes.
 *
 * <p>Workers are inside only as long as this waits for them.
 */
public final class RemoteParts implements PartitionHandler {
  private static final Logger LOG = LoggerFactory.getLogger(RemoteParts.class);
  private static final long POLL_MILLIS = 200;

  private final Sharing sharing;
  private final Originals originals;
  private final JobRepository repository;
  private final Wish wish;
  private final Voice voice;

  /**
   * What is to be done.
   *
   * @param step name of the step that does a part
   * @param parts how many there are
   * @param task who may do it
   * @param documents hashes of what is handed out, each once
   * @param here does a part in this process while it is held
   * @param most parts done here at a time, if it comes to that
   */
  public record Wish(
      String step,
      int parts,
      Task task,
      List<String> documents,
      Function<Hold, Step> here,
      int most) {
    public Wish {
      documents = List.copyOf(documents);
    }
  }

  /** Where the run says how far it is. */
  public interface Voice {
    void line(String text);

    /** So many documents of so many are read. */
    void read(int done, int total);
  }

  public RemoteParts(
      Sharing sharing, Originals originals, JobRepository repository, Wish wish, Voice voice) {
    this.sharing = sharing;
    this.originals = originals;
    this.repository = repository;
    this.wish = wish;
    this.voice = voice;
  }

  @Override
  public Collection<StepExecution> handle(StepExecutionSplitter splitter, StepExecution run)
      throws Exception {
    try (Channel channel = sharing.channel(1 + wish.most())) {
      sharing.open(wish.task(), wish.documents(), originals);
      try (PartConsumers here =
              new PartConsumers(
                  channel, wish.task().reader(), repository, wish.here(), wish.most());
          Attendance attendance = new Attendance(sharing, wish, voice, here)) {
        return waited(attendance, () -> handler(channel).handle(splitter, run));
      } finally {
        sharing.close(this::sayQuietly);
      }
    }
  }

  /** Said while a failure may be on its way: saying it must not take its place. */
  private void sayQuietly(String text) {
    try {
      voice.line(text);
    } catch (RuntimeException askedToEnd) {
      // The run is on its way out already.
      return;
    }
  }

  private interface Waiting {
    Collection<StepExecution> end() throws Exception;
  }

  private static Collection<StepExecution> waited(Attendance attendance, Waiting waiting)
      throws Exception {
    attendance.begin();
    try {
      return waiting.end();
    } catch (Exception e) {
      if (attendance.trouble().isEmpty()) {
        throw e;
      }
      // It was this thread's interruption that came through, in whatever shape; it has served.
      LOG.debug("stopped waiting, interrupted: {}", Thread.interrupted());
      throw attendance.trouble().get();
    }
  }

  private PartitionHandler handler(Channel channel) throws Exception {
    MessagingTemplate template =
        new MessagingTemplate(PartChannel.of(channel, wish.task().reader()));
    MessageChannelPartitionHandler handler = new MessageChannelPartitionHandler();
    handler.setStepName(wish.step());
    handler.setGridSize(wish.parts());
    handler.setMessagingOperations(template);
    handler.setJobRepository(repository);
    handler.setPollInterval(POLL_MILLIS);
    handler.afterPropertiesSet();
    return handler;
  }
}
