package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

/**
 * Where a number of a table comes from.
 *
 * @param table file name and version, for example {@code requirements-2007/minerals.csv 1}; the
 *     word 'office' is added where the office's own row stands
 * @param row row of that file, from 1
 * @param key row of the bibliography
 * @param locator page, table or remark
 * @param standing how well it is supported
 */
public record Source(String table, int row, String key, String locator, Standing standing) {
  public Source {
    requireNonNull(table, "table");
    requireNonNull(key, "key");
    requireNonNull(locator, "locator");
    requireNonNull(standing, "standing");
  }

  /** One line for a page: {@code minerals.csv 1, row 12 (s3: 20 g at 500 kg; secondary)}. */
  public String words() {
    return table
        + ", row "
        + row
        + " ("
        + key
        + (locator.isEmpty() ? "" : ": " + locator)
        + "; "
        + standing.code()
        + ")";
  }
}
