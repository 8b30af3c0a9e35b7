package rickyard.core.judgement;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The groups of one horse.
 *
 * @param groups without the group of all horses
 * @param notes what the page must say about them
 * @param unknown conditions that the table does not know: they must be asked about
 */
public record HorseGroups(SortedSet<String> groups, List<String> notes, SortedSet<String> unknown) {

  public HorseGroups {
    groups = Collections.unmodifiableSortedSet(new TreeSet<>(groups));
    notes = List.copyOf(notes);
    unknown = Collections.unmodifiableSortedSet(new TreeSet<>(unknown));
  }

  /** The limits that hold for this horse, those of all horses included, in the table's order. */
  public List<Limit> limits(List<Limit> table, LimitSubject subject) {
    return table.stream()
        .filter(l -> l.subject() == subject)
        .filter(l -> l.group().equals(Limit.ALL) || groups.contains(l.group()))
        .toList();
  }
}
