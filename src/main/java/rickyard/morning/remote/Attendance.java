package rickyard.morning.remote;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.springframework.batch.core.job.JobExecutionException;
import org.springframework.scheduling.concurrent.ThreadPoolTaskScheduler;
import rickyard.ledger.Sharing;

/**
 * Looks who is there while a run waits for its parts, says it, and has the run read itself when
 * nobody is there for a while: a morning does not wait for a person.
 */
final class Attendance implements AutoCloseable {
  static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final Duration LOOK = Duration.ofMillis(500);

  private final ThreadPoolTaskScheduler scheduler = new ThreadPoolTaskScheduler();
  private final Sharing sharing;
  private final RemoteParts.Wish wish;
  private final RemoteParts.Voice voice;
  private final PartConsumers here;
  private final Thread waiting = Thread.currentThread();
  private final AtomicReference<@Nullable Exception> trouble = new AtomicReference<>();
  private @Nullable ScheduledFuture<?> looking;
  private int present = -1;
  private boolean isHere;
  private long alone = System.nanoTime();

  Attendance(Sharing sharing, RemoteParts.Wish wish, RemoteParts.Voice voice, PartConsumers here) {
    this.sharing = sharing;
    this.wish = wish;
    this.voice = voice;
    this.here = here;
  }

  void begin() {
    scheduler.setDaemon(true);
    scheduler.setThreadNamePrefix("workers-");
    scheduler.initialize();
    looking = scheduler.scheduleWithFixedDelay(this::look, LOOK);
  }

  /** What made the run stop waiting. */
  Optional<Exception> trouble() {
    return Optional.ofNullable(trouble.get());
  }

  private void look() {
    if (trouble.get() != null) {
      return;
    }
    try {
      Sharing.Workers workers = sharing.workers(wish.task().reader());
      note(workers, sharing.left());
      if (workers.fit() > 0) {
        alone = System.nanoTime();
      } else if (!isHere && System.nanoTime() - alone > PATIENCE.toNanos()) {
        voice.line("read     nobody came; this run reads by itself");
        isHere = true;
        here.start();
      }
      if (here.failure().isPresent()) {
        stop(new JobExecutionException("no part can be taken"));
      }
    } catch (RuntimeException e) {
      stop(e);
    }
  }

  private void stop(Exception why) {
    trouble.set(why);
    waiting.interrupt();
  }

  private void note(Sharing.Workers workers, int left) {
    int total = wish.documents().size();
    if (workers.fit() != present) {
      present = workers.fit();
      if (present > 0) {
        voice.line(
            "read     "
                + count(present, "worker")
                + " there, "
                + left
                + " of "
                + total
                + " documents to read");
      } else if (!isHere) {
        voice.line(nobody(workers.all()));
      }
    }
    voice.read(total - left, total);
  }

  private static String nobody(int misfits) {
    String who =
        misfits == 0
            ? "no worker is there; start rickyard worker with the same --ledger and office"
            : count(misfits, "worker")
                + " there, with another program or other tables than this run; start one that has"
                + " the same";
    return "read     " + who + " (in " + PATIENCE.toSeconds() + " s this run reads by itself)";
  }

  private static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? " is" : "s are");
  }

  @Override
  public void close() {
    if (looking != null) {
      looking.cancel(false);
    }
    scheduler.shutdown();
  }
}
