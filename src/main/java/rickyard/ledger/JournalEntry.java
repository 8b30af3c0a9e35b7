package rickyard.ledger;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One finished morning as the journal keeps it: enough to build the database again.
 *
 * @param format version of this layout; from 2 on an entry is sealed
 * @param number of the morning, from 1
 * @param asOf ISO date
 * @param identity hash of the content and of the morning before
 * @param content hash of inbox, registers, config, options, program and tables
 * @param version program version
 * @param arrivals what the inbox held
 * @param registers text of each register by file name
 * @param state what the next morning compares with, as JSON text of the room that wrote it
 */
public record JournalEntry(
    int format,
    int number,
    String asOf,
    String identity,
    String content,
    String version,
    List<ArrivalRow> arrivals,
    SortedMap<String, String> registers,
    String state) {

  public static final int FORMAT = 2;

  public JournalEntry {
    requireNonNull(asOf, "asOf");
    LocalDate.parse(asOf);
    requireNonNull(identity, "identity");
    requireNonNull(content, "content");
    requireNonNull(version, "version");
    arrivals = List.copyOf(arrivals);
    registers = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(registers));
    requireNonNull(state, "state");
  }

  /** The morning as the index knows it. */
  MorningRow row(boolean finished) {
    return new MorningRow(number, LocalDate.parse(asOf), identity, content, finished);
  }
}
