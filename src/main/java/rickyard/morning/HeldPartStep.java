package rickyard.morning;

import java.util.List;
import java.util.function.Consumer;
import org.springframework.batch.core.job.JobInterruptedException;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.step.Step;
import org.springframework.batch.core.step.StepExecution;
import org.springframework.transaction.PlatformTransactionManager;
import rickyard.ledger.Hold;

/**
 * Reads one part as long as it is held: a document is begun only while the part is the reader's.
 */
final class HeldPartStep implements Step {
  private final JobRepository repository;
  private final PlatformTransactionManager transactions;
  private final PartReading reading;
  private final Hold hold;
  private final Consumer<String> drop;

  /**
   * Prepares the reading.
   *
   * @param drop told which document needs not be handed out any more
   */
  HeldPartStep(
      JobRepository repository,
      PlatformTransactionManager transactions,
      PartReading reading,
      Hold hold,
      Consumer<String> drop) {
    this.repository = repository;
    this.transactions = transactions;
    this.reading = reading;
    this.hold = hold;
    this.drop = drop;
  }

  @Override
  public String getName() {
    return ReadPartStep.NAME;
  }

  @Override
  public void execute(StepExecution execution) throws JobInterruptedException {
    new ReadPartStep(repository, transactions, new Held(execution.getId())).execute(execution);
  }

  private final class Held implements PartReading {
    private final long part;

    Held(long part) {
      this.part = part;
    }

    @Override
    public List<Integer> documentsOf(int number) {
      return reading.documentsOf(number);
    }

    @Override
    public ReadResult read(int seq) {
      hold.require(part);
      return reading.read(seq);
    }

    @Override
    public void keepReading(ReadResult result) {
      reading.keepReading(result);
      drop.accept(result.sha256());
    }
  }
}
