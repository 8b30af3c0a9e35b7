package rickyard.intake.grid.pdf;

import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The frame in which text of one direction runs from left to right and from top to bottom. */
final class Turned {
  private final AffineTransform turn;
  private final double left;
  private final double top;

  Turned(int angle, Rectangle2D sheet) {
    this.turn =
        switch (angle) {
          case 0 -> new AffineTransform();
          case 90 -> AffineTransform.getQuadrantRotateInstance(3);
          case 180 -> AffineTransform.getQuadrantRotateInstance(2);
          case 270 -> AffineTransform.getQuadrantRotateInstance(1);
          default -> AffineTransform.getRotateInstance(-StrictMath.toRadians(angle));
        };
    Rectangle2D frame = turn.createTransformedShape(sheet).getBounds2D();
    this.left = frame.getMinX();
    this.top = frame.getMaxY();
  }

  Glyph glyph(Mark mark, int order) {
    Point2D at = turned(mark.x(), mark.y());
    double space = Math.min(0.7, Math.max(0.2, mark.space() / mark.size())) * mark.size();
    return new Glyph(
        mark.text(), at.getX(), at.getX() + mark.width(), at.getY(), mark.size(), space, order);
  }

  List<Line2D> lines(List<Line2D> lines) {
    List<Line2D> turned = new ArrayList<>();
    for (Line2D line : lines) {
      turned.add(
          new Line2D.Double(
              turned(line.getX1(), line.getY1()), turned(line.getX2(), line.getY2())));
    }
    return turned;
  }

  private Point2D turned(double x, double y) {
    Point2D at = turn.transform(new Point2D.Double(x, y), null);
    return new Point2D.Double(at.getX() - left, top - at.getY());
  }
}
