package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import rickyard.core.quantity.Place;

/**
 * Something in a report that a person must settle; a value, never logged where it is found.
 *
 * @param code stable code for filters and tests, for example {@code basis-not-stated}
 * @param about what hangs on it: one or more analyte codes with commas, {@code lot}, {@code date},
 *     {@code report}
 * @param place where it stands, if it stands anywhere
 * @param question one sentence a person can answer, quoting the cells
 * @param choices the answers accepted, in order; empty for a free answer
 * @param proposed the choice that the evidence favours, empty if none
 * @param why what speaks for the proposal, or what is missing
 */
public record Doubt(
    String code,
    String about,
    Optional<Place> place,
    String question,
    List<String> choices,
    String proposed,
    String why)
    implements Serializable {

  public Doubt {
    requireNonNull(code, "code");
    requireNonNull(about, "about");
    requireNonNull(place, "place");
    requireNonNull(question, "question");
    choices = List.copyOf(choices);
    requireNonNull(proposed, "proposed");
    requireNonNull(why, "why");
  }

  /** The analytes that it is about; empty if it is about a sample, a date or the report. */
  public List<String> analytes() {
    List<String> parts = List.of(about.split(",", -1));
    return parts.stream().allMatch(p -> p.matches("[A-Z][A-Z0-9_]*")) ? parts : List.of();
  }
}
