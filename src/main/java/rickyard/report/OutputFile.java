package rickyard.report;

import java.io.IOException;
import java.io.OutputStream;

/**
 * One file of a morning that is made while it is written: the tables of a season need no room of
 * their own. Each writing gives the same bytes.
 */
@FunctionalInterface
public interface OutputFile {

  /** Writes the whole file; the stream stays open. */
  void write(OutputStream out) throws IOException;

  /** A file that is there already. */
  static OutputFile of(byte[] bytes) {
    return out -> out.write(bytes);
  }
}
