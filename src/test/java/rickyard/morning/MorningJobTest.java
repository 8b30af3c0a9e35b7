package rickyard.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.batch.core.BatchStatus;
import org.springframework.batch.core.job.JobExecution;
import org.springframework.batch.core.job.JobInstance;
import org.springframework.batch.core.job.parameters.JobParameters;
import org.springframework.batch.core.step.StepExecution;
import org.springframework.batch.infrastructure.item.ExecutionContext;
import rickyard.ledger.Ledger;
import rickyard.ledger.Rescue;
import rickyard.ledger.TestIndex;

class MorningJobTest {
  @TempDir Path folder;
  private Ledger ledger;
  private MorningJob job;

  @BeforeEach
  void open() {
    ledger = Ledger.open(TestIndex.place(folder), Rescue.none());
    job = new MorningJob(ledger);
  }

  @AfterEach
  void close() {
    ledger.close();
  }

  private static Long attempt(JobParameters parameters) {
    return parameters.getLong("attempt");
  }

  private JobExecution execution(BatchStatus status) {
    JobParameters parameters = job.nextParameters("a", false);
    JobInstance instance = job.repository().createJobInstance(MorningJob.NAME, parameters);
    JobExecution execution =
        job.repository().createJobExecution(instance, parameters, new ExecutionContext());
    execution.setStatus(status);
    job.repository().update(execution);
    return execution;
  }

  @Test
  void theFirstAttemptOfAMorningIsNumberZero() {
    assertEquals(0L, attempt(job.nextParameters("a", false)));
  }

  @Test
  void anInstanceThatAKillLeftWithoutAnExecutionIsPassedOver() {
    job.repository().createJobInstance(MorningJob.NAME, job.nextParameters("a", false));

    assertEquals(1L, attempt(job.nextParameters("a", true)));
  }

  @Test
  void anInterruptedAttemptIsGoneOnWithOnlyWhenItIsResumed() {
    execution(BatchStatus.FAILED);

    assertEquals(0L, attempt(job.nextParameters("a", true)));
    assertEquals(1L, attempt(job.nextParameters("a", false)));
  }

  @Test
  void aCompletedAttemptIsNeverStartedAgain() {
    execution(BatchStatus.COMPLETED);

    assertEquals(1L, attempt(job.nextParameters("a", true)));
  }

  @Test
  void anAttemptWhoseEndCouldNotBeNotedIsPassedOver() {
    execution(BatchStatus.UNKNOWN);

    assertEquals(1L, attempt(job.nextParameters("a", true)));
  }

  @ParameterizedTest
  @EnumSource(names = {"UNKNOWN", "STARTED"})
  void soIsOneWithAStepWhoseEndCouldNotBeNoted(BatchStatus status) {
    JobExecution execution = execution(BatchStatus.FAILED);
    StepExecution step = job.repository().createStepExecution("arrive", execution);
    step.setStatus(status);
    job.repository().update(step);

    assertEquals(1L, attempt(job.nextParameters("a", true)));
  }

  @Test
  void anotherMorningStartsAtZero() {
    execution(BatchStatus.FAILED);

    assertEquals(0L, attempt(job.nextParameters("b", true)));
  }
}
