package rickyard.intake.check;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Set;
import rickyard.core.forage.AnalyteCode;

/**
 * What is usual of one analyte in one material: a row of {@code config/usual-by-material.csv}.
 *
 * @param material its name in the sentence
 * @param words words by which a report names it, lower case
 * @param analyte the analyte
 * @param low smallest usual figure, canonical unit, on dry matter (water: as fed)
 * @param high largest usual figure, at least {@code low}
 */
public record Usual(
    String material, Set<String> words, AnalyteCode analyte, double low, double high)
    implements Serializable {
  public Usual {
    requireNonNull(material, "material");
    words = Set.copyOf(words);
    requireNonNull(analyte, "analyte");
    if (!(low >= 0 && low <= high)) {
      throw new IllegalArgumentException("usual range out of order: " + low + " to " + high);
    }
  }
}
