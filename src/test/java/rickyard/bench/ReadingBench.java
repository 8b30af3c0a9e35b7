package rickyard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import rickyard.core.forage.Report;
import rickyard.intake.ReadDocument;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.ReadingProgress;
import rickyard.intake.isolate.ChildSetup;
import rickyard.intake.isolate.IsolatedIntake;
import rickyard.intake.isolate.ProcessLimits;
import rickyard.tables.DictionaryTables;

/**
 * Reads long tables through a child as a morning does, and prints time and memory of both sides.
 *
 * <p>{@code ReadingBench wide|figure|analyte ROWS...}; memory is told where the system keeps {@code
 * /proc}.
 */
public final class ReadingBench {
  private static final long LOOK_MILLIS = 100;

  private ReadingBench() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    for (String rows : List.of(args).subList(1, args.length)) {
      run(args[0], Integer.parseInt(rows));
    }
  }

  private static void run(String shape, int rows) throws IOException, InterruptedException {
    byte[] bytes = table(shape, rows);
    AtomicLong childKib = new AtomicLong();
    AtomicLong childMillis = new AtomicLong();
    Thread look = new Thread(() -> look(childKib, childMillis));
    look.setDaemon(true);
    look.start();
    ChildSetup setup = new ChildSetup(DictionaryTables.load(Optional.empty()), ReadLimits.DEFAULT);
    try (IsolatedIntake intake =
        new IsolatedIntake(setup, ProcessLimits.DEFAULT, 1, name -> ReadingProgress.none())) {
      long begun = System.nanoTime();
      long here = computedMillis(ProcessHandle.current());
      ReadDocument read = intake.read(bytes, "long.csv").documents().get(0);
      double seconds = (System.nanoTime() - begun) / 1e9;
      System.out.printf(
          Locale.ROOT,
          "%s %d rows, %.1f MiB: %.1f s; computing: child %.1f s (%.3f ms a row), parent %.1f s;"
              + " %s; child %d MiB, parent %d MiB%n",
          shape,
          rows,
          bytes.length / 1048576.0,
          seconds,
          childMillis.get() / 1000.0,
          (double) childMillis.get() / rows,
          (computedMillis(ProcessHandle.current()) - here) / 1000.0,
          said(read),
          childKib.get() >> 10,
          peakKib(ProcessHandle.current().pid()) >> 10);
    } finally {
      look.interrupt();
      look.join();
    }
  }

  private static byte[] table(String shape, int rows) {
    return switch (shape) {
      case "wide" -> LongTable.wide(rows, 7);
      case "figure" -> LongTable.byFigure(rows, 7);
      default -> LongTable.byAnalyte(rows, 7);
    };
  }

  private static String said(ReadDocument read) {
    Optional<Report> report = read.report();
    return report.isEmpty()
        ? read.code() + " (" + read.reason() + ")"
        : report.get().samples().size()
            + " samples, "
            + report.get().samples().stream().mapToLong(s -> s.readings().size()).sum()
            + " readings";
  }

  private static long computedMillis(ProcessHandle process) {
    return process.info().totalCpuDuration().map(Duration::toMillis).orElse(0L);
  }

  private static void look(AtomicLong mostKib, AtomicLong millis) {
    try {
      while (true) {
        ProcessHandle.current()
            .children()
            .forEach(
                child -> {
                  mostKib.accumulateAndGet(peakKib(child.pid()), Math::max);
                  millis.accumulateAndGet(computedMillis(child), Math::max);
                });
        Thread.sleep(LOOK_MILLIS);
      }
    } catch (InterruptedException end) {
      Thread.currentThread().interrupt();
    }
  }

  /** The most memory that a process has held so far, KiB; 0 where nobody tells. */
  private static long peakKib(long pid) {
    try {
      return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException gone) {
      return 0;
    }
  }
}
