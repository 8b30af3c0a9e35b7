package rickyard.morning;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Does the same with each of several things, side by side on the machine's cores. The results come
 * in the order of the things, whoever was done first; where several fail the first of them is told.
 * When it ends nothing of it runs on.
 */
final class Hands {
  private static final int MOST = 4;

  private Hands() {}

  /** For work that computes: as many at a time as there are cores, at most four. */
  static <A, B> List<B> map(List<A> things, Function<A, B> work) {
    return map(Math.min(MOST, Runtime.getRuntime().availableProcessors()), things, work);
  }

  /** For work that waits for something else: so many at a time. */
  static <A, B> List<B> map(int most, List<A> things, Function<A, B> work) {
    int hands = Math.min(most, things.size());
    if (hands < 2) {
      return things.stream().map(work).toList();
    }
    ExecutorService team = Executors.newFixedThreadPool(hands, Hands::thread);
    List<Future<B>> pending = new ArrayList<>();
    try {
      things.forEach(thing -> pending.add(team.submit(() -> work.apply(thing))));
      List<B> done = new ArrayList<>();
      for (Future<B> one : pending) {
        done.add(of(one));
      }
      return done;
    } finally {
      // What has begun ends by itself: a thread interrupted at a file would close it.
      pending.forEach(one -> one.cancel(false));
      team.shutdown();
      await(team);
    }
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "hand");
    thread.setDaemon(true);
    return thread;
  }

  /** What was worked out elsewhere, waited for; a failure is told as if it had happened here. */
  static <B> B of(Future<B> one) {
    try {
      return one.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      if (e.getCause() instanceof Error failure) {
        throw failure;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while others work", e);
    }
  }

  private static void await(ExecutorService team) {
    boolean interrupted = false;
    boolean ended = false;
    while (!ended) {
      try {
        ended = team.awaitTermination(1, TimeUnit.HOURS);
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
