/**
 * One morning as a Spring Batch job: its steps, its restart, its identity. It wires the rooms below
 * and holds no arithmetic.
 *
 * <p>The way in is {@link rickyard.morning.Morning}.
 */
@org.jspecify.annotations.NullMarked
package rickyard.morning;
