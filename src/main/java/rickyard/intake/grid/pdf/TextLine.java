package rickyard.intake.grid.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Characters on one base line, small raised or lowered ones with them. */
final class TextLine {
  /** Baselines closer than this share of the smaller size are one line. */
  private static final double SAME = 0.35;

  private static final Comparator<Glyph> ALONG =
      Comparator.comparingDouble(Glyph::left).thenComparingInt(Glyph::order);

  private final double base;
  private final double size;
  private final List<Glyph> glyphs = new ArrayList<>();

  private TextLine(Glyph first) {
    this.base = first.base();
    this.size = first.size();
  }

  double base() {
    return base;
  }

  int length() {
    return glyphs.size();
  }

  /** From left to right; what was drawn first stands first at the same place. */
  List<Glyph> glyphs() {
    return glyphs.stream().sorted(ALONG).toList();
  }

  /** Groups characters into lines from top to bottom, whatever the order they were drawn in. */
  static List<TextLine> of(List<Glyph> all) {
    NavigableMap<Double, TextLine> lines = new TreeMap<>();
    // Large characters first: they decide where lines are.
    all.stream()
        .sorted(
            Comparator.comparingDouble((Glyph g) -> -Math.rint(g.size() * 4))
                .thenComparingDouble(Glyph::base)
                .thenComparing(ALONG))
        .forEach(glyph -> place(lines, glyph));
    lines.values().forEach(line -> line.giveRaised(lines));
    return lines.values().stream().filter(line -> !line.glyphs.isEmpty()).toList();
  }

  private static void place(NavigableMap<Double, TextLine> lines, Glyph glyph) {
    double reach = SAME * glyph.size();
    TextLine nearest = null;
    for (TextLine line :
        lines.subMap(glyph.base() - reach, true, glyph.base() + reach, true).values()) {
      if (line.size <= 2.5 * glyph.size()
          && (nearest == null || line.distance(glyph) < nearest.distance(glyph))) {
        nearest = line;
      }
    }
    TextLine line = nearest == null ? opened(lines, glyph) : nearest;
    line.glyphs.add(glyph);
  }

  private double distance(Glyph glyph) {
    return Math.abs(base - glyph.base());
  }

  private static TextLine opened(NavigableMap<Double, TextLine> lines, Glyph glyph) {
    double key = glyph.base();
    while (lines.containsKey(key)) {
      key = Math.nextUp(key);
    }
    TextLine line = new TextLine(glyph);
    lines.put(key, line);
    return line;
  }

  /** Gives runs of small characters that touch a larger line beside them to that line. */
  private void giveRaised(NavigableMap<Double, TextLine> lines) {
    double reach = 2 * size;
    List<TextLine> larger =
        lines.subMap(base - reach, true, base + reach, true).values().stream()
            .filter(line -> line != this && size <= 0.85 * line.size && size >= 0.3 * line.size)
            .filter(
                line -> base > line.base - 0.9 * line.size && base < line.base + 0.4 * line.size)
            .toList();
    if (larger.isEmpty()) {
      return;
    }
    for (List<Glyph> run : runs()) {
      larger.stream()
          .filter(line -> line.touches(run))
          .min(Comparator.comparingDouble(line -> Math.abs(line.base - base)))
          .ifPresent(
              line -> {
                line.glyphs.addAll(run);
                glyphs.removeAll(run);
              });
    }
  }

  private List<List<Glyph>> runs() {
    List<List<Glyph>> runs = new ArrayList<>();
    double end = Double.NEGATIVE_INFINITY;
    for (Glyph glyph : glyphs()) {
      if (runs.isEmpty() || glyph.left() - end > size) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(glyph);
      end = Math.max(end, glyph.right());
    }
    return runs;
  }

  private boolean touches(List<Glyph> run) {
    double from = run.get(0).left();
    double to = run.stream().mapToDouble(Glyph::right).max().orElse(from);
    double near = 0.3 * size;
    return glyphs.stream()
        .filter(g -> !g.text().isBlank() && g.size() > 0.85 * size)
        .anyMatch(
            g ->
                Math.abs(from - g.right()) < near
                    || Math.abs(g.left() - to) < near
                    || (g.left() < to && g.right() > from));
  }
}
