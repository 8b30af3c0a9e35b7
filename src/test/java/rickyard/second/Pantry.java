package rickyard.second;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;

/** Makes foods: of a row of feeds.csv, or of a lot with the contents that were found in it. */
final class Pantry {
  private static final Pattern COLUMN =
      Pattern.compile(
          "([a-z0-9_]+?)_(pct|g_per_kg|mg_per_kg|mcal_per_kg|mj_per_kg|iu_per_kg)_(dm|af)");
  private static final List<String> INPUTS = List.of("CP", "ADF", "NDF", "EE", "ASH");

  private final Books books;

  Pantry(Books books) {
    this.books = books;
  }

  /** A feed as its label describes it, with a certificate's values where there is one. */
  Food feed(Map<String, String> row, Num certifiedDm, Map<String, Num> certified) {
    Num dm = Double.isNaN(certifiedDm.best()) ? dryMatter(row) : certifiedDm;
    SortedMap<String, Num> given = new TreeMap<>();
    row.forEach((column, cell) -> addLabel(given, row, column, cell));
    certified.forEach(given::put);
    String batch = row.get("batch");
    String key = row.get("feed_id") + (batch.isEmpty() ? "" : " " + batch);
    return food(key, row.get("role"), dm, given);
  }

  Food feed(Map<String, String> row) {
    return feed(row, Num.plain(Double.NaN, 0, 0, ""), Map.of());
  }

  /** A lot; dry matter that nobody reported is typical of its material. */
  Food lot(Map<String, String> row, SortedMap<String, Num> contents) {
    SortedMap<String, Num> given = new TreeMap<>(contents);
    Num dm = given.remove("DM");
    String material = row.get("material");
    return food(row.get("lot_id"), material, dm == null ? typical(material, "DM") : dm, given);
  }

  private Food food(String key, String role, Num dm, SortedMap<String, Num> given) {
    Sums.add(given, books.settingNumber("nsc_correlation"));
    SortedMap<String, Num> supply = new TreeMap<>(given);
    boolean isForage = books.isRole(role, "forage", "yes");
    if (isForage) {
      addEnergy(role, supply);
    }
    addSilence(role, given, supply);
    books
        .rows("typical-values", "material", role)
        .filter(r -> !r.get("analyte").equals("DM") && !r.get("unit").equals("% CP"))
        .forEach(r -> supply.putIfAbsent(r.get("analyte"), typical(role, r.get("analyte"))));
    addLysine(role, supply);
    return new Food(key, role, isForage, books.isRole(role, "straw", "yes"), dm, given, supply);
  }

  /**
   * Nutrients that are not declared count as none where the role says so: by definition, as in
   * salt, or by assumption.
   */
  private void addSilence(
      String role, SortedMap<String, Num> given, SortedMap<String, Num> supply) {
    Map<String, String> row = books.find("roles", "role", role, "silence", "zero").orElse(Map.of());
    if (row.isEmpty()) {
      return;
    }
    boolean isCertain = row.get("status").equals("verified");
    Num none = Num.plain(0, 0, 0, isCertain ? Num.REPORTED : Num.ASSUMED);
    Mixture.PER_KG.keySet().forEach(c -> supply.putIfAbsent(c, none));
    // in a limit too, but where the role has a high value: silence about potassium clears nothing
    Mixture.PER_KG.keySet().stream()
        .filter(
            c -> isCertain || books.find("role-high-values", "role", role, "analyte", c).isEmpty())
        .forEach(c -> given.putIfAbsent(c, none));
  }

  private Num typical(String material, String analyte) {
    return books
        .find("typical-values", "material", material, "analyte", analyte)
        .map(
            r ->
                Num.plain(
                    Double.parseDouble(r.get("mean")),
                    0,
                    Double.parseDouble(r.get("u")),
                    Num.ASSUMED))
        .orElseThrow();
  }

  /** Lysine as a share of the item's own protein. */
  private void addLysine(String role, SortedMap<String, Num> supply) {
    Num cp = supply.get("CP");
    if (supply.containsKey("LYS") || cp == null) {
      return;
    }
    books
        .find("typical-values", "material", role, "analyte", "LYS", "unit", "% CP")
        .ifPresent(
            r -> {
              double share = Double.parseDouble(r.get("mean")) / 100;
              double uShare = Double.parseDouble(r.get("u")) / 100;
              RealVector gradient = new ArrayRealVector(new double[] {share, cp.best()});
              RealVector us = new ArrayRealVector(new double[] {cp.u(), uShare});
              double u = gradient.ebeMultiply(us).getNorm();
              supply.put("LYS", Num.plain(cp.best() * share, 0, u, Num.ASSUMED));
            });
  }

