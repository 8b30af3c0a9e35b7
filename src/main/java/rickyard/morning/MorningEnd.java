package rickyard.morning;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import rickyard.post.PostReport;

/**
 * How a run ended.
 *
 * @param asOf the morning's date
 * @param out where its outputs are
 * @param nothingNew whether the office had not changed since its last finished morning
 * @param lines what to tell the person, the counts last
 * @param postTrouble whether something that should have been sent was not, or may not have been
 */
public record MorningEnd(
    LocalDate asOf, Path out, boolean nothingNew, List<String> lines, boolean postTrouble) {
  public MorningEnd {
    lines = List.copyOf(lines);
  }

  MorningEnd(LocalDate asOf, Path out, boolean nothingNew, List<String> lines) {
    this(asOf, out, nothingNew, lines, false);
  }

  /** The same after a round with the post. */
  MorningEnd with(PostReport report) {
    List<String> all = new ArrayList<>(report.words());
    all.addAll(lines);
    return new MorningEnd(asOf, out, nothingNew, all, report.isTroubled());
  }
}
