package rickyard.soak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rickyard.morning.Morning;
import rickyard.morning.OfficeFolders;
import rickyard.morning.Options;
import rickyard.morning.Progress;

/**
 * Mornings one after another on one office: nothing is left behind, and what the ledger grows by is
 * told in {@code target/soak/many-mornings.txt}.
 *
 * <p>The date moves on each day; every fifth day brings a new report of a lot not seen before. Most
 * mornings run in this process, where a handle that is not closed would stay; the last ones are
 * processes of their own.
 */
class ManyMorningsSoak {
  private static final LocalDate FIRST = LocalDate.of(2026, 3, 16);
  private static final int REPORT_EVERY = 5;
  private static final int TELL_EVERY = 50;

  private final int mornings = Integer.getInteger("rickyard.soak.mornings", 500);
  private final int processes = Integer.getInteger("rickyard.soak.processes", 36);
  private final List<String> told = new ArrayList<>();

  @Test
  void nothingIsLeftBehindAndTheLedgerGrowsByWhatItMustKeep(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path office = SoakOffice.three(folder.resolve("office"));
    told.add("day,handles,threads,children,originals,journal,last_journal,db,logs,ms");
    List<Long> handles = new ArrayList<>();
    long start = System.nanoTime();
    for (int day = 0; day < mornings; day++) {
      bring(office, day);
      inThisProcess(office, FIRST.plusDays(day));
      long children = ProcessHandle.current().descendants().filter(ProcessHandle::isAlive).count();
      assertEquals(0, children, "children after day " + day);
      assertEquals(List.of(), temporary(office), "day " + day);
      if ((day + 1) % TELL_EVERY == 0 || day == 0) {
        handles.add(handles());
        long millis = (System.nanoTime() - start) / 1_000_000;
        tell(office, day + 1, millis / (day == 0 ? 1 : TELL_EVERY));
        start = System.nanoTime();
      }
      prune(office, day);
    }
    for (int day = mornings; day < mornings + processes; day++) {
      bring(office, day);
      inAProcessOfItsOwn(office, FIRST.plusDays(day), folder);
      assertEquals(List.of(), temporary(office), "day " + day);
      prune(office, day);
    }
    tell(office, mornings + processes, 0);
    // The first morning loads classes and libraries, which stay open; after it nothing is added.
    assertTrue(handles.get(handles.size() - 1) <= handles.get(1) + 2, handles.toString());
  }

  /** A report of a new lot, its figures moving with the day. */
  private static void bring(Path office, int day) throws IOException {
    if (day % REPORT_EVERY == 0) {
      String text =
          "Lot,S-%d%nReport no,SK-%d%nAnalyte,Unit,Dry matter%nDry matter,%%,88.%d%nWSC,%%,%d.2%nStarch,%%,0.6%n"
              .formatted(1000 + day, 1000 + day, day % 10, 7 + day % 8);
      Files.writeString(
          office.resolve("inbox").resolve("report-" + day + ".csv"), text, StandardCharsets.UTF_8);
    }
  }

  /** The office clears its inbox and keeps the pages of a week. */
  private static void prune(Path office, int day) throws IOException {
    Files.deleteIfExists(office.resolve("inbox").resolve("report-" + (day - 30) + ".csv"));
    Path old = office.resolve("mornings").resolve(FIRST.plusDays(day - 7).toString());
    if (Files.isDirectory(old)) {
      try (Stream<Path> files = Files.walk(old)) {
        for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private static void inThisProcess(Path office, LocalDate day) {
    Options options = new Options("kg", new TreeSet<>(List.of("data", "page")));
    new Morning(OfficeFolders.of(office), options, 1, Progress.silent(), ledger -> {})
        .run(Optional.of(day), day);
  }

  private static void inAProcessOfItsOwn(Path office, LocalDate day, Path folder)
      throws IOException, InterruptedException {
    Path log = folder.resolve("log.txt");
    Path temporary = Files.createDirectories(folder.resolve("tmp"));
    Process run =
        Launch.morning(office, day.toString())
            .with("-Djava.io.tmpdir=" + temporary, "-XX:-UsePerfData")
            .start(log);
    List<ProcessHandle> seen = new ArrayList<>();
    while (!run.waitFor(50, java.util.concurrent.TimeUnit.MILLISECONDS)) {
      run.descendants().filter(p -> !seen.contains(p)).forEach(seen::add);
    }
    assertEquals(0, run.exitValue(), Files.readString(log));
    for (ProcessHandle child : seen) {
      child.onExit().orTimeout(30, java.util.concurrent.TimeUnit.SECONDS).join();
    }
    try (Stream<Path> files = Files.list(temporary)) {
      assertEquals(List.of(), files.toList());
    }
  }

  private static List<String> temporary(Path office) throws IOException {
    try (Stream<Path> files = Files.walk(office)) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> office.relativize(f).toString())
          .filter(f -> Outcome.isTemporary(f) || f.startsWith("ledger/tmp/"))
          .toList();
    }
  }

  private static long handles() throws IOException {
    Path open = Path.of("/proc/self/fd");
    if (!Files.isDirectory(open)) {
      return 0;
    }
    System.gc();
    String[] names = open.toFile().list();
    return names == null ? 0 : names.length;
  }

  private void tell(Path office, int day, long millis) throws IOException {
    Path ledger = office.resolve("ledger");
    told.add(
        String.join(
            ",",
            String.valueOf(day),
            String.valueOf(handles()),
            String.valueOf(Thread.activeCount()),
            String.valueOf(ProcessHandle.current().descendants().count()),
            size(ledger.resolve("originals")),
            size(ledger.resolve("journal")),
            size(ledger.resolve("journal").resolve(day + ".json")),
            size(ledger.resolve("db")),
            size(ledger.resolve("logs")),
            String.valueOf(millis)));
    Files.createDirectories(Path.of("target", "soak"));
    Files.write(Path.of("target", "soak", "many-mornings.txt"), told);
  }

  private static String size(Path path) throws IOException {
    if (!Files.exists(path)) {
      return "0";
    }
    try (Stream<Path> files = Files.walk(path)) {
      long bytes = 0;
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        bytes += Files.size(file);
      }
      return String.valueOf(bytes);
    }
  }
}
