package rickyard.registers;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rickyard.core.forage.AnalyteCode;
import rickyard.core.nutrition.Feed;
import rickyard.core.quantity.Basis;
import rickyard.core.quantity.Dimension;
import rickyard.core.quantity.Evidence;
import rickyard.core.quantity.Measured;
import rickyard.core.quantity.Unit;

/** Rows of feeds.csv as feeds with contents on dry matter in canonical units. */
final class FeedRows {
  static final List<String> FORMS = List.of("long-stem", "chopped", "cubes", "pellets", "meal");
  static final List<String> KINDS = List.of("batch", "typical", "max", "min");

  private final RegisterTable table;
  private final List<FeedColumns.Content> columns;
  private final FeedAnalytes analytes;
  private final LoadContext context;

  FeedRows(
      RegisterTable table,
      List<FeedColumns.Content> columns,
      FeedAnalytes analytes,
      LoadContext context) {
    this.table = table;
    this.columns = columns;
    this.analytes = analytes;
    this.context = context;
  }

  Optional<Feed> read(RegisterRow row) {
    String id = row.key("feed_id");
    String batch = row.optionalKey("batch");
    String name = row.required("name");
    String role = row.required("role").toLowerCase(java.util.Locale.ROOT);
    String form = row.requiredWord("form", FORMS);
    Optional<Measured> dryMatter = dryMatter(row);
    Map<AnalyteCode, Measured> contents = new TreeMap<>();
    Map<AnalyteCode, String> kinds = new TreeMap<>();
    dryMatter.ifPresent(dm -> columns.forEach(c -> content(row, c, dm, contents, kinds)));
    OptionalDouble fullLow = row.number("full_rate_pct_bw_low", 0, 10, "0 to 10 % of body weight");
    OptionalDouble fullHigh =
        row.number("full_rate_pct_bw_high", 0, 10, "0 to 10 % of body weight");
    inOrder(row, "full_rate_pct_bw_high", fullLow, fullHigh);
    OptionalDouble doseLow = row.notNegative("dose_kg_per_day_low");
    OptionalDouble doseHigh = row.notNegative("dose_kg_per_day_high");
    inOrder(row, "dose_kg_per_day_high", doseLow, doseHigh);
    OptionalDouble bagKg = row.mass("bag", false, 2000);
    OptionalDouble price = row.notNegative("price_per_bag");
    var baggedOn = row.pastDay("bagged_on", context.asOf());
    var shelfLife = row.whole("shelf_life_months", 0, 240);
    boolean complete = row.yes("complete");
    if (row.isBad() || dryMatter.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Feed(
            id,
            batch,
            name,
            role,
            form,
            dryMatter.get(),
            contents,
            kinds,
            bagKg,
            price,
            baggedOn,
            shelfLife,
            fullLow,
            fullHigh,
            doseLow,
            doseHigh,
            complete));
  }

  private static void inOrder(
      RegisterRow row, String column, OptionalDouble low, OptionalDouble high) {
    if (low.isPresent() && high.isPresent() && high.getAsDouble() < low.getAsDouble()) {
      row.wrong(column, "out-of-order", "a number not below the low end");
    }
  }

  private Optional<Measured> dryMatter(RegisterRow row) {
    OptionalDouble percent = row.number("dm_pct", 1, 100, "dry matter from 1 to 100 % as fed");
    if (row.text("dm_pct").isEmpty()) {
      row.wrong("dm_pct", "blank", "dry matter from 1 to 100 % as fed");
    }
    String word = row.word("dm_kind", List.of("batch", "typical"));
    String kind = word.isEmpty() ? "typical" : word;
    OptionalDouble ownU = row.number("dm_u", 0, 50, "a number from 0 to 50");
    if (percent.isEmpty()) {
      return Optional.empty();
    }
    String raw = row.text("dm_pct");
    double best = percent.getAsDouble();
    double assumed = analytes.uncertainty(kind, FeedAnalytes.DRY_MATTER_GROUP, best);
    return Optional.of(
        Measured.of(
            Unit.PERCENT,
            Basis.AS_FED,
            best,
            Math.min(DecimalMark.halfWidth(raw), best / 2),
            ownU.orElse(assumed),
            new Evidence.Registered(row.file(), row.number(), "dm_pct", raw)));
  }

  private void content(
      RegisterRow row,
      FeedColumns.Content column,
      Measured dryMatter,
      Map<AnalyteCode, Measured> contents,
      Map<AnalyteCode, String> kinds) {
    if (row.text(column.column()).isEmpty()) {
      return;
    }
    String word = row.word(FeedColumns.beside(table, column, "_kind"), KINDS);
    String kind = word.isEmpty() ? "typical" : word;
    Optional<Measured> printed = printed(row, column, kind);
    if (printed.isEmpty()) {
      return;
    }
    Measured value = printed.get().in(column.analyte().unit());
    Measured onDryMatter = column.basis() == Basis.AS_FED ? value.toDryMatter(dryMatter) : value;
    if (column.analyte().unit() == Unit.PERCENT && onDryMatter.best() > 100) {
      row.wrong(column.column(), "out-of-range", "at most 100 % of dry matter");
    } else if (contents.put(column.analyte().code(), onDryMatter) != null) {
      row.wrong(column.column(), "given-twice", "one value for " + column.analyte().code());
    } else {
      kinds.put(column.analyte().code(), kind);
    }
  }

  /** The value in the column's own unit and basis. */
  private Optional<Measured> printed(RegisterRow row, FeedColumns.Content column, String kind) {
    Unit unit = column.unit();
    double most = unit.dimension() == Dimension.MASS_SHARE ? Unit.PERCENT.convert(100, unit) : 1e9;
    OptionalDouble value =
        row.number(column.column(), 0, most, "a content from 0, at most all of the feed");
    OptionalDouble ownU =
        row.number(FeedColumns.beside(table, column, "_u"), 0, most, "a number not below 0");
    if (value.isEmpty()) {
      return Optional.empty();
    }
    String raw = row.text(column.column());
    var evidence = new Evidence.Registered(row.file(), row.number(), column.column(), raw);
    double x = value.getAsDouble();
    if (kind.equals("max")) {
      return Optional.of(Measured.atMost(unit, column.basis(), x, evidence).withU(ownU.orElse(0)));
    }
    if (kind.equals("min")) {
      return Optional.of(Measured.atLeast(unit, column.basis(), x, ownU.orElse(0), evidence));
    }
    double u = ownU.orElseGet(() -> assumed(column, kind, x));
    return Optional.of(
        Measured.of(unit, column.basis(), x, DecimalMark.halfWidth(raw), u, evidence));
  }

  private double assumed(FeedColumns.Content column, String kind, double x) {
    Unit canonical = column.analyte().unit();
    double inCanonical = column.unit().convert(x, canonical);
    double u = analytes.uncertainty(kind, column.analyte().group(), inCanonical);
    return canonical.convert(u, column.unit());
  }
}
