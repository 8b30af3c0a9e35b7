package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.RepeatedTest;
import org.springframework.batch.core.job.JobExecution;
import org.springframework.batch.core.job.JobExecutionException;
import org.springframework.batch.core.job.JobInstance;
import org.springframework.batch.core.job.parameters.JobParameters;

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
}
