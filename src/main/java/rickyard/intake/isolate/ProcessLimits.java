package rickyard.intake.isolate;

import java.time.Duration;

/**
 * What reading one file may cost. A limit that is reached ends the child; the file gets one more
 * try alone in a fresh one and is then refused with a code.
 *
 * <p>Time is the child's computing time, so that a busy machine does not change a result; a child
 * that computes nothing at all is ended too. Where the system does not tell computing time, three
 * times as much on the wall counts.
 *
 * @param heapMib heap of a child, MiB, from 16
 * @param largeFrom bytes above which a file is large: it gets a child of its own, one at a time
 * @param heapPerMib heap added for each MiB of a large file above that, MiB
 * @param mostHeapMib heap of a child for the largest file, MiB
 * @param computing computing time for a file, before its size is looked at
 * @param computingPerMib computing time added for each MiB of the file
 * @param idle how long a child may compute nothing
 * @param helped how long a child may wait for the program that reads pictures, which has limits of
 *     its own for each page
 * @param answerMib bytes of an answer, MiB, before the file's size is looked at
 * @param answerPerByte bytes of an answer added for each byte of the file
 */
public record ProcessLimits(
    int heapMib,
    long largeFrom,
    int heapPerMib,
    int mostHeapMib,
    Duration computing,
    Duration computingPerMib,
    Duration idle,
    Duration helped,
    int answerMib,
    int answerPerByte) {

  /** An honest report takes a tenth of a second and some 20 MiB. */
  public static final ProcessLimits DEFAULT =
      new ProcessLimits(
          320,
          1L << 20,
          160,
          2_048,
          Duration.ofSeconds(20),
          Duration.ofSeconds(50),
          Duration.ofSeconds(30),
          Duration.ofMinutes(15),
          64,
          64);

  public ProcessLimits {
    if (heapMib < 16
        || mostHeapMib < heapMib
        || largeFrom < 1
        || heapPerMib < 0
        || answerMib < 1
        || answerPerByte < 1) {
      throw new IllegalArgumentException("every limit is positive, a heap at least 16 MiB");
    }
    if (computing.isNegative()
        || computing.isZero()
        || computingPerMib.isNegative()
        || idle.isNegative()
        || idle.isZero()
        || helped.isNegative()) {
      throw new IllegalArgumentException("time must be positive");
    }
  }

  boolean isLarge(long bytes) {
    return bytes > largeFrom;
  }

  /** Heap of a child for a file of a size, MiB. */
  int heapMib(long bytes) {
    long grown = heapMib + heapPerMib * Math.max(0, (bytes - largeFrom) >> 20);
    return (int) Math.min(grown, mostHeapMib);
  }

  /** Computing time for a file of a size. */
  Duration computing(long bytes) {
    return computing.plus(computingPerMib.multipliedBy(bytes >> 20));
  }

  /** Bytes of an answer for a file of a size. */
  long answer(long bytes) {
    return ((long) answerMib << 20) + answerPerByte * bytes;
  }
}
