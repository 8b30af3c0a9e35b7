package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.nutrition.Horse;
import rickyard.core.remedy.MassUnit;

/**
 * The units that amounts are weighed in: a client's own where it is on record, else the office's.
 *
 * @param office unit of a client who names none
 * @param byClient unit of each client who does
 */
public record Scales(MassUnit office, SortedMap<String, MassUnit> byClient) {
  public Scales {
    requireNonNull(office, "office");
    byClient = Collections.unmodifiableSortedMap(new TreeMap<>(byClient));
  }

  MassUnit of(Horse horse) {
    return byClient.getOrDefault(horse.clientId(), office);
  }
}
