/**
 * Counts, means and shares of the lots together, by Tablesaw from typed values; what tests over
 * time come to, in words. Only for looking at: nothing is decided or put in order by it.
 *
 * <p>The way in is {@link rickyard.report.season.SeasonSummary#of}. Without lots no class of
 * Tablesaw is loaded.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.season;
