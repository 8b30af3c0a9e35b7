package rickyard.bench;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rickyard.bench.WholeProcess.Cost;

/**
 * Compares whole mornings with the least that the same work could cost, and writes
 * docs/benchmarks.md.
 *
 * <p>{@code Benchmarks [TIMES [PARTS]]}: how often each is run (default 5) and which parts, of a b
 * c e joined by commas. Run in the folder of the repository on a machine that does nothing else.
 */
public final class Benchmarks {
  private static final Path TARGET = Path.of("target");

  private final int times;
  private final Path work;
  private final Unpacked rickyard;
  private final List<Comparison> time = new ArrayList<>();
  private final List<Comparison> growth = new ArrayList<>();
  private final List<Comparison> memory = new ArrayList<>();

  private Benchmarks(int times, Path work, Unpacked rickyard) {
    this.times = times;
    this.work = work;
    this.rickyard = rickyard;
  }

  public static void main(String[] args) throws Exception {
    int times = args.length > 0 ? Integer.parseInt(args[0]) : 5;
    Set<String> parts = new TreeSet<>(List.of((args.length > 1 ? args[1] : "a,b,c,e").split(",")));
    Path work = TARGET.resolve("bench").toAbsolutePath();
    remove(work);
    Files.createDirectories(work);
    BenchPage page = BenchPage.of(times, parts);
    Benchmarks bench = new Benchmarks(times, work, Unpacked.of(TARGET.toAbsolutePath(), work));
    for (String part : List.of("e", "a", "c", "b")) {
      if (parts.contains(part)) {
        bench.measure(part, page);
      }
    }
    remove(work);
  }

  /** The page is written after each comparison: what is done is not lost with what is not. */
  private void measure(String part, BenchPage page) throws IOException, InterruptedException {
    switch (part) {
      case "a" -> {
        pages(300);
        write(page);
        pages(3_000);
        write(page);
        papers();
      }
      case "b" -> longTable();
      case "c" -> tenTimes();
      default -> emptyMorning();
    }
    write(page);
  }

  private void write(BenchPage page) throws IOException {
    Files.writeString(
        Path.of("docs", "benchmarks.md"), page.text(time, growth, memory), StandardCharsets.UTF_8);
  }

  private Path office(String name, int reports, int horses) throws IOException {
    Path office = work.resolve(name);
    if (!Files.exists(office)) {
      BenchOffice.make(office, reports, horses, true);
    }
    return office;
  }

  /** A morning of an office that has had none. */
  private Cost morning(Path office, String outputs) throws IOException, InterruptedException {
    remove(office.resolve("ledger"));
    remove(office.resolve("mornings"));
    return rickyard.process().run(rickyard.morning(office, outputs));
  }

  private Cost run(List<String> command) throws IOException, InterruptedException {
    return rickyard.process().run(command);
  }

  private void pages(int reports) throws IOException, InterruptedException {
    Path office = office("pages-" + reports, reports, 300);
    String loop = "for f in \"$0\"/*.pdf; do pdftotext -layout \"$f\" - > /dev/null; done";
    time.add(
        Comparison.of(
            "%,d PDFs and 300 horses, 30 in need: the morning, and `pdftotext` in a loop"
                .formatted(reports),
            times,
            () -> morning(office, "data,page"),
            () -> run(List.of("sh", "-c", loop, office.resolve("inbox").toString())),
            reports < 1_000 ? 1.0 : 0.6));
  }

  /** What each further paper costs, and the same page from the library alone. */
  private void papers() throws IOException, InterruptedException {
    Path office = office("pages-300", 300, 300);
    morning(office, "data,sheets");
    Path ready = Files.createDirectories(work.resolve("ready"));
    List<String> pages = printed(office.resolve("mornings"), ready);
    for (String family : List.of("sheets", "letters")) {
      time.add(
          Comparison.of(
              "each of "
                  + pages.size()
                  + " printed sheets, "
                  + (family.equals("sheets") ? "written" : "in letters")
                  + ", and the library with the ready page",
              times,
              () -> further(morning(office, "data," + family), morning(office, "data"), pages),
              () -> further(bare(pages, pages.size() + 1), bare(pages, 1), pages),
              3));
    }
  }

