package rickyard.report.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.report.text.Harmless;
import rickyard.report.view.SeasonLot;
import rickyard.report.view.SeasonView;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.table.TableSlice;

/**
 * One way of taking lots together. Tablesaw joins the parts of a key by signs that a name from
 * outside may hold, so lots are grouped by the number of their key; its rows come in any order.
 */
final class Grouping {
  private static final String KEY = "key";

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
    SortedMap<Integer, SeasonSummary.Row> rows = new TreeMap<>();
    for (TableSlice slice : table().splitOn(KEY)) {
      Table lots = slice.asTable();
      int key = Integer.parseInt(lots.stringColumn(KEY).get(0));
      rows.put(
          key, new SeasonSummary.Row(keys.get(key), lots.rowCount(), stats(lots), clearings(lots)));
    }
    return new SeasonSummary.Part(way, List.copyOf(rows.values()));
  }

  private Table table() {
    Table table = Table.create("lots", StringColumn.create(KEY));
    for (int q = 0; q < view.quantities().size(); q++) {
      table.addColumns(DoubleColumn.create("q" + q));
    }
    for (int g = 0; g < groups.size(); g++) {
      table.addColumns(
          DoubleColumn.create("c" + g), DoubleColumn.create("n" + g), DoubleColumn.create("u" + g));
    }
    // Looked up by name once for each column, not once for each cell.
    List<DoubleColumn> columns =
        table.columns().stream().skip(1).map(c -> (DoubleColumn) c).toList();
    StringColumn key = table.stringColumn(KEY);
    for (SeasonLot lot : view.lots()) {
      key.append(Integer.toString(keys.indexOf(key(lot))));
      append(columns, lot);
    }
    return table;
  }

  private void append(List<DoubleColumn> columns, SeasonLot lot) {
    int at = 0;
    for (String quantity : view.quantities()) {
      SeasonLot.Content content = lot.contents().get(quantity);
      if (content == null) {
        columns.get(at).appendMissing();
      } else {
        columns.get(at).append(content.value());
      }
      at++;
    }
    for (String group : groups) {
      columns.get(at).append(lot.suits().contains(group) ? 1 : 0);
      columns.get(at + 1).append(lot.notFor().contains(group) ? 1 : 0);
      columns.get(at + 2).append(lot.undecided().contains(group) ? 1 : 0);
      at += 3;
    }
  }

  private List<SeasonSummary.Stat> stats(Table lots) {
    List<SeasonSummary.Stat> stats = new ArrayList<>();
    for (int q = 0; q < view.quantities().size(); q++) {
      DoubleColumn values = lots.doubleColumn("q" + q).removeMissing();
      if (!values.isEmpty()) {
        stats.add(
            new SeasonSummary.Stat(
                view.quantities().get(q),
                unit(view.quantities().get(q)),
                values.size(),
                values.mean(),
                // Of a single value Tablesaw says 0; it has no spread.
                values.size() < 2 ? null : Double.valueOf(values.standardDeviation()),
                values.min(),
                values.max()));
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

  private List<SeasonSummary.Clearing> clearings(Table lots) {
    List<SeasonSummary.Clearing> clearings = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      int clears = (int) lots.doubleColumn("c" + g).sum();
      int notFor = (int) lots.doubleColumn("n" + g).sum();
      int undecided = (int) lots.doubleColumn("u" + g).sum();
      int judged = clears + notFor + undecided;
      if (judged > 0) {
        clearings.add(new SeasonSummary.Clearing(groups.get(g), judged, clears, notFor, undecided));
      }
    }
    return clearings;
  }
}
