package rickyard.hostile;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import rickyard.BuiltJar;

/** One morning of the built program over a hostile inbox, and what was wrong with it. */
final class HostileRun {
  private static final String DAY = "2026-03-16";
  private static final String MARK = "!HX";

  private final HostileInbox inbox;
  private final List<String> complaints = new ArrayList<>();
  private final long seconds;
  private final Path morning;

  private HostileRun(HostileInbox inbox, long seconds) {
    this.inbox = inbox;
    this.seconds = seconds;
    this.morning = inbox.office().resolve("mornings").resolve(DAY);
  }

  /** Runs the morning with a heap of 512 MiB. */
  static HostileRun of(HostileInbox inbox, long patienceSeconds) throws IOException {
    Map<String, String> before = inputs(inbox);
    Path log = Files.createTempFile("rickyard-hostile", ".txt");
    List<String> jvm = new ArrayList<>(BuiltJar.quick());
    jvm.add("-Xmx512m");
    long start = System.nanoTime();
    Process process =
        BuiltJar.start(jvm, List.of("morning", inbox.office().toString(), "--as-of", DAY), log);
    boolean ended = waited(process, patienceSeconds);
    HostileRun run =
        new HostileRun(inbox, TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start));
    String said = Files.readString(log);
    Files.delete(log);
    run.expect(ended, "did not end in " + patienceSeconds + " s: " + said);
    run.expect(ended && process.exitValue() == 0, "ended badly: " + said);
    if (ended && process.exitValue() == 0) {
      run.checkAccounts();
      run.checkVerdicts();
    }
    run.expect(inputs(inbox).equals(before), "inbox or registers changed");
    run.checkNothingEscaped();
    return run;
  }

  private static boolean waited(Process process, long patienceSeconds) {
    try {
      boolean ended = process.waitFor(patienceSeconds, TimeUnit.SECONDS);
      process.destroyForcibly();
      return ended;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, String> inputs(HostileInbox inbox) throws IOException {
    Map<String, String> all = new TreeMap<>();
    for (String folder : List.of("inbox", "registers")) {
      try (Stream<Path> files = Files.walk(inbox.office().resolve(folder))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          all.put(file.toString(), Files.size(file) + " " + Files.getLastModifiedTime(file));
        }
      }
    }
    return all;
  }

  private void expect(boolean holds, String complaint) {
    if (!holds) {
      complaints.add(complaint);
    }
  }

  List<String> complaints() {
    return complaints;
  }

  long seconds() {
    return seconds;
  }

  /** The row of each hostile file itself: outcome and code, by kind and name. */
  Map<String, String> outcomes() throws IOException {
    Map<String, String> found = new TreeMap<>();
    Map<String, CSVRecord> own = new LinkedHashMap<>();
    for (CSVRecord row : table("outcomes.csv")) {
      if (row.get("part").isEmpty()) {
        mark(row.get("file")).ifPresent(mark -> own.put(mark, row));
      }
    }
    own.forEach(
        (mark, row) -> {
          HostileFile file = inbox.hostile().get(mark);
          found.put(
              file.kind() + " " + file.name(), row.get("outcome") + "/" + row.get("reason_code"));
        });
    return found;
  }

  private static Optional<String> mark(String path) {
    int at = path.indexOf(MARK);
    return at == 4 ? Optional.of(path.substring(0, 4 + MARK.length())) : Optional.empty();
  }

  private List<CSVRecord> table(String name) throws IOException {
    return table(morning.resolve(name));
  }

  private static List<CSVRecord> table(Path file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader text = Files.newBufferedReader(file)) {
      return format.parse(text).getRecords();
    }
  }

  /** One row for each file and each part, none twice, none without a reason. */
  private void checkAccounts() throws IOException {
    Map<String, Integer> rows = new TreeMap<>();
    Set<String> places = new java.util.TreeSet<>();
    for (CSVRecord row : table("outcomes.csv")) {
      String place = row.get("file") + " / " + row.get("part");
      expect(places.add(place), "two rows for " + place);
      boolean taken = row.get("outcome").equals("accepted");
      expect(taken || !row.get("reason_code").isEmpty(), "no reason for " + place);
      Optional<String> mark = mark(row.get("file"));
      if (mark.isPresent() && row.get("part").isEmpty()) {
        rows.merge(mark.get(), 1, Integer::sum);
        checkOutcome(row, inbox.hostile().get(mark.get()));
      }
    }
    inbox
        .hostile()
        .forEach(
            (mark, file) ->
                expect(
                    rows.getOrDefault(mark, 0) == 1,
                    rows.getOrDefault(mark, 0) + " rows for " + file.name()));
  }

  private void checkOutcome(CSVRecord row, HostileFile file) {
    String outcome = row.get("outcome");
    String code = row.get("reason_code");
    expect(
        file.outcomes().contains(outcome) || code.equals("container"),
        file.name() + " (" + file.about() + "): " + outcome + " " + code);
    expect(
        file.codes().isEmpty() || file.codes().contains(code),
        file.name() + " (" + file.about() + "): code " + code + ", not " + file.codes());
  }

  /** No hostile lot is cleared of sugar and starch, and no hidden or broken figure counts. */
  private void checkVerdicts() throws IOException {
    for (CSVRecord row : table("verdicts.csv")) {
      boolean starch =
          row.get("quantity").startsWith("nsc") || row.get("quantity").equals("starch");
      expect(
          !row.get("lot").startsWith(Paper.PREFIX)
              || !starch
              || !row.get("verdict").equals("clears"),
          "cleared: " + row.toList());
    }
    for (CSVRecord row : table("analyses.csv")) {
      String analyte = row.get("analyte");
      boolean sugar = analyte.equals("WSC") || analyte.startsWith("NSC");
      boolean counts = row.get("state").equals("in-force") && !row.get("value").isEmpty();
      if (counts && mark(row.get("file")).isPresent() && (sugar || analyte.equals("STARCH"))) {
        double value = Double.parseDouble(row.get("value"));
        expect(value > (sugar ? 10 : 4), "counted: " + row.toList());
      }
    }
  }

  private void checkNothingEscaped() throws IOException {
    for (String place : List.of("/tmp", "/etc", "/")) {
      try (Stream<Path> files = Files.list(Path.of(place))) {
        files
            .filter(f -> String.valueOf(f.getFileName()).startsWith("rickyard-escape"))
            .forEach(f -> complaints.add("written outside: " + f));
      }
    }
    String office = inbox.office().toString();
    long me = ProcessHandle.current().pid();
    ProcessHandle.allProcesses()
        .filter(p -> p.pid() != me && p.info().command().orElse("").contains("java"))
        .filter(p -> p.info().commandLine().orElse("").contains(office))
        .forEach(p -> complaints.add("still running: " + p.info().commandLine().orElse("")));
  }

  /**
   * The rows of all tables that do not speak of a hostile file or lot, the good files under the
   * names that they had, in an order of their own.
   */
  private Map<String, List<String>> goodRows() throws IOException {
    Map<String, List<String>> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(morning)) {
      for (Path file : files.filter(HostileRun::isOfSingleThings).sorted().toList()) {
        List<String> rows = new ArrayList<>();
        for (CSVRecord row : table(file)) {
          String text = String.join("\u0001", row.toList());
          if (!text.contains(MARK) && !text.contains(Paper.PREFIX) && !text.contains("hxhostel")) {
            rows.add(named(text));
          }
        }
        rows.sort(null);
        all.put(file.getFileName().toString(), rows);
      }
    }
    return all;
  }

  /** The season's tables count lots together: those that hostile files bring count with them. */
  private static boolean isOfSingleThings(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.endsWith(".csv") && !name.startsWith("season") && !name.equals("over-time.csv");
  }

  /** What a run without hostile files says that this one says otherwise or not at all. */
  List<String> lostFrom(HostileRun alone) throws IOException {
    Map<String, List<String>> mine = goodRows();
    List<String> lost = new ArrayList<>();
    for (Map.Entry<String, List<String>> table : alone.goodRows().entrySet()) {
      List<String> rows = mine.getOrDefault(table.getKey(), List.of());
      table.getValue().stream()
          .filter(row -> !rows.contains(row))
          .forEach(row -> lost.add(table.getKey() + ": " + row));
      // Follow-ups name neither file nor lot: more of them are those of the hostile files.
      if (!table.getKey().equals("follow-ups.csv") && rows.size() != table.getValue().size()) {
        lost.add(table.getKey() + ": " + table.getValue().size() + " rows became " + rows.size());
      }
    }
    return lost;
  }

  private String named(String text) {
    String named = text;
    for (Map.Entry<String, String> each : inbox.good().entrySet()) {
      named = named.replace(each.getKey(), each.getValue());
    }
    // the key of a file that is to be asked for again hangs on its name
    return named.replaceAll("\u0001f-[0-9a-f]{12}$", "\u0001f");
  }
}
