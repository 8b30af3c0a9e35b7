/**
 * The command line: arguments in, a run started, progress and an end line out. It decides nothing.
 *
 * <p>The way in is {@link rickyard.cli.Rickyard}.
 */
@org.jspecify.annotations.NullMarked
package rickyard.cli;
