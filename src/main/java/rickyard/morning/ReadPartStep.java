package rickyard.morning;

import org.springframework.batch.core.job.JobInterruptedException;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.step.Step;
import org.springframework.batch.core.step.StepExecution;
import org.springframework.batch.core.step.builder.StepBuilder;
import org.springframework.transaction.PlatformTransactionManager;

/**
 * Reads one part of the inventory: one document is one item; a few share a transaction, and those
 * of a run that was interrupted are read again.
 *
 * <p>Parts run side by side and a reader has a position of its own, so each execution builds its
 * own chunk step. A document that cannot be read is a result; an exception stops the job.
 */
final class ReadPartStep implements Step {
  static final String NAME = "read-part";
  static final String PART = "part";

  private static final int DOCUMENTS_PER_COMMIT = 8;

  private final JobRepository repository;
  private final PlatformTransactionManager transactions;
  private final PartReading work;

  ReadPartStep(
      JobRepository repository, PlatformTransactionManager transactions, PartReading work) {
    this.repository = repository;
    this.transactions = transactions;
    this.work = work;
  }

  @Override
  public String getName() {
    return NAME;
  }

  @Override
  public void execute(StepExecution execution) throws JobInterruptedException {
    int part = execution.getExecutionContext().getInt(PART);
    new StepBuilder(NAME, repository)
        .<Integer, ReadResult>chunk(DOCUMENTS_PER_COMMIT)
        .transactionManager(transactions)
        .reader(new ListReader<>("documents", () -> work.documentsOf(part)))
        .processor(work::read)
        .writer(chunk -> chunk.getItems().forEach(work::keepReading))
        .build()
        .execute(execution);
  }
}
