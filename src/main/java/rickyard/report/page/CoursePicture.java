package rickyard.report.page;

import java.util.List;
import java.util.stream.Stream;
import rickyard.core.season.FieldCourse;
import rickyard.core.season.LotCourse;
import rickyard.core.season.TimePoint;

/**
 * Values over time, each with twice its standard uncertainty to either side, drawn to the span of
 * the series itself. It only repeats the numbers beside it.
 */
final class CoursePicture {
  private static final double WIDTH = 150;
  private static final double HEIGHT = 54;
  private static final double EDGE = 7;
  private static final double DOT = 3;

  private CoursePicture() {}

  static String of(LotCourse course) {
    return drawn(
        course.days().stream()
            .map(d -> new TimePoint(d.day().toEpochDay(), d.value(), d.u()))
            .toList());
  }

  static String of(FieldCourse course) {
    return drawn(
        course.years().stream().map(y -> new TimePoint(y.year(), y.value(), y.u())).toList());
  }

  private static String drawn(List<TimePoint> points) {
    double first = points.get(0).x();
    double last = points.get(points.size() - 1).x();
    double low = ends(points).min(Double::compare).orElse(0.0);
    double high = ends(points).max(Double::compare).orElse(1.0);
    Svg svg = Svg.silent(WIDTH, HEIGHT);
    svg.line("axis", 0, HEIGHT - 1, WIDTH, HEIGHT - 1);
    for (TimePoint point : points) {
      double x = EDGE + (WIDTH - 2 * EDGE) * (point.x() - first) / (last - first);
      svg.line(
          "two",
          x,
          y(point.y() - 2 * point.u(), low, high),
          x,
          y(point.y() + 2 * point.u(), low, high));
    }
    for (TimePoint point : points) {
      double x = EDGE + (WIDTH - 2 * EDGE) * (point.x() - first) / (last - first);
      svg.dot("dot", x, y(point.y(), low, high), DOT);
    }
    return svg.close();
  }

  private static Stream<Double> ends(List<TimePoint> points) {
    return points.stream()
        .flatMap(
            p -> Stream.of(Double.valueOf(p.y() - 2 * p.u()), Double.valueOf(p.y() + 2 * p.u())));
  }

  private static double y(double value, double low, double high) {
    return HEIGHT - EDGE - (HEIGHT - 2 * EDGE) * (value - low) / (high - low);
  }
}
