package rickyard.report.about;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is said of one horse, client or lot.
 *
 * @param kind horse, client or lot
 * @param id register key
 * @param name as people call it
 * @param client whose it is; empty if nobody's
 * @param phone of the client; empty if there is none
 * @param verdict the word of the worst-placed limit; empty for a client
 * @param limitId that limit; empty where none applies
 * @param value what is held against it; null if unknown
 * @param u its standard uncertainty; null if unknown
 * @param pOver chance of being over it; null if it cannot be told
 * @param told what was said last, with day and by whom; empty if never
 * @param hayDays days until the first of its hays runs out; null if not known
 * @param lines the card itself, the most urgent first
 */
public record AboutCard(
    String kind,
    String id,
    String name,
    String client,
    String phone,
    String verdict,
    String limitId,
    @Nullable Double value,
    @Nullable Double u,
    @Nullable Double pOver,
    String told,
    @Nullable Double hayDays,
    List<Line> lines) {

  /** A line of the card: what it is about, and the words. */
  public record Line(String label, String words) {}

  public AboutCard {
    requireNonNull(kind, "kind");
    requireNonNull(id, "id");
    lines = List.copyOf(lines);
  }

  /** One of several that a name may mean. */
  public static AboutCard listed(String kind, String id, String name, String client, String phone) {
    return new AboutCard(
        kind, id, name, client, phone, "", "", null, null, null, "", null, List.of());
  }
}
