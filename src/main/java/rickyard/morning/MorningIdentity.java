package rickyard.morning;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.Originals;

/**
 * What makes a morning the same morning.
 *
 * @param content hash of inbox, registers, office config, date, options, program and tables
 * @param identity hash of the content and of the last finished morning, so that going back to an
 *     earlier content is a new morning
 */
record MorningIdentity(String content, String identity) {

  static MorningIdentity of(
      List<ArrivalRow> arrivals,
      SortedMap<String, String> digests,
      LocalDate asOf,
      Options options,
      String previousIdentity) {
    StringBuilder text = new StringBuilder();
    arrivals.stream()
        .sorted(Comparator.comparing(ArrivalRow::path))
        .forEach(a -> line(text, "file", a.path(), a.sha256() + a.problemCode()));
    digests.forEach((name, digest) -> line(text, "table", name, digest));
    line(text, "as-of", asOf.toString(), options.text());
    line(text, "program", Program.identity(), "");
    String content = hash(text.toString());
    return new MorningIdentity(content, hash(content + " after " + previousIdentity));
  }

  private static void line(StringBuilder text, String kind, String name, String value) {
    // Lengths keep two different lists from giving one text.
    text.append(kind).append(' ').append(name.length()).append(':').append(name);
    text.append(' ').append(value.length()).append(':').append(value).append('\n');
  }

  private static String hash(String text) {
    return Originals.sha256(text.getBytes(StandardCharsets.UTF_8));
  }
}
