package rickyard.intake.grid.csv;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import rickyard.core.forage.Remembered;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;

/**
 * The records of a delimited text.
 *
 * <p>A quote that is never closed swallows everything behind it. So a text is read as one first; if
 * that fails, or if a quoted field has swallowed whole records, every line is read for itself, and
 * a line that cannot be divided with certainty stays one field.
 *
 * @param fields per record, blank lines as one blank field
 * @param doubtful whether quotes had to be read line by line
 */
record Records(List<List<String>> fields, boolean doubtful) {

  /** No table is as wide; every cell of a line is held against the head of its table. */
  private static final int MOST_IN_A_RECORD = 20_000;

  /** Reads all records of a text. */
  static Records of(String text, List<String> lines, Layout layout, ReadLimits limits) {
    Counter counter = new Counter(limits.tableCells());
    Optional<List<List<String>>> whole = parsed(text, layout.mark(), counter);
    int width = layout.usualWidth(lines);
    if (whole.isPresent() && !hasSwallowed(whole.get(), layout, width)) {
      return new Records(whole.get(), false);
    }
    Counter again = new Counter(limits.tableCells());
    List<List<String>> byLine = new ArrayList<>();
    for (String line : lines) {
      byLine.add(ofLine(line, layout.mark(), width, again));
    }
    return new Records(byLine, true);
  }

  private static List<String> ofLine(String line, char mark, int width, Counter counter) {
    if (line.isBlank()) {
      return List.of("");
    }
    Optional<List<List<String>>> alone = parsed(line, mark, counter);
    if (alone.isPresent() && alone.get().size() == 1) {
      return alone.get().get(0);
    }
    List<String> bare =
        List.of(line.split(java.util.regex.Pattern.quote(String.valueOf(mark)), -1));
    counter.add(bare.size());
    return bare.size() == width ? bare : List.of(line);
  }

  /** Whether a field over several lines holds lines that look like records of their own. */
  private static boolean hasSwallowed(List<List<String>> records, Layout layout, int width) {
    return width > 1
        && records.stream()
            .flatMap(List::stream)
            .filter(field -> field.indexOf('\n') >= 0 || field.indexOf('\r') >= 0)
            .flatMap(String::lines)
            .anyMatch(line -> layout.usualWidth(List.of(line)) >= Math.max(2, width - 1));
  }

  /** Empty where the quotes are not in order. */
  private static Optional<List<List<String>>> parsed(String text, char mark, Counter counter) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(mark)
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .get();
    List<List<String>> records = new ArrayList<>();
    Remembered<String, String> texts = Remembered.same();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      for (CSVRecord each : parser) {
        counter.add(each.size());
        records.add(each.stream().map(texts::of).toList());
      }
      return Optional.of(records);
    } catch (IOException | java.io.UncheckedIOException | IllegalStateException unbalanced) {
      return Optional.empty();
    }
  }

  /** Counts fields, blank ones too: a line of a million commas is no report. */
  private static final class Counter {
    private final int most;
    private int count;

    private Counter(int most) {
      this.most = most;
    }

    private void add(int more) {
      count += more;
      if (more > MOST_IN_A_RECORD) {
        throw new UnreadableException(
            "too-many-cells",
            "One line of the table has more than " + MOST_IN_A_RECORD + " cells, too many.");
      }
      if (count > most) {
        throw new UnreadableException(
            "too-many-cells",
            "The table has more than "
                + most
                + " cells, the limit for one file; ask for it in smaller parts.");
      }
    }
  }
}
