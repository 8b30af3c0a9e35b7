package rickyard.morning;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.judgement.Suitability;
import rickyard.core.judgement.Verdict;

/**
 * What every lot was judged to be.
 *
 * @param verdicts by lot
 * @param suitability by lot
 */
record Judged(
    SortedMap<String, List<Verdict>> verdicts, SortedMap<String, Suitability> suitability) {
  Judged {
    verdicts = Collections.unmodifiableSortedMap(new TreeMap<>(verdicts));
    suitability = Collections.unmodifiableSortedMap(new TreeMap<>(suitability));
  }

  String words() {
    long held = verdicts.values().stream().mapToLong(List::size).sum();
    return Words.count(verdicts.size(), "lot") + " against " + held + " limits";
  }
}
