package rickyard.mutants;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How the altered reports fared, by kind. */
final class Tally {
  private final Map<Kind, Map<Fate, Integer>> fates = new EnumMap<>(Kind.class);
  private final Map<NoEvidence, Integer> unseen = new EnumMap<>(NoEvidence.class);
  private final List<String> falseClears = new ArrayList<>();
  private int mutants;

  void add(Kind kind, Fate fate) {
    fates.computeIfAbsent(kind, k -> new EnumMap<>(Fate.class)).merge(fate, 1, Integer::sum);
    mutants++;
  }

  void addUnseen(NoEvidence why) {
    unseen.merge(why, 1, Integer::sum);
  }

  void addFalseClear(String words) {
    falseClears.add(words);
  }

  int mutants() {
    return mutants;
  }

  List<String> falseClears() {
    return List.copyOf(falseClears);
  }

  int count(Fate fate) {
    return fates.values().stream().mapToInt(f -> f.getOrDefault(fate, 0)).sum();
  }

  /** A table in Markdown, a row a kind and a row of sums. */
  String byKind() {
    StringBuilder out = new StringBuilder();
    out.append(
        "| alteration | mutants | caught | harmless | wrong, clears nothing | no evidence | false"
            + " clear | caught of those that matter |\n");
    out.append("|---|---|---|---|---|---|---|---|\n");
    for (Kind kind : Kind.values()) {
      row(out, kind.words(), fates.getOrDefault(kind, Map.of()));
    }
    Map<Fate, Integer> all = new EnumMap<>(Fate.class);
    fates.values().forEach(f -> f.forEach((fate, n) -> all.merge(fate, n, Integer::sum)));
    row(out, "**all**", all);
    return out.toString();
  }

  private static void row(StringBuilder out, String name, Map<Fate, Integer> counts) {
    int sum = counts.values().stream().mapToInt(Integer::intValue).sum();
    int caught = counts.getOrDefault(Fate.CAUGHT, 0);
    int matter = sum - counts.getOrDefault(Fate.HARMLESS, 0);
    out.append("| ").append(name).append(" | ").append(sum);
    for (Fate fate : Fate.values()) {
      out.append(" | ").append(counts.getOrDefault(fate, 0));
    }
    String share =
        matter == 0 ? "" : String.format(Locale.ROOT, "%.0f %%", 100.0 * caught / matter);
    out.append(" | ").append(share).append(" |\n");
  }

  /** A table in Markdown of those that carry no evidence. */
  String byReason() {
    StringBuilder out =
        new StringBuilder("| why nothing on the page speaks against it | mutants |\n");
    out.append("|---|---|\n");
    for (NoEvidence why : NoEvidence.values()) {
      out.append("| ").append(why.words()).append(" | ");
      out.append(unseen.getOrDefault(why, 0)).append(" |\n");
    }
    return out.toString();
  }
}
