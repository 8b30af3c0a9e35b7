package rickyard.core.judgement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which conditions put a horse into which group.
 *
 * <p>A row that holds beside another condition takes the place of the plain row: insulin
 * dysregulation is its own group, together with laminitis it is the group laminitis.
 */
public final class Conditions {
  private final List<ConditionRow> rows;

  public Conditions(List<ConditionRow> rows) {
    this.rows = List.copyOf(rows);
  }

  /**
   * The groups of a horse.
   *
   * @param conditions codes as in horses.csv, any case; {@code pregnant} and {@code pregnant-late}
   *     besides, as the horse's status and month say
   */
  public HorseGroups of(Collection<String> conditions) {
    SortedSet<String> has = new TreeSet<>();
    conditions.forEach(c -> has.add(c.strip().toLowerCase(Locale.ROOT)));
    has.remove("");
    SortedSet<String> groups = new TreeSet<>();
    SortedSet<String> unknown = new TreeSet<>();
    List<String> notes = new ArrayList<>();
    for (String condition : has) {
      List<ConditionRow> own = rows.stream().filter(r -> r.condition().equals(condition)).toList();
      if (own.isEmpty()) {
        unknown.add(condition);
      }
      for (ConditionRow row : inForce(own, has)) {
        add(row, groups, notes);
      }
    }
    return new HorseGroups(groups, notes, unknown);
  }

  /** All conditions that the table knows, sorted. */
  public SortedSet<String> known() {
    return rows.stream()
        .map(ConditionRow::condition)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** All groups of the table, sorted. */
  public SortedSet<String> groups() {
    return rows.stream()
        .map(ConditionRow::group)
        .filter(g -> !g.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<ConditionRow> inForce(List<ConditionRow> own, Set<String> has) {
    List<ConditionRow> beside =
        own.stream().filter(r -> !r.with().isEmpty() && has.contains(r.with())).toList();
    return beside.isEmpty() ? own.stream().filter(r -> r.with().isEmpty()).toList() : beside;
  }

  private static void add(ConditionRow row, SortedSet<String> groups, List<String> notes) {
    if (!row.group().isEmpty()) {
      groups.add(row.group());
    }
    if (!row.note().isEmpty() && !notes.contains(row.note())) {
      notes.add(row.note());
    }
  }
}
