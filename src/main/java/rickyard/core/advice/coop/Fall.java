package rickyard.core.advice.coop;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rickyard.core.forage.Decision;

/**
 * A lot that stands worse against a limit than people were told. It is kept from morning to morning
 * until it stands no worse.
 *
 * @param group group of the limit
 * @param before the word before it fell
 * @param word the word since
 * @param since the morning on which the word became what it is
 * @param decisions row of the last decision of that morning's register: what stands below it was
 *     decided with the fall known
 * @param horses horses of the group that were fed of the lot on any morning since, sorted
 */
public record Fall(
    String group, String before, String word, LocalDate since, int decisions, List<String> horses) {
  private static final Set<String> DEALING = Set.of("told", "accepted", "override");

  public Fall {
    requireNonNull(group, "group");
    requireNonNull(before, "before");
    requireNonNull(word, "word");
    requireNonNull(since, "since");
    horses = horses.stream().sorted().distinct().toList();
  }

  Fall with(List<String> more) {
    return new Fall(
        group,
        before,
        word,
        since,
        decisions,
        Stream.concat(horses.stream(), more.stream()).toList());
  }

  /**
   * Whether a decision was made with the fall known: on a later day, or on the same day in a row
   * added since, or with the very word.
   */
  boolean isDealtWithBy(Decision decision) {
    boolean isLater = decision.date().isAfter(since);
    boolean isKnown =
        decision.date().equals(since)
            && (decision.row() > decisions || decision.value().strip().equals(word));
    return DEALING.contains(decision.kind()) && (isLater || isKnown);
  }
}
