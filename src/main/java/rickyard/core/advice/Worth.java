package rickyard.core.advice;

import java.util.Optional;

/** What a diet without any limit in its way still says that its people should hear. */
final class Worth {
  private Worth() {}

  /** The first such thing, in words; empty where there is none. */
  static Optional<String> of(DietSummary diet) {
    return diet.notes().stream()
        .filter(n -> isOfUlcers(n) || n.code().equals("energy-short-thin"))
        .map(NoteLine::words)
        .findFirst();
  }

  /** Starch of a meal or a day beyond what is tied to ulcers of the stomach. */
  private static boolean isOfUlcers(NoteLine note) {
    return note.code().startsWith("starch") && note.words().contains("ulcer");
  }
}
