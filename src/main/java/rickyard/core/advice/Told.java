package rickyard.core.advice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.Decision;
import rickyard.core.judgement.Word;

/**
 * What a client was told last about a horse.
 *
 * @param verdict the verdict that was told; a value that is no verdict, or blank, means what the
 *     last finished morning said, and where there was none it is left as it stands
 * @param decision the row of the register
 */
record Told(String verdict, Decision decision) {

  /** The last row about a horse; empty if its client was never told. */
  static Optional<Told> of(String horseId, AdviceContext context) {
    return context.decisions().stream()
        .filter(d -> d.kind().equals("told") && d.about().equals(horseId))
        .filter(d -> !d.date().isAfter(context.asOf()))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
        .map(d -> new Told(word(d.value().strip(), horseId, context), d));
  }

  private static String word(String value, String horseId, AdviceContext context) {
    if (isVerdict(value)) {
      return value;
    }
    DietSummary before = context.previous().get(horseId);
    return before == null ? value : before.verdict();
  }

  private static boolean isVerdict(String value) {
    return Arrays.stream(Word.values()).anyMatch(w -> w.code().equals(value));
  }

  /** That it clears was told in so many words and does not hold of what is fed now. */
  Optional<String> takenBack(@Nullable DietSummary after) {
    boolean isHeld =
        after == null || after.verdict().equals("clears") || after.verdict().equals("no-limit");
    return decision.value().strip().equals(Word.CLEARS.code()) && !isHeld
        ? Optional.of(
            "what was told on "
                + decision.date()
                + " by "
                + decision.by()
                + ", 'clears', no longer holds")
        : Optional.empty();
  }

  /** The day on which it was told. */
  String day() {
    return decision.date().toString();
  }
}
