/**
 * Horses, what they need, what they are given, and the two held against each other.
 *
 * <p>It knows no limit of a condition (that is judgement) and proposes nothing (that is remedy).
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.nutrition;
