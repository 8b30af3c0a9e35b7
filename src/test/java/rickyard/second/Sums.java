package rickyard.second;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;

/** Starch and sugar: the two sums, and what is known of a sum when a part is missing. */
final class Sums {
  private Sums() {}

  /** A sum of both parts beats a printed one; a part alone is a bound from below. */
  static void add(Map<String, Num> contents, double correlation) {
    Optional<Num> starch = find(contents, "STARCH");
    dropContradicted(contents, "NSC_ESC", List.of("ESC", "STARCH"));
    sum(find(contents, "ESC"), starch, correlation).ifPresent(n -> contents.put("NSC_ESC", n));
    dropContradicted(contents, "NSC_WSC", List.of("WSC", "STARCH", "ESC", "NSC_ESC"));
    sum(find(contents, "WSC"), starch, correlation).ifPresent(n -> contents.put("NSC_WSC", n));
    if (!contents.containsKey("NSC_WSC")) {
      greatest(List.of("NSC_ESC", "WSC", "ESC", "STARCH"), contents)
          .ifPresent(n -> contents.put("NSC_WSC", n));
    }
    if (!contents.containsKey("NSC_ESC")) {
      Optional<Num> wide = find(contents, "NSC_WSC").filter(Num::isBounded);
      if (wide.isPresent()) {
        contents.put(
            "NSC_ESC", Num.atMost(wide.get().upper(), wide.get().u(), wide.get().origin()));
      } else {
        greatest(List.of("ESC", "STARCH"), contents).ifPresent(n -> contents.put("NSC_ESC", n));
      }
    }
  }

  /** A printed sum below something that is a part of it by definition (ESC is a part of WSC). */
  private static void dropContradicted(Map<String, Num> contents, String sum, List<String> parts) {
    Optional<Num> printed = find(contents, sum);
    boolean isBelow =
        printed.isPresent()
            && parts.stream()
                .flatMap(p -> find(contents, p).stream())
                .anyMatch(p -> p.low() > printed.get().high());
    if (isBelow) {
      contents.remove(sum);
    }
  }

  static Optional<Num> sum(Optional<Num> sugar, Optional<Num> starch, double r) {
    if (sugar.isEmpty() || starch.isEmpty()) {
      return Optional.empty();
    }
    double a = sugar.get().u();
    double b = starch.get().u();
    RealMatrix covariance =
        new Array2DRowRealMatrix(new double[][] {{a * a, r * a * b}, {r * a * b, b * b}});
    return Optional.of(
        Num.sum(
            new ArrayRealVector(new double[] {1, 1}),
            List.of(sugar.get(), starch.get()),
            covariance));
  }

  private static Optional<Num> greatest(List<String> parts, Map<String, Num> contents) {
    return parts.stream()
        .flatMap(p -> find(contents, p).stream())
        .max((a, b) -> Double.compare(a.lower(), b.lower()))
        .map(n -> Num.atLeast(n.lower(), n.u(), n.origin()));
  }

  private static Optional<Num> find(Map<String, Num> contents, String code) {
    return Optional.ofNullable(contents.get(code));
  }
}
