package rickyard.core.advice.coop;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.Decision;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;

/**
 * Keeps what fell from morning to morning. A verdict falls when a limit that asks for a change was
 * judged before and stands worse now; a lot that nobody could judge before has told nobody
 * anything.
 */
public final class Falls {
  private static final Set<Word> JUDGED =
      Set.of(Word.CLEARS, Word.BORDERLINE_UNDER, Word.BORDERLINE_OVER);

  private final LocalDate asOf;
  private final int lastDecision;
  private final List<HorseAdvice> advice;
  private final SortedMap<String, List<Verdict>> now;
  private final Set<String> limits;

  /**
   * Prepares a morning.
   *
   * @param decisions the whole register
   * @param advice on every horse
   * @param now for each lot its verdicts
   */
  public Falls(
      LocalDate asOf,
      List<Decision> decisions,
      List<HorseAdvice> advice,
      SortedMap<String, List<Verdict>> now) {
    this.asOf = asOf;
    this.lastDecision = decisions.stream().mapToInt(Decision::row).max().orElse(0);
    this.advice = List.copyOf(advice);
    this.now = new TreeMap<>(now);
    this.limits =
        now.values().stream()
            .flatMap(Collection::stream)
            .map(v -> v.limit().id())
            .collect(Collectors.toSet());
  }

  /**
   * What stands fallen after this morning, by lot and limit.
   *
   * @param kept what stood fallen after the last finished morning
   * @param before for each lot the word of each limit at the last finished morning
   */
  public SortedMap<String, SortedMap<String, Fall>> after(
      SortedMap<String, SortedMap<String, Fall>> kept,
      SortedMap<String, ? extends SortedMap<String, String>> before) {
    SortedMap<String, SortedMap<String, Fall>> falls = new TreeMap<>();
    TreeSet<String> lots = new TreeSet<>(kept.keySet());
    lots.addAll(now.keySet());
    for (String lot : lots) {
      SortedMap<String, Fall> ofLot =
          ofLot(lot, ofKey(kept, lot), before.containsKey(lot) ? before.get(lot) : new TreeMap<>());
      if (!ofLot.isEmpty()) {
        falls.put(lot, ofLot);
      }
    }
    return falls;
  }

  private static SortedMap<String, Fall> ofKey(
      SortedMap<String, SortedMap<String, Fall>> kept, String lot) {
    return kept.getOrDefault(lot, new TreeMap<>());
  }

  private SortedMap<String, Fall> ofLot(
      String lot, SortedMap<String, Fall> kept, SortedMap<String, String> before) {
    SortedMap<String, Fall> falls = new TreeMap<>();
    // A lot or value that is gone says nothing better; only a limit that is gone ends a fall.
    kept.forEach(
        (limit, fall) -> {
          if (limits.contains(limit) || !now.containsKey(lot)) {
            falls.put(limit, fall.with(eaters(lot, fall.group())));
          }
        });
    for (Verdict verdict : now.getOrDefault(lot, List.of())) {
      String limit = verdict.limit().id();
      Optional<Fall> fall =
          of(lot, verdict, Optional.ofNullable(falls.remove(limit)), before.get(limit));
      fall.ifPresent(f -> falls.put(limit, f));
    }
    return falls;
  }

  private Optional<Fall> of(
      String lot, Verdict verdict, Optional<Fall> kept, @Nullable String before) {
    if (kept.isEmpty()) {
      return isFallen(before, verdict) && before != null
          ? Optional.of(fall(lot, verdict, before, List.of()))
          : Optional.empty();
    }
    Fall fall = kept.get();
    if (!isWorse(verdict.word(), fall.before())) {
      return Optional.empty();
    }
    return Optional.of(
        verdict.word().code().equals(fall.word())
            ? fall
            : fall(lot, verdict, fall.before(), fall.horses()));
  }

  private Fall fall(String lot, Verdict verdict, String before, List<String> horses) {
    return new Fall(
            verdict.limit().group(), before, verdict.word().code(), asOf, lastDecision, horses)
        .with(eaters(lot, verdict.limit().group()));
  }

  private static boolean isFallen(@Nullable String before, Verdict now) {
    boolean asksForChange =
        now.limit().severity() == Severity.STOP || now.limit().severity() == Severity.CHANGE;
    return asksForChange
        && before != null
        && word(before).filter(JUDGED::contains).isPresent()
        && isWorse(now.word(), before);
  }

  private static boolean isWorse(Word now, String before) {
    return word(before).filter(w -> now.compareTo(w) > 0).isPresent();
  }

  private static Optional<Word> word(String code) {
    return Arrays.stream(Word.values()).filter(w -> w.code().equals(code)).findFirst();
  }

  /** Horses of a group that are fed of the lot now, or were before this morning. */
  private List<String> eaters(String lot, String group) {
    return advice.stream()
        .filter(a -> group.equals(Limit.ALL) || a.groups().contains(group))
        .filter(a -> holds(a.before(), lot) || holds(a.after(), lot))
        .map(HorseAdvice::horse)
        .toList();
  }

  private static boolean holds(@Nullable DietSummary diet, String lot) {
    return diet != null && diet.portions().stream().anyMatch(p -> p.item().equals(lot));
  }
}
