package rickyard.morning;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.intake.ReadFile;
import rickyard.ledger.ArrivalRow;

/**
 * Everything that settling looks at.
 *
 * @param arrivals this morning's inventory
 * @param first by hash of a file: where and when these bytes were seen first
 * @param read what each file says, by hash
 * @param asOf this morning's day
 */
record FilesInHand(
    List<ArrivalRow> arrivals,
    SortedMap<String, FirstSeen> first,
    SortedMap<String, ReadFile> read,
    LocalDate asOf) {

  /**
   * Where and when a file was seen first.
   *
   * @param path in the inbox of that morning
   * @param on its day
   * @param isEarlier whether that was an earlier, finished morning
   */
  record FirstSeen(String path, LocalDate on, boolean isEarlier) {}

  FilesInHand {
    arrivals = List.copyOf(arrivals);
    first = Collections.unmodifiableSortedMap(new TreeMap<>(first));
    read = Collections.unmodifiableSortedMap(new TreeMap<>(read));
  }

  boolean isKnown(String sha256) {
    FirstSeen seen = first.get(sha256);
    return seen != null && seen.isEarlier();
  }
}
