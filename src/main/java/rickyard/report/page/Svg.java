package rickyard.report.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import rickyard.report.text.Harmless;

/** Writes the few shapes of our pictures; text is escaped, coordinates have one decimal. */
final class Svg {
  private static final String END = "\"/>";

  private final StringBuilder out = new StringBuilder(512);

  /** Style of the path that was drawn last, as long as nothing else was drawn since. */
  private String path = "";

  /** Starts a picture that is read out as its title and description. */
  static Svg named(String id, double width, double height, String title, String description) {
    Svg svg = new Svg();
    svg.open(width, height, "pic");
    svg.out.insert(
        svg.out.length() - 1, " role=\"img\" aria-labelledby=\"" + id + "t " + id + "d\"");
    svg.out.append("<title id=\"").append(id).append("t\">").append(escaped(title));
    svg.out.append("</title><desc id=\"").append(id).append("d\">").append(escaped(description));
    svg.out.append("</desc>");
    return svg;
  }

  /** Starts a picture that only repeats the numbers beside it. */
  static Svg silent(double width, double height) {
    Svg svg = new Svg();
    svg.open(width, height, "bar");
    svg.out.insert(svg.out.length() - 1, " aria-hidden=\"true\"");
    return svg;
  }

  /** Starts a picture that only repeats the numbers beside it and whose size the style gives. */
  static Svg sized(String style) {
    Svg svg = new Svg();
    svg.out.append("<svg class=\"").append(style).append("\" aria-hidden=\"true\">");
    return svg;
  }

  private void open(double width, double height, String style) {
    out.append("<svg class=\"").append(style).append("\" viewBox=\"0 0 ");
    out.append(n(width)).append(' ').append(n(height)).append("\" width=\"").append(n(width));
    out.append("\" height=\"").append(n(height)).append("\">");
  }

  /** A line; lines of one style that follow each other share a path, which keeps a page small. */
  Svg line(String style, double x1, double y1, double x2, double y2) {
    if (path.equals(style)) {
      out.setLength(out.length() - END.length());
    } else {
      out.append("<path class=\"").append(style).append("\" d=\"");
    }
    out.append('M').append(n(x1)).append(' ').append(n(y1)).append(to(x1, y1, x2, y2)).append(END);
    path = style;
    return this;
  }

  private static String to(double x1, double y1, double x2, double y2) {
    if (n(x1).equals(n(x2))) {
      return "V" + n(y2);
    }
    return n(y1).equals(n(y2)) ? "H" + n(x2) : "L" + n(x2) + " " + n(y2);
  }

  Svg dot(String style, double x, double y, double radius) {
    path = "";
    out.append("<circle class=\"").append(style).append("\" cx=\"").append(n(x));
    out.append("\" cy=\"").append(n(y)).append("\" r=\"").append(n(radius)).append("\"/>");
    return this;
  }

  Svg box(String style, double x, double y, double width, double height) {
    path = "";
    out.append("<path class=\"").append(style).append("\" d=\"M").append(n(x)).append(' ');
    out.append(n(y)).append('H').append(n(x + width)).append('V').append(n(y + height));
    out.append('H').append(n(x)).append("Z\"/>");
    return this;
  }

  /** Text that starts at x, or stands to it as its style says. */
  Svg text(String style, double x, double y, String words) {
    path = "";
    out.append("<text class=\"").append(style).append("\" x=\"").append(n(x)).append("\" y=\"");
    out.append(n(y)).append("\">");
    out.append(escaped(words)).append("</text>");
    return this;
  }

  String close() {
    return out.append("</svg>").toString();
  }

  private static String n(double coordinate) {
    BigDecimal rounded =
        BigDecimal.valueOf(coordinate).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
  }

  /** Text as it may stand between tags or in a quoted attribute. */
  static String escaped(String words) {
    return Harmless.line(words)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
