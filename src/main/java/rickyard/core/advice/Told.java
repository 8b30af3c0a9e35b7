package rickyard.core.advice;

import java.util.Arrays;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import rickyard.core.forage.Decision;
import rickyard.core.judgement.Word;

/** What a client was told last about a horse. */
final class Told {
  private Told() {}

  /** The verdict that the client was told last about this horse; null if never. */
  static @Nullable String verdict(String horseId, AdviceContext context) {
    return context.decisions().stream()
        .filter(d -> d.kind().equals("told") && d.about().equals(horseId))
        .filter(d -> !d.date().isAfter(context.asOf()))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row))
        .map(d -> word(d.value().strip(), horseId, context))
        .orElse(null);
  }

  /** A value that is no verdict, or blank, means what the last morning said. */
  private static String word(String value, String horseId, AdviceContext context) {
    if (Arrays.stream(Word.values()).anyMatch(w -> w.code().equals(value))) {
      return value;
    }
    DietSummary before = context.previous().get(horseId);
    return before == null ? value : before.verdict();
  }
}