  /**
   * Energy by the published forage equation where the report has no horse value; a part that it did
   * not report is typical of the material, but fibre and protein must be its own.
   */
  private void addEnergy(String role, SortedMap<String, Num> supply) {
    if (supply.containsKey("DE")) {
      return;
    }
    double[] x = new double[INPUTS.size()];
    double[] u = new double[INPUTS.size()];
    String origin = "";
    for (int i = 0; i < x.length; i++) {
      Num n = supply.get(INPUTS.get(i));
      if (n == null) {
        String input = INPUTS.get(i);
        boolean isOwn = List.of("CP", "ADF", "NDF").contains(input);
        if (isOwn || books.find("typical-values", "material", role, "analyte", input).isEmpty()) {
          return;
        }
        n = typical(role, input);
      }
      if (!n.isBounded()) {
        return;
      }
      x[i] = n.best();
      u[i] = n.u();
      origin = Num.both(origin, n.origin());
    }
    equation(x, u, origin, supply);
  }

  private void equation(double[] x, double[] u, String origin, SortedMap<String, Num> supply) {
    double nfc = term("NFC");
    double rich = x[3] > 5 ? term("EE_OVER_5") : 0; // a further term for fat above 5 %
    // as a linear form in CP, ADF, NDF, EE, ash: NFC = 100 less all of them but ADF
    RealVector g =
        new ArrayRealVector(
            new double[] {
              term("CP") - nfc,
              term("ADF") - term("NDF_LESS_ADF"),
              term("NDF_LESS_ADF") - nfc,
              term("EE") - nfc + rich,
              term("ASH") - nfc
            });
    double best = term("CONSTANT") + 100 * nfc + g.dotProduct(new ArrayRealVector(x)) - 5 * rich;
    double spread = Math.hypot(g.ebeMultiply(new ArrayRealVector(u)).getNorm(), modelU());
    boolean isPossible = x[2] >= x[1] && x[0] + x[2] + x[3] + x[4] <= 100 && best > 0;
    if (isPossible) {
      supply.put("DE", Num.plain(best, 0, spread, origin));
    }
  }

  private double modelU() {
    return books.settingNumber("de_model_u");
  }

  private double term(String name) {
    return Double.parseDouble(
        books.find("requirements-2007/de-equation", "term", name).orElseThrow().get("coefficient"));
  }

  private Num dryMatter(Map<String, String> row) {
    String printed = row.get("dm_pct");
    double value = Double.parseDouble(printed);
    String kind = kind(row, "dm");
    double u = given(row, "dm_u", assumedU(kind, "dry-matter", value));
    return Num.plain(value, Csv.halfWidth(printed), u, Num.REPORTED);
  }

  private static String kind(Map<String, String> row, String name) {
    String kind = row.getOrDefault(name + "_kind", "");
    return kind.isEmpty() ? "typical" : kind;
  }

  /** The register's own u, or the assumed one, which is all of it: rounding is not added. */
  private static double given(Map<String, String> row, String column, double assumed) {
    String own = row.getOrDefault(column, "");
    return own.isEmpty() ? assumed : Double.parseDouble(own);
  }

  private double assumedU(String kind, String group, double value) {
    Map<String, String> row =
        books.find("feed-uncertainty", "kind", kind, "group", group).orElseThrow();
    double relative = Double.parseDouble(row.get("relative_pct")) * value / 100;
    return Math.max(relative, Double.parseDouble(row.get("minimum")));
  }

  private void addLabel(
      SortedMap<String, Num> given, Map<String, String> row, String column, String printed) {
    Matcher named = COLUMN.matcher(column);
    if (!named.matches() || printed.isEmpty()) {
      return;
    }
    String name = named.group(1);
    String code = name.toUpperCase(java.util.Locale.ROOT);
    Map<String, String> analyte = books.find("feed-analytes", "code", code).orElseThrow();
    double toCanonical = factor(named.group(2), analyte.get("unit"));
    double value = Double.parseDouble(printed);
    String kind = kind(row, name);
    Num dm = dryMatter(row);
    boolean isAsFed = named.group(3).equals("af");
    double scale = isAsFed ? 100 / dm.best() : 1;
    double canonical = value * toCanonical;
    double y = canonical * scale;
    double fromDm = isAsFed ? y * dm.u() / dm.best() : 0;
    boolean isBound = kind.equals("max") || kind.equals("min");
    double assumed = isBound ? 0 : assumedU(kind, analyte.get("group"), canonical) / toCanonical;
    double u = Math.hypot(given(row, name + "_u", assumed) * toCanonical * scale, fromDm);
    if (isBound) {
      boolean isMax = kind.equals("max");
      given.put(code, isMax ? Num.atMost(y, u, Num.REPORTED) : Num.atLeast(y, u, Num.REPORTED));
    } else {
      double half = Csv.halfWidth(printed) * toCanonical;
      double low = Math.max(0, canonical - half) * (isAsFed ? 100 / dm.high() : 1);
      double high = (canonical + half) * (isAsFed ? 100 / dm.low() : 1);
      given.put(code, new Num(y, low, high, y, y, u, Num.REPORTED));
    }
  }

  /** From the unit of a column to the analyte's own. */
  private static double factor(String column, String canonical) {
    return switch (column + " to " + canonical) {
      case "g_per_kg to %" -> 0.1;
      case "mg_per_kg to %" -> 0.0001;
      case "g_per_kg to mg/kg" -> 1000;
      case "pct to mg/kg" -> 10000;
      case "mj_per_kg to Mcal/kg" -> 1 / 4.184;
      default -> 1;
    };
  }
}
