package rickyard.intake.grid.pdf;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.CellText;

/** Divides a line into cells: at wide gaps, at ruled lines and at leaders. */
final class LineCells {
  /** A gap of more spaces than this divides. */
  private static final double CELL_GAP = 1.6;

  private static final double WORD_GAP = 0.5;
  private static final String LETTERS = "abcdefgh";
  private static final String RAISED_LETTERS = "\u1d43\u1d47\u1d9c\u1d48\u1d49\u1da0\u1d4d\u02b0";
  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

  private static final double[] NO_RULES = {};

  private final List<Line2D> ruled;
  private final Set<String> cautions;

  LineCells(List<Line2D> ruled, Set<String> cautions) {
    this.ruled = ruled;
    this.cautions = cautions;
  }

  /** The cells of all lines, one list for each line. */
  List<List<Cell>> of(List<TextLine> lines) {
    List<List<List<Glyph>>> groups = lines.stream().map(this::groups).toList();
    List<List<Cell>> all = new ArrayList<>();
    for (int at = 0; at < lines.size(); at++) {
      List<Glyph> blanks = blanks(lines.get(at));
      List<Cell> cells = new ArrayList<>();
      for (List<Glyph> group : groups.get(at)) {
        for (List<Glyph> piece : Seams.divided(group, blanks, groups, at)) {
          close(cells.isEmpty() ? piece : withoutColon(piece), blanks, cells);
        }
      }
      all.add(cells);
    }
    return all;
  }

  private static List<Glyph> blanks(TextLine line) {
    return line.glyphs().stream().filter(g -> g.text().isBlank()).toList();
  }

  /** Divides by what the line itself shows: gaps, rules, leaders. */
  private List<List<Glyph>> groups(TextLine line) {
    List<Glyph> inked = line.glyphs().stream().filter(g -> !g.text().isBlank()).toList();
    double[] rules = rulesAt(line);
    List<List<Glyph>> groups = new ArrayList<>();
    double end = 0;
    for (Glyph glyph : Leaders.removed(Overdrawn.settled(inked, cautions))) {
      boolean first = groups.isEmpty();
      List<Glyph> open = first ? List.of() : groups.get(groups.size() - 1);
      if (first || divides(open.get(open.size() - 1), end, glyph, rules)) {
        groups.add(new ArrayList<>());
        end = glyph.right();
      }
      groups.get(groups.size() - 1).add(glyph);
      end = Math.max(end, glyph.right());
    }
    return groups;
  }

  private static boolean divides(Glyph before, double end, Glyph next, double[] rules) {
    double gap = next.left() - end;
    if (gap > CELL_GAP * (before.space() + next.space()) / 2) {
      return true;
    }
    for (double x : rules) {
      if (x > before.middle() && x < next.middle() && x > end - 1 && x < next.left() + 1) {
        return true;
      }
    }
    return false;
  }

  /** Places along the line where a ruled line crosses it. */
  private double[] rulesAt(TextLine line) {
    if (ruled.isEmpty()) {
      return NO_RULES;
    }
    double size = line.glyphs().get(0).size();
    double y = line.base() - 0.3 * size;
    return ruled.stream()
        .filter(r -> Math.abs(r.getX1() - r.getX2()) < 1)
        .filter(r -> Math.min(r.getY1(), r.getY2()) <= y && Math.max(r.getY1(), r.getY2()) >= y)
        .filter(r -> Math.abs(r.getY1() - r.getY2()) > 0.8 * size)
        .mapToDouble(Line2D::getX1)
        .sorted()
        .toArray();
  }

  /** A colon at the head of a value belongs to the name before it. */
  private static List<Glyph> withoutColon(List<Glyph> piece) {
    return piece.get(0).text().equals(":") ? piece.subList(1, piece.size()) : piece;
  }

