package rickyard.morning;

import java.util.List;
import java.util.Optional;
import rickyard.intake.InboxReader;
import rickyard.intake.ReadFile;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.WorkerLedger;

/** A worker's reading of one part after another; the inventory is looked up once for each. */
final class WorkerReading implements PartReading {
  private final WorkerLedger ledger;
  private final InboxReader intake;
  private final String reader;
  private List<ArrivalRow> arrivals = List.of();

  WorkerReading(WorkerLedger ledger, InboxReader intake, String reader) {
    this.ledger = ledger;
    this.intake = intake;
    this.reader = reader;
  }

  @Override
  public List<Integer> documentsOf(int part) {
    arrivals =
        ledger.task().map(task -> ledger.arrivals(task.morning())).orElseGet(() -> List.of());
    return MorningJob.documentsOf(arrivals, part);
  }

  @Override
  public ReadResult read(int seq) {
    ArrivalRow row = arrivals.get(seq);
    Optional<ReadFile> file =
        ledger.results().hasReading(row.sha256(), reader)
            ? Optional.empty()
            : Optional.of(intake.read(ledger.document(row.sha256()), row.path()));
    return new ReadResult(seq, row.sha256(), file);
  }

  @Override
  public void keepReading(ReadResult result) {
    result.file().ifPresent(file -> ledger.results().keepReading(result.sha256(), reader, file));
  }
}
