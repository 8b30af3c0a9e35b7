package rickyard.core.advice.coop;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import rickyard.core.judgement.IfMissing;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.LimitSubject;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;

/** Which lots clear for which groups as the only forage; a limit that asks must have a verdict. */
final class LotStandings {
  private final List<Limit> limits;
  private final SortedMap<String, List<Verdict>> verdicts;
  private final Map<Set<String>, SortedSet<String>> cleared = new HashMap<>();

  LotStandings(List<Limit> limits, SortedMap<String, List<Verdict>> verdicts) {
    this.limits = List.copyOf(limits);
    this.verdicts = verdicts;
  }

  /** Groups of these whose limits for lots must be cleared before a lot is fed. */
  SortedSet<String> limited(Collection<String> groups) {
    SortedSet<String> limited = new TreeSet<>();
    for (Limit limit : limits) {
      if (limit.subject() == LimitSubject.LOT
          && decides(limit)
          && limit.ifMissing() == IfMissing.ASK
          && groups.contains(limit.group())) {
        limited.add(limit.group());
      }
    }
    return limited;
  }

  /** Groups of these with a limit that asks about the diet, and none that asks about hay alone. */
  SortedSet<String> dietLimited(Collection<String> groups) {
    SortedSet<String> byLot = limited(groups);
    SortedSet<String> found = new TreeSet<>();
    for (Limit limit : limits) {
      if (limit.subject() == LimitSubject.DIET
          && decides(limit)
          && limit.ifMissing() == IfMissing.ASK
          && groups.contains(limit.group())
          && !byLot.contains(limit.group())) {
        found.add(limit.group());
      }
    }
    return found;
  }

  /** Lots of these that clear for all of these groups. */
  SortedSet<String> cleared(Collection<String> lots, Set<String> groups) {
    SortedSet<String> found =
        cleared.computeIfAbsent(Set.copyOf(groups), g -> clearedFor(new TreeSet<>(lots), g));
    return new TreeSet<>(found);
  }

  private SortedSet<String> clearedFor(SortedSet<String> lots, Set<String> groups) {
    SortedSet<String> found = new TreeSet<>();
    for (String lot : lots) {
      if (isCleared(lot, groups)) {
        found.add(lot);
      }
    }
    return found;
  }

  /**
   * Whether a lot clears every limit of these groups, and of all horses, that asks for a change.
   */
  boolean isCleared(String lot, Collection<String> groups) {
    List<Verdict> own = deciding(lot, groups);
    boolean isJudged =
        limited(groups).stream()
            .allMatch(g -> own.stream().anyMatch(v -> v.limit().group().equals(g)));
    return isJudged && own.stream().allMatch(v -> v.word().isCleared());
  }

  /** The verdicts that decide whether a lot clears for these groups. */
  List<Verdict> deciding(String lot, Collection<String> groups) {
    return verdicts.getOrDefault(lot, List.of()).stream()
        .filter(v -> !v.isSilent() && decides(v.limit()))
        .filter(v -> v.limit().group().equals(Limit.ALL) || groups.contains(v.limit().group()))
        .toList();
  }

  private static boolean decides(Limit limit) {
    return limit.severity() == Severity.STOP || limit.severity() == Severity.CHANGE;
  }
}
