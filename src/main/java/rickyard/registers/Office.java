package rickyard.registers;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rickyard.core.forage.Answer;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Lot;
import rickyard.core.nutrition.Delivery;
import rickyard.core.nutrition.Feed;
import rickyard.core.nutrition.Horse;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.WeighedMeasure;

/**
 * An office as its registers describe it: only what could be read without doubt; everything in a
 * fixed order that does not depend on the order of rows.
 *
 * @param clients by client id
 * @param horses by horse id; horses with a bad row are missing
 * @param lots by lot id; lots with a bad row are missing
 * @param deliveries by client, day and lot
 * @param feeds by feed id and batch
 * @param rations by horse and first day; horses with a bad ration row have none
 * @param measures by client, item, measure and day, undated ones first
 * @param answers by question id
 * @param decisions by row of the register, the oldest entry first
 * @param files the register files as found, by name
 * @param advisers by the name that clients.csv gives them
 */
public record Office(
    SortedMap<String, Client> clients,
    SortedMap<String, Horse> horses,
    SortedMap<String, Lot> lots,
    List<Delivery> deliveries,
    List<Feed> feeds,
    List<Ration> rations,
    List<WeighedMeasure> measures,
    List<Answer> answers,
    List<Decision> decisions,
    List<RegisterFile> files,
    SortedMap<String, Adviser> advisers) {

  public Office {
    clients = sorted(clients);
    horses = sorted(horses);
    lots = sorted(lots);
    deliveries = List.copyOf(deliveries);
    feeds = List.copyOf(feeds);
    rations = List.copyOf(rations);
    measures = List.copyOf(measures);
    answers = List.copyOf(answers);
    decisions = List.copyOf(decisions);
    files = List.copyOf(files);
    advisers = sorted(advisers);
  }

  private static <T> SortedMap<String, T> sorted(Map<String, T> map) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(map));
  }

  public Optional<Client> findClient(String clientId) {
    return Optional.ofNullable(clients.get(clientId));
  }

  /** The adviser that clients.csv names, if the office keeps a register of them. */
  public Optional<Adviser> findAdviser(String adviser) {
    return Optional.ofNullable(advisers.get(adviser.strip()));
  }

  public Optional<Horse> findHorse(String horseId) {
    return Optional.ofNullable(horses.get(horseId));
  }

  public Optional<Lot> findLot(String lotId) {
    return Optional.ofNullable(lots.get(lotId));
  }

  /**
   * The feed that a ration item means: the batch named, or the only one where none is named.
   *
   * @param batch as the ration says it; empty if not said
   */
  public Optional<Feed> findFeed(String feedId, String batch) {
    List<Feed> all = feeds.stream().filter(f -> f.id().equals(feedId)).toList();
    Optional<Feed> exact = all.stream().filter(f -> f.batch().equals(batch)).findFirst();
    return exact.isPresent() || !batch.isEmpty() || all.size() != 1
        ? exact
        : Optional.of(all.get(0));
  }

  /** The ration in force on a day: the newest whose first day is not after it. */
  public Optional<Ration> findRation(String horseId, LocalDate on) {
    return rations.stream()
        .filter(r -> r.horseId().equals(horseId) && !r.since().isAfter(on))
        .reduce((older, newer) -> newer);
  }

  /** The rations that begin after a day, the next one first. */
  public List<Ration> plannedRations(String horseId, LocalDate after) {
    return rations.stream()
        .filter(r -> r.horseId().equals(horseId) && r.since().isAfter(after))
        .toList();
  }

  /** The newest weighing of an item at a client's yard, undated ones counting as oldest. */
  public Optional<WeighedMeasure> findMeasure(String clientId, String item, String measure) {
    return measures.stream()
        .filter(m -> m.clientId().equals(clientId) && m.item().equals(item))
        .filter(m -> m.measure().equals(measure))
        .reduce((older, newer) -> newer);
  }

  /** The names of the registers that were there. */
  public List<String> present() {
    return files.stream().map(RegisterFile::name).toList();
  }

  /** One SHA-256 over the names and bytes of all register files, for the morning's identity. */
  public String digest() {
    StringBuilder all = new StringBuilder();
    files.forEach(f -> all.append(f.name()).append(' ').append(f.sha256()).append('\n'));
    return RegisterFile.sha256(all.toString().getBytes(StandardCharsets.UTF_8));
  }
}
