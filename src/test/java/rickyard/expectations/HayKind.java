package rickyard.expectations;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import rickyard.core.forage.MaterialClass;

/** How WSC + starch lies between lots of one kind: a normal distribution cut off at both ends. */
record HayKind(
    String name,
    MaterialClass material,
    double mean,
    double sd,
    double low,
    double high,
    String source,
    String status) {

  static List<HayKind> all() {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (var in =
        new InputStreamReader(
            HayKind.class.getResourceAsStream("/expectations/hays.csv"), StandardCharsets.UTF_8)) {
      return format.parse(in).stream().map(HayKind::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static HayKind of(CSVRecord row) {
    MaterialClass material =
        Arrays.stream(MaterialClass.values())
            .filter(m -> m.code().equals(row.get("class")))
            .findFirst()
            .orElseThrow();
    return new HayKind(
        row.get("hay"),
        material,
        Double.parseDouble(row.get("mean")),
        Double.parseDouble(row.get("sd")),
        Double.parseDouble(row.get("low")),
        Double.parseDouble(row.get("high")),
        row.get("source"),
        row.get("status"));
  }

  /** Not normalised; 0 outside the ends. */
  double density(double truth) {
    if (truth < low || truth > high) {
      return 0;
    }
    double z = (truth - mean) / sd;
    return StrictMath.exp(-0.5 * z * z);
  }
}
