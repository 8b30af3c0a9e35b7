package rickyard.morning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import rickyard.registers.Office;

/**
 * A horse, client or lot that a name may mean.
 *
 * @param kind horse, client or lot
 * @param id register key, or the label of a lot that no register knows
 * @param name as people call it
 * @param client whose it is; empty if nobody's
 */
record AboutMatch(String kind, String id, String name, String client) {
  static final String HORSE = "horse";
  static final String CLIENT = "client";
  static final String LOT = "lot";

  /** What an office has, horses first; lots also as reports name them. */
  static List<AboutMatch> all(Office office, List<String> judgedLots) {
    List<AboutMatch> all = new ArrayList<>();
    office.horses().forEach((id, h) -> all.add(new AboutMatch(HORSE, id, h.name(), h.clientId())));
    office.clients().forEach((id, c) -> all.add(new AboutMatch(CLIENT, id, c.name(), id)));
    judgedLots.forEach(
        id ->
            all.add(
                new AboutMatch(
                    LOT, id, id, office.findLot(id).map(lot -> lot.holder()).orElse(""))));
    return all;
  }

  /**
   * Those that a name means: by key, else by name, else by a part of either; case does not matter.
   */
  static List<AboutMatch> of(String name, List<AboutMatch> all) {
    String wanted = plain(name);
    List<Predicate<AboutMatch>> ways =
        List.of(
            m -> m.id().equals(name.strip()),
            m -> plain(m.id()).equals(wanted),
            m -> plain(m.name()).equals(wanted),
            m -> plain(m.id()).contains(wanted) || plain(m.name()).contains(wanted));
    return ways.stream()
        .map(way -> all.stream().filter(way).toList())
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
