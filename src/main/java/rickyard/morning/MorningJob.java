package rickyard.morning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.batch.core.BatchStatus;
import org.springframework.batch.core.configuration.support.MapJobRegistry;
import org.springframework.batch.core.job.Job;
import org.springframework.batch.core.job.JobExecution;
import org.springframework.batch.core.job.JobExecutionException;
import org.springframework.batch.core.job.builder.JobBuilder;
import org.springframework.batch.core.job.parameters.JobParameters;
import org.springframework.batch.core.job.parameters.JobParametersBuilder;
import org.springframework.batch.core.launch.support.TaskExecutorJobOperator;
import org.springframework.batch.core.partition.Partitioner;
import org.springframework.batch.core.repository.JobRepository;
import org.springframework.batch.core.scope.context.ChunkContext;
import org.springframework.batch.core.step.Step;
import org.springframework.batch.core.step.StepContribution;
import org.springframework.batch.core.step.builder.PartitionStepBuilder;
import org.springframework.batch.core.step.builder.StepBuilder;
import org.springframework.batch.core.step.tasklet.Tasklet;
import org.springframework.batch.infrastructure.item.ExecutionContext;
import org.springframework.batch.infrastructure.repeat.RepeatStatus;
import org.springframework.core.task.SimpleAsyncTaskExecutor;
import org.springframework.core.task.SyncTaskExecutor;
import org.springframework.core.task.TaskExecutor;
import org.springframework.transaction.PlatformTransactionManager;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.Ledger;

/**
 * Wires the steps of a morning; no rule of the domain lives here.
 *
 * <p>A bad report, and a horse that cannot be judged, are results and not exceptions: nothing is
 * skipped, retried or filtered, and any exception stops the job. What stops can be started again
 * with the same command and goes on where it was.
 */
final class MorningJob {
  static final String NAME = "morning";
  static final String IDENTITY = "identity";
  static final String READ = "read";

  /** Parts of the reading, fixed so that a restart with other workers finds the same parts. */
  static final int PARTS = 8;

  private static final int HORSES_PER_COMMIT = 50;

  private final Ledger ledger;
  private final PlatformTransactionManager transactions;
  private final JobRepository repository;
  private final TaskExecutorJobOperator operator;

  MorningJob(Ledger ledger) {
    this.ledger = ledger;
    this.transactions = ledger.transactions();
    this.repository = Jobs.in(ledger.dataSource(), transactions, ledger.databaseKind());
    this.operator = operator(repository);
  }

  private static TaskExecutorJobOperator operator(JobRepository repository) {
    try {
      TaskExecutorJobOperator operator = new TaskExecutorJobOperator();
      operator.setJobRepository(repository);
      operator.setJobRegistry(new MapJobRegistry());
      operator.setTaskExecutor(new SyncTaskExecutor());
      operator.afterPropertiesSet();
      return operator;
    } catch (Exception e) {
      throw new IllegalStateException("the job cannot be set up", e);
    }
  }

  /**
   * Runs a morning to its end, or goes on with it.
   *
   * @param identity names the morning
   * @param resume whether to go on with what an interrupted run of this identity left; otherwise
   *     every step is done anew
   * @param work what each step does
   * @param workers who reads the documents
   * @throws MorningFailedException if a step failed
   */
  void run(String identity, boolean resume, MorningWork work, Workers workers) {
    if (workers.elsewhere()) {
      new Attempts(work, workers).run((again, who) -> once(identity, resume || again, work, who));
    } else {
      once(identity, resume, work, workers);
    }
  }

  private void once(String identity, boolean resume, MorningWork work, Workers workers) {
    recoverDeadRuns();
    Job job = job(work, workers);
    JobParameters parameters = nextParameters(identity, resume);
    try {
      JobExecution execution = operator.start(job, parameters);
      if (execution.getStatus() != BatchStatus.COMPLETED) {
        throw MorningFailedException.of(execution);
      }
    } catch (JobExecutionException e) {
      throw new MorningFailedException("The morning could not be started: " + e.getMessage(), e);
    }
  }

