package rickyard.core.forage;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a person decided: a row of decisions.csv.
 *
 * @param date when
 * @param about a horse, lot, letter or reading
 * @param kind told, accepted, override, correction or release
 * @param value what was decided
 * @param startOn first day of an accepted remedy
 * @param by who
 * @param why the reason given
 * @param row row in the register, from 1 with the header as row 1
 */
public record Decision(
    LocalDate date,
    String about,
    String kind,
    String value,
    Optional<LocalDate> startOn,
    String by,
    String why,
    int row) {}
