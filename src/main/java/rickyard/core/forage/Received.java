package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.Comparator;

/**
 * A report that was read, with the morning on which it was read first.
 *
 * @param report as read
 * @param readOn date of the morning that first read these bytes
 * @param path relative path in that morning's inbox; breaks ties between copies of one day
 */
public record Received(Report report, LocalDate readOn, String path) {

  static final Comparator<Received> ORDER =
      Comparator.comparing(Received::readOn)
          .thenComparing(Received::path)
          .thenComparing(r -> r.report().document());

  public Received {
    requireNonNull(report, "report");
    requireNonNull(readOn, "readOn");
    requireNonNull(path, "path");
  }
}
