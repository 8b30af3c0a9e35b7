/**
 * Grid of cells in, report with samples, readings and doubts out: one reader for all laboratories.
 *
 * <p>The way in is {@link rickyard.intake.interpret.Interpreter}. It is driven by the {@link
 * rickyard.intake.interpret.Dictionary} and by the structure of the page; it knows no laboratory,
 * no register, no clock. What cannot be decided becomes a doubt, never a value.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.interpret;
