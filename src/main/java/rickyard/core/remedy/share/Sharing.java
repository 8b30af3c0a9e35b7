package rickyard.core.remedy.share;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Who gets what.
 *
 * @param allotments by rank and id of the need; within a need the hay that it is fed now first,
 *     then by price and lot
 * @param shortGrams dry matter that a need goes without, by id; only those that go without
 */
public record Sharing(List<Allotment> allotments, SortedMap<String, Long> shortGrams) {

  public Sharing {
    allotments = List.copyOf(allotments);
    shortGrams = Collections.unmodifiableSortedMap(new TreeMap<>(shortGrams));
  }
}
