package rickyard.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import rickyard.report.text.Shown;

/**
 * A value with its uncertainty on a scale, against the lines of its limits: the dot is the value,
 * the thick bar one standard uncertainty to each side, the thin bar two. A value that is only the
 * least has an arrow that leaves the scale.
 */
final class LimitPicture {
  private static final double WIDTH = 350;
  private static final double LEFT = 14;
  private static final double RIGHT = 330;
  private static final double ROW = 15;
  private static final double HEAD = 12;

  /** Width that a letter of the labels is reckoned to take. */
  private static final double GLYPH = 6.6;

  /** How far beyond the last limit the scale goes, so that its label has room. */
  private static final double ROOM = 1.5;

  private static final int LONGEST_LABEL = 44;

  /** One limit and whom it is for. */
  record Mark(double limit, String group) {}

  private LimitPicture() {}

  /**
   * Draws it.
   *
   * @param id unique on the page
   * @param title what is shown, with the value in words
   * @param u standard uncertainty; null if unknown
   * @param isLeast whether it may be any amount more
   * @param unit in words
   */
  static String of(
      String id,
      String title,
      double value,
      @Nullable Double u,
      boolean isLeast,
      String unit,
      List<Mark> marks) {
    SortedMap<Double, String> lines = byLimit(marks);
    double spread = u == null || !Double.isFinite(u) ? 0 : u;
    double end = end(value + 2 * spread, lines);
    double top = 4 + ROW * lines.size();
    double middle = top + 14;
    double axis = middle + 14;
    Svg svg = Svg.named(id, WIDTH, axis + 20, title, description(lines, unit));
    scale(svg, end, axis);
    List<Map.Entry<Double, String>> ordered = new ArrayList<>(lines.entrySet());
    for (int i = 0; i < ordered.size(); i++) {
      svg.line(
          "limit",
          x(ordered.get(i).getKey(), end),
          4 + ROW * i,
          x(ordered.get(i).getKey(), end),
          axis);
    }
    for (int i = 0; i < ordered.size(); i++) {
      label(svg, ordered.get(i), x(ordered.get(i).getKey(), end), 4 + ROW * i + 10);
    }
    if (isLeast) {
      arrow(svg, x(value, end), middle);
    }
    svg.line("two", x(value - 2 * spread, end), middle, x(value + 2 * spread, end), middle);
    svg.line("one", x(value - spread, end), middle, x(value + spread, end), middle);
    return svg.dot("dot", x(value, end), middle, 5).close();
  }

  private static void arrow(Svg svg, double x, double middle) {
    double tip = RIGHT + HEAD;
    svg.line("two", x, middle, tip, middle);
    svg.line("two", tip, middle, tip - HEAD, middle - HEAD / 2);
    svg.line("two", tip, middle, tip - HEAD, middle + HEAD / 2);
  }

  private static SortedMap<Double, String> byLimit(List<Mark> marks) {
    SortedMap<Double, SortedSet<String>> groups = new TreeMap<>();
    for (Mark mark : marks) {
      groups.computeIfAbsent(mark.limit(), l -> new TreeSet<>()).add(mark.group());
    }
    SortedMap<Double, String> lines = new TreeMap<>();
    groups.forEach((limit, names) -> lines.put(limit, String.join(", ", names)));
    return lines;
  }

  private static String description(SortedMap<Double, String> lines, String unit) {
    StringBuilder words = new StringBuilder();
    lines.forEach(
        (limit, names) ->
            words
                .append("Limit line at ")
                .append(Shown.number(limit))
                .append(' ')
                .append(unit)
                .append(" for ")
                .append(names)
                .append(". "));
    return words.toString().strip();
  }

  private static void label(Svg svg, Map.Entry<Double, String> line, double x, double y) {
    String words = Shown.number(line.getKey()) + ": " + line.getValue();
    int length = words.codePointCount(0, words.length());
    String cut =
        length <= LONGEST_LABEL
            ? words
            : words.substring(0, words.offsetByCodePoints(0, LONGEST_LABEL - 1)) + "…";
    boolean fits = x + 4 + GLYPH * cut.codePointCount(0, cut.length()) <= WIDTH;
    svg.text(fits ? "label" : "label ends", fits ? x + 4 : x - 4, y, cut);
  }

  private static void scale(Svg svg, double end, double axis) {
    svg.line("axis", LEFT, axis, RIGHT, axis);
    double step = step(end);
    for (int i = 0; i * step <= end * (1 + 1e-9); i++) {
      double x = x(i * step, end);
      svg.line("axis", x, axis, x, axis + 4);
    }
    for (int i = 0; i * step <= end * (1 + 1e-9); i++) {
      svg.text("tick", x(i * step, end), axis + 16, Shown.number(i * step));
    }
  }

  private static double end(double farthest, SortedMap<Double, String> lines) {
    double most = lines.isEmpty() ? farthest : Math.max(farthest, ROOM * lines.lastKey());
    double step = step(Math.max(most, 1e-6));
    return step * Math.ceil(Math.max(most, 1e-6) / step);
  }

  /** A step of 1, 2 or 5 times a power of ten that gives at most eight parts. */
  private static double step(double end) {
    double power = StrictMath.pow(10, Math.floor(StrictMath.log10(end / 4)));
    double parts = end / power;
    return parts <= 6 ? power : parts <= 12 ? 2 * power : 5 * power;
  }

  private static double x(double value, double end) {
    double share = Math.max(0, Math.min(1, value / end));
    return LEFT + share * (RIGHT - LEFT);
  }
}
