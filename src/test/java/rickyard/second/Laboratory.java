package rickyard.second;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The contents of a lot from the figures of a report, with method, sampling and rounding in u. */
final class Laboratory {
  private static final double NO3 = 62.0049;
  private static final double N = 14.0067;

  private final Books books;
  private final String material;
  private final int cores;

  /**
   * @param material grass, legume, cereal, haylage or straw
   * @param cores that stand behind the sample; 0 where nobody says
   */
  Laboratory(Books books, String material, int cores) {
    this.books = books;
    this.material = material;
    this.cores =
        cores > 0
            ? cores
            : Integer.parseInt(
                books.find("uncertainties", "kind", "cores").orElseThrow().get("value"));
  }

  /** By analyte on dry matter; DM itself as fed, in %. What is not there is unknown. */
  SortedMap<String, Num> contents(List<Printed> figures) {
    Map<String, Printed> byCode = new HashMap<>();
    figures.forEach(f -> byCode.put(f.code(), f));
    SortedMap<String, Num> found = new TreeMap<>();
    Optional<Num> dm = dryMatter(byCode);
    dm.ifPresent(n -> found.put("DM", n));
    for (Printed f : figures) {
      if (!List.of("DM", "MOISTURE").contains(f.code())) {
        boolean isUnconvertible = f.basis().equals("af") && dm.isEmpty();
        if (!isUnconvertible || isCondemning(f.code())) {
          found.put(f.code(), onDryMatter(f, dm));
        }
      }
    }
    Num nitrate = found.get("NO3");
    if (nitrate != null && !found.containsKey("NO3_N")) {
      found.put("NO3_N", nitrate.times(N / NO3));
    }
    double r =
        Double.parseDouble(
            books.find("uncertainties", "kind", "sum-correlation").orElseThrow().get("value"));
    Sums.add(found, r);
    return found;
  }

  /** What a limit for lots names, or is a part of what it names: a lower bound may condemn. */
  private boolean isCondemning(String code) {
    boolean isPart = List.of("WSC", "ESC", "STARCH", "NSC_ESC", "NO3").contains(code);
    String quantity = code.toLowerCase(java.util.Locale.ROOT);
    return isPart || books.find("limits", "subject", "lot", "quantity", quantity).isPresent();
  }

  private Optional<Num> dryMatter(Map<String, Printed> byCode) {
    Printed own = byCode.get("DM");
    Printed water = byCode.get("MOISTURE");
    if (own == null && water == null) {
      return Optional.empty();
    }
    Printed f = own == null ? water : own;
    double best = own == null ? 100 - water.number() * water.factor() : f.number() * f.factor();
    double half = Csv.halfWidth(f.digits()) * f.factor();
    double lab = term("lab", f.code(), f.method(), best);
    return Optional.of(Num.plain(best, half, Math.hypot(lab, half / Math.sqrt(3)), Num.REPORTED));
  }

  private Num onDryMatter(Printed f, Optional<Num> dm) {
    boolean isAsFed = f.basis().equals("af");
    double y = f.number() * f.factor();
    double half = f.isBelow() ? 0 : Csv.halfWidth(f.digits()) * f.factor();
    if (isAsFed && dm.isEmpty()) {
      // even without any water there would be this much in it
      double lower = f.isBelow() ? 0 : y;
      return Num.atLeast(lower, spread(f, lower, half / Math.sqrt(3)), Num.REPORTED);
    }
    double scale = isAsFed ? 100 / dm.orElseThrow().best() : 1;
    double best = (f.isBelow() ? y / 2 : y) * scale;
    double fromDm = isAsFed ? best * dm.orElseThrow().u() / dm.orElseThrow().best() : 0;
    double rest = Math.hypot(half / Math.sqrt(3) * scale, fromDm);
    double u = spread(f, best, rest);
    if (f.isBelow()) {
      double top = isAsFed ? y * 100 / dm.orElseThrow().low() : y;
      return new Num(best, 0, top, 0, y * scale, u, Num.REPORTED);
    }
    double low = isAsFed ? (y - half) * 100 / dm.orElseThrow().high() : y - half;
    double high = isAsFed ? (y + half) * 100 / dm.orElseThrow().low() : y + half;
    return new Num(best, Math.max(0, low), high, best, best, u, Num.REPORTED);
  }

  /** {@code u² = u_lab² + s_core²/n + rest²}. */
  private double spread(Printed f, double figure, double rest) {
    double lab = term("lab", f.code(), f.method(), figure);
    double core = term("core", f.code(), "any", figure);
    return Math.sqrt(lab * lab + core * core / cores + rest * rest);
  }

  /**
   * The most particular row: analyte before *, then material before any, then method before any.
   */
  private double term(String kind, String code, String method, double figure) {
    String counts = method.equals("wet") ? "wet" : "nir";
    return books
        .rows("uncertainties", "kind", kind)
        .filter(r -> List.of(code, "*").contains(r.get("analyte")))
        .filter(r -> List.of(material, "any").contains(r.get("material")))
        .filter(r -> List.of(counts, "any").contains(r.get("method")))
        .max(
            Comparator.<Map<String, String>>comparingInt(r -> r.get("analyte").equals("*") ? 0 : 1)
                .thenComparingInt(r -> r.get("material").equals("any") ? 0 : 1)
                .thenComparingInt(r -> r.get("method").equals("any") ? 0 : 1))
        .map(
            r ->
                Double.parseDouble(r.get("value"))
                    * (r.get("relative").equals("yes") ? figure / 100 : 1))
        .orElse(0.0);
  }
}
