package rickyard.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Reads the inbox of a bench office by workers on a PostgreSQL server: all processes on one core
 * with one worker, then on two cores with two, and prints documents a second and their ratio.
 *
 * <p>{@code WorkersBench OFFICE JDBC-URL SERVER-PID}: an office made by {@link BenchOffice}, a
 * server on this machine that may be pinned to cores ({@code taskset}), user and password in the
 * environment. The program is the package in {@code target}, by its launcher with its archive of
 * loaded classes. What else the machine does is told by its load, printed before and after, and by
 * what its two cores can do at once: {@link TwoCores}.
 */
public final class WorkersBench {
  private static final String DAY = "2026-03-16";

  private final Path made;
  private final String url;
  private final String server;
  private final Unpacked rickyard;

  private WorkersBench(Path made, String url, String server, Unpacked rickyard) {
    this.made = made;
    this.url = url;
    this.server = server;
    this.rickyard = rickyard;
  }

  public static void main(String[] args) throws IOException, InterruptedException {
    Path work = Files.createTempDirectory("workers-bench");
    Unpacked rickyard = Unpacked.of(Path.of("target").toAbsolutePath(), work);
    WorkersBench bench = new WorkersBench(Path.of(args[0]), args[1], args[2], rickyard);
    double before = TwoCores.scaling();
    double one = bench.documentsPerSecond("0", 1);
    double two = bench.documentsPerSecond("0,1", 2);
    System.out.printf(
        Locale.ROOT,
        "ratio %.2f; two cores compute %.2f and %.2f times as much as one, before and after%n",
        two / one,
        before,
        TwoCores.scaling());
  }

  private double documentsPerSecond(String cores, int workers)
      throws IOException, InterruptedException {
    new ProcessBuilder("taskset", "-acp", cores, server).start().waitFor();
    Path office = made.resolveSibling(made.getFileName() + "-" + workers);
    copy(office);
    long documents;
    try (Stream<Path> files = Files.list(office.resolve("inbox"))) {
      documents = files.count();
    }
    System.out.println("load before: " + load());
    List<Process> started = new ArrayList<>();
    try {
      for (int i = 0; i < workers; i++) {
        started.add(start(cores, "worker", office.toString(), "--ledger", url));
      }
      // Up to the moment at which they wait for the office's first morning.
      for (Process worker : started) {
        reader(worker).readLine();
      }
      double seconds = secondsOfReading(cores, office);
      System.out.printf(
          Locale.ROOT,
          "%d worker(s), core(s) %s: %d documents in %.1f s, %.1f a second; load after: %s%n",
          workers,
          cores,
          documents,
          seconds,
          documents / seconds,
          load());
      return documents / seconds;
    } finally {
      started.forEach(Process::destroyForcibly);
    }
  }

  /** From the line that says that workers are there to the first line after the reading. */
  private double secondsOfReading(String cores, Path office)
      throws IOException, InterruptedException {
    Process morning =
        start(
            cores,
            "morning",
            office.toString(),
            "--as-of",
            DAY,
            "--outputs",
            "data",
            "--workers",
            "remote",
            "--ledger",
            url);
    long begun = 0;
    long done = 0;
    try (BufferedReader said = reader(morning)) {
      for (String line = said.readLine(); line != null; line = said.readLine()) {
        System.out.println("  " + line);
        begun = begun == 0 && line.contains(" there, ") ? System.nanoTime() : begun;
        done = done == 0 && line.startsWith("settle ") ? System.nanoTime() : done;
      }
    }
    if (morning.waitFor() != 0 || begun == 0 || done == 0) {
      throw new IllegalStateException("the morning did not come to its end by workers");
    }
    return (done - begun) / 1e9;
  }

  private static BufferedReader reader(Process process) {
    return process.inputReader(StandardCharsets.UTF_8);
  }

  private Process start(String cores, String... words) throws IOException {
    List<String> command = new ArrayList<>(List.of("taskset", "-c", cores));
    command.addAll(rickyard.command(words));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().putAll(rickyard.environment());
    return builder.start();
  }

  private void copy(Path to) throws IOException {
    try (Stream<Path> files = Files.walk(made)) {
      for (Path file : files.toList()) {
        Path target = to.resolve(made.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  private static String load() throws IOException {
    return Files.readString(Path.of("/proc/loadavg")).strip();
  }
}
