package rickyard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bill of materials names exactly the libraries that lie beside the jar, by their bytes. */
class BillOfMaterialsIT {
  private static final Path BILL = Path.of("target", "rickyard-sbom.json");

  private static Set<String> named(JsonNode bill) {
    Set<String> hashes = new TreeSet<>();
    for (JsonNode component : bill.get("components")) {
      for (JsonNode hash : component.get("hashes")) {
        if (hash.get("alg").asString().equals("SHA-256")) {
          hashes.add(hash.get("content").asString());
        }
      }
    }
    return hashes;
  }

  private static Set<String> libraries() throws Exception {
    Set<String> hashes = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of("target", "lib"))) {
      for (Path file : files.toList()) {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
        hashes.add(HexFormat.of().formatHex(digest));
      }
    }
    return hashes;
  }

  @Test
  void everyLibraryStandsInItAndNothingElse() throws Exception {
    assumeTrue(Files.exists(BILL), "a build without a network makes no bill of materials");
    JsonNode bill = new JsonMapper().readTree(Files.readAllBytes(BILL));

    assertTrue(libraries().size() > 20);
    assertEquals(libraries(), named(bill));
    assertFalse(bill.get("metadata").has("timestamp"), "two builds must give the same bytes");
  }
}
