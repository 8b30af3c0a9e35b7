/**
 * What hangs on the stable door: one page a horse, in the client's language. What a sheet says of a
 * horse is also what a letter says of it.
 */
@org.jspecify.annotations.NullMarked
package rickyard.report.sheet;
