package rickyard.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rickyard.report.csv.CsvOut;
import rickyard.report.csv.Field;
import rickyard.report.csv.Table;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** How a table is printed: for eyes in 80 columns, as CSV, or as JSON for other programs. */
final class Shape {
  @Option(names = "--csv", description = "As CSV.")
  private boolean csv;

  @Option(names = "--json", description = "As JSON.")
  private boolean json;

  /** Prints the table in the shape asked for. */
  void print(CommandSpec spec, Table table, Supplier<List<String>> lines) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(json(rows(table)));
    } else if (csv) {
      out.print(csv(table));
    } else {
      lines.get().forEach(out::println);
    }
    out.flush();
  }

  /** To be called before anything is read. */
  void check(CommandSpec spec) {
    if (csv && json) {
      throw new ParameterException(spec.commandLine(), "--csv or --json, not both");
    }
  }

  static String csv(Table table) {
    return new String(CsvOut.bytes(table), StandardCharsets.UTF_8);
  }

  static String json(Object value) {
    return JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build()
            .writeValueAsString(value)
        + "\n";
  }

  /** Each row as an object with the table's column names; an unknown number is null. */
  static List<Map<String, Optional<Object>>> rows(Table table) {
    List<Map<String, Optional<Object>>> rows = new ArrayList<>();
    for (List<Field> fields : table.rows()) {
      Map<String, Optional<Object>> row = new LinkedHashMap<>();
      for (int i = 0; i < fields.size(); i++) {
        row.put(
            table.columns().get(i),
            fields.get(i).<Optional<Object>>fold(Optional::of, n -> n.map(x -> x)));
      }
      rows.add(row);
    }
    return rows;
  }
}