  /**
   * Each attempt is a job instance of its own, so that steps of an abandoned attempt never count as
   * done in another. A kill can fall between the making of an instance and of its execution: such
   * an attempt cannot be gone on with and is passed over.
   */
  JobParameters nextParameters(String identity, boolean resume) {
    long attempt = 0;
    while (repository.getJobInstance(NAME, parameters(identity, attempt)) != null) {
      attempt++;
    }
    if (attempt == 0 || !resume) {
      return parameters(identity, attempt);
    }
    @Nullable JobExecution last =
        repository.getLastJobExecution(NAME, parameters(identity, attempt - 1));
    return parameters(identity, last != null && canGoOn(last) ? attempt - 1 : attempt);
  }

  /**
   * Not where the end of the job or of a step could not be noted, as on a full disk: the framework
   * refuses to go on with such an execution, for ever. Readings are kept apart from the attempt.
   */
  private static boolean canGoOn(JobExecution last) {
    return last.getStatus() != BatchStatus.COMPLETED
        && isEnded(last.getStatus())
        && last.getStepExecutions().stream().allMatch(step -> isEnded(step.getStatus()));
  }

  private static boolean isEnded(BatchStatus status) {
    return status != BatchStatus.UNKNOWN && !status.isRunning();
  }

  /** The repository of the job's executions, for tests of its restart. */
  JobRepository repository() {
    return repository;
  }

  private static JobParameters parameters(String identity, long attempt) {
    return new JobParametersBuilder()
        .addString(IDENTITY, identity)
        .addLong("attempt", attempt)
        .toJobParameters();
  }

  /** The office's lock proves that nobody runs: whatever still says so is dead. */
  private void recoverDeadRuns() {
    for (JobExecution dead : repository.findRunningJobExecutions(NAME)) {
      operator.recover(dead);
    }
  }

  private Job job(MorningWork work, Workers workers) {
    return new JobBuilder(NAME, repository)
        .start(tasklet("arrive", work::arrive))
        .next(read(work, workers))
        .next(tasklet("settle", work::settle))
        .next(tasklet("judge", work::judge))
        .next(advise(work))
        .next(tasklet("share", work::share))
        .next(tasklet("publish", work::publish))
        .build();
  }

  private Step tasklet(String name, Runnable action) {
    Tasklet tasklet =
        (StepContribution contribution, ChunkContext context) -> {
          action.run();
          return RepeatStatus.FINISHED;
        };
    return new StepBuilder(name, repository).tasklet(tasklet, transactions).build();
  }

  /** Reads every document of the inventory; one document is one item. */
  private Step read(MorningWork work, Workers workers) {
    Partitioner parts =
        size -> {
          Map<String, ExecutionContext> contexts = new TreeMap<>();
          for (int part = 0; part < PARTS; part++) {
            ExecutionContext context = new ExecutionContext();
            context.putInt(ReadPartStep.PART, part);
            contexts.put("part" + part, context);
          }
          return contexts;
        };
    PartitionStepBuilder step =
        new StepBuilder(READ, repository).partitioner(ReadPartStep.NAME, parts).gridSize(PARTS);
    // Its classes are loaded here and nowhere else.
    return workers.elsewhere()
        ? step.partitionHandler(new RemoteReading(ledger, repository, work, workers)).build()
        : step.step(new ReadPartStep(repository, transactions, work))
            .taskExecutor(executor(workers.here()))
            .build();
  }

  /** Places in an inventory that one part reads; equal bytes fall into one part. */
  static List<Integer> documentsOf(List<ArrivalRow> rows, int part) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      ArrivalRow row = rows.get(i);
      if (row.problemCode().isEmpty()
          && Integer.parseInt(row.sha256().substring(0, 4), 16) % PARTS == part) {
        found.add(i);
      }
    }
    return found;
  }

  private static TaskExecutor executor(int workers) {
    if (workers == 1) {
      return new SyncTaskExecutor();
    }
    SimpleAsyncTaskExecutor executor = new SimpleAsyncTaskExecutor("read-");
    executor.setConcurrencyLimit(workers);
    return executor;
  }

  /** Advises every horse; one horse is one item, pure and cheap, so several share a commit. */
  private Step advise(MorningWork work) {
    return new StepBuilder("advise", repository)
        .<String, String>chunk(HORSES_PER_COMMIT)
        .transactionManager(transactions)
        .reader(new ListReader<>("horses", work::horses))
        .writer(chunk -> work.advise(List.copyOf(chunk.getItems())))
        .build();
  }
}
