package rickyard.core.forage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Sorts the samples of a series into strands: revisions of one and the same sample. Only samples
 * that share a number or a name are compared, so that a season's export costs what its size is.
 */
final class Strands {
  private final List<Held> held;
  private final int[] parent;

  private Strands(List<Held> series) {
    held = series.stream().sorted(Comparator.comparing(h -> h.key)).toList();
    parent = new int[held.size()];
    for (int i = 0; i < parent.length; i++) {
      parent[i] = i;
    }
  }

  /** The strands of a series in the order of their first samples; each sorted by key. */
  static List<List<Held>> of(List<Held> series) {
    Strands strands = new Strands(series);
    if (series.stream().map(h -> h.key.document()).distinct().count() > 1) {
      strands.joinSheets();
      strands.joinByLabNo();
      strands.joinByLabel();
    }
    return strands.sorted();
  }

  private List<List<Held>> sorted() {
    Map<Integer, List<Held>> byRoot = new HashMap<>();
    List<List<Held>> strands = new ArrayList<>();
    for (int i = 0; i < held.size(); i++) {
      int root = root(i);
      if (!byRoot.containsKey(root)) {
        byRoot.put(root, new ArrayList<>());
        strands.add(byRoot.get(root));
      }
      byRoot.get(root).add(held.get(i));
    }
    return strands;
  }

  /** Reports of one sample each are the same more readily than samples in a long list. */
  private void joinSheets() {
    List<Integer> sheets = new ArrayList<>();
    for (int i = 0; i < held.size(); i++) {
      if (held.get(i).report.samples().size() == 1) {
        sheets.add(i);
      }
    }
    for (int a : sheets) {
      for (int b : sheets) {
        if (b > a && Series.areSheetsOfOneSample(held.get(a), held.get(b))) {
          join(a, b);
        }
      }
    }
  }

  private void joinByLabNo() {
    Map<String, List<Integer>> byNumber = new HashMap<>();
    for (int i = 0; i < held.size(); i++) {
      String number = Precedence.number(held.get(i).sample.labNo());
      if (!number.isEmpty()) {
        byNumber.computeIfAbsent(number, n -> new ArrayList<>()).add(i);
      }
    }
    byNumber.values().forEach(this::joinAcrossDocuments);
  }

  /** Samples of one name are the same where not both have a number of the laboratory's. */
  private void joinByLabel() {
    Map<String, List<Integer>> byLabel = new HashMap<>();
    for (int i = 0; i < held.size(); i++) {
      Sample sample = held.get(i).sample;
      if (!sample.label().isBlank()) {
        String key =
            Precedence.number(sample.label()) + "\u001f" + Precedence.number(sample.batch());
        byLabel.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
      }
    }
    byLabel.values().forEach(this::joinUnnumbered);
  }

  private void joinUnnumbered(List<Integer> sameLabel) {
    Map<String, List<Integer>> unnumbered = new HashMap<>();
    for (int i : sameLabel) {
      if (held.get(i).sample.labNo().isBlank()) {
        unnumbered.computeIfAbsent(document(i), d -> new ArrayList<>()).add(i);
      }
    }
    unnumbered.forEach(
        (document, own) -> {
          List<Integer> others =
              sameLabel.stream().filter(i -> !document(i).equals(document)).toList();
          if (!others.isEmpty()) {
            own.forEach(i -> join(own.get(0), i));
            others.forEach(i -> join(own.get(0), i));
          }
        });
  }

  /** Each is the same as each of another document, and through that as the rest of its own. */
  private void joinAcrossDocuments(List<Integer> same) {
    boolean several = same.stream().map(this::document).distinct().count() > 1;
    if (several) {
      same.forEach(i -> join(same.get(0), i));
    }
  }

  private String document(int i) {
    return held.get(i).key.document();
  }

  private void join(int a, int b) {
    int first = root(a);
    int second = root(b);
    parent[Math.max(first, second)] = Math.min(first, second);
  }

  private int root(int i) {
    int now = i;
    while (parent[now] != now) {
      parent[now] = parent[parent[now]];
      now = parent[now];
    }
    return now;
  }
}
