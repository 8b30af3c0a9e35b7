package rickyard.soak;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A run that is interrupted, with the processes below it. */
final class Victim {
  private static final long END_SECONDS = 30;

  private final Process run;
  private final List<ProcessHandle> children;

  Victim(Process run) {
    this.run = run;
    this.children = run.descendants().toList();
  }

  /** The end without warning, of the run alone or of the reading child with it. */
  void kill(boolean withChildren) {
    run.destroyForcibly();
    if (withChildren) {
      children.forEach(ProcessHandle::destroyForcibly);
    }
  }

  /** Asks the run to end, as a machine that is shut down does. */
  void ask() {
    run.destroy();
  }

  /** Waits for the end of all of it; gives those that were still there after 30 seconds. */
  List<String> waitForAll() throws InterruptedException {
    List<String> left = new ArrayList<>();
    if (!run.waitFor(END_SECONDS, TimeUnit.SECONDS)) {
      left.add("the run itself");
      run.destroyForcibly().waitFor();
    }
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(END_SECONDS);
    for (ProcessHandle child : children) {
      while (child.isAlive() && System.nanoTime() < until) {
        TimeUnit.MILLISECONDS.sleep(5);
      }
      if (child.isAlive()) {
        left.add("child " + child.pid());
        child.destroyForcibly();
      }
    }
    return left;
  }
}
