package rickyard.intake.arrive;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

/**
 * One entry of the inbox.
 *
 * @param relativePath path from the inbox with {@code /} between steps
 * @param bytesSize size in bytes, 0 where it could not be told
 * @param sha256 SHA-256 of the bytes, lower-case hex; empty where the bytes were not read
 * @param problem why it is not read, where it is not
 */
public record Arrival(
    String relativePath, long bytesSize, String sha256, Optional<Problem> problem) {

  /**
   * Why an entry is not read.
   *
   * @param code stable code
   * @param sentence a plain sentence
   */
  public record Problem(String code, String sentence) {
    public Problem {
      requireNonNull(code, "code");
      requireNonNull(sentence, "sentence");
    }
  }

  public Arrival {
    requireNonNull(relativePath, "relativePath");
    requireNonNull(sha256, "sha256");
    requireNonNull(problem, "problem");
    if (bytesSize < 0) {
      throw new IllegalArgumentException("size below 0: " + bytesSize);
    }
    if (problem.isEmpty() && !sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("an entry without a problem has its hash: " + sha256);
    }
  }
}
