package rickyard.second;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The tables under config/, read as plain text. */
final class Books {
  private final Map<String, List<Map<String, String>>> tables = new HashMap<>();
  private final Path folder;

  Books() {
    this(Path.of("config"));
  }

  Books(Path folder) {
    this.folder = folder;
  }

  List<Map<String, String>> table(String name) {
    return tables.computeIfAbsent(name, n -> Csv.read(folder.resolve(n + ".csv")));
  }

  /**
   * The first row in which every named cell holds the value given: column, value, column, value.
   */
  Optional<Map<String, String>> find(String name, String... cells) {
    return rows(name, cells).findFirst();
  }

  Stream<Map<String, String>> rows(String name, String... cells) {
    return table(name).stream()
        .filter(
            row -> {
              for (int i = 0; i < cells.length; i += 2) {
                if (!row.get(cells[i]).equals(cells[i + 1])) {
                  return false;
                }
              }
              return true;
            });
  }

  String setting(String name) {
    return find("nutrition-settings", "name", name).orElseThrow().get("value");
  }

  double settingNumber(String name) {
    return Double.parseDouble(setting(name));
  }

  /** A listed role or material; one that is not listed is no forage and its silence is unknown. */
  boolean isRole(String role, String column, String word) {
    return find("roles", "role", role).map(r -> r.get(column).equals(word)).orElse(false);
  }
}
