package rickyard.registers;

import static java.util.Objects.requireNonNull;

import java.util.List;
import rickyard.tables.TableProblem;
import rickyard.tables.UnusableTablesException;

/**
 * What came of loading the registers; everything found is here, never only the first.
 *
 * @param office what could be read without doubt
 * @param warnings unknown columns and other things to look at; nothing hangs on them
 * @param badRows rows that cannot be used, once for each thing that they concern, in a fixed order
 * @param fatal what makes the registers unusable; empty if they can be used
 */
public record Loaded(
    Office office, List<TableProblem> warnings, List<BadRow> badRows, List<TableProblem> fatal) {

  public Loaded {
    requireNonNull(office, "office");
    warnings = List.copyOf(warnings);
    badRows = List.copyOf(badRows);
    fatal = List.copyOf(fatal);
  }

  /** Whether a morning may run on them; bad rows do not stop it. */
  public boolean isUsable() {
    return fatal.isEmpty();
  }

  /** Whether nothing at all is wrong with them but warnings. */
  public boolean isClean() {
    return fatal.isEmpty() && badRows.isEmpty();
  }

  /**
   * The office, if the registers can be used.
   *
   * @throws UnusableTablesException with every fatal problem, if they cannot
   */
  public Office requireUsable() {
    if (!isUsable()) {
      throw new UnusableTablesException(fatal);
    }
    return office;
  }

  /** The bad rows that keep one thing from being judged. */
  public List<BadRow> badRowsOf(Concern concern, String id) {
    return badRows.stream().filter(b -> b.concern() == concern && b.id().equals(id)).toList();
  }

  /** The keys of one kind that cannot be judged because of a bad row, sorted. */
  public List<String> concerned(Concern concern) {
    return badRows.stream()
        .filter(b -> b.concern() == concern)
        .map(BadRow::id)
        .distinct()
        .sorted()
        .toList();
  }
}
