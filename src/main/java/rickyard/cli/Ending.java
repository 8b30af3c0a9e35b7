package rickyard.cli;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;

/**
 * The end of a run that is asked to end from outside: it stops at its next report or horse, closes
 * the ledger and lets the office go. The process then ends with the status of the signal.
 */
final class Ending {
  private static final long PATIENCE_SECONDS = 25;
  private static volatile boolean asked;

  private Ending() {}

  /** What a run throws when it sees that it should end. */
  static final class AskedToEndException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    AskedToEndException() {
      super("asked to end");
    }
  }

  /** Whether the process was asked to end. */
  static boolean isAsked() {
    return asked;
  }

  /** To be called where a run may stop. */
  static void pause() {
    if (asked) {
      throw new AskedToEndException();
    }
  }

  /** Runs; a process that is asked to end meanwhile waits until this run is closed. */
  static int during(PrintWriter err, IntSupplier run) {
    CountDownLatch closed = new CountDownLatch(1);
    Thread hook = new Thread(() -> end(closed), "ending");
    Runtime.getRuntime().addShutdownHook(hook);
    try {
      return run.getAsInt();
    } catch (RuntimeException e) {
      if (asked) {
        err.println(
            "rickyard: asked to end; nothing is half-written, the same command goes on where it"
                + " stopped.");
        err.flush();
      }
      throw e;
    } finally {
      closed.countDown();
      forget(hook);
    }
  }

  private static void end(CountDownLatch closed) {
    asked = true;
    try {
      if (!closed.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        // The rest is as safe as a kill.
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void forget(Thread hook) {
    if (!asked) {
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException ending) {
        // Asked to end at this very moment: the hook finds the run closed.
        return;
      }
    }
  }
}
