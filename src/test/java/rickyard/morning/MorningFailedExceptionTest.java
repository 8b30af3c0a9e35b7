package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.springframework.batch.core.job.JobExecution;
import org.springframework.batch.core.job.JobExecutionException;
import org.springframework.batch.core.job.JobInstance;
import org.springframework.batch.core.job.parameters.JobParameters;
import rickyard.ledger.Ledger;

class MorningFailedExceptionTest {

  /** The framework gives failures in the order of their places in memory: hence often. */
  @RepeatedTest(20)
  void theSentenceOfAStepGoesBeforeTheFrameworksAboutIt() {
    JobExecution execution =
        new JobExecution(1, new JobInstance(1, MorningJob.NAME), new JobParameters());
    execution.addFailureException(
        new JobExecutionException("Partition handler returned an unsuccessful step"));
    execution.addFailureException(
        new JobExecutionException("about it", new IllegalStateException("The disk is full.")));

    assertEquals("The disk is full.", MorningFailedException.of(execution).getMessage());
  }

  @Test
  void memoryOrDiskThatRanOutIsSaidWithTheRemedy() {
    assertTrue(message(new OutOfMemoryError("Java heap space")).contains("-Xmx4g"));
    assertTrue(
        message(new UncheckedIOException(new IOException("No space left on device")))
            .startsWith("The disk is full; make room"));
  }

  @Test
  void whatRanOutIsNoDamageOfTheDatabase() {
    SQLException torn = new SQLException("General error", new OutOfMemoryError());
    SQLException full = new SQLException("Io", new IOException("No space left on device"));
    assertFalse(Ledger.isDatabaseFault(torn));
    assertFalse(Ledger.isDatabaseFault(full));
    assertTrue(Ledger.isDatabaseFault(new SQLException("File corrupted")));
  }

  private static String message(Throwable failure) {
    JobExecution execution =
        new JobExecution(1, new JobInstance(1, MorningJob.NAME), new JobParameters());
    execution.addFailureException(new JobExecutionException("about it", failure));
    return String.valueOf(MorningFailedException.of(execution).getMessage());
  }
}
