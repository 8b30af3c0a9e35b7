package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import rickyard.core.quantity.Place;

/**
 * A question to the office: a row of questions.csv.
 *
 * @param id stable from morning to morning; what answers.csv refers to
 * @param kind stable code
 * @param document SHA-256 of the document it is about; empty if it is about several
 * @param place where it stands, if it stands anywhere
 * @param about a lot, an analyte, a report
 * @param question one sentence a person can answer
 * @param choices the answers accepted, in order; empty for a free answer
 * @param proposed the choice that the evidence favours, empty if none
 * @param why what speaks for the proposal, or what is missing
 */
public record Question(
    String id,
    String kind,
    String document,
    Optional<Place> place,
    String about,
    String question,
    List<String> choices,
    String proposed,
    String why) {

  public Question {
    requireNonNull(id, "id");
    requireNonNull(kind, "kind");
    requireNonNull(document, "document");
    requireNonNull(place, "place");
    requireNonNull(about, "about");
    requireNonNull(question, "question");
    choices = List.copyOf(choices);
    requireNonNull(proposed, "proposed");
    requireNonNull(why, "why");
  }

  /** The same question with another reason. */
  Question because(String newWhy) {
    return new Question(id, kind, document, place, about, question, choices, proposed, newWhy);
  }
}
