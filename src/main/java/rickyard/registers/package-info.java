/**
 * The office's own CSV tables, read and validated; every error names file, row and column.
 *
 * <p>It decides nothing: types belong to the rooms that use them.
 */
@org.jspecify.annotations.NullMarked
package rickyard.registers;
