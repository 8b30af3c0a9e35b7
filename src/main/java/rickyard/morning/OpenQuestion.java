package rickyard.morning;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * A question as a person is asked it.
 *
 * @param id what an answer names
 * @param kind stable code
 * @param file where it arose; empty if nowhere in particular
 * @param part inside a mail or archive; empty otherwise
 * @param about a lot, an analyte, a horse
 * @param question one sentence
 * @param choices answers that it takes; empty for any words
 * @param proposed the choice that the evidence favours; empty if none
 * @param why what speaks for the proposal, or what is missing
 * @param seen the cells that it rests on, one line each
 */
public record OpenQuestion(
    String id,
    String kind,
    String file,
    String part,
    String about,
    String question,
    List<String> choices,
    String proposed,
    String why,
    List<String> seen) {
  public OpenQuestion {
    requireNonNull(id, "id");
    requireNonNull(kind, "kind");
    requireNonNull(file, "file");
    requireNonNull(part, "part");
    requireNonNull(about, "about");
    requireNonNull(question, "question");
    choices = List.copyOf(choices);
    requireNonNull(proposed, "proposed");
    requireNonNull(why, "why");
    seen = List.copyOf(seen);
  }
}
