package rickyard.intake.interpret;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** The rows of a list of samples that stands apart from their figures, found by their names. */
final class Described {
  private final List<SortedMap<String, String>> rows = new ArrayList<>();
  private final Map<String, List<Integer>> byLot = new HashMap<>();
  private final Map<String, List<Integer>> byName = new HashMap<>();

  void add(Map<String, String> fields) {
    int row = rows.size();
    rows.add(new TreeMap<>(fields));
    index(byLot, fields.getOrDefault("lot", ""), row);
    index(byName, fields.getOrDefault("sample", ""), row);
    index(byName, fields.getOrDefault("lab_no", ""), row);
  }

  private static void index(Map<String, List<Integer>> index, String name, int row) {
    if (!name.isEmpty()) {
      index.computeIfAbsent(name, n -> new ArrayList<>(1)).add(row);
    }
  }

  /** Gives a sample the fields of its row; a lot may stand in the row as a name of the sample. */
  void complete(SampleDraft draft) {
    Set<Integer> same = new TreeSet<>(byLot.getOrDefault(draft.field("lot"), List.of()));
    for (String field : List.of("lot", "sample", "lab_no")) {
      same.addAll(byName.getOrDefault(draft.field(field), List.of()));
    }
    if (same.size() == 1) {
      rows.get(same.iterator().next()).forEach(draft::note);
    }
  }
}