  private Cost bare(List<String> pages, int count) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of(BarePages.class.getName(), "" + count));
    words.addAll(pages);
    return run(
        rickyard.java(rickyard.classPath(TARGET.toAbsolutePath()), words.toArray(String[]::new)));
  }

  private static Cost further(Cost all, Cost without, List<String> pages) {
    return new Cost(
        (all.seconds() - without.seconds()) / pages.size(),
        (all.computing() - without.computing()) / pages.size(),
        all.peakMib(),
        "");
  }

  /** Copies of the sheets that are printed, as ready pages. */
  private static List<String> printed(Path mornings, Path ready) throws IOException {
    List<String> pages = new ArrayList<>();
    try (Stream<Path> files = Files.walk(mornings)) {
      for (Path pdf : files.filter(f -> f.toString().endsWith(".pdf")).sorted().toList()) {
        Path html = Path.of(pdf.toString().replaceAll("\\.pdf$", ".html"));
        Path copy = ready.resolve(html.getFileName());
        Files.copy(html, copy);
        pages.add(copy.toString());
      }
    }
    return pages;
  }

  private void longTable() throws IOException, InterruptedException {
    Path half = table("half", 499_999);
    Path whole = table("whole", 999_999);
    String classes = rickyard.classPath(TARGET.toAbsolutePath());
    Comparison.Run bare =
        () ->
            run(
                rickyard.java(
                    classes, BareCsv.class.getName(), whole.resolve("inbox/long.csv").toString()));
    time.add(
        Comparison.of(
            "a CSV of a million rows: the reader alone, and Commons CSV merely reading it",
            times,
            () -> run(rickyard.java(classes, ReadingBench.class.getName(), "figure", "999999")),
            bare,
            3));
    // One run of the whole serves both comparisons: it is the longest of all.
    List<Cost> wholes = new ArrayList<>();
    List<Cost> halves = new ArrayList<>();
    List<Cost> bares = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      bares.add(bare.once());
      halves.add(morning(half, "data"));
      wholes.add(morning(whole, "data"));
    }
    time.add(
        new Comparison(
            "the same: the whole morning, and Commons CSV merely reading it", wholes, bares, 8));
    growth.add(
        new Comparison("a CSV of a million rows, and of half a million", wholes, halves, 2.1));
  }

  private Path table(String name, int rows) throws IOException {
    Path office = work.resolve("table-" + name);
    Files.createDirectories(office.resolve("registers"));
    Path inbox = Files.createDirectories(office.resolve("inbox"));
    Files.write(inbox.resolve("long.csv"), LongTable.byFigure(rows, 7));
    return office;
  }

  private void tenTimes() throws IOException, InterruptedException {
    Path few = office("reports-1000", 1_000, 300);
    Path many = office("reports-10000", 10_000, 300);
    Comparison reports =
        Comparison.of(
            "10,000 reports and 1,000, 300 horses",
            times,
            () -> morning(many, "data,page"),
            () -> morning(few, "data,page"),
            10.5);
    growth.add(reports);
    memory.add(reports);
    Path small = office("horses-300", 300, 300);
    Path large = office("horses-3000", 300, 3_000);
    growth.add(
        Comparison.of(
            "3,000 horses and 300, 300 reports",
            times,
            () -> morning(large, "data,page"),
            () -> morning(small, "data,page"),
            10.5));
  }

  private void emptyMorning() throws IOException, InterruptedException {
    Path office = office("empty", 30, 30);
    morning(office, "data,page");
    List<String> empty = emptyJob();
    run(empty);
    time.add(
        Comparison.of(
            "a morning with nothing new, and an empty Spring Batch job on its own H2 file",
            times,
            () -> run(rickyard.morning(office, "data,page")),
            () -> run(empty),
            1.5));
  }

  /** Started as the launcher starts ours, from an archive of its own classes. */
  private List<String> emptyJob() throws IOException, InterruptedException {
    String classes = rickyard.jar() + File.pathSeparator + rickyard.jarOf(EmptyBatchJob.class);
    List<String> words = new ArrayList<>(rickyard.java(classes, EmptyBatchJob.class.getName()));
    words.add(work.resolve("job").toString());
    words.addAll(1, List.of("-XX:TieredStopAtLevel=1", "-XX:-UsePerfData"));
    Path archive = work.resolve("job.jsa");
    List<String> first = new ArrayList<>(words);
    first.add(1, "-XX:ArchiveClassesAtExit=" + archive);
    run(first);
    words.add(1, "-XX:SharedArchiveFile=" + archive);
    return words;
  }

  private static void remove(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
