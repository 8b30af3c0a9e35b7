package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.util.List;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;

/**
 * A shared bale held against a limit of a horse of the herd.
 *
 * @param bale lot or feed
 * @param sensitive names of the horses whose limit it is; empty for a limit of all horses
 * @param verdict how it stands
 */
record BaleVerdict(String bale, List<String> sensitive, Verdict verdict) {
  BaleVerdict {
    requireNonNull(bale, "bale");
    sensitive = List.copyOf(sensitive);
    requireNonNull(verdict, "verdict");
  }

  /** Whether the bale must not stay before the herd as it is. */
  boolean standsAgainst() {
    Severity severity = verdict.limit().severity();
    return (severity == Severity.STOP || severity == Severity.CHANGE)
        && !verdict.word().isCleared();
  }

  /** What stands before the reason: which bale, and for whom. */
  String prefix() {
    String whose = sensitive.isEmpty() ? "" : ", for " + String.join(" and ", sensitive);
    return "shared bale " + bale + whose + ": ";
  }
}
