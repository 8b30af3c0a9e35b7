package rickyard.second;

import java.util.ArrayList;
import java.util.List;

/** Reports of hays that lie on both sides of the limits, most of them whole, some with gaps. */
final class RemedySheets {
  private record Figure(String code, double low, double high, int decimals, double known) {}

  private static final List<Figure> MINERALS =
      List.of(
          new Figure("EE", 1.2, 3, 1, 0.8),
          new Figure("ASH", 4, 9, 1, 0.8),
          new Figure("CA", 0.25, 0.9, 2, 0.9),
          new Figure("P", 0.14, 0.35, 2, 0.9),
          new Figure("MG", 0.1, 0.3, 2, 0.85),
          new Figure("K", 0.7, 2.4, 2, 0.85),
          new Figure("NA", 0.01, 0.2, 3, 0.8),
          new Figure("CU", 3, 10, 1, 0.75),
          new Figure("ZN", 12, 45, 0, 0.75));

  private RemedySheets() {}

  static RandomSheet draw(Draws draws, String material) {
    List<Printed> figures = new ArrayList<>();
    double dm = material.equals("haylage") ? draws.between(50, 72) : dry(draws);
    figures.add(percent(draws, "DM", dm, 1, "af", "nir"));
    String method = draws.of(List.of("nir", "wet", "wet"));
    String basis = draws.chance(0.25) ? "af" : "dm";
    double scale = basis.equals("af") ? dm / 100 : 1;
    boolean isStraw = material.equals("straw");
    double ndf = isStraw ? draws.between(65, 75) : draws.between(48, 62);
    double wsc = isStraw ? draws.between(1.5, 5) : draws.between(3, draws.chance(0.5) ? 9 : 16);
    add(figures, draws, 0.95, "CP", isStraw ? 3.5 : draws.between(6, 16), scale, basis, method);
    add(figures, draws, 0.95, "ADF", ndf * draws.between(0.55, 0.65), scale, basis, method);
    add(figures, draws, 0.95, "NDF", ndf, scale, basis, method);
    add(figures, draws, 0.93, "WSC", wsc, scale, basis, method);
    add(figures, draws, 0.7, "ESC", wsc * draws.between(0.4, 0.9), scale, basis, method);
    add(figures, draws, 0.93, "STARCH", draws.between(0.2, 2.6), scale, basis, method);
    for (Figure f : MINERALS) {
      if (draws.chance(f.known())) {
        boolean isPercent = !f.code().equals("CU") && !f.code().equals("ZN");
        double value = draws.between(f.low(), f.high()) * scale;
        String digits = draws.printed(value, value, f.decimals());
        String unit = isPercent ? "%" : "mg/kg";
        figures.add(new Printed(f.code(), digits, false, 1, unit, basis, method));
      }
    }
    addHazards(figures, draws, basis, method);
    return new RandomSheet(figures, draws.chance(0.7) ? draws.whole(2, 30) : 0);
  }

  /** Now and then a hay that was baled too wet. */
  private static double dry(Draws draws) {
    return draws.chance(0.05) ? draws.between(72, 84) : draws.between(84, 92);
  }

  /** What is seldom much: iron, selenium, nitrate, ergovaline. */
  private static void addHazards(List<Printed> figures, Draws draws, String basis, String method) {
    hazard(figures, draws, new Figure("FE", 60, 320, 0, 0.7), 900, basis, method);
    hazard(figures, draws, new Figure("SE", 0.03, 0.3, 2, 0.5), 3.5, basis, method);
    hazard(figures, draws, new Figure("NO3_N", 60, 800, 0, 0.4), 4500, basis, method);
    hazard(figures, draws, new Figure("ERGOVALINE", 0.01, 0.12, 3, 0.15), 0.6, basis, method);
  }

  private static void hazard(
      List<Printed> figures, Draws draws, Figure f, double top, String basis, String method) {
    if (draws.chance(f.known())) {
      double high = draws.chance(0.06) ? top : f.high();
      String digits = draws.printed(f.low(), high, f.decimals());
      figures.add(new Printed(f.code(), digits, false, 1, "mg/kg", basis, method));
    }
  }

  private static void add(
      List<Printed> figures,
      Draws draws,
      double known,
      String code,
      double value,
      double scale,
      String basis,
      String method) {
    if (draws.chance(known)) {
      int decimals = List.of("ADF", "NDF", "CP").contains(code) ? 1 : 2;
      figures.add(percent(draws, code, value * scale, decimals, basis, method));
    }
  }

  private static Printed percent(
      Draws draws, String code, double value, int decimals, String basis, String method) {
    String digits = draws.printed(value, value, decimals);
    boolean isBelow = code.equals("STARCH") && draws.chance(0.1);
    return new Printed(code, digits, isBelow, 1, "%", basis, method);
  }
}
