package rickyard.intake.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.forage.Check;
import rickyard.core.quantity.Unit;

/**
 * A carbohydrate or nitrate that is printed unlike the lines around it: in another unit than
 * protein and fibre, or with more decimals than these and the other carbohydrates (a nitrate: than
 * the trace elements). A laboratory prints them alike; a misread unit or a slipped decimal mark
 * does not.
 */
final class OddPrint {
  static final String UNIT = "unit-unlike-others";
  static final String DIGITS = "digits-unlike-others";
  private static final String DECIMALS = "printed with the decimals of its like";
  private static final int ENOUGH = 3;

  private static final List<AnalyteCode> CARBOHYDRATES =
      List.of(
          AnalyteCode.WSC,
          AnalyteCode.ESC,
          AnalyteCode.STARCH,
          AnalyteCode.NSC_WSC,
          AnalyteCode.NSC_ESC);
  private static final List<AnalyteCode> OTHERS =
      List.of(AnalyteCode.CP, AnalyteCode.ADF, AnalyteCode.NDF, AnalyteCode.EE, AnalyteCode.ASH);

  private static final List<AnalyteCode> NITRATES = List.of(AnalyteCode.NO3, AnalyteCode.NO3_N);
  private static final List<AnalyteCode> TRACES =
      List.of(AnalyteCode.FE, AnalyteCode.ZN, AnalyteCode.CU, AnalyteCode.MN);

  private OddPrint() {}

  static Checked of(SortedMap<AnalyteCode, Print> prints) {
    List<Check> checks = new ArrayList<>();
    SortedMap<AnalyteCode, String> touched = new TreeMap<>();
    Optional<Unit> unit = usualUnit(prints);
    for (AnalyteCode code : CARBOHYDRATES) {
      Print print = prints.get(code);
      if (print == null) {
        continue;
      }
      if (unit.isPresent()) {
        boolean alike = print.unit() == unit.get();
        note(checks, "printed in the unit of protein and fibre", code, alike, unit.get().code());
        if (!alike) {
          touched.put(code, UNIT);
        }
      }
      Optional<Integer> most = mostDecimals(prints, code, print.unit());
      if (most.isPresent()) {
        boolean alike = print.decimals() <= most.get();
        note(checks, DECIMALS, code, alike, most.get() + "");
        if (!alike) {
          touched.putIfAbsent(code, DIGITS);
        }
      }
    }
    nitrates(prints, checks, touched);
    return new Checked(checks, touched);
  }

  private static void nitrates(
      SortedMap<AnalyteCode, Print> prints,
      List<Check> checks,
      SortedMap<AnalyteCode, String> touched) {
    for (AnalyteCode code : NITRATES) {
      Print print = prints.get(code);
      if (print == null) {
        continue;
      }
      Optional<Integer> most =
          prints(prints, TRACES).stream()
              .filter(p -> p.unit() == print.unit())
              .map(Print::decimals)
              .max(Integer::compare);
      if (most.isPresent()) {
        boolean alike = print.decimals() <= most.get();
        note(checks, DECIMALS, code, alike, most.get() + "");
        if (!alike) {
          touched.put(code, DIGITS);
        }
      }
    }
  }

  /** The unit that protein, fibre, fat and ash share; empty where they do not, or are too few. */
  private static Optional<Unit> usualUnit(SortedMap<AnalyteCode, Print> prints) {
    List<Print> found = prints(prints, OTHERS);
    return found.size() >= ENOUGH && found.stream().map(Print::unit).distinct().count() == 1
        ? Optional.of(found.get(0).unit())
        : Optional.empty();
  }

  /**
   * The most decimals that may be: those of the other carbohydrates, or those that most of the
   * other lines have; empty where there is no other carbohydrate or too few lines.
   */
  private static Optional<Integer> mostDecimals(
      SortedMap<AnalyteCode, Print> prints, AnalyteCode code, Unit unit) {
    SortedMap<Integer, Integer> counts = new TreeMap<>();
    prints(prints, OTHERS).stream()
        .filter(p -> p.unit() == unit)
        .forEach(p -> counts.merge(p.decimals(), 1, Integer::sum));
    int lines = counts.values().stream().mapToInt(Integer::intValue).sum();
    Optional<Integer> usual =
        counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    Optional<Integer> like =
        prints(prints, CARBOHYDRATES.stream().filter(c -> !c.equals(code)).toList()).stream()
            .filter(p -> p.unit() == unit)
            .map(Print::decimals)
            .max(Integer::compare);
    return lines < ENOUGH ? Optional.empty() : like.map(l -> Math.max(l, usual.orElse(l)));
  }

  private static List<Print> prints(SortedMap<AnalyteCode, Print> prints, List<AnalyteCode> codes) {
    return codes.stream().flatMap(c -> Optional.ofNullable(prints.get(c)).stream()).toList();
  }

  private static void note(
      List<Check> into, String name, AnalyteCode code, boolean holds, String expected) {
    into.add(new Check(name, Check.Kind.ORDER, holds, List.of(code), "expected " + expected));
  }
}
