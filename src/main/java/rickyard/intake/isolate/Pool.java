package rickyard.intake.isolate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * The children of one run. The first is started at the first need; another only when readers have
 * waited, all in all, so long that the start of a process pays. A single wait says little: where
 * two readers hand one child to and fro, each wait is as short as a file, and there are thousands.
 */
final class Pool implements AutoCloseable {
  private static final long WORTH_A_START_NANOS = TimeUnit.MILLISECONDS.toNanos(700);

  private final int most;
  private final Supplier<Child> start;
  private final Deque<Child> idle = new ArrayDeque<>();
  private final List<Child> all = new ArrayList<>();
  private final Thread atExit = new Thread(this::close, "readers-end");
  private boolean closed;
  private int lent;

  /** What readers have waited since the last start, while another child might have been started. */
  private long waitedNanos;

  Pool(int most, Supplier<Child> start) {
    if (most < 1) {
      throw new IllegalArgumentException("at least one child, was " + most);
    }
    this.most = most;
    this.start = start;
    Runtime.getRuntime().addShutdownHook(atExit);
  }

  /** Starts a child if there is none. */
  synchronized void warm() {
    if (all.isEmpty()) {
      requireOpen();
      idle.push(started());
    }
  }

  /** A child for one file; waits where all are busy and no more may be started. */
  synchronized Child take() {
    while (true) {
      requireOpen();
      idle.removeIf(child -> !child.isUsable());
      if (!idle.isEmpty()) {
        return lend(idle.pop());
      }
      if (lent == 0 || (lent < most && waitedNanos >= WORTH_A_START_NANOS)) {
        return lend(started());
      }
      boolean counts = lent < most;
      long since = System.nanoTime();
      try {
        wait(TimeUnit.NANOSECONDS.toMillis(counts ? left() : WORTH_A_START_NANOS));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("interrupted while a file waited to be read", e);
      }
      waitedNanos += counts ? System.nanoTime() - since : 0;
    }
  }

  /** What is still to be waited before another start pays; a millisecond at least. */
  private long left() {
    return Math.max(TimeUnit.MILLISECONDS.toNanos(1), WORTH_A_START_NANOS - waitedNanos);
  }

  private Child lend(Child child) {
    lent++;
    return child;
  }

  /** A child started in the place of one that a file has cost. */
  synchronized Child fresh() {
    requireOpen();
    return started();
  }

  private Child started() {
    waitedNanos = 0;
    Child child = start.get();
    all.removeIf(c -> !c.isAlive());
    all.add(child);
    return child;
  }

  /** Takes a child back; one that has ended is forgotten. */
  synchronized void giveBack(Child child) {
    lent--;
    if (child.isUsable()) {
      idle.push(child);
    }
    notifyAll();
  }

  /** A run that is ending keeps no result: its children may have been ended with it. */
  synchronized void requireOpen() {
    if (closed) {
      throw new IllegalStateException("the run is ending; no file is read any more");
    }
  }

  synchronized int running() {
    return pids().size();
  }

  synchronized List<Long> pids() {
    return all.stream().filter(Child::isAlive).map(Child::pid).toList();
  }

  @Override
  public void close() {
    List<Child> left;
    synchronized (this) {
      closed = true;
      left = List.copyOf(all);
      idle.clear();
      notifyAll();
    }
    left.forEach(Child::destroy);
    try {
      Runtime.getRuntime().removeShutdownHook(atExit);
    } catch (IllegalStateException ending) {
      // The program is ending: the hook is what runs here.
    }
  }
}
