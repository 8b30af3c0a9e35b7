package rickyard.report.page;

import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietLine;

/**
 * One nutrient's supply as a bar on a scale of its requirement: the floor stands at 100 %, the
 * ceiling where it lies; without a requirement the scale is the ceiling.
 */
final class NeedBar {
  private static final double WIDTH = 130;
  private static final double HEIGHT = 16;
  private static final double FULL = 124;
  private static final double SPAN = 2.5;
  private static final double MIDDLE = 8;

  private NeedBar() {}

  /** The bar; empty where nothing can be drawn. */
  static String of(DietLine line) {
    Double supply = line.supply();
    Double floor = positive(line.requirement());
    Double ceiling = positive(line.maxTolerable());
    if (supply == null || !Double.isFinite(supply) || (floor == null && ceiling == null)) {
      return "";
    }
    double whole = whole(floor, ceiling);
    Svg svg = Svg.sized("need");
    svg.box("fill", 0, 4, x(supply, whole), 8);
    interval(svg, line, whole);
    if (supply > whole) {
      svg.text("ends", WIDTH, MIDDLE + 4, "›");
    }
    if (floor != null) {
      svg.line("floor", x(floor, whole), 0, x(floor, whole), HEIGHT);
    }
    if (ceiling != null && ceiling <= whole) {
      svg.line("ceiling", x(ceiling, whole), 0, x(ceiling, whole), HEIGHT);
    }
    return svg.close();
  }

  /** The scale's end: shows the ceiling too where it is not far above the floor. */
  private static double whole(@Nullable Double floor, @Nullable Double ceiling) {
    if (floor == null) {
      return 1.25 * (ceiling == null ? 1 : ceiling);
    }
    boolean near = ceiling != null && ceiling > floor && ceiling <= 2 * SPAN * floor;
    return near && ceiling != null ? Math.max(SPAN * floor, 1.1 * ceiling) : SPAN * floor;
  }

  private static void interval(Svg svg, DietLine line, double whole) {
    Double low = line.low();
    Double high = line.high();
    if (low != null && high != null && Double.isFinite(low) && Double.isFinite(high)) {
      svg.line("two", x(low, whole), MIDDLE, x(high, whole), MIDDLE);
    }
  }

  private static @Nullable Double positive(@Nullable Double number) {
    return number == null || !Double.isFinite(number) || number <= 0 ? null : number;
  }

  private static double x(double amount, double whole) {
    return FULL * Math.max(0, Math.min(1, amount / whole));
  }
}
