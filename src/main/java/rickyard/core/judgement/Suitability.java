package rickyard.core.judgement;

import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which groups a lot suits as the only forage.
 *
 * @param suits every limit of the group that asks for a change or a stop clears
 * @param notFor at least one of them is exceeded
 * @param undecided the rest: borderline, or not to be judged; not cleared
 */
public record Suitability(
    SortedSet<String> suits, SortedSet<String> notFor, SortedSet<String> undecided) {

  public Suitability {
    suits = Collections.unmodifiableSortedSet(new TreeSet<>(suits));
    notFor = Collections.unmodifiableSortedSet(new TreeSet<>(notFor));
    undecided = Collections.unmodifiableSortedSet(new TreeSet<>(undecided));
  }

  /** From the verdicts of one lot; a group with no verdict of its own is not listed. */
  public static Suitability of(List<Verdict> verdicts) {
    SortedSet<String> suits = new TreeSet<>();
    SortedSet<String> notFor = new TreeSet<>();
    SortedSet<String> undecided = new TreeSet<>();
    List<Verdict> deciding = verdicts.stream().filter(Suitability::decides).toList();
    for (String group : groups(deciding)) {
      List<Verdict> own =
          deciding.stream()
              .filter(v -> v.limit().group().equals(group) || v.limit().group().equals(Limit.ALL))
              .toList();
      if (own.stream().anyMatch(v -> v.word() == Word.EXCEEDS)) {
        notFor.add(group);
      } else if (own.stream().allMatch(v -> v.word().isCleared())) {
        suits.add(group);
      } else {
        undecided.add(group);
      }
    }
    return new Suitability(suits, notFor, undecided);
  }

  private static boolean decides(Verdict verdict) {
    Severity severity = verdict.limit().severity();
    return !verdict.isSilent() && (severity == Severity.STOP || severity == Severity.CHANGE);
  }

  private static SortedSet<String> groups(List<Verdict> verdicts) {
    return verdicts.stream()
        .map(v -> v.limit().group())
        .filter(g -> !g.equals(Limit.ALL))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
