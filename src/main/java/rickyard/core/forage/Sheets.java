package rickyard.core.forage;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which documents of a series a newer one that counts has taken the place of. */
final class Sheets {
  private final Set<String> replaced = new HashSet<>();

  private Sheets() {}

  static Sheets of(List<List<Held>> strands, Precedence precedence) {
    Map<String, Report> counting = new TreeMap<>();
    Map<String, Report> all = new TreeMap<>();
    Map<String, Set<String>> sharing = new HashMap<>();
    for (List<Held> strand : strands) {
      Set<String> documents = new TreeSet<>();
      strand.forEach(h -> documents.add(h.key.document()));
      for (Held held : strand) {
        all.putIfAbsent(held.key.document(), held.report);
        if (held.stands() && held.report.status() != ReportStatus.WITHDRAWN) {
          counting.putIfAbsent(held.key.document(), held.report);
          sharing.computeIfAbsent(held.key.document(), d -> new TreeSet<>()).addAll(documents);
        }
      }
    }
    Sheets sheets = new Sheets();
    counting.forEach(
        (document, newer) ->
            sheets.take(newer, sharing.getOrDefault(document, Set.of()), all.values(), precedence));
    return sheets;
  }

  private void take(
      Report newer, Set<String> sharing, Collection<Report> all, Precedence precedence) {
    for (Report older : all) {
      if (!older.document().equals(newer.document())
          && (sharing.contains(older.document()) || precedence.replaces(newer, older))
          && precedence.isNewer(newer, older)) {
        replaced.add(older.document());
      }
    }
  }

  /** Whether a newer report took the place of the sheet; of its samples some may be missing. */
  boolean isReplaced(Report report) {
    return replaced.contains(report.document());
  }
}
