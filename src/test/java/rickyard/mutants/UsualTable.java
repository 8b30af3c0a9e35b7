package rickyard.mutants;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import rickyard.core.forage.Sample;
import rickyard.core.quantity.Basis;

/** {@code config/usual-by-material.csv} read by itself, apart from the program's checks. */
final class UsualTable {
  private static final Path TABLE = Path.of("config/usual-by-material.csv");
  private static final List<CSVRecord> ROWS = rows();

  private UsualTable() {}

  /** Whether every figure of the sample is usual in each material that its name may mean. */
  static boolean fits(Sample sample) {
    Set<String> words =
        Set.of(
            Arrays.stream(sample.material().toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .distinct()
                .toArray(String[]::new));
    List<CSVRecord> own =
        ROWS.stream()
            .filter(r -> Arrays.stream(r.get("words").split(";")).anyMatch(words::contains))
            .toList();
    boolean one = own.stream().map(r -> r.get("material")).distinct().count() == 1;
    return !one || own.stream().allMatch(r -> fits(sample, r));
  }

  private static boolean fits(Sample sample, CSVRecord row) {
    return sample.readings().stream()
        .filter(r -> r.analyte().value().equals(row.get("analyte")))
        .flatMap(r -> r.value().stream())
        .filter(v -> v.basis() == Basis.DRY_MATTER || row.get("analyte").equals("DM"))
        .allMatch(
            v ->
                v.high() >= Double.parseDouble(row.get("low"))
                    && v.low() <= Double.parseDouble(row.get("high")));
  }

  private static List<CSVRecord> rows() {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setCommentMarker('#').get();
    try (Reader in = Files.newBufferedReader(TABLE)) {
      return format.parse(in).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