  private void close(List<Glyph> open, List<Glyph> blanks, List<Cell> cells) {
    if (open.isEmpty()) {
      return;
    }
    String text = CellText.plain(spelled(open, blanks) + (isStruck(open) ? struck() : ""));
    double left = open.get(0).left();
    double right = open.get(0).right();
    for (Glyph glyph : open) {
      left = Math.min(left, glyph.left());
      right = Math.max(right, glyph.right());
    }
    if (!text.isEmpty()) {
      cells.add(new Cell(text, left, right, cells.size() + 1));
    }
  }

  /** What is crossed out is no longer said; the mark keeps it from being read as a figure. */
  private String struck() {
    cautions.add("struck-text");
    return String.valueOf(CellText.UNKNOWN);
  }

  private boolean isStruck(List<Glyph> piece) {
    if (ruled.isEmpty()) {
      return false;
    }
    Glyph first = piece.get(0);
    double from = first.left();
    double to = piece.get(piece.size() - 1).right();
    return ruled.stream()
        .filter(r -> Math.abs(r.getY1() - r.getY2()) < 1)
        .filter(r -> r.getY1() < first.base() - 0.15 * first.size())
        .filter(r -> r.getY1() > first.base() - 0.5 * first.size())
        .anyMatch(
            r -> {
              double left = Math.min(r.getX1(), r.getX2());
              double right = Math.max(r.getX1(), r.getX2());
              double common = Math.min(right, to) - Math.max(left, from);
              return common > 0.6 * (to - from) && right - left < to - from + 2 * first.size();
            });
  }

  private String spelled(List<Glyph> glyphs, List<Glyph> blanks) {
    Glyph largest = glyphs.get(0);
    for (Glyph glyph : glyphs) {
      largest = glyph.size() > largest.size() * 1.01 ? glyph : largest;
    }
    StringBuilder out = new StringBuilder();
    double end = glyphs.get(0).left();
    Glyph before = null;
    for (Glyph glyph : glyphs) {
      double gap = glyph.left() - end;
      double least = hasBlank(blanks, end, glyph.left()) ? 0.1 : WORD_GAP;
      if (!out.isEmpty() && gap > least * glyph.space()) {
        out.append(' ');
      } else if (before != null && Seams.isDoubtful(before, glyph, gap)) {
        // Two pieces drawn apart that nearly touch: one figure or two, nobody knows.
        cautions.add("readings-differ");
        out.append(' ');
      }
      before = glyph;
      out.append(shifted(glyph, largest, out));
      end = Math.max(end, glyph.right());
    }
    return out.toString();
  }

  private static boolean hasBlank(List<Glyph> blanks, double from, double to) {
    for (Glyph blank : blanks) {
      if (blank.middle() > from - 0.5 && blank.middle() < to + 0.5) {
        return true;
      }
    }
    return false;
  }

  /** A raised digit is a note or a power, never a digit of the figure beside it. */
  private static String shifted(Glyph glyph, Glyph largest, StringBuilder before) {
    double rise = largest.base() - glyph.base();
    if (rise > 0.12 * largest.size()) {
      return note(mapped(glyph.text(), RAISED), before);
    }
    boolean afterDigit = !before.isEmpty() && Character.isDigit(before.charAt(before.length() - 1));
    return -rise > 0.08 * largest.size() && afterDigit
        ? mapped(glyph.text(), LOWERED)
        : glyph.text();
  }

  /** A raised letter behind a word or a figure is the mark of a note, no letter of the word. */
  private static String note(String text, StringBuilder before) {
    int at = text.length() == 1 && !before.isEmpty() ? LETTERS.indexOf(text.charAt(0)) : -1;
    return at < 0 ? text : String.valueOf(RAISED_LETTERS.charAt(at));
  }

  private static String mapped(String text, String digits) {
    StringBuilder out = new StringBuilder();
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      out.append(c >= '0' && c <= '9' ? digits.charAt(c - '0') : c);
    }
    return out.toString();
  }
}
