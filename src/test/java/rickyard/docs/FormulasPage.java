package rickyard.docs;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVRecord;
import rickyard.docs.CitedMethods.Cited;

/**
 * {@code docs/formulas.md}: every formula with its source, how well that is known, and the place.
 */
final class FormulasPage {
  private final Map<String, CSVRecord> sources = Sheets.sources();

  String text() {
    List<Cited> cited = CitedMethods.all();
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Formulas

        Every computing method of the core with its formula where its comment prints one, its source (a key of `config/sources.csv`), that source's status, and the place in it; written by `GeneratedDocsTest` (see DEVELOPERS.md). Coefficients stand in the tables ([tables.md](tables.md)), each with a status of its own.

        """);
    page.append("By status: ")
        .append(Sheets.words(Sheets.byStatus(cited.stream().map(c -> status(c.source())))))
        .append(".\n\n| method | formula | source | status | place |\n|---|---|---|---|---|\n");
    cited.forEach(c -> page.append(line(c)));
    return page.toString();
  }

  private String status(String key) {
    return Objects.requireNonNull(sources.get(key), key).get("status");
  }

  private String line(Cited cited) {
    String formula = cited.formula().isEmpty() ? "" : "`" + Sheets.cell(cited.formula()) + "`";
    return "| `"
        + cited.method()
        + "` | "
        + formula
        + " | "
        + cited.source()
        + " | "
        + status(cited.source())
        + " | "
        + Sheets.cell(cited.locator())
        + " |\n";
  }
}
