package rickyard.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import rickyard.report.text.Harmless;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.LotRow;
import rickyard.report.view.MorningView;
import tech.tablesaw.aggregate.AggregateFunctions;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * The lots taken together, by material, laboratory and holder. Only for looking at: nothing is
 * decided or ordered by it, and its tables are filled from typed values.
 */
public final class Season {
  private static final String NSC = "nsc";
  private static final String KEY = "key";

  /** One line: how many lots with a value, and what they hold. */
  public record Row(
      String key, String count, String mean, String sd, String range, List<String> shares) {}

  /** One way of grouping. */
  public record Part(String caption, String keyHeading, List<String> groups, List<Row> rows) {}

  private Season() {}

  /** Empty where no lot has WSC + starch. */
  static List<Part> of(MorningView view) {
    List<LotRow> lots = view.lots().stream().filter(lot -> lot.nscWsc() != null).toList();
    if (lots.isEmpty()) {
      return List.of();
    }
    return List.of(
        part("By material", "Material", lots, lot -> lot.material().replace('-', ' ')),
        part("By laboratory", "Laboratory", lots, LotRow::lab),
        part("By holder", "Holder", lots, lot -> Names.client(view, lot.holder())));
  }

  private static Part part(
      String caption, String heading, List<LotRow> lots, Function<LotRow, String> key) {
    List<String> groups = groups(lots);
    Table table = table(lots, key, groups);
    List<Row> rows = new ArrayList<>();
    for (String name : new TreeSet<>(table.stringColumn(KEY).asList())) {
      rows.add(row(name, table.where(table.stringColumn(KEY).isEqualTo(name)), groups));
    }
    return new Part(
        caption, heading, groups.stream().map(g -> Words.of("group", g)).toList(), rows);
  }

  /** Groups that any lot was judged for. */
  private static List<String> groups(List<LotRow> lots) {
    SortedSet<String> groups = new TreeSet<>();
    for (LotRow lot : lots) {
      groups.addAll(lot.suits());
      groups.addAll(lot.notFor());
      groups.addAll(lot.undecided());
    }
    return List.copyOf(groups);
  }

  private static Table table(List<LotRow> lots, Function<LotRow, String> key, List<String> groups) {
    StringColumn keys = StringColumn.create(KEY);
    DoubleColumn values = DoubleColumn.create(NSC);
    Table table = Table.create("lots", keys, values);
    for (int g = 0; g < groups.size(); g++) {
      table.addColumns(DoubleColumn.create("clears" + g));
    }
    for (LotRow lot : lots) {
      Double value = lot.nscWsc();
      String name = Harmless.line(key.apply(lot));
      keys.append(name.isEmpty() ? "not stated" : name);
      values.append(value == null ? Double.NaN : value);
      for (int g = 0; g < groups.size(); g++) {
        table.doubleColumn("clears" + g).append(lot.suits().contains(groups.get(g)) ? 1.0 : 0.0);
      }
    }
    return table;
  }

  private static Row row(String name, Table part, List<String> groups) {
    DoubleColumn nsc = part.doubleColumn(NSC);
    double sd = nsc.size() < 2 ? Double.NaN : AggregateFunctions.stdDev.summarize(nsc);
    List<String> shares = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      double clears = part.doubleColumn("clears" + g).sum();
      shares.add(Math.round(clears) + " (" + Shown.share(clears, nsc.size()) + ")");
    }
    return new Row(
        name,
        Integer.toString(nsc.size()),
        Shown.number(Double.valueOf(nsc.mean())),
        Double.isNaN(sd) ? "–" : Shown.number(Double.valueOf(sd)),
        Shown.number(Double.valueOf(nsc.min())) + " to " + Shown.number(Double.valueOf(nsc.max())),
        shares);
  }
}
