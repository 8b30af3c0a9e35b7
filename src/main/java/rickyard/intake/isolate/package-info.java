/**
 * Reading in a process of its own, so that a file that hangs, bursts or breaks the reader costs
 * only itself.
 *
 * <p>The way in is {@link rickyard.intake.isolate.IsolatedIntake}; the other end is {@link
 * rickyard.intake.isolate.ReadingChild}. Bytes go to a warm child JVM, what they say comes back.
 * The child is not trusted: its answer is read through a list of allowed types, within limits. What
 * this room does not do is read anything itself.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.isolate;
