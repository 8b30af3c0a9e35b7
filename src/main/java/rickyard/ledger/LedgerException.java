package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Path;

/** The ledger cannot be used; the message is a plain sentence for a person. */
public final class LedgerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final boolean newer;
  private final boolean held;

  public LedgerException(String message) {
    this(message, false, false);
  }

  public LedgerException(String message, Throwable cause) {
    super(message, cause);
    this.newer = false;
    this.held = false;
  }

  private LedgerException(String message, boolean newer, boolean held) {
    super(message);
    this.newer = newer;
    this.held = held;
  }

  /** The ledger of a later version: nothing of it may be touched. */
  static LedgerException newer() {
    return new LedgerException(
        "This ledger was written by a newer Rickyard; use that version for this office.",
        true,
        false);
  }

  /** A full disk or a missing right, naming the folder. */
  static LedgerException cannotWrite(Path folder, IOException e) {
    return new LedgerException(
        "The ledger folder " + folder + " cannot be written: " + DurableFiles.why(e), e);
  }

  /** Another run has the office on the server. */
  static LedgerException held(String message) {
    return new LedgerException(message, false, true);
  }

  /** Whether nothing is wrong but that another run has the office. */
  public boolean isHeld() {
    return held;
  }

  boolean isNewer() {
    return newer;
  }
}
