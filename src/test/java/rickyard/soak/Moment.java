package rickyard.soak;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** The moment of a run at which it is interrupted. */
interface Moment {

  /** Waits for the moment; false if the run ended before it came. */
  boolean await(Process run) throws InterruptedException;

  /** Some time after the start, up to the usual length of a run. */
  static Moment anywhere(Random random, long usualMillis) {
    long delay = (long) (random.nextDouble() * usualMillis);
    return run -> !run.waitFor(delay, TimeUnit.MILLISECONDS);
  }

  /**
   * While outputs appear: once there are some more files in the output folder than now, under final
   * or temporary names, and up to two milliseconds later.
   *
   * @param out the output folder
   * @param all how many files it will hold
   */
  static Moment whilePublishing(Random random, Path out, int all) {
    int now = count(out);
    int wanted = now + 1 + random.nextInt(Math.max(1, all - now));
    long later = (long) (random.nextDouble() * 2_000_000);
    return run -> {
      boolean began = Files.isDirectory(out) && now == 0;
      while (run.isAlive()) {
        if (count(out) >= wanted) {
          long until = System.nanoTime() + later;
          while (System.nanoTime() < until) {
            Thread.onSpinWait();
          }
          return run.isAlive();
        }
        began = began || count(out) > now;
        // Once files appear they all do so within a tenth of a second.
        TimeUnit.MICROSECONDS.sleep(began ? 50 : 1_000);
      }
      return false;
    };
  }

  /** Files in an output folder and in the one folder below it. */
  static int count(Path out) {
    return names(out).length + names(out.resolve("drafts")).length;
  }

  private static String[] names(Path folder) {
    String[] names = folder.toFile().list((in, name) -> !name.equals("drafts"));
    return names == null ? new String[0] : names;
  }
}
