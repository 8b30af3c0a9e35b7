package rickyard.morning;

import org.springframework.batch.core.job.JobExecution;

/** A step failed; nothing is half-written and the same command goes on where it stopped. */
public final class MorningFailedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  MorningFailedException(String message, Throwable cause) {
    super(message, cause);
  }

  static MorningFailedException of(JobExecution execution) {
    Throwable cause =
        execution.getAllFailureExceptions().stream()
            .findFirst()
            .orElseGet(() -> new IllegalStateException(execution.getExitStatus().toString()));
    while (cause.getCause() != null
        && cause.getClass().getName().startsWith("org.springframework.batch")) {
      cause = cause.getCause();
    }
    return new MorningFailedException(String.valueOf(cause.getMessage()), cause);
  }
}
