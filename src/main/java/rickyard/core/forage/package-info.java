/**
 * What a laboratory says of a forage: analytes, readings, samples, reports, the identities between
 * their figures, lots, and which analysis of a lot is in force.
 *
 * <p>Ways in: {@link rickyard.core.forage.Report} for what was read, {@link
 * rickyard.core.forage.Analysis} for what counts. It judges nothing against a limit.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.forage;
