package rickyard.morning;

import java.util.function.BiConsumer;

/**
 * A morning read by workers elsewhere, tried again where a part of it failed there: what is read
 * stays read. Where nothing more came of a try, the run reads by itself, so that a failure is its
 * own and says what it is.
 */
final class Attempts {
  private static final int MOST = 10;

  private final MorningWork work;
  private final Workers workers;

  Attempts(MorningWork work, Workers workers) {
    this.work = work;
    this.workers = workers;
  }

  /**
   * Runs.
   *
   * @param once one try; told whether one went before, and who reads
   */
  void run(BiConsumer<Boolean, Workers> once) {
    Workers who = workers;
    int unread = Integer.MAX_VALUE;
    for (int tried = 0; ; tried++) {
      try {
        once.accept(tried > 0, who);
        return;
      } catch (MorningFailedException failure) {
        if (!failure.isOfPart() || !who.elsewhere() || work.progress().isStopping()) {
          throw failure;
        }
        int left = work.unread().size();
        who = left < unread && tried < MOST ? workers : Workers.of(workers.here());
        unread = left;
        work.progress()
            .line(
                "read     a part was not read to its end by its worker; "
                    + (who.elsewhere() ? "it is given out again" : "this run reads by itself"));
      }
    }
  }
}
