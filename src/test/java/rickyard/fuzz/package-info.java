/**
 * What the fuzz targets have in common: what must hold of any cells and of any reading of them, and
 * good reports to start from. The targets stand in the packages that they look into and end in
 * {@code Fuzz}; {@code -P fuzz} runs them.
 */
package rickyard.fuzz;
