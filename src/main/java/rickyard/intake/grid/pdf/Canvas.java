package rickyard.intake.grid.pdf;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import rickyard.intake.grid.UnreadableException;

/** What has been painted on a page besides text: areas in order, and straight lines. */
final class Canvas {
  private static final int WHITE = 0xFFFFFF;
  private static final int NEAR = 20;
  private static final int MOST_SHAPES = 100_000;
  private static final long MOST_WORK = 400_000_000L;

  private final Rectangle2D sheet;
  private final List<Paint> paints = new ArrayList<>();
  private final List<Line2D> lines = new ArrayList<>();
  private long work;

  Canvas(PDRectangle crop) {
    this.sheet =
        new Rectangle2D.Double(
            crop.getLowerLeftX(), crop.getLowerLeftY(), crop.getWidth(), crop.getHeight());
  }

  private record Paint(Shape shape, Rectangle2D bounds, OptionalInt rgb, boolean opaque) {
    boolean holds(double x, double y) {
      return bounds.contains(x, y) && shape.contains(x, y);
    }
  }

  Rectangle2D sheet() {
    return sheet;
  }

  int paints() {
    return paints.size();
  }

  List<Line2D> lines() {
    return lines;
  }

  void line(Line2D line) {
    limit(lines.size());
    lines.add(line);
  }

  /**
   * An area is painted.
   *
   * @param rgb its colour where it can be told
   * @param opaque whether nothing shines through
   */
  void paint(Shape shape, OptionalInt rgb, boolean opaque) {
    limit(paints.size());
    paints.add(new Paint(shape, shape.getBounds2D(), rgb, opaque));
  }

  /** Whether a person sees the character: on the sheet, not covered later, not ground on ground. */
  boolean shows(Mark mark) {
    double x = mark.middleX();
    double y = mark.middleY();
    if (mark.unseen() || !sheet.contains(x, y)) {
      return false;
    }
    work += paints.size();
    if (work > MOST_WORK) {
      throw tooComplex();
    }
    for (int later = mark.paintsBefore(); later < paints.size(); later++) {
      if (paints.get(later).opaque() && paints.get(later).holds(x, y)) {
        return false;
      }
    }
    return mark.rgb().isEmpty() || differs(mark.rgb().getAsInt(), mark.paintsBefore(), x, y);
  }

  private static void limit(int shapes) {
    if (shapes >= MOST_SHAPES) {
      throw tooComplex();
    }
  }

  private static UnreadableException tooComplex() {
    return new UnreadableException(
        "too-complex", "A page is drawn with more shapes than are read; ask for another file.");
  }

  private boolean differs(int rgb, int before, double x, double y) {
    for (int at = before - 1; at >= 0; at--) {
      Paint paint = paints.get(at);
      if (paint.holds(x, y)) {
        // Ground that shines through or has no one colour: take the text as visible.
        return !paint.opaque() || paint.rgb().isEmpty() || !near(rgb, paint.rgb().getAsInt());
      }
    }
    return !near(rgb, WHITE);
  }

  private static boolean near(int one, int other) {
    for (int shift = 0; shift <= 16; shift += 8) {
      if (Math.abs(((one >> shift) & 0xFF) - ((other >> shift) & 0xFF)) > NEAR) {
        return false;
      }
    }
    return true;
  }
}
