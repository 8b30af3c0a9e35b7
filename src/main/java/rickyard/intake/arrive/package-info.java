/**
 * The morning's inbox, frozen: what lies there, how large, with which hash, in a stable order. The
 * way in is {@link rickyard.intake.arrive.Inventory}. Nothing is opened here.
 */
@org.jspecify.annotations.NullMarked
package rickyard.intake.arrive;
