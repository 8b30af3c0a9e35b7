package rickyard.intake.grid.pdf;

import java.util.OptionalInt;

/**
 * One character as drawn, before it is known whether it can be seen.
 *
 * @param text what it stands for
 * @param x start of its baseline in page units
 * @param y start of its baseline in page units
 * @param angle direction of reading in whole degrees from 0 to 359
 * @param width advance in points
 * @param size font size in points
 * @param space width of a space in points
 * @param paintsBefore how many areas had been painted when it was drawn
 * @param rgb its colour where it can be told
 * @param unseen whether it was drawn so that it leaves no trace
 */
record Mark(
    String text,
    double x,
    double y,
    int angle,
    double width,
    double size,
    double space,
    int paintsBefore,
    OptionalInt rgb,
    boolean unseen) {

  /** A point inside the body of the character. */
  double middleX() {
    double turn = StrictMath.toRadians(angle);
    return x + StrictMath.cos(turn) * width / 2 - StrictMath.sin(turn) * size * 0.25;
  }

  /** A point inside the body of the character. */
  double middleY() {
    double turn = StrictMath.toRadians(angle);
    return y + StrictMath.sin(turn) * width / 2 + StrictMath.cos(turn) * size * 0.25;
  }
}
