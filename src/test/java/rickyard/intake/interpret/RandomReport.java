package rickyard.intake.interpret;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.quantity.Unit;
import rickyard.intake.grid.Grid;

/**
 * A sample with known contents, printed in a layout drawn by lot: orientation, order of columns and
 * lines, language, unit and where it stands, basis and where it stands, decimal mark, columns that
 * are no results, page or table.
 */
final class RandomReport {
  private static final Map<String, List<String>> NAMES =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("CP", List.of("Crude protein", "CP", "Protein", "Rohprotein", "Ruw eiwit")),
              Map.entry("ADF", List.of("ADF", "Acid Detergent Fiber", "A.D.F.", "ADF*")),
              Map.entry("NDF", List.of("NDF", "aNDF", "Neutral detergent fibre", "aNDFom")),
              Map.entry("EE", List.of("Crude fat", "Fat (EE)", "Ether Extract", "Rohfett")),
              Map.entry("ASH", List.of("Ash", "Crude ash", "Rohasche", "Cendres")),
              Map.entry("WSC", List.of("WSC", "Water soluble carbohydrates", "W.S.C.")),
              Map.entry(
                  "ESC", List.of("ESC", "Ethanol-soluble carbohydrates", "ESC (simple sugars)")),
              Map.entry("STARCH", List.of("Starch", "STARCH", "Stärke", "Amidon")),
              Map.entry("CA", List.of("Calcium", "Ca", "Calcium (Ca)")),
              Map.entry("P", List.of("Phosphorus", "P", "Phosphor")),
              Map.entry("K", List.of("Potassium", "K", "Kalium")),
              Map.entry("FE", List.of("Iron", "Fe", "Eisen")),
              Map.entry("CU", List.of("Copper", "Cu", "Kupfer")),
              Map.entry("SE", List.of("Selenium", "Se", "Selen"))));
  private static final List<String> AS_FED =
      List.of("As fed", "As received", "AF", "As sampled", "in der OS");
  private static final List<String> DRY =
      List.of("Dry matter", "DM", "DM basis", "Dry basis", "in der TM");
  private static final List<String> FOREIGN =
      List.of(
          "Typical range",
          "District mean",
          "Rating",
          "Reference",
          "Richtwert",
          "Average",
          "Target");

  /** Where the basis is said. */
  enum Basis {
    BOTH_COLUMNS,
    DRY_COLUMN,
    AS_FED_COLUMN,
    DRY_PAGE,
    DRY_UNIT,
    NOWHERE
  }

  /** Where the unit is said. */
  enum UnitPlace {
    COLUMN,
    LABEL,
    CELL
  }

  final double dm;
  final SortedMap<String, Double> contents;
  final Basis basis;
  final UnitPlace unitPlace;
  private final Random random;
  private final boolean comma;
  private final boolean metric;
  private final List<List<String>> rows = new ArrayList<>();

  RandomReport(Random random) {
    this.random = random;
    this.dm = round(82 + 10 * random.nextDouble(), 1);
    this.contents = contents(random);
    this.basis = pick(List.of(Basis.values()));
    this.unitPlace = pick(List.of(UnitPlace.values()));
    this.comma = random.nextBoolean();
    this.metric = random.nextBoolean();
    if (random.nextInt(3) == 0) {
      wide();
    } else {
      tall();
    }
  }

  private static SortedMap<String, Double> contents(Random random) {
    SortedMap<String, Double> all = new TreeMap<>();
    double ndf = 45 + 20 * random.nextDouble();
    double wsc = 5 + 14 * random.nextDouble();
    all.put("CP", 6 + 6 * random.nextDouble());
    all.put("NDF", ndf);
    all.put("ADF", ndf * (0.56 + 0.12 * random.nextDouble()));
    all.put("EE", 1.5 + 1.5 * random.nextDouble());
    all.put("ASH", 6 + 3 * random.nextDouble());
    all.put("WSC", wsc);
    all.put("ESC", wsc * (0.4 + 0.4 * random.nextDouble()));
    all.put("STARCH", 0.5 + 2 * random.nextDouble());
    all.put("CA", 0.3 + 0.4 * random.nextDouble());
    all.put("P", 0.18 + 0.12 * random.nextDouble());
    all.put("K", 1.2 + 1.0 * random.nextDouble());
    all.put("FE", 60 + 300 * random.nextDouble());
    all.put("CU", 3 + 6 * random.nextDouble());
    all.put("SE", 0.03 + 0.2 * random.nextDouble());
    all.keySet().removeIf(code -> random.nextInt(4) == 0);
    return all;
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private static double round(double value, int digits) {
    return BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).doubleValue();
  }

  private double content(String code) {
    return contents.getOrDefault(code, 0.0);
  }

  private Unit unit(String code) {
    boolean trace = List.of("FE", "CU", "SE").contains(code);
    return trace ? Unit.MG_PER_KG : metric ? Unit.G_PER_KG : Unit.PERCENT;
  }

  private static Unit canonical(String code) {
    return List.of("FE", "CU", "SE").contains(code) ? Unit.MG_PER_KG : Unit.PERCENT;
  }

  private String print(String code, double dryValue, double share) {
    double value = canonical(code).convert(dryValue * share, unit(code));
    int digits = value < 1 ? 3 : value < 20 ? 2 : 1;
    return text(value, digits);
  }

  private String text(double value, int digits) {
    String text = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).toPlainString();
    return comma ? text.replace('.', ',') : text;
  }

  private String unitText(String code) {
    String text = unit(code) == Unit.MG_PER_KG && random.nextBoolean() ? "ppm" : unit(code).code();
    return basis == Basis.DRY_UNIT ? text + " DM" : text;
  }

  private void preamble() {
    rows.add(List.of("Vale of Thistle Forage Laboratory"));
    rows.add(List.of("Lot: T7", "", "Report no: 12"));
    if (basis == Basis.DRY_PAGE) {
      rows.add(List.of("All results are expressed on a dry matter basis"));
    }
  }

  private void tall() {
    preamble();
    List<String> columns = new ArrayList<>(List.of("label"));
    if (unitPlace == UnitPlace.COLUMN) {
      columns.add("unit");
    }
    if (basis == Basis.BOTH_COLUMNS || basis == Basis.AS_FED_COLUMN) {
      columns.add("af");
    }
    if (basis != Basis.AS_FED_COLUMN) {
      columns.add("dm");
    }
    for (int i = random.nextInt(3); i > 0; i--) {
      columns.add(1 + random.nextInt(columns.size()), "foreign " + pick(FOREIGN));
    }
    rows.add(columns.stream().map(this::heading).toList());
    List<String> codes = new ArrayList<>(contents.keySet());
    codes.add("DM");
    Collections.shuffle(codes, random);
    for (String code : codes) {
      rows.add(columns.stream().map(column -> cell(code, column)).toList());
    }
  }

  private String heading(String column) {
    boolean named = basis != Basis.DRY_PAGE && basis != Basis.DRY_UNIT && basis != Basis.NOWHERE;
    return switch (column.split(" ", 2)[0]) {
      case "label" -> pick(List.of("Analyte", "Parameter", "Test", "Nutrient"));
      case "unit" -> pick(List.of("Unit", "Units", "Einheit"));
      case "af" -> pick(AS_FED);
      case "dm" -> named ? pick(DRY) : pick(List.of("Result", "Value", "Ergebnis"));
      default -> column.substring("foreign ".length());
    };
  }

  private String cell(String code, String column) {
    String unit = code.equals("DM") ? "%" : unitText(code);
    boolean water = code.equals("DM");
    return switch (column.split(" ", 2)[0]) {
      case "label" -> label(code, unit);
      case "unit" -> unit;
      case "af" -> number(water ? text(dm, 1) : print(code, content(code), dm / 100), unit);
      case "dm" ->
          water
              ? basis == Basis.BOTH_COLUMNS ? "" : number(text(dm, 1), unit)
              : number(print(code, content(code), 1), unit);
      default ->
          random.nextBoolean()
              ? text(20 * random.nextDouble(), 1)
              : pick(List.of("ok", "low", "5-9"));
    };
  }

  private String number(String number, String unit) {
    return unitPlace == UnitPlace.CELL ? number + " " + unit : number;
  }

  private String label(String code, String unit) {
    String name = code.equals("DM") ? "Dry matter" : pick(NAMES.getOrDefault(code, List.of()));
    if (unitPlace != UnitPlace.LABEL) {
      return name;
    }
    return random.nextBoolean() ? name + " (" + unit + ")" : name + ", " + unit;
  }

  private void wide() {
    preamble();
    List<String> codes = new ArrayList<>(contents.keySet());
    codes.add("DM");
    Collections.shuffle(codes, random);
    List<String> head = new ArrayList<>(List.of("Lot"));
    List<String> units = new ArrayList<>(List.of(""));
    List<String> values = new ArrayList<>(List.of("T7"));
    boolean wet = basis == Basis.AS_FED_COLUMN;
    for (String code : codes) {
      String unit = code.equals("DM") ? "%" : unitText(code) + wideBasis();
      head.add(unitPlace == UnitPlace.LABEL ? label(code, unit) : name(code));
      units.add(unit);
      double share = wet ? dm / 100 : 1;
      values.add(code.equals("DM") ? text(dm, 1) : print(code, content(code), share));
    }
    rows.add(head);
    if (unitPlace != UnitPlace.LABEL) {
      rows.add(units);
    }
    rows.add(values);
    if (random.nextBoolean()) {
      List<String> typical = new ArrayList<>(List.of("Typical"));
      codes.forEach(code -> typical.add(text(5 * random.nextDouble(), 1)));
      rows.add(typical);
    }
  }

  private String name(String code) {
    return code.equals("DM") ? "Dry matter" : pick(NAMES.getOrDefault(code, List.of()));
  }

  private String wideBasis() {
    return switch (basis) {
      case BOTH_COLUMNS, DRY_COLUMN -> " DM";
      case AS_FED_COLUMN -> " as fed";
      default -> "";
    };
  }

  List<List<String>> rows() {
    return rows;
  }

  /** The rows as a table with certain columns. */
  static Grid table(List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    rows.forEach(row -> text.append(String.join("|", row)).append('\n'));
    return Grids.table(text.toString());
  }

  /** The rows as they stand on a page, columns left- or right-aligned. */
  static Grid page(List<List<String>> rows, Random random) {
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int c = 0; c < row.size() && row.size() > 1; c++) {
        widths[c] = Math.max(widths[c], row.get(c).length());
      }
    }
    boolean right = random.nextBoolean();
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        String pad = " ".repeat(Math.max(0, widths[c] - row.get(c).length()));
        text.append(right && c > 0 ? pad + row.get(c) : row.get(c) + pad).append("   ");
      }
      text.append('\n');
    }
    return Grids.pages(text.toString());
  }
}
