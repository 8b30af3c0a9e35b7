package rickyard.core.advice.coop;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Somebody who has a lot whose verdict fell.
 *
 * @param lot lot id
 * @param client who got it
 * @param horse that is fed it and belongs to a group concerned; empty where none is known
 * @param deliveredOn since when; empty where the client holds the lot itself
 * @param toldOn when the horse or the lot was last spoken about
 * @param what what fell and what was told, in plain words
 * @param fellOn the last morning on which any of it fell
 */
public record RecallLine(
    String lot,
    String client,
    String horse,
    Optional<LocalDate> deliveredOn,
    Optional<LocalDate> toldOn,
    String what,
    LocalDate fellOn) {}
