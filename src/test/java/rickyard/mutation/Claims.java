package rickyard.mutation;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Changes that are claimed to change nothing that can be seen, with the reason of each. */
final class Claims {
  static final String TABLE = "/mutation/changes-nothing.csv";

  /** So many alike changes of one method, and why none of them can be seen. */
  record Claim(int count, String reason) {}

  private final Map<String, Claim> claims = new LinkedHashMap<>();

  private Claims() {}

  static Claims load() throws IOException {
    Claims loaded = new Claims();
    try (var in = Objects.requireNonNull(Claims.class.getResourceAsStream(TABLE), TABLE);
        var reader = new InputStreamReader(in, StandardCharsets.UTF_8);
        var rows =
            CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get()
                .parse(reader)) {
      rows.forEach(loaded::add);
    }
    return loaded;
  }

  private void add(CSVRecord row) {
    Mutant named = new Mutant(row.get("class"), row.get("method"), row.get("change"), "SURVIVED");
    Claim claim = new Claim(Integer.parseInt(row.get("count")), row.get("reason"));
    if (claim.count() < 1 || claim.reason().length() < 20) {
      throw new IllegalArgumentException("a claim counts and gives its reason: " + row);
    }
    if (claims.put(named.key(), claim) != null) {
      throw new IllegalArgumentException("claimed twice: " + named.key());
    }
  }

  Map<String, Claim> all() {
    return Map.copyOf(claims);
  }

  /** The claim about a change; its count is 0 where nothing is claimed. */
  Claim find(Mutant mutant) {
    return claims.getOrDefault(mutant.key(), new Claim(0, ""));
  }
}
