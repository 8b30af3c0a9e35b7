package rickyard.registers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Unit;
import rickyard.tables.TableProblem;

/**
 * The analyte columns of feeds.csv, read from their names: {@code wsc_pct_dm}, {@code
 * ca_g_per_kg_af}, {@code cu_mg_per_kg_dm}, {@code de_mcal_per_kg_dm}, {@code vit_e_iu_per_kg_af};
 * beside them {@code wsc_kind} and {@code wsc_u} (in the unit and on the basis of the column).
 */
final class FeedColumns {
  private static final Map<String, Unit> UNITS = units();
  private static final Map<String, Basis> BASES =
      Map.of("dm", Basis.DRY_MATTER, "af", Basis.AS_FED);

  private final List<FeedAnalytes.Entry> analytes;

  FeedColumns(FeedAnalytes analytes) {
    this.analytes = analytes.longestFirst();
  }

  private static Map<String, Unit> units() {
    Map<String, Unit> units = new LinkedHashMap<>();
    for (Unit unit : Unit.values()) {
      String word = unit.code().toLowerCase(Locale.ROOT).replace("%", "pct").replace("/", "_per_");
      units.put(word, unit);
    }
    units.remove("1");
    units.put("ppm", Unit.MG_PER_KG);
    return units;
  }

  /** One understood column. */
  record Content(String column, FeedAnalytes.Entry analyte, Unit unit, Basis basis) {}

  /**
   * Whether a name speaks of an analyte at all: rightly, wrongly, or as its kind or uncertainty.
   */
  boolean isOwn(String name) {
    return name.equals("dm_kind")
        || name.equals("dm_u")
        || stem(name).flatMap(this::analyteOf).isPresent()
        || analyteOf(name).isPresent();
  }

  /** The understood columns of a header; others of the analytes' names are fatal problems. */
  List<Content> read(RegisterTable table, Findings findings) {
    List<Content> contents = new ArrayList<>();
    for (String name : table.header()) {
      boolean registers = Register.FEEDS.columnNames().contains(name);
      if (registers || stem(name).isPresent()) {
        continue;
      }
      analyteOf(name)
          .ifPresent(
              entry ->
                  content(name, entry)
                      .ifPresentOrElse(
                          contents::add, () -> findings.fatal(problem(table, name, entry))));
    }
    return List.copyOf(contents);
  }

  private static Optional<Content> content(String name, FeedAnalytes.Entry entry) {
    String rest = rest(name, entry);
    int cut = rest.lastIndexOf('_');
    if (cut < 0) {
      return Optional.empty();
    }
    Unit unit = UNITS.get(rest.substring(0, cut));
    Basis basis = BASES.get(rest.substring(cut + 1));
    if (unit == null || basis == null || unit.dimension() != entry.unit().dimension()) {
      return Optional.empty();
    }
    return Optional.of(new Content(name, entry, unit, basis));
  }

  private static TableProblem problem(RegisterTable table, String name, FeedAnalytes.Entry entry) {
    String rest = rest(name, entry);
    Unit unit = UNITS.get(rest);
    boolean basisOnly = unit != null && unit.dimension() == entry.unit().dimension();
    String word = basisOnly ? rest : word(entry.unit());
    String stem = entry.code().value().toLowerCase(Locale.ROOT) + "_" + word;
    return new TableProblem(
        table.file(),
        1,
        name,
        basisOnly ? "missing-basis" : "unit-or-basis",
        "name, unit and basis, as in " + stem + "_dm or " + stem + "_af",
        name);
  }

  private static String word(Unit unit) {
    return UNITS.entrySet().stream()
        .filter(e -> e.getValue() == unit)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow();
  }

  /** The analyte of a column: its code, alone or with unit, basis or both. */
  private Optional<FeedAnalytes.Entry> analyteOf(String name) {
    return analytes.stream().filter(entry -> isOf(name, entry)).findFirst();
  }

  private static boolean isOf(String name, FeedAnalytes.Entry entry) {
    String code = entry.code().value().toLowerCase(Locale.ROOT);
    if (name.equals(code)) {
      return true;
    }
    if (!name.startsWith(code + "_")) {
      return false;
    }
    String rest = rest(name, entry);
    int cut = rest.lastIndexOf('_');
    return UNITS.containsKey(rest)
        || BASES.containsKey(rest)
        || (cut > 0
            && UNITS.containsKey(rest.substring(0, cut))
            && BASES.containsKey(rest.substring(cut + 1)));
  }

  private static String rest(String name, FeedAnalytes.Entry entry) {
    return name.substring(Math.min(name.length(), entry.code().value().length() + 1));
  }

  /** What {@code _kind} or {@code _u} belongs to; empty for other names. */
  private static Optional<String> stem(String name) {
    for (String end : List.of("_kind", "_u")) {
      if (name.endsWith(end) && name.length() > end.length()) {
        return Optional.of(name.substring(0, name.length() - end.length()));
      }
    }
    return Optional.empty();
  }

  /**
   * The column beside a content that gives its kind ({@code _kind}) or uncertainty ({@code _u}).
   */
  static String beside(RegisterTable table, Content content, String end) {
    String longer = content.column() + end;
    return table.has(longer)
        ? longer
        : content.analyte().code().value().toLowerCase(Locale.ROOT) + end;
  }
}
