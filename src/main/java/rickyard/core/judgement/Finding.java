package rickyard.core.judgement;

import java.util.OptionalDouble;

/**
 * What the decision rule says of one number against one limit.
 *
 * @param word the zone
 * @param chanceWrong chance of being on the wrong side of the limit, from this evidence alone; at
 *     least that for a value open above; empty where the evidence does not tell
 * @param guardBand {@code w = z · u} in the limit's unit
 * @param used the number that was held against the limit: the best value, or the end of a censored
 *     one
 */
public record Finding(Word word, OptionalDouble chanceWrong, double guardBand, double used) {}
