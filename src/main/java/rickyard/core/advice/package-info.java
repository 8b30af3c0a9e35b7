/**
 * What the morning says of each horse: diet before and after, verdicts, priority, proposals.
 *
 * <p>It brings nutrition, judgement and remedy together for one horse at a time, as pure functions;
 * the summaries are plain numbers and words, so that the next morning can compare with them.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.advice;
