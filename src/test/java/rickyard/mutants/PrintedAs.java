package rickyard.mutants;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import rickyard.mutants.Paper.Box;
import rickyard.mutants.Paper.Line;

/** The text files that the cells of a paper can be printed to. */
enum PrintedAs {
  COMMAS(p -> delimited(p, ',')),
  SEMICOLONS(p -> delimited(p, ';')),
  TABS(p -> delimited(p, '\t')),
  HTML(PrintedAs::html),
  LINES(PrintedAs::lines),
  MAILED(p -> mail(delimited(p, ';'), "report.csv"));

  @SuppressWarnings("ImmutableEnumChecker") // a function without state
  private final Function<Paper, String> printer;

  PrintedAs(Function<Paper, String> printer) {
    this.printer = printer;
  }

  String print(Paper paper) {
    return printer.apply(paper);
  }

  private static List<String> cells(Line line) {
    List<String> cells = new ArrayList<>();
    for (Box box : line.boxes()) {
      while (cells.size() < box.column()) {
        cells.add("");
      }
      cells.set(box.column() - 1, box.text());
    }
    return cells;
  }

  private static String delimited(Paper paper, char delimiter) {
    StringBuilder out = new StringBuilder();
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setRecordSeparator("\n").get();
    try (CSVPrinter printer = new CSVPrinter(out, format)) {
      for (Line line : paper.lines()) {
        printer.printRecord(cells(line));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static String html(Paper paper) {
    return paper.lines().stream()
        .map(
            l ->
                cells(l).stream()
                    .map(c -> "<td>" + c.replace("&", "&amp;").replace("<", "&lt;") + "</td>")
                    .collect(Collectors.joining("", "<tr>", "</tr>\n")))
        .collect(Collectors.joining("", "<html><body><table>\n", "</table></body></html>\n"));
  }

  private static String lines(Paper paper) {
    StringBuilder out = new StringBuilder();
    int last = 0;
    for (Line line : paper.lines()) {
      out.append("\n".repeat(Math.max(0, line.number() - last - 1)));
      out.append(line.boxes().stream().map(Box::text).collect(Collectors.joining("    ")));
      out.append('\n');
      last = line.number();
    }
    return out.toString();
  }

  private static String mail(String text, String name) {
    String body = Base64.getMimeEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
    return """
        From: bench@sallow.example
        To: office@querrow.example
        Subject: hay results
        Date: Fri, 13 Mar 2026 09:12:00 +0000
        MIME-Version: 1.0
        Content-Type: multipart/mixed; boundary="bound"

        --bound
        Content-Type: text/plain; charset=utf-8

        Good morning, the results are attached.
        --bound
        Content-Type: text/csv; name="NAME"
        Content-Disposition: attachment; filename="NAME"
        Content-Transfer-Encoding: base64

        BODY
        --bound--
        """
        .replace("NAME", name)
        .replace("BODY", body)
        .replace("\r\n", "\n")
        .replace("\n", "\r\n");
  }
}
