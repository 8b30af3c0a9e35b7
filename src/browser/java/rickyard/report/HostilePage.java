package rickyard.report;

import static java.util.Objects.requireNonNull;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Pages whose names want to be something else. */
public final class HostilePage {
  private HostilePage() {}

  /** A page of a few horses and lots, all names hostile. */
  public static byte[] make(long seed) {
    Random random = new Random(seed);
    Map<String, String> names = new HashMap<>();
    return requireNonNull(
        Outputs.of(
                SampleView.of(
                    40,
                    12,
                    text ->
                        names.computeIfAbsent(text, t -> HostileNames.next(random, names.size()))),
                Set.of(Outputs.PAGE))
            .get("summary.html"));
  }
}
