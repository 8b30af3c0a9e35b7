package rickyard.report.letter;

import static rickyard.report.csv.Field.text;

import java.util.List;
import rickyard.report.csv.Table;
import rickyard.report.text.Harmless;

/**
 * What a letter's content is called, and the row of decisions.csv that releases exactly that.
 *
 * @param client whose letter it is
 * @param to its address; empty where the register has none that can be used
 * @param content 32 hexadecimal digits
 * @param row to paste, with a name to fill in
 */
record ReleaseRow(String client, String to, String content, String row) {
  /** The table of all letters. */
  static final String FILE = "letters.csv";

  static ReleaseRow of(String client, Draft draft) {
    String content = Eml.identity(draft);
    String row =
        draft.day() + "," + quoted(client) + ",release," + content + ",," + Letters.NOBODY + ",";
    return new ReleaseRow(client, draft.to(), content, row);
  }

  private static String quoted(String id) {
    String line = Harmless.line(id);
    return line.matches("[^\",;\t]*") ? line : '"' + line.replace("\"", "\"\"") + '"';
  }

  static Table table(List<ReleaseRow> rows) {
    return new Table(
        FILE,
        List.of("letter", "client", "to", "content_id", "release_row"),
        rows.stream()
            .map(
                r ->
                    List.of(
                        text(Letters.path(r.client)),
                        text(r.client),
                        text(r.to),
                        text(r.content),
                        text(r.row)))
            .toList());
  }
}
