package rickyard.morning;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * How a run ended.
 *
 * @param asOf the morning's date
 * @param out where its outputs are
 * @param nothingNew whether the office had not changed since its last finished morning
 * @param lines what to tell the person, the counts last
 */
public record MorningEnd(LocalDate asOf, Path out, boolean nothingNew, List<String> lines) {
  public MorningEnd {
    lines = List.copyOf(lines);
  }
}
