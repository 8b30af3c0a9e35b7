package rickyard.core.judgement;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rickyard.core.forage.AnalyteCode;

/**
 * A sentence that stands beside a lot whose verdict on a quantity calls for it; one row of {@code
 * config/lot-notes.csv}. It decides nothing.
 *
 * @param id key of the table
 * @param quantity the quantity of the limit, as in {@link Limit#quantity()}
 * @param words the verdicts that call for it
 * @param beside an analyte of the same lot that must be over {@code besideOver}
 * @param besideOver in the analyte's canonical unit; empty if {@code beside} is
 * @param materials {@code hay}, {@code haylage} or empty for both
 * @param text the sentence; {@code {soaking}} in it becomes the share of the sugar, in %, that
 *     would have to be washed out
 * @param source key of the bibliography
 * @param status verified, secondary, memory, common-practice or assumed
 */
public record LotNote(
    String id,
    String quantity,
    Set<Word> words,
    Optional<AnalyteCode> beside,
    OptionalDouble besideOver,
    String materials,
    String text,
    String source,
    String status) {

  public LotNote {
    requireNonNull(id, "id");
    requireNonNull(quantity, "quantity");
    words = Set.copyOf(words);
    requireNonNull(beside, "beside");
    requireNonNull(besideOver, "besideOver");
    requireNonNull(materials, "materials");
    requireNonNull(text, "text");
    requireNonNull(source, "source");
    requireNonNull(status, "status");
    if (beside.isPresent() != besideOver.isPresent()) {
      throw new IllegalArgumentException("beside and beside_over go together");
    }
  }
}
