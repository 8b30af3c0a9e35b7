package rickyard.cli;

import java.util.ArrayList;
import java.util.List;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;

/** A trace, in 80 columns and as a table: each line rests on the deeper ones below it. */
final class TraceList {
  private static final int STEP = 2;

  private TraceList() {}

  static List<String> of(List<String> trace) {
    return trace.stream().flatMap(line -> Wrapped.lines(line).stream()).toList();
  }

  static Table table(String about, List<String> trace) {
    List<List<Field>> rows = new ArrayList<>();
    for (String line : trace) {
      int indent = line.length() - line.stripLeading().length();
      rows.add(
          List.of(Field.text(about), Field.count(indent / STEP), Field.text(line.stripLeading())));
    }
    return new Table("trace.csv", List.of("about", "depth", "words"), rows);
  }
}
