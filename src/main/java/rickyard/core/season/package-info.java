/**
 * Lots over time: one lot tested again, one field and cutting over the years, two laboratories on
 * the same lots. Shown where there are tests enough; corrects no value and decides no verdict.
 *
 * <p>The way in is {@link rickyard.core.season.OverTime#of}.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.season;
