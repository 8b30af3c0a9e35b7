package rickyard.report;

import static java.util.Objects.requireNonNull;

import java.util.Set;

/** The page of a large office. */
public final class LargePage {
  private LargePage() {}

  /** The page of so many horses and lots. */
  public static byte[] make(int horses, int lots) {
    return requireNonNull(
        Outputs.of(SampleView.of(horses, lots), Set.of(Outputs.PAGE)).get("summary.html"));
  }
}
