package rickyard.soak;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import rickyard.BuiltJar;
import rickyard.ledger.TestIndex;

/** An office on a server whose mornings are read by workers, each process the built program. */
final class RemoteOffice implements AutoCloseable {
  static final String SETTLED = "settle ";
  private static final String ATTENDED = " there, ";
  private static final long PATIENCE_SECONDS = 300;

  private final Path office;
  private final Path log;
  private final List<Process> processes = new ArrayList<>();

  /** Copies an office into a folder that is not there yet. */
  RemoteOffice(Path made, Path folder) throws IOException {
    this.office = folder;
    this.log = folder.resolveSibling(folder.getFileName() + ".txt");
    BuiltJar.copy(made, folder);
  }

  Path folder() {
    return office;
  }

  /** Starts the morning that asks for workers. */
  Process morning() throws IOException {
    return start(
        log,
        "morning",
        office.toString(),
        "--as-of",
        SoakOffice.DAY,
        "--outputs",
        "data,page",
        "--workers",
        "remote",
        "--ledger",
        TestIndex.url());
  }

  /** Starts a worker that is told of the office's folder. */
  Process worker(String... more) throws IOException {
    List<String> words =
        new ArrayList<>(List.of("worker", office.toString(), "--ledger", TestIndex.url()));
    words.addAll(List.of(more));
    return start(workerLog(), words.toArray(new String[0]));
  }

  Path workerLog() {
    return office.resolveSibling(office.getFileName() + "-worker.txt");
  }

  private Process start(Path to, String... words) throws IOException {
    Process process = BuiltJar.start(BuiltJar.quick(), List.of(words), to);
    processes.add(process);
    return process;
  }

  /** What the last morning said so far. */
  String said() throws IOException {
    return Files.readString(log);
  }

  /** Waits until somebody reads. */
  void awaitReading(Process morning) throws IOException, InterruptedException {
    await(morning, ATTENDED);
  }

  private void await(Process morning, String words) throws IOException, InterruptedException {
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (morning.isAlive() && !said().contains(words)) {
      if (System.nanoTime() > until) {
        throw new IllegalStateException("nobody reads: " + said());
      }
      TimeUnit.MILLISECONDS.sleep(2);
    }
  }

  /** The status of a morning that is left to come to its end. */
  int end(Process morning) throws IOException, InterruptedException {
    if (!morning.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      throw new IllegalStateException("did not end: " + said());
    }
    return morning.exitValue();
  }

  /** The end without warning, of a process and of the child that reads for it. */
  static void kill(Process process) throws InterruptedException {
    Victim victim = new Victim(process);
    victim.kill(true);
    victim.waitForAll();
  }

  /** How often a document was noted as read, over all tries of the morning. */
  int noted() {
    return Integer.parseInt(
        TestIndex.ask(
            "SELECT COALESCE(SUM(write_count), 0) FROM "
                + TestIndex.ownSchema(office.resolve("ledger"))
                + ".batch_step_execution WHERE step_name LIKE 'read-part%'"));
  }

  @Override
  public void close() throws InterruptedException {
    for (Process process : processes) {
      kill(process);
    }
    if (Files.exists(office.resolve("ledger/office-id"))) {
      TestIndex.lose(office.resolve("ledger"));
    }
  }
}
