package rickyard.tables;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rickyard.core.forage.MaterialClass;
import rickyard.core.forage.SampleKinds;

/**
 * {@code config/sample-kinds.csv}: the words by which reports say what a sample is.
 *
 * @param kinds the words as the settlement uses them
 * @param file the table read, for version and digest
 */
public record SampleKindTable(SampleKinds kinds, TableFile file) {
  private static final List<String> COLUMNS =
      List.of("words", "kind", "language", "source", "status");

  public SampleKindTable {
    requireNonNull(kinds, "kinds");
    requireNonNull(file, "file");
  }

  /**
   * Loads the table, with the office's overrides where it has a config folder.
   *
   * @throws UnusableTablesException with every problem of the table
   */
  public static SampleKindTable load(Optional<Path> officeConfig) {
    TableFile file =
        TableFile.load("sample-kinds.csv", COLUMNS, List.of("words", "language"), officeConfig);
    if (!file.problems().isEmpty()) {
      throw new UnusableTablesException(file.problems());
    }
    Map<String, String> words = new TreeMap<>();
    file.rows().forEach(row -> words.putIfAbsent(row.text("words"), row.text("kind")));
    return new SampleKindTable(SampleKinds.of(words), file);
  }

  /**
   * A report's words for a material as a register of lots would write them.
   *
   * @return grass-hay, legume-hay, cereal-hay, haylage or straw; empty where the words do not tell
   */
  public String material(String words) {
    String kind = kinds.find(words).orElse("");
    MaterialClass of = MaterialClass.of(words, OptionalDouble.empty());
    return switch (kind) {
      case "haylage", "straw" -> kind;
      case SampleKinds.HAY ->
          of == MaterialClass.LEGUME
              ? "legume-hay"
              : of == MaterialClass.CEREAL ? "cereal-hay" : "grass-hay";
      default -> "";
    };
  }
}
