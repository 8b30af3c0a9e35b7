package rickyard.intake.isolate;

/** Why reading a file ended without an answer: the file's own fault, never the whole morning's. */
enum Fault {
  TOO_SLOW("too-slow"),
  TOO_MUCH_MEMORY("too-much-memory"),
  STOPPED("reader-stopped"),
  FAILED("reader-failed"),
  BAD_ANSWER("answer-unreadable");

  private static final String INSTEAD =
      "; ask for the report as another file or type the figures in.";
  private static final String SMALLER = "; ask for it in smaller parts or as another file.";

  private final String code;

  Fault(String code) {
    this.code = code;
  }

  /** Stable code for outcomes.csv. */
  String code() {
    return code;
  }

  /** What happened, the limit and what to do; the same for the same file on every machine. */
  String sentence(ProcessLimits limits, long bytes) {
    return switch (this) {
      case TOO_SLOW ->
          "Reading it was stopped, twice, after "
              + limits.computing(bytes).toSeconds()
              + " s of computing or "
              + limits.idle().toSeconds()
              + " s of doing nothing, the limit for a file of this size"
              + SMALLER;
      case TOO_MUCH_MEMORY ->
          "Reading it needs more than "
              + limits.heapMib(bytes)
              + " MiB of memory, the limit for one file, tried twice"
              + SMALLER;
      case STOPPED -> "The reader's process ended while reading it, twice" + INSTEAD;
      case FAILED -> "The reader failed on it, twice" + INSTEAD;
      case BAD_ANSWER -> "The reader's answer on it could not be used, twice" + INSTEAD;
    };
  }
}
