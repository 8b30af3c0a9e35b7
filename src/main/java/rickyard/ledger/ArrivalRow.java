package rickyard.ledger;

import static java.util.Objects.requireNonNull;

/**
 * A file of a morning's frozen inventory.
 *
 * @param path relative path with {@code /}
 * @param sha256 of its bytes; empty if it could not be read
 * @param bytes size
 * @param problemCode stable code where the file itself is the trouble; empty otherwise
 * @param problem the sentence that goes with it
 */
public record ArrivalRow(
    String path, String sha256, long bytes, String problemCode, String problem) {
  public ArrivalRow {
    requireNonNull(path, "path");
    requireNonNull(sha256, "sha256");
    requireNonNull(problemCode, "problemCode");
    requireNonNull(problem, "problem");
  }
}
