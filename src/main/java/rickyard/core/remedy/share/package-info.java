/**
 * Who of a co-op is to have which hay: a transport problem from piles to horses, solved exactly in
 * whole units. Way in: {@link rickyard.core.remedy.share.Sharer}. It knows amounts of dry matter,
 * ranks and prices; what clears for whom is said by its caller.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.remedy.share;
