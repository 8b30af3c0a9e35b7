/**
 * Bytes in, grid out: whatever a report arrives in becomes cells with places.
 *
 * <p>The way in is {@link rickyard.intake.grid.GridReader}; what comes out is serialisable, so that
 * the parse of untrusted bytes can move to a process of its own. No meaning is given to any cell
 * here.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.grid;
