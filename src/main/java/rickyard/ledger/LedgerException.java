package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Path;

/** The ledger cannot be used; the message is a plain sentence for a person. */
public final class LedgerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final boolean newer;

  public LedgerException(String message) {
    super(message);
    this.newer = false;
  }

  public LedgerException(String message, Throwable cause) {
    super(message, cause);
    this.newer = false;
  }

  private LedgerException(String message, boolean newer) {
    super(message);
    this.newer = newer;
  }

  /** The ledger of a later version: nothing of it may be touched. */
  static LedgerException newer() {
    return new LedgerException(
        "This ledger was written by a newer Rickyard; use that version for this office.", true);
  }

  /** A full disk or a missing right, naming the folder. */
  static LedgerException cannotWrite(Path folder, IOException e) {
    return new LedgerException(
        "The ledger folder " + folder + " cannot be written: " + DurableFiles.why(e), e);
  }

  boolean isNewer() {
    return newer;
  }
}
