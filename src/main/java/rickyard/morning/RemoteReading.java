package rickyard.morning;

import java.util.Collection;
import java.util.List;
import org.springframework.batch.core.partition.PartitionHandler;
import org.springframework.batch.core.partition.StepExecutionSplitter;
import org.springframework.batch.core.partition.support.TaskExecutorPartitionHandler;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.step.StepExecution;
import rickyard.ledger.Ledger;
import rickyard.ledger.Sharing;
import rickyard.morning.remote.RemoteParts;

/** The reading of a morning's parts by workers on its ledger; of what is left by then. */
final class RemoteReading implements PartitionHandler {
  private final Ledger ledger;
  private final Sharing sharing;
  private final JobRepository repository;
  private final MorningWork work;
  private final Workers workers;

  RemoteReading(Ledger ledger, JobRepository repository, MorningWork work, Workers workers) {
    this.ledger = ledger;
    this.sharing = ledger.sharing().orElseThrow();
    this.repository = repository;
    this.work = work;
    this.workers = workers;
  }

  @Override
  public Collection<StepExecution> handle(StepExecutionSplitter splitter, StepExecution run)
      throws Exception {
    List<String> unread = work.unread();
    if (unread.isEmpty()) {
      return nothing(splitter, run);
    }
    RemoteParts.Wish wish =
        new RemoteParts.Wish(
            ReadPartStep.NAME,
            MorningJob.PARTS,
            work.task(),
            unread,
            hold -> new HeldPartStep(repository, ledger.transactions(), work, hold, sharing::drop),
            workers.here());
    return new RemoteParts(sharing, ledger.originals(), repository, wish, new Told(work.progress()))
        .handle(splitter, run);
  }

  /** All was read by an earlier run: nobody has to be asked. */
  private Collection<StepExecution> nothing(StepExecutionSplitter splitter, StepExecution run)
      throws Exception {
    TaskExecutorPartitionHandler here = new TaskExecutorPartitionHandler();
    here.setStep(new ReadPartStep(repository, ledger.transactions(), work));
    here.setGridSize(MorningJob.PARTS);
    here.afterPropertiesSet();
    return here.handle(splitter, run);
  }

  private record Told(Progress progress) implements RemoteParts.Voice {
    @Override
    public void line(String text) {
      progress.line(text);
    }

    @Override
    public void read(int done, int total) {
      progress.step("read", done, total);
    }
  }
}
