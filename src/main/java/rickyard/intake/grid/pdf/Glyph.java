package rickyard.intake.grid.pdf;

/**
 * One visible character in the frame of its own reading direction, points.
 *
 * @param text what it stands for, never blank
 * @param left left edge along the line
 * @param right right edge along the line, above {@code left}
 * @param base baseline, downwards from the top
 * @param size font size, above 0
 * @param space width of a space in this font, above 0
 * @param order place in the order of drawing
 */
record Glyph(
    String text, double left, double right, double base, double size, double space, int order) {

  double width() {
    return right - left;
  }

  double middle() {
    return (left + right) / 2;
  }
}
