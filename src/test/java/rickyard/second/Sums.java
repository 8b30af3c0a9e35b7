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

  /**
   * A sum of both parts beats a printed one; a part alone is a bound from below. Only parts that
   * are bounded themselves beat a printed sum.
   */
  static void add(Map<String, Num> contents, double correlation) {
    dropContradicted(contents, "NSC_ESC", List.of("ESC", "STARCH"));
    put(contents, "NSC_ESC", sum(find(contents, "ESC"), find(contents, "STARCH"), correlation));
    dropContradicted(contents, "NSC_WSC", List.of("WSC", "STARCH", "ESC", "NSC_ESC"));
    put(contents, "NSC_WSC", sum(find(contents, "WSC"), find(contents, "STARCH"), correlation));
    if (find(contents, "NSC_WSC").filter(Num::isBounded).isEmpty()) {
      greatest(List.of("NSC_WSC", "NSC_ESC", "WSC", "ESC", "STARCH"), contents)
          .ifPresent(n -> contents.put("NSC_WSC", n));
    }
    if (find(contents, "NSC_ESC").filter(Num::isBounded).isEmpty()) {
      greatest(List.of("NSC_ESC", "ESC", "STARCH"), contents)
          .ifPresent(n -> contents.put("NSC_ESC", n));
    }
    Num wide = contents.get("NSC_WSC");
    Num narrow = contents.get("NSC_ESC");
    if (wide != null && wide.isBounded() && (narrow == null || !narrow.isBounded())) {
      double lower = narrow == null ? 0 : Math.min(wide.lower(), narrow.lower());
      contents.put(
          "NSC_ESC",
          new Num(wide.best(), lower, wide.high(), lower, wide.upper(), wide.u(), wide.origin()));
    }
  }

  private static void put(Map<String, Num> contents, String code, Optional<Num> sum) {
    boolean isOpen = find(contents, code).filter(Num::isBounded).isEmpty();
    sum.filter(s -> s.isBounded() || isOpen).ifPresent(s -> contents.put(code, s));
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
