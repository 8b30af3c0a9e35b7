package rickyard.report.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rickyard.report.text.Harmless;
import rickyard.report.view.SeasonLot;
import rickyard.report.view.SeasonView;
import tech.tablesaw.aggregate.AggregateFunction;
import tech.tablesaw.aggregate.AggregateFunctions;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * One way of taking lots together. Tablesaw joins the parts of a key by signs that a name from
 * outside may hold, so lots are grouped by the number of their key; its rows come in any order.
 */
final class Grouping {
  private static final String KEY = "key";
  private static final String ONE = "one";
  private static final List<AggregateFunction<?, ?>> FUNCTIONS =
      List.of(
          AggregateFunctions.countNonMissing,
          AggregateFunctions.sum,
          AggregateFunctions.mean,
          AggregateFunctions.stdDev,
          AggregateFunctions.min,
          AggregateFunctions.max);

  private final SeasonView view;
  private final List<String> groups;
  private final String way;
  private final List<String> keys;

  Grouping(SeasonView view, List<String> groups, String way) {
    this.view = view;
    this.groups = groups;
    this.way = way;
    this.keys = List.copyOf(new TreeSet<>(view.lots().stream().map(this::key).toList()));
  }

  private String key(SeasonLot lot) {
    String key =
        switch (way) {
          case "material" -> lot.material();
          case "material-year" -> stated(lot.material()) + ", " + stated(lot.year());
          case "laboratory" -> lot.laboratory();
          case "month" -> lot.month();
          case "holder" -> lot.holder();
          default -> throw new IllegalArgumentException("no way of grouping: " + way);
        };
    return stated(Harmless.line(key));
  }

  private static String stated(String text) {
    return text.isBlank() ? SeasonSummary.NOT_STATED : text;
  }

  SeasonSummary.Part part() {
    Table table = table();
    List<String> columns = new ArrayList<>(table.columnNames());
    columns.remove(KEY);
    Table summary =
        table.summarize(columns, FUNCTIONS.toArray(AggregateFunction<?, ?>[]::new)).by(KEY);
    List<SeasonSummary.Row> rows = new ArrayList<>();
    for (int k = 0; k < keys.size(); k++) {
      int row = rowOf(summary, k);
      rows.add(
          new SeasonSummary.Row(
              keys.get(k),
              (int) at(summary, row, AggregateFunctions.countNonMissing, ONE),
              stats(summary, row),
              clearings(summary, row)));
    }
    return new SeasonSummary.Part(way, rows);
  }

  private static int rowOf(Table summary, int key) {
    String number = Integer.toString(key);
    for (int row = 0; row < summary.rowCount(); row++) {
      if (summary.stringColumn(KEY).get(row).equals(number)) {
        return row;
      }
    }
    throw new IllegalStateException("no group " + number);
  }

  private Table table() {
    Table table = Table.create("lots", StringColumn.create(KEY), DoubleColumn.create(ONE));
    for (int q = 0; q < view.quantities().size(); q++) {
      table.addColumns(DoubleColumn.create("q" + q));
    }
    for (int g = 0; g < groups.size(); g++) {
      table.addColumns(
          DoubleColumn.create("c" + g), DoubleColumn.create("n" + g), DoubleColumn.create("u" + g));
    }
    view.lots().forEach(lot -> append(table, lot));
    return table;
  }

  private void append(Table table, SeasonLot lot) {
    table.stringColumn(KEY).append(Integer.toString(keys.indexOf(key(lot))));
    table.doubleColumn(ONE).append(1);
    for (int q = 0; q < view.quantities().size(); q++) {
      SeasonLot.Content content = lot.contents().get(view.quantities().get(q));
      if (content == null) {
        table.doubleColumn("q" + q).appendMissing();
      } else {
        table.doubleColumn("q" + q).append(content.value());
      }
    }
    for (int g = 0; g < groups.size(); g++) {
      String group = groups.get(g);
      table.doubleColumn("c" + g).append(lot.suits().contains(group) ? 1 : 0);
      table.doubleColumn("n" + g).append(lot.notFor().contains(group) ? 1 : 0);
      table.doubleColumn("u" + g).append(lot.undecided().contains(group) ? 1 : 0);
    }
  }

  private List<SeasonSummary.Stat> stats(Table summary, int row) {
    List<SeasonSummary.Stat> stats = new ArrayList<>();
    for (int q = 0; q < view.quantities().size(); q++) {
      String column = "q" + q;
      int lots = (int) at(summary, row, AggregateFunctions.countNonMissing, column);
      if (lots > 0) {
        stats.add(
            new SeasonSummary.Stat(
                view.quantities().get(q),
                unit(view.quantities().get(q)),
                lots,
                at(summary, row, AggregateFunctions.mean, column),
                // Of a single value Tablesaw says 0; it has no spread.
                lots < 2
                    ? null
                    : Double.valueOf(at(summary, row, AggregateFunctions.stdDev, column)),
                at(summary, row, AggregateFunctions.min, column),
                at(summary, row, AggregateFunctions.max, column)));
      }
    }
    return stats;
  }

  private String unit(String quantity) {
    return view.lots().stream()
        .flatMap(lot -> Optional.ofNullable(lot.contents().get(quantity)).stream())
        .map(SeasonLot.Content::unit)
        .findFirst()
        .orElse("");
  }

  private List<SeasonSummary.Clearing> clearings(Table summary, int row) {
    List<SeasonSummary.Clearing> clearings = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      int clears = (int) at(summary, row, AggregateFunctions.sum, "c" + g);
      int notFor = (int) at(summary, row, AggregateFunctions.sum, "n" + g);
      int undecided = (int) at(summary, row, AggregateFunctions.sum, "u" + g);
      int lots = clears + notFor + undecided;
      if (lots > 0) {
        clearings.add(new SeasonSummary.Clearing(groups.get(g), lots, clears, notFor, undecided));
      }
    }
    return clearings;
  }

  private static double at(
      Table summary, int row, AggregateFunction<?, ?> function, String column) {
    return summary.numberColumn(function.functionName() + " [" + column + "]").getDouble(row);
  }
}
