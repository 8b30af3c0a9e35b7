package rickyard.core.judgement;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Picks the worst-placed limit among verdicts. */
public final class WorstVerdict {
  /** The worst first: by word, then chance of being over, then severity, then the limit's id. */
  public static final Comparator<Verdict> WORST_FIRST =
      Comparator.<Verdict, Word>comparing(Verdict::word, Comparator.reverseOrder())
          .thenComparing(v -> v.pOver().orElse(0), Comparator.reverseOrder())
          .thenComparing(v -> v.limit().severity())
          .thenComparing(v -> v.limit().id());

  private WorstVerdict() {}

  /** The worst-placed; empty if there is no verdict but silent ones: no limit applies. */
  public static Optional<Verdict> find(Collection<Verdict> verdicts) {
    return verdicts.stream().filter(v -> !v.isSilent()).min(WORST_FIRST);
  }
}
