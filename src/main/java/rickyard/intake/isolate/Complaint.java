package rickyard.intake.isolate;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The first words on a child's error output; the rest is let go, so that the child never waits. */
final class Complaint {
  private static final int KEPT = 2048;
  private static final long PATIENCE_MILLIS = 1000;

  private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
  private final Thread listener;

  private Complaint(InputStream errors) {
    listener = new Thread(() -> drain(errors), "reader-errors");
    listener.setDaemon(true);
  }

  static Complaint listenTo(InputStream errors) {
    Complaint complaint = new Complaint(errors);
    complaint.listener.start();
    return complaint;
  }

  private void drain(InputStream errors) {
    byte[] some = new byte[KEPT];
    try (errors) {
      for (int read = errors.read(some); read >= 0; read = errors.read(some)) {
        kept.write(some, 0, Math.min(read, KEPT - kept.size()));
      }
    } catch (IOException closed) {
      // The process is gone; what was kept stays.
    }
  }

  /** What was said, on one line, once the process has ended. */
  String text() {
    try {
      listener.join(PATIENCE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return kept.toString(StandardCharsets.UTF_8).replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
  }
}
