package rickyard.core.advice;

import java.io.Serializable;
import java.util.List;

/**
 * Something about a horse that only people know.
 *
 * @param id what answers.csv refers to; the same every morning
 * @param kind grazing, extras or opening
 * @param about the horse or lot
 * @param question one sentence
 * @param choices answers that settle it; empty for a free answer
 * @param why what hangs on it
 */
public record HorseQuestion(
    String id, String kind, String about, String question, List<String> choices, String why)
    implements Serializable {
  public HorseQuestion {
    choices = List.copyOf(choices);
  }
}
