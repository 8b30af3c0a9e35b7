package rickyard.morning;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.springframework.batch.core.repository.JobRepository;
import rickyard.intake.isolate.IsolatedIntake;
import rickyard.ledger.Channel;
import rickyard.ledger.DatabaseAddress;
import rickyard.ledger.LedgerException;
import rickyard.ledger.Task;
import rickyard.ledger.WorkerLedger;
import rickyard.morning.remote.PartConsumers;

/**
 * Reads documents for the mornings of an office that ask for workers. It holds nothing of the
 * office: ended at any moment, what it had in hand is read by another.
 */
public final class Worker {
  private static final long LOOK_MILLIS = 1_000;

  private final DatabaseAddress address;
  private final Optional<Path> folder;
  private final Optional<Path> config;
  private final int most;
  private final Progress progress;
  private Optional<Task> shown = Optional.empty();

  /**
   * Prepares a worker.
   *
   * @param folder the office's ledger folder, if it is at hand: it says which office is meant
   * @param config the office's changes to the built-in tables, if it has any
   * @param most documents read at a time, from 1
   */
  public Worker(
      DatabaseAddress address,
      Optional<Path> folder,
      Optional<Path> config,
      int most,
      Progress progress) {
    this.address = address;
    this.folder = folder;
    this.config = config;
    this.most = most;
    this.progress = progress;
  }

  /**
   * Reads until the process is ended.
   *
   * @throws LedgerException if the server is lost or refuses
   * @throws UsageException if a run wants a reader that this one is not
   */
  public void run() {
    Readers readers = readers();
    try (WorkerLedger ledger = ledger()) {
      try {
        progress.line("worker   ready at " + address.words());
        while (true) {
          readers = servedUntilOther(ledger, readers);
        }
      } catch (RuntimeException failure) {
        throw ledger
            .refusal(failure)
            .or(ledger::lost)
            .map(RuntimeException.class::cast)
            .orElse(failure);
      }
    }
  }

  private Readers readers() {
    return new Readers(Tables.load(config).dictionary());
  }

  private WorkerLedger ledger() {
    Optional<WorkerLedger> found = WorkerLedger.find(address, folder, most);
    if (found.isEmpty()) {
      progress.line("wait     for the first morning of the office in " + address.words());
    }
    while (found.isEmpty()) {
      pause();
      found = WorkerLedger.find(address, folder, most);
    }
    return found.get();
  }

  /** Serves runs with one reader; gives the next one, where the office's words have changed. */
  private Readers servedUntilOther(WorkerLedger ledger, Readers readers) {
    String reader = readers.digest();
    ledger.register(reader);
    JobRepository jobs = Jobs.in(ledger.dataSource(), ledger.transactions(), ledger.databaseKind());
    try (IsolatedIntake intake = readers.intake(most, progress);
        Channel channel = ledger.channel(most);
        PartConsumers parts =
            new PartConsumers(
                channel,
                reader,
                jobs,
                hold ->
                    new HeldPartStep(
                        jobs,
                        ledger.transactions(),
                        new WorkerReading(ledger, intake, reader),
                        hold,
                        ledger::drop),
                most)) {
      parts.start();
      return awaitOther(ledger, parts, reader);
    }
  }

  private Readers awaitOther(WorkerLedger ledger, PartConsumers parts, String reader) {
    while (true) {
      ledger
          .lost()
          .ifPresent(
              lost -> {
                throw lost;
              });
      parts
          .failure()
          .ifPresent(
              failure -> {
                throw new LedgerException(
                    "A part of the reading cannot be taken or not be noted, five times over; end"
                        + " the run and start it again, then this worker.",
                    failure);
              });
      Optional<Task> task = ledger.task();
      if (task.isPresent() && !task.get().reader().equals(reader)) {
        return others(task.get());
      }
      note(task);
      pause();
    }
  }

  /** The office's words may have changed since this worker was started. */
  private Readers others(Task task) {
    Readers readers = readers();
    if (!readers.digest().equals(task.reader())) {
      throw new UsageException(
          "This worker does not read for the morning of "
              + task.asOf()
              + ", because it would read otherwise than the run: "
              + String.join("; ", readers.otherwise(task))
              + ". Nothing was read; start a worker that is like the run.");
    }
    return readers;
  }

  private void note(Optional<Task> task) {
    if (!task.equals(shown)) {
      shown = task;
      progress.line(
          task.map(t -> "read     for the morning of " + t.asOf())
              .orElse("wait     for the next morning"));
    }
  }

  private static void pause() {
    try {
      TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
