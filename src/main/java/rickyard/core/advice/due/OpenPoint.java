package rickyard.core.advice.due;

/**
 * A question that waits.
 *
 * @param id of the question
 * @param about lot, horse or place
 * @param question as it is asked
 * @param why what hangs on it
 */
public record OpenPoint(String id, String about, String question, String why) {}
