package rickyard.morning;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import rickyard.core.advice.HorseAdvice;
import rickyard.intake.Intake;
import rickyard.intake.ReadFile;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.JournalEntry;
import rickyard.ledger.Ledger;
import rickyard.ledger.LedgerException;
import rickyard.ledger.Originals;
import rickyard.registers.RegisterFile;
import rickyard.report.Outputs;
import rickyard.report.view.MorningView;

/**
 * What each step of one morning does. Steps hand their results on through the ledger only, so that
 * a restart finds them.
 */
final class MorningWork {
  private static final String SETTLED = "settled";
  private static final String JUDGED = "judged";
  private static final String ADVICE = "advice:";

  private final Ledger ledger;
  private final Inputs inputs;
  private final Options options;
  private final int number;
  private final MorningIdentity identity;
  private final Path out;
  private final Progress progress;
  private final Intake intake;
  private final Pipeline pipeline;
  private final String reader;
  private final Map<String, List<Integer>> parts = new HashMap<>();
  private final AtomicInteger readSoFar = new AtomicInteger();
  private Optional<Settled> settled = Optional.empty();
  private Optional<Judged> judged = Optional.empty();
  private List<String> endLines = List.of();
  private final long started = System.nanoTime();

  MorningWork(
      Ledger ledger,
      Inputs inputs,
      Options options,
      int number,
      MorningIdentity identity,
      Path out,
      Progress progress) {
    this.ledger = ledger;
    this.inputs = inputs;
    this.options = options;
    this.number = number;
    this.identity = identity;
    this.out = out;
    this.progress = progress;
    this.intake = inputs.intake();
    this.reader = Originals.sha256(inputs.reader().getBytes(StandardCharsets.UTF_8));
    this.pipeline = new Pipeline(inputs, options, Memory.before(ledger, number));
  }

  /** Keeps the bytes of everything that arrived; a file that changed meanwhile gets a problem. */
  void arrive() {
    List<ArrivalRow> rows = new ArrayList<>();
    for (ArrivalRow row : ledger.arrivals(number)) {
      rows.add(row.problemCode().isEmpty() ? inputs.keep(row, ledger.originals()) : row);
    }
    ledger.replaceArrivals(number, rows);
    progress.line("keep     " + Words.count(kept(rows), "original") + " in the ledger");
  }

  private static int kept(List<ArrivalRow> rows) {
    return (int) rows.stream().filter(r -> r.problemCode().isEmpty()).count();
  }

  /** Places in the inventory that one part reads; equal bytes fall into one part. */
  List<Integer> documentsOf(int part) {
    List<Integer> found = new ArrayList<>();
    List<ArrivalRow> rows = ledger.arrivals(number);
    for (int i = 0; i < rows.size(); i++) {
      ArrivalRow row = rows.get(i);
      if (row.problemCode().isEmpty()
          && Integer.parseInt(row.sha256().substring(0, 4), 16) % MorningJob.PARTS == part) {
        found.add(i);
      }
    }
    return found;
  }

  ReadResult read(int seq) {
    ArrivalRow row = ledger.arrival(number, seq);
    boolean known = ledger.hasReading(row.sha256(), reader);
    Optional<ReadFile> file =
        known
            ? Optional.empty()
            : Optional.of(intake.read(ledger.originals().read(row.sha256()), row.path()));
    progress.step("read", readSoFar.incrementAndGet(), inputs.arrivals().size());
    return new ReadResult(seq, row.sha256(), file);
  }

  void keepReading(ReadResult result) {
    result.file().ifPresent(file -> ledger.keepReading(result.sha256(), reader, file));
  }
}
