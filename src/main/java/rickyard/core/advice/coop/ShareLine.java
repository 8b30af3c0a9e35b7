package rickyard.core.advice.coop;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Hay of one lot for one horse.
 *
 * @param horse register key
 * @param client whose it is
 * @param group its most sensitive group that needs cleared hay; empty where it needs none
 * @param lot what it is to have; empty for days for which nothing is left
 * @param from the client whose pile it comes from; empty where it is for sale
 * @param now lots that it is fed as things stand
 * @param kgPerDay as fed, weighable; null where nothing is left or a veterinarian decides
 * @param days how long, tenths of a day
 * @param kg as fed in all; null as for {@code kgPerDay}
 * @param verdict the whole diet with this hay against its worst-placed limit
 * @param lotVerdict the lot alone for the horse's groups
 * @param why in plain words
 */
public record ShareLine(
    String horse,
    String client,
    String group,
    String lot,
    String from,
    List<String> now,
    @Nullable Double kgPerDay,
    double days,
    @Nullable Double kg,
    String verdict,
    String lotVerdict,
    String why)
    implements Serializable {
  public ShareLine {
    now = List.copyOf(now);
  }
}
