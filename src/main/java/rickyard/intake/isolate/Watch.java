package rickyard.intake.isolate;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Looks at a child's clock while it reads, and ends it when its time is over. */
final class Watch {
  private static final long LOOK_MILLIS = 200;

  /** Computing that a child which does something surely does in a while, even on a busy machine. */
  private static final Duration MOVE = Duration.ofMillis(50);

  /** Without computing for so long, a child may be waiting for a program that it has started. */
  private static final Duration STILL = Duration.ofSeconds(2);

  /** How much longer than the computing time the wall's clock runs where only that is known. */
  private static final int UNTOLD = 3;

  private static final ScheduledExecutorService LOOKOUT =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "reader-watch");
            thread.setDaemon(true);
            return thread;
          });

  private final Process process;
  private @Nullable ScheduledFuture<?> looks;
  private volatile boolean over;

  Watch(Process process) {
    this.process = process;
  }

  /** Starts the clock: the child ends after so much computing, or after so long without any. */
  void begin(Duration computing, Duration idle) {
    begin(computing, idle, Duration.ZERO);
  }

  /**
   * The same for a child that may start a program and wait for it: so long from the start of the
   * clock, its waiting does not count as idle.
   */
  void begin(Duration computing, Duration idle, Duration helped) {
    Look look = new Look(computing, idle, helped);
    looks =
        LOOKOUT.scheduleWithFixedDelay(
            () -> {
              if (look.isTimeOver()) {
                over = true;
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly();
              }
            },
            LOOK_MILLIS,
            LOOK_MILLIS,
            TimeUnit.MILLISECONDS);
  }

  private Optional<Duration> computed() {
    return process.info().totalCpuDuration();
  }

  /** The clocks of one file. */
  private final class Look {
    private final Duration computing;
    private final Duration idle;
    private final Duration helped;
    private final long start = System.nanoTime();
    private final Duration before = computed().orElse(Duration.ZERO);
    private Duration last = before;
    private long moved = start;

    private Look(Duration computing, Duration idle, Duration helped) {
      this.computing = computing;
      this.idle = idle;
      this.helped = helped;
    }

    private boolean isTimeOver() {
      long now = System.nanoTime();
      Optional<Duration> told = computed();
      if (told.isEmpty()) {
        return now - start > computing.multipliedBy(UNTOLD).plus(helped).toNanos();
      }
      if (told.get().minus(last).compareTo(MOVE) >= 0) {
        last = told.get();
        moved = now;
      } else if (isHelped(now)) {
        moved = now;
      }
      return told.get().minus(before).compareTo(computing) > 0 || now - moved > idle.toNanos();
    }

    private boolean isHelped(long now) {
      return now - moved > STILL.toNanos()
          && now - start < helped.toNanos()
          && process.descendants().findAny().isPresent();
    }
  }

  void end() {
    if (looks != null) {
      looks.cancel(false);
    }
  }

  /** Whether the time was over. */
  boolean isOver() {
    return over;
  }
}
