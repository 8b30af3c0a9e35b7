package rickyard.core.nutrition;

import java.util.Optional;

/** How well a number of a table is supported, from best to weakest. */
public enum Standing {
  /** Read in the source itself, or true by definition. */
  VERIFIED("verified"),
  /** Read in a text that quotes the source, or reproduces values read there. */
  SECONDARY("secondary"),
  /** Used by the trade, without a source. */
  COMMON_PRACTICE("common-practice"),
  /** Recalled. */
  MEMORY("memory"),
  /** Our own assumption. */
  ASSUMED("assumed");

  private final String code;

  Standing(String code) {
    this.code = code;
  }

  /** The word of the column {@code status} of every table. */
  public String code() {
    return code;
  }

  /** Inside a sentence: {@code from memory}. */
  public String words() {
    return switch (this) {
      case VERIFIED -> "read in the source";
      case SECONDARY -> "quoted in a text";
      case COMMON_PRACTICE -> "common practice, no source";
      case MEMORY -> "from memory";
      case ASSUMED -> "assumed";
    };
  }

  /** The weaker of the two: what a sum of both can claim. */
  public Standing and(Standing other) {
    return compareTo(other) >= 0 ? this : other;
  }

  public static Optional<Standing> findByCode(String code) {
    for (Standing standing : values()) {
      if (standing.code.equals(code)) {
        return Optional.of(standing);
      }
    }
    return Optional.empty();
  }
}
