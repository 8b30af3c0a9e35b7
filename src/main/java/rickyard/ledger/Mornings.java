package rickyard.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the mornings of an office were. The journal's head says which are finished; the index, made
 * from the journal, answers what they held.
 */
public final class Mornings {
  private final Journal journal;
  private final Database database;
  private final MorningIndex index;
  private final Results results;
  private Head head;

  Mornings(Journal journal, Database database, Results results, Head head) {
    this.journal = journal;
    this.database = database;
    this.index = new MorningIndex(database);
    this.results = results;
    this.head = head;
  }

  /** The last morning that was published whole. */
  public Optional<MorningRow> lastFinished() {
    return index.find(head.finished()).map(MorningIndex.Row::morning);
  }

  /** The journal of the last finished morning. */
  public Optional<JournalEntry> lastJournal() {
    return head.finished() == 0 ? Optional.empty() : journal.find(head.finished());
  }

  public boolean isFinished(int number) {
    return number <= head.finished();
  }

  /**
   * A morning that was begun and not finished.
   *
   * @param morning what it is
   * @param out where its outputs go
   */
  public record Unfinished(MorningRow morning, String out) {}

  /** The morning that was begun and not finished; there is at most one. */
  public Optional<Unfinished> unfinished() {
    return head.begun()
        .map(
            b ->
                new Unfinished(
                    new MorningRow(
                        b.number(), LocalDate.parse(b.asOf()), b.identity(), b.content(), false),
                    b.out()));
  }

  /** Whether the index still has the unfinished morning, so that its steps can be gone on with. */
  public boolean isIndexed(MorningRow unfinished) {
    return index.find(unfinished.number()).map(MorningIndex.Row::morning).stream()
        .anyMatch(unfinished::equals);
  }

  /** Whether the journal holds the entry of an unfinished morning. */
  public boolean isJournaled(MorningRow morning) {
    return journal
        .find(morning.number())
        .filter(entry -> entry.identity().equals(morning.identity()))
        .isPresent();
  }

  /**
   * Notes the beginning of a morning with its frozen inventory; replaces an abandoned one.
   *
   * @param out where its outputs go
   */
  public void begin(MorningRow morning, List<ArrivalRow> arrivals, String out) {
    store(
        Head.of(head.finished())
            .withBegun(
                new Head.Begun(
                    morning.number(),
                    morning.asOf().toString(),
                    morning.identity(),
                    morning.content(),
                    out)));
    results.forgetSteps(morning.number());
    index.put(morning, "", arrivals);
  }

  private void store(Head next) {
    journal.write(next);
    head = next;
  }

  /**
   * Marks a morning as published whole; its journal entry is written.
   *
   * @throws LedgerException if the journal has no such entry
   */
  public void finish(int number) {
    JournalEntry entry =
        journal
            .find(number)
            .orElseThrow(() -> new LedgerException("Morning " + number + " has no journal."));
    store(Head.of(number));
    index(entry);
    results.forgetStepsBefore(number);
    database.checkpoint();
  }

  private void index(JournalEntry entry) {
    index.put(entry.row(true), journal.digest(entry.number()), entry.arrivals());
  }

  /** The frozen inventory of a morning, in its order. */
  public List<ArrivalRow> arrivals(int morning) {
    return index.arrivals(morning);
  }

  /** One entry of a morning's inventory. */
  public ArrivalRow arrival(int morning, int seq) {
    return index.arrival(morning, seq);
  }

  /** Replaces the inventory of an unfinished morning by the same files as they are found now. */
  public void replaceArrivals(int morning, List<ArrivalRow> arrivals) {
    index
        .find(morning)
        .filter(row -> !row.morning().finished())
        .ifPresent(row -> index.put(row.morning(), "", arrivals));
  }

  /**
   * A file that a finished morning held.
   *
   * @param sha256 its hash
   * @param path where it lay
   * @param on that morning's day
   */
  public record Seen(String sha256, String path, LocalDate on) {}

  /** All files that finished mornings before this one held, the first sighting of each first. */
  public List<Seen> seenBefore(int morning) {
    List<Seen> seen = new ArrayList<>();
    var mornings = index.rows();
    index
        .allArrivals()
        .headMap(morning)
        .forEach(
            (number, arrivals) -> {
              MorningIndex.Row row = mornings.get(number);
              if (row != null && row.morning().finished()) {
                LocalDate on = row.morning().asOf();
                arrivals.stream()
                    .filter(a -> a.problemCode().isEmpty())
                    .forEach(a -> seen.add(new Seen(a.sha256(), a.path(), on)));
              }
            });
    return seen;
  }

  /** Every document of the finished mornings once. */
  List<ArrivalRow> documents() {
    Map<String, ArrivalRow> documents = new LinkedHashMap<>();
    index
        .allArrivals()
        .headMap(head.finished() + 1)
        .values()
        .forEach(
            arrivals ->
                arrivals.stream()
                    .filter(a -> a.problemCode().isEmpty())
                    .forEach(a -> documents.putIfAbsent(a.sha256(), a)));
    return List.copyOf(documents.values());
  }

  /** How many are finished. */
  public int count() {
    return head.finished();
  }
}
