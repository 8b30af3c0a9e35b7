/**
 * The co-op's view: who is to have which hay, what is short, which retest would free most, and who
 * has a lot whose verdict fell. Way in: {@link rickyard.core.advice.coop.CoOp} and {@link
 * rickyard.core.advice.coop.Recalls}.
 */
@org.jspecify.annotations.NullMarked
package rickyard.core.advice.coop;
