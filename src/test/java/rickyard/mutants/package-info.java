/**
 * Good reports altered on purpose, read, settled and judged: none may clear a lot that the report
 * as it was does not clear.
 *
 * <p>The way in is {@link rickyard.mutants.MutantsPropertyTest}; {@code mvn -P mutants verify} runs
 * it at length and writes {@code docs/mutants.md}.
 */
@NullMarked
package rickyard.mutants;

import org.jspecify.annotations.NullMarked;
