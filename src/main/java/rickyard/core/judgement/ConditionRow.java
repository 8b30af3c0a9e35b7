package rickyard.core.judgement;

import static java.util.Objects.requireNonNull;

/**
 * One row of {@code config/conditions.csv}.
 *
 * @param condition code as in horses.csv
 * @param with another condition beside which alone the row counts; empty for the plain row
 * @param group the group; empty for a condition without limits of its own
 * @param note what the page must say; may be empty
 * @param source key of the bibliography
 * @param status verified, memory, common-practice …
 */
public record ConditionRow(
    String condition, String with, String group, String note, String source, String status) {

  public ConditionRow {
    requireNonNull(condition, "condition");
    requireNonNull(with, "with");
    requireNonNull(group, "group");
    requireNonNull(note, "note");
    requireNonNull(source, "source");
    requireNonNull(status, "status");
  }
}
