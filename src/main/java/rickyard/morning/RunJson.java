package rickyard.morning;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import rickyard.ledger.MorningRow;
import rickyard.report.view.Counts;
import rickyard.report.view.MorningView;
import rickyard.tables.TableFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** {@code run.json}: what ran on what, and the manifest of what it published. */
final class RunJson {
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
  private static final int ID_LENGTH = 16;

  private RunJson() {}

  static byte[] bytes(
      Inputs inputs, MorningIdentity identity, MorningView view, Manifest manifest, long started) {
    Map<String, Object> run = new LinkedHashMap<>();
    run.put("run_id", id(identity.identity()));
    run.put("as_of", inputs.asOf().toString());
    run.put("inputs_sha256", identity.content());
    run.put("tables", tables(inputs));
    run.put("counts", counts(view.counts()));
    run.put("versions", versions());
    run.put("timings", Map.of("milliseconds", (System.nanoTime() - started) / 1_000_000));
    run.put("files", manifest.files());
    try {
      return (JSON.writeValueAsString(run) + "\n").getBytes(StandardCharsets.UTF_8);
    } catch (JacksonException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Whether a run.json speaks of a morning. */
  static boolean isOf(JsonNode run, MorningRow morning) {
    return run.path("run_id").asString("").equals(id(morning.identity()))
        && run.path("inputs_sha256").asString("").equals(morning.content());
  }

  private static String id(String identity) {
    return identity.substring(0, Math.min(ID_LENGTH, identity.length()));
  }

  private static Map<String, Object> tables(Inputs inputs) {
    Map<String, Object> tables = new TreeMap<>();
    for (TableFile file : inputs.tables().files()) {
      tables.put(file.name(), new TreeMap<>(entry(file)));
    }
    return tables;
  }

  private static Map<String, String> entry(TableFile file) {
    Map<String, String> entry = new LinkedHashMap<>();
    entry.put("sha256", file.digest());
    entry.put("version", file.version());
    return entry;
  }

  private static Map<String, Integer> counts(Counts c) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    counts.put("files", c.files());
    counts.put("parts", c.parts());
    counts.put("accepted", c.accepted());
    counts.put("question", c.question());
    counts.put("duplicate", c.duplicate());
    counts.put("superseded", c.superseded());
    counts.put("refused", c.refused());
    counts.put("known", c.known());
    counts.put("samples", c.samples());
    counts.put("lots", c.lots());
    counts.put("horses", c.horses());
    counts.put("letters", c.letters());
    return counts;
  }

  private static Map<String, String> versions() {
    Map<String, String> versions = new LinkedHashMap<>();
    versions.put("rickyard", Program.version());
    versions.put("java", Runtime.version().toString());
    return versions;
  }
}
