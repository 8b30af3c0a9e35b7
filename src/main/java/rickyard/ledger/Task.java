package rickyard.ledger;

import java.util.Map;

/**
 * What a run wants read by workers, and by which reader: only one that is the run's own to the last
 * byte reads the same.
 *
 * @param reader what makes one reader another, as a digest
 * @param program the run's program
 * @param tables digest of what laboratories call things
 * @param ocr what reads pictures
 * @param morning number of the morning
 * @param asOf its day, ISO
 */
public record Task(
    String reader, String program, String tables, String ocr, int morning, String asOf) {

  /** By name: a later version that keeps more is still understood. */
  Map<String, String> toMap() {
    return Map.of(
        "reader", reader,
        "program", program,
        "tables", tables,
        "ocr", ocr,
        "morning", String.valueOf(morning),
        "as_of", asOf);
  }

  static Task of(Map<String, String> named) {
    return new Task(
        named.getOrDefault("reader", ""),
        named.getOrDefault("program", ""),
        named.getOrDefault("tables", ""),
        named.getOrDefault("ocr", ""),
        Integer.parseInt(named.getOrDefault("morning", "0")),
        named.getOrDefault("as_of", ""));
  }
}
