package rickyard.report.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of share.csv: which lot a horse is to have, kg as fed, and how its diet then stands.
 *
 * @param lot empty for days for which nothing is left
 * @param kgPerDay null where nothing is left or a veterinarian decides
 * @param days how long
 * @param kg in all; null as for {@code kgPerDay}
 * @param verdict of the whole diet with it
 * @param client whose horse it is
 * @param group its most sensitive group that needs cleared hay; empty where it needs none
 * @param from the client whose hay it is; empty where it is for sale
 * @param now lots that it is fed as things stand
 * @param lotVerdict of the lot alone for the horse's groups
 */
public record ShareRow(
    String horse,
    String lot,
    @Nullable Double kgPerDay,
    @Nullable Double days,
    @Nullable Double kg,
    String verdict,
    String why,
    String client,
    String group,
    String from,
    List<String> now,
    String lotVerdict) {
  public ShareRow {
    now = List.copyOf(now);
  }
}
