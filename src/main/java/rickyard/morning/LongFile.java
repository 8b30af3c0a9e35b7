package rickyard.morning;

import java.util.concurrent.TimeUnit;
import rickyard.intake.grid.ReadingProgress;

/**
 * Tells how far the reading of one long file is: on a terminal often, elsewhere a line at times.
 */
final class LongFile implements ReadingProgress {
  private static final long LINE_NANOS = TimeUnit.SECONDS.toNanos(10);

  private final String name;
  private final Progress progress;
  private long last = System.nanoTime();

  LongFile(String name, Progress progress) {
    // A name comes from outside: it must not move the cursor of a terminal.
    this.name = name.replaceAll("\\p{C}", "?");
    this.progress = progress;
  }

  @Override
  public void reached(String what, int done, int total) {
    progress.step("read " + name + ", " + what, done, total);
    long now = System.nanoTime();
    if (now - last >= LINE_NANOS) {
      last = now;
      progress.line("read     " + name + ": " + done + " of " + total + " " + what);
    }
  }
}
