package rickyard.intake.grid.ocr;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.pdf.PlacedWord;

/** The recogniser's table of words: tab-separated, one word a line with its box in dots. */
final class Words {
  private static final int WORD = 5;
  private static final int COLUMNS = 12;

  /** Height of a line's letters as a share of its font size. */
  private static final double TALL = 0.72;

  private record Box(String line, int left, int top, int width, int height, String text) {
    int bottom() {
      return top + height;
    }
  }

  private Words() {}

  /**
   * Reads the table.
   *
   * @return the words of one page in points, all words of a line on one base line
   */
  static List<PlacedWord> of(String table, int dpi) {
    Map<String, List<Box>> lines = new LinkedHashMap<>();
    table
        .lines()
        .flatMap(line -> box(line).stream())
        .forEach(box -> lines.computeIfAbsent(box.line, l -> new ArrayList<>()).add(box));
    double scale = 72.0 / dpi;
    List<PlacedWord> words = new ArrayList<>();
    for (List<Box> line : lines.values()) {
      double base = median(line.stream().map(Box::bottom).toList()) * scale;
      double size = Math.max(1, median(line.stream().map(Box::height).toList()) / TALL * scale);
      for (Box box : line) {
        double left = box.left * scale;
        words.add(
            new PlacedWord(box.text, left, left + Math.max(1, box.width) * scale, base, size));
      }
    }
    return words;
  }

  private static int median(List<Integer> numbers) {
    return numbers.stream().sorted().toList().get(numbers.size() / 2);
  }

  private static Optional<Box> box(String line) {
    String[] fields = line.split("\t", -1);
    if (fields.length != COLUMNS || !fields[0].equals(String.valueOf(WORD))) {
      return Optional.empty();
    }
    String text = CellText.plain(fields[11]);
    try {
      Box box =
          new Box(
              String.join(" ", fields[1], fields[2], fields[3], fields[4]),
              Integer.parseInt(fields[6]),
              Integer.parseInt(fields[7]),
              Integer.parseInt(fields[8]),
              Integer.parseInt(fields[9]),
              text);
      return text.isEmpty() ? Optional.empty() : Optional.of(box);
    } catch (NumberFormatException notAWord) {
      return Optional.empty();
    }
  }
}
