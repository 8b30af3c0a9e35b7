package rickyard.morning;

import java.util.Comparator;
import org.springframework.batch.core.job.JobExecution;
import org.springframework.batch.core.job.JobExecutionException;
import rickyard.ledger.Exhausted;

/** A step failed; nothing is half-written and the same command goes on where it stopped. */
public final class MorningFailedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final boolean ofPart;

  MorningFailedException(String message, Throwable cause) {
    this(message, cause, false);
  }

  private MorningFailedException(String message, Throwable cause, boolean ofPart) {
    super(message, cause);
    this.ofPart = ofPart;
  }

  /** Whether no more is known than that a part of the reading did not come to its end. */
  boolean isOfPart() {
    return ofPart;
  }

  /** The framework keeps failures in no order: what a step said goes before what was made of it. */
  static MorningFailedException of(JobExecution execution) {
    Throwable cause =
        execution.getAllFailureExceptions().stream()
            .map(MorningFailedException::unwrapped)
            .min(
                Comparator.comparing(MorningFailedException::isOfTheFramework)
                    .thenComparing(e -> String.valueOf(e.getMessage())))
            .orElseGet(() -> new IllegalStateException(execution.getExitStatus().toString()));
    String message = Exhausted.sentence(cause).orElseGet(() -> String.valueOf(cause.getMessage()));
    return new MorningFailedException(message, cause, cause instanceof JobExecutionException);
  }

  private static Throwable unwrapped(Throwable failure) {
    Throwable cause = failure;
    while (isOfTheFramework(cause) && cause.getCause() != null) {
      cause = cause.getCause();
    }
    return cause;
  }

  private static boolean isOfTheFramework(Throwable failure) {
    return failure.getClass().getName().startsWith("org.springframework.batch");
  }
}
