package rickyard.second;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** A lot as the only forage against one limit. */
record LotRuling(Optional<Num> value, Ruling ruling) {

  /** By limit; limits that are silent about what nobody measured are not there. */
  static SortedMap<String, LotRuling> all(
      Books books, SortedMap<String, Num> contents, boolean isDryStored) {
    SortedMap<String, LotRuling> all = new TreeMap<>();
    books
        .rows("limits", "subject", "lot")
        .filter(
            limit -> {
              String materials = limit.get("materials");
              return materials.isEmpty() || materials.equals(isDryStored ? "hay" : "haylage");
            })
        .forEach(
            limit -> {
              LotRuling found = of(limit, contents);
              boolean isSilent =
                  found.ruling().word().equals("cannot-judge")
                      && limit.get("if_missing").equals("silent");
              if (!isSilent) {
                all.put(limit.get("limit_id"), found);
              }
            });
    return all;
  }

  private static LotRuling of(Map<String, String> limit, SortedMap<String, Num> contents) {
    String code = limit.get("quantity").toUpperCase(Locale.ROOT);
    Optional<Num> own =
        code.equals("MOISTURE")
            ? Optional.ofNullable(contents.get("DM")).map(LotRuling::water)
            : Optional.ofNullable(contents.get(code));
    double factor = limit.get("unit").startsWith("ug/kg") ? 1000 : 1;
    Optional<Num> value = own.map(n -> n.times(factor));
    return new LotRuling(
        value,
        Ruling.underMaximum(
            value, Double.parseDouble(limit.get("value")), Csv.number(limit.get("risk"))));
  }

  private static Num water(Num dm) {
    return new Num(
        100 - dm.best(),
        100 - dm.high(),
        100 - dm.low(),
        100 - dm.upper(),
        100 - dm.lower(),
        dm.u(),
        dm.origin());
  }
}
