package rickyard.morning;

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
 * @param earlier hashes of the files of finished mornings, sorted
 * @param read what each file says, by hash
 */
record FilesInHand(
    List<ArrivalRow> arrivals, List<String> earlier, SortedMap<String, ReadFile> read) {
  FilesInHand {
    arrivals = List.copyOf(arrivals);
    earlier = List.copyOf(earlier);
    read = Collections.unmodifiableSortedMap(new TreeMap<>(read));
  }
}
