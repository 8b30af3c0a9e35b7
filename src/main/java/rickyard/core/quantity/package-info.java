/**
 * Numbers that know what they are: units, basis, bounds, uncertainty and the evidence behind them.
 *
 * <p>The leaf of the house. The way in is {@link rickyard.core.quantity.Measured}. It reads no
 * text, rounds nothing and knows no analyte.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.quantity;
