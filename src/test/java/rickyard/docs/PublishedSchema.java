package rickyard.docs;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The schema of summary.json that others rely on, and a stricter one for ourselves. */
public final class PublishedSchema {
  private static final Path FILE = Path.of("docs", "summary.schema.json");

  private PublishedSchema() {}

  /** What a summary breaks of the schema; a member that the schema does not know counts too. */
  public static List<String> faults(String summary) {
    JsonNode strict = tree();
    forbidOthers(strict);
    return faults(strict, summary);
  }

  /** What a summary breaks of the schema as it is published. */
  public static List<String> publishedFaults(String summary) {
    return faults(tree(), summary);
  }

  static JsonNode tree() {
    try {
      return JsonMapper.shared().readTree(Files.readString(FILE, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> faults(JsonNode schema, String summary) {
    Schema compiled =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schema);
    return compiled.validate(summary, InputFormat.JSON).stream().map(Error::toString).toList();
  }

  private static void forbidOthers(JsonNode node) {
    if (node instanceof ObjectNode object && object.path("properties").isObject()) {
      object.put("additionalProperties", false);
    }
    node.forEach(PublishedSchema::forbidOthers);
  }
}
