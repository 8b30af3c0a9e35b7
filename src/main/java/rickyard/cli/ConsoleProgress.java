package rickyard.cli;

import java.io.PrintWriter;
import java.util.Locale;
import rickyard.morning.Progress;

/** Progress on a terminal overwrites one line; elsewhere each stage prints one plain line. */
final class ConsoleProgress implements Progress {
  private static final int STEP_PERCENT = 10;
  private final PrintWriter out;
  private final boolean terminal;
  private int shown = -1;

  ConsoleProgress(PrintWriter out, boolean terminal) {
    this.out = out;
    this.terminal = terminal;
  }

  /** Plain lines beside the output of a command that other programs may read. */
  static Progress aside(PrintWriter err) {
    return new ConsoleProgress(err, false);
  }

  @Override
  public synchronized void line(String text) {
    Ending.pause();
    if (terminal && shown >= 0) {
      out.print("\r\u001b[K");
    }
    shown = -1;
    out.println(text);
    out.flush();
  }

  @Override
  public synchronized void step(String stage, int done, int total) {
    Ending.pause();
    if (!terminal || total < STEP_PERCENT) {
      return;
    }
    int percent = (int) (100L * done / total);
    if (percent != shown) {
      shown = percent;
      out.print(String.format(Locale.ROOT, "\r%s %d of %d\u001b[K", stage, done, total));
      out.flush();
    }
  }

  @Override
  public boolean isStopping() {
    return Ending.isAsked();
  }
}
