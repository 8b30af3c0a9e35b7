package rickyard.core.advice.coop;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What testing a lot again might free.
 *
 * @param rank from 1, the most expected first; those whose chance is unknown last
 * @param lot lot id
 * @param groups that lack hay and for which it does not clear now
 * @param chance of clearing for any of them after a second test; null where nothing was measured
 * @param freesKg kg as fed that would go to them if it cleared for all
 * @param expectedKg the mean over what the test may say; null where the chance is unknown
 * @param why in plain words
 */
public record RetestLine(
    int rank,
    String lot,
    List<String> groups,
    @Nullable Double chance,
    double freesKg,
    @Nullable Double expectedKg,
    String why)
    implements Serializable {
  public RetestLine {
    groups = List.copyOf(groups);
  }
}
