package rickyard.morning;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import rickyard.ledger.TestIndex;

/** An office in a folder of a test, with whole mornings in this process. */
final class SmallOffice {
  private final Path folder;

  SmallOffice(Path folder) {
    this.folder = folder;
  }

  /** Writes a file of the office, folders and all. */
  void write(String file, String text) {
    try {
      Path path = folder.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lots of the co-op, all of one hay. */
  void lots(List<String> ids) {
    StringBuilder rows =
        new StringBuilder(
            "lot_id,holder,material,legume_pct,cutting,harvested_on,stock_kg,bale_kg,"
                + "price_per_tonne,for_sale,cores,sampled_on,sampled_by\n");
    ids.forEach(id -> rows.append(id).append(",co-op,grass-hay,,1,,900,18,100,yes,12,,\n"));
    write("registers/lots.csv", rows.toString());
  }

  MorningEnd run(LocalDate day) {
    return run(folder, day);
  }

  /** The office in a folder; its ledger's database is the one under test. */
  static OfficeFolders folders(Path office) {
    OfficeFolders usual = OfficeFolders.of(office);
    return TestIndex.address(usual.ledger()).map(usual::with).orElse(usual);
  }

  /** A morning of the office in a folder. */
  static MorningEnd run(Path office, LocalDate day) {
    OfficeFolders folders = folders(office);
    folders.check();
    return new Morning(
            folders,
            new Options("kg", new TreeSet<>(List.of("data", "page"))),
            1,
            Progress.silent(),
            ledger -> {})
        .run(Optional.of(day), day);
  }

  /** The rows of a table, each by its columns. */
  static List<Map<String, String>> rows(MorningEnd end, String file) {
    return rows(end.out().resolve(file));
  }

  static List<Map<String, String>> rows(Path file) {
    try (CSVParser parser =
        CSVParser.parse(
            file,
            StandardCharsets.UTF_8,
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())) {
      List<Map<String, String>> rows = new ArrayList<>();
      parser.forEach(r -> rows.add(new TreeMap<>(r.toMap())));
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(MorningEnd end, String file) {
    try {
      return Files.readString(end.out().resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
