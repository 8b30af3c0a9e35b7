package rickyard.intake.grid.pdf;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.GeneralPath;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;

/** Follows the paths of a page: what is filled, what is ruled, what is clipped away. */
final class Painting {
  private static final double THIN = 2.5;

  /** Exact areas of longer paths take too long; their boxes must do, and hide nothing. */
  private static final int LONGEST = 2000;

  private final PDFStreamEngine engine;
  private final Canvas canvas;
  private Path2D.Double path = new Path2D.Double();
  private int clipRule = -1;
  private int steps;

  Painting(PDFStreamEngine engine, Canvas canvas) {
    this.engine = engine;
    this.canvas = canvas;
  }

  void rectangle(List<COSBase> operands) {
    double[] v = numbers(operands, 4);
    Point2D start = point(v[0], v[1]);
    path.moveTo(start.getX(), start.getY());
    line(v[0] + v[2], v[1]);
    line(v[0] + v[2], v[1] + v[3]);
    line(v[0], v[1] + v[3]);
    path.closePath();
  }

  void move(List<COSBase> operands) {
    double[] v = numbers(operands, 2);
    Point2D to = point(v[0], v[1]);
    path.moveTo(to.getX(), to.getY());
  }

  void line(List<COSBase> operands) {
    double[] v = numbers(operands, 2);
    line(v[0], v[1]);
  }

  private void line(double x, double y) {
    Point2D to = point(x, y);
    if (path.getCurrentPoint() == null) {
      path.moveTo(to.getX(), to.getY());
    } else {
      path.lineTo(to.getX(), to.getY());
    }
  }

  /** A curve: three points, of which the first or the second may be left out. */
  void curve(List<COSBase> operands, boolean fromHere, boolean intoEnd) {
    double[] v = numbers(operands, fromHere || intoEnd ? 4 : 6);
    Point2D end = point(v[v.length - 2], v[v.length - 1]);
    Point2D here = path.getCurrentPoint();
    if (here == null) {
      path.moveTo(end.getX(), end.getY());
      return;
    }
    Point2D first = fromHere ? here : point(v[0], v[1]);
    Point2D second = intoEnd ? end : fromHere ? point(v[0], v[1]) : point(v[2], v[3]);
    path.curveTo(first.getX(), first.getY(), second.getX(), second.getY(), end.getX(), end.getY());
  }

  void close() {
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
  }

  void clip(int rule) {
    clipRule = rule;
  }

  /** Ends the path: fills it, strokes it, clips with it, or any of these. */
  void end(boolean fill, int rule, boolean stroke) {
    PDGraphicsState state = engine.getGraphicsState();
    if (fill) {
      path.setWindingRule(rule);
      fill(state);
    }
    if (stroke) {
      rule();
    }
    if (clipRule >= 0) {
      path.setWindingRule(clipRule);
      state.intersectClippingPath(new GeneralPath(steps > LONGEST ? path.getBounds2D() : path));
      clipRule = -1;
    }
    path = new Path2D.Double();
    steps = 0;
  }

  private void fill(PDGraphicsState state) {
    Rectangle2D bounds = path.getBounds2D();
    if (bounds.getWidth() < THIN && bounds.getHeight() > bounds.getWidth()) {
      canvas.line(
          new Line2D.Double(
              bounds.getCenterX(), bounds.getMinY(), bounds.getCenterX(), bounds.getMaxY()));
    } else if (bounds.getHeight() < THIN && bounds.getWidth() > bounds.getHeight()) {
      canvas.line(
          new Line2D.Double(
              bounds.getMinX(), bounds.getCenterY(), bounds.getMaxX(), bounds.getCenterY()));
    }
    if (steps > LONGEST) {
      canvas.paint(bounds, OptionalInt.empty(), false);
      return;
    }
    Area area = clipped(path, state);
    if (!area.isEmpty()) {
      canvas.paint(area, rgb(state.getNonStrokingColor()), isOpaque(state));
    }
  }

  private static Area clipped(Path2D path, PDGraphicsState state) {
    Area area = new Area(path);
    area.intersect(state.getCurrentClippingPath());
    return area;
  }

  private void rule() {
    double[] at = new double[6];
    Point2D start = new Point2D.Double();
    Point2D from = new Point2D.Double();
    for (PathIterator each = path.getPathIterator(null, 1); !each.isDone(); each.next()) {
      int kind = each.currentSegment(at);
      Point2D to = kind == PathIterator.SEG_CLOSE ? start : new Point2D.Double(at[0], at[1]);
      if (kind == PathIterator.SEG_MOVETO) {
        start = to;
      } else {
        canvas.line(new Line2D.Double(from, to));
      }
      from = to;
    }
  }

  /** A picture over the unit square of the current frame; its colours are not looked at. */
  void picture(boolean opaque) {
    PDGraphicsState state = engine.getGraphicsState();
    AffineTransform frame = state.getCurrentTransformationMatrix().createAffineTransform();
    Path2D square = new Path2D.Double(new Rectangle2D.Double(0, 0, 1, 1), frame);
    Area area = clipped(square, state);
    if (!area.isEmpty()) {
      canvas.paint(area, OptionalInt.empty(), opaque && isOpaque(state));
    }
  }

  /** A shading fills all that is not clipped away; text over it counts as visible. */
  void shade() {
    canvas.paint(engine.getGraphicsState().getCurrentClippingPath(), OptionalInt.empty(), false);
  }

  private static boolean isOpaque(PDGraphicsState state) {
    return state.getNonStrokeAlphaConstant() > 0.95
        && state.getSoftMask() == null
        && (state.getBlendMode() == BlendMode.NORMAL
            || state.getBlendMode() == BlendMode.COMPATIBLE);
  }

  /** The colour as red, green and blue, empty for patterns and for spaces that cannot be read. */
  static OptionalInt rgb(PDColor color) {
    if (color.getColorSpace() instanceof PDPattern) {
      return OptionalInt.empty();
    }
    try {
      return OptionalInt.of(color.toRGB() & 0xFFFFFF);
    } catch (IOException | RuntimeException unknown) {
      return OptionalInt.empty();
    }
  }

  private Point2D point(double x, double y) {
    steps++;
    return engine.transformedPoint((float) x, (float) y);
  }

  private static double[] numbers(List<COSBase> operands, int count) {
    double[] numbers = new double[count];
    for (int at = 0; at < count && at < operands.size(); at++) {
      numbers[at] = operands.get(at) instanceof COSNumber number ? number.floatValue() : 0;
    }
    return numbers;
  }
}
