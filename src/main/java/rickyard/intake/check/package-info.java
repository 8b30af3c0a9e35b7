/**
 * The relations between the figures of one sample, tried as printed: what holds, what is broken,
 * and which lines a broken relation touches.
 *
 * <p>The way in is {@link rickyard.intake.check.SampleChecks}. The relations themselves are in
 * {@link rickyard.core.forage.Identities}; nothing is repaired here.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.check;
