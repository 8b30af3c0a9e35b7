package rickyard.report.about;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.Decision;
import rickyard.report.text.Mass;
import rickyard.report.view.ClientFacts;
import rickyard.report.view.FollowUpRow;
import rickyard.report.view.HorseFacts;
import rickyard.report.view.LotRow;

/**
 * What a card is made of.
 *
 * @param horses of the register
 * @param clients of the register
 * @param advice on the horses that the cards need
 * @param lots judged
 * @param decisions what was told and decided up to the day
 * @param followUps what is due
 * @param hay what is left, by client
 * @param mass kg or lb
 */
public record AboutFacts(
    SortedMap<String, HorseFacts> horses,
    SortedMap<String, ClientFacts> clients,
    List<HorseAdvice> advice,
    List<LotRow> lots,
    List<Decision> decisions,
    List<FollowUpRow> followUps,
    SortedMap<String, List<Hay>> hay,
    Mass mass) {
  public AboutFacts {
    horses = Collections.unmodifiableSortedMap(new TreeMap<>(horses));
    clients = Collections.unmodifiableSortedMap(new TreeMap<>(clients));
    advice = List.copyOf(advice);
    lots = List.copyOf(lots);
    decisions = List.copyOf(decisions);
    followUps = List.copyOf(followUps);
    hay = Collections.unmodifiableSortedMap(new TreeMap<>(hay));
    requireNonNull(mass, "mass");
  }

  /** A client of the register. */
  public ClientFacts client(String id) {
    return Optional.ofNullable(clients.get(id)).orElseThrow();
  }

  List<Hay> hay(String client) {
    return hay.getOrDefault(client, List.of());
  }
}
