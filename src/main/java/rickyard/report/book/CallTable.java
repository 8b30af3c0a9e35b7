package rickyard.report.book;

import java.util.List;
import java.util.stream.Stream;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;
import rickyard.report.page.CallList;
import rickyard.report.view.MorningView;

/** The calls of the morning, the only sheet that is written for people alone. */
final class CallTable {
  private static final List<String> COLUMNS =
      List.of("Horse", "When", "Client", "Phone", "What to do", "To say", "Why", "Told, by whom");

  private CallTable() {}

  static Table of(MorningView view) {
    List<List<Field>> rows = CallList.of(view).stream().map(CallTable::row).toList();
    return new Table("calls.csv", COLUMNS, rows);
  }

  private static List<Field> row(CallList.Line line) {
    return Stream.of(
            line.horse(),
            line.when(),
            line.client(),
            line.phone(),
            line.action(),
            line.say(),
            line.why(),
            "")
        .map(Field::text)
        .toList();
  }
}
