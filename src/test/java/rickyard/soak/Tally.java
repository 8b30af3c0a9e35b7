package rickyard.soak;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Counts of what was done and found, written to {@code target/soak} as they grow. */
final class Tally {
  private final Path file;
  private final Map<String, Long> counts = new LinkedHashMap<>();
  private final List<String> complaints = new ArrayList<>();

  Tally(String name) throws IOException {
    this.file = Path.of("target", "soak", name + ".txt");
    Files.createDirectories(Path.of("target", "soak"));
  }

  void add(String what) {
    add(what, 1);
  }

  void add(String what, long more) {
    counts.merge(what, more, Long::sum);
  }

  void most(String what, long value) {
    counts.merge(what, value, Math::max);
  }

  long count(String what) {
    return counts.getOrDefault(what, 0L);
  }

  /** Counts one defect for each thing in a list. */
  void complain(String what, String where, List<String> found) {
    add(what, found.isEmpty() ? 0 : 1);
    if (!found.isEmpty()) {
      complaints.add(what + ", " + where + ": " + found);
    }
  }

  List<String> complaints() {
    return complaints;
  }

  void write() throws IOException {
    StringBuilder text = new StringBuilder();
    counts.forEach((what, count) -> text.append(what).append(": ").append(count).append('\n'));
    complaints.forEach(complaint -> text.append(complaint).append('\n'));
    Files.writeString(file, text.toString());
  }
}
