package rickyard.intake.isolate;

/** No child can be started on this machine: nothing is read, the run stops. */
public final class ReaderUnavailableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ReaderUnavailableException(String why) {
    super(
        "The process that reads files cannot be started ("
            + why
            + "); check that java may be run from here and that memory is free, then run the same"
            + " command again.");
  }
}
