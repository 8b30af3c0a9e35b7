package rickyard.ledger;

import java.time.LocalDate;

/**
 * A morning as the index knows it.
 *
 * @param number from 1
 * @param asOf its date
 * @param identity see {@link JournalEntry#identity()}
 * @param content see {@link JournalEntry#content()}
 * @param finished whether it was published whole
 */
public record MorningRow(
    int number, LocalDate asOf, String identity, String content, boolean finished) {}
