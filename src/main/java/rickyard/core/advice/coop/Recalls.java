package rickyard.core.advice.coop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Lot;
import rickyard.core.judgement.Verdict;
import rickyard.core.nutrition.Delivery;

/**
 * Who has a lot whose verdict fell, and who was told that something clears which does not: the
 * first morning knows no verdict before, but what was told. A line stands every morning until the
 * fall is over or a decision that was made with it known is about the horse; about the lot and the
 * client where no horse is known.
 */
public final class Recalls {
  private final LocalDate asOf;
  private final SortedMap<String, Lot> lots;
  private final List<Delivery> deliveries;
  private final List<Decision> decisions;
  private final List<HorseAdvice> advice;
  private final SortedMap<String, String> clientByHorse;

  /**
   * Prepares the search.
   *
   * @param asOf the morning's day; what was delivered or decided later does not count
   * @param lots of the register
   * @param deliveries all deliveries, used up or not
   * @param decisions the register, in its order
   * @param advice on every horse
   */
  public Recalls(
      LocalDate asOf,
      SortedMap<String, Lot> lots,
      List<Delivery> deliveries,
      List<Decision> decisions,
      List<HorseAdvice> advice) {
    this.asOf = asOf;
    this.lots = new TreeMap<>(lots);
    this.deliveries = deliveries.stream().filter(d -> !d.deliveredOn().isAfter(asOf)).toList();
    this.decisions = decisions.stream().filter(d -> !d.date().isAfter(asOf)).toList();
    this.advice = List.copyOf(advice);
    this.clientByHorse = new TreeMap<>();
    advice.forEach(a -> clientByHorse.put(a.horse(), a.client()));
  }

  /**
   * The recalls that are not dealt with, by lot, client and horse.
   *
   * @param falls what stands fallen, by lot and limit
   * @param now for each lot its verdicts
   */
  public List<RecallLine> of(
      SortedMap<String, SortedMap<String, Fall>> falls, SortedMap<String, List<Verdict>> now) {
    List<RecallLine> lines = new ArrayList<>();
    falls.forEach(
        (lot, ofLot) -> {
          Fallen fallen = new Fallen(lot, ofLot, now.getOrDefault(lot, List.of()));
          clients(fallen).forEach(client -> add(fallen, client, lines));
        });
    Set<String> known = lines.stream().map(RecallLine::horse).collect(Collectors.toSet());
    for (ToldWrong wrong : ToldWrong.of(advice, decisions, now)) {
      if (!known.contains(wrong.horse())) {
        lines.add(line(wrong));
      }
    }
    lines.sort(
        Comparator.comparing(RecallLine::lot)
            .thenComparing(RecallLine::client)
            .thenComparing(RecallLine::horse));
    return lines;
  }

  /** A lot with all that fell of it. */
  private record Fallen(String lot, SortedMap<String, Fall> falls, List<Verdict> verdicts) {
    LocalDate since() {
      return falls.values().stream().map(Fall::since).max(Comparator.naturalOrder()).orElseThrow();
    }

    /** What concerns a horse. */
    Fallen of(String horse) {
      SortedMap<String, Fall> own = new TreeMap<>(falls);
      own.values().removeIf(f -> !f.horses().contains(horse));
      return new Fallen(lot, own, verdicts);
    }

    List<String> words() {
      List<String> words = new ArrayList<>();
      falls.forEach((limit, fall) -> words.add(words(limit, fall)));
      return words;
    }

    private String words(String limit, Fall fall) {
      String now =
          verdicts.stream()
              .filter(v -> v.limit().id().equals(limit))
              .map(v -> v.word().code() + " now (" + v.reason() + ")")
              .findFirst()
              .orElse(fall.word() + " when it fell, no verdict now");
      return limit + ": " + fall.before() + " before, " + now;
    }
  }

  /** Who got it before it fell, or holds it; what comes later comes with its verdict. */
  private SortedSet<String> clients(Fallen fallen) {
    Stream<String> delivered =
        deliveries.stream()
            .filter(d -> d.lotId().equals(fallen.lot()))
            .filter(d -> !d.deliveredOn().isAfter(fallen.since()))
            .map(Delivery::clientId);
    Stream<String> holder =
        Optional.ofNullable(lots.get(fallen.lot())).map(Lot::holder).stream()
            .filter(h -> !h.isEmpty() && !h.equals("co-op"));
    Stream<String> eating =
        fallen.falls().values().stream()
            .map(Fall::horses)
            .flatMap(Collection::stream)
            .flatMap(h -> Optional.ofNullable(clientByHorse.get(h)).stream());
    return Stream.of(delivered, holder, eating)
        .flatMap(s -> s)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private void add(Fallen fallen, String client, List<RecallLine> lines) {
    List<String> horses =
        fallen.falls().values().stream()
            .map(Fall::horses)
            .flatMap(Collection::stream)
            .filter(h -> client.equals(clientByHorse.get(h)))
            .sorted()
            .distinct()
            .toList();
    if (horses.isEmpty() && !isDealtWith(fallen, about(fallen, client))) {
      lines.add(line(fallen, client, "", about(fallen, client)));
    }
    for (String horse : horses) {
      Fallen own = fallen.of(horse);
      if (!isDealtWith(own, List.of(horse))) {
        lines.add(line(own, client, horse, List.of(fallen.lot(), horse)));
      }
    }
  }

  /** What a decision is about that is for one client's hay: the lot alone if nobody else has it. */
  private List<String> about(Fallen fallen, String client) {
    String both = fallen.lot() + " " + client;
    return clients(fallen).size() == 1 ? List.of(both, fallen.lot()) : List.of(both);
  }

  private boolean isDealtWith(Fallen fallen, List<String> about) {
    return fallen.falls().values().stream()
        .allMatch(
            fall ->
                decisions.stream()
                    .anyMatch(d -> about.contains(d.about()) && fall.isDealtWithBy(d)));
  }

  private RecallLine line(Fallen fallen, String client, String horse, List<String> about) {
    Optional<Delivery> delivery = delivery(fallen.lot(), client);
    Optional<Decision> told = told(about);
    List<String> words = new ArrayList<>(fallen.words());
    if (horse.isEmpty()) {
      words.add("no horse of a group concerned is known to eat it there");
    }
    delivery.flatMap(Delivery::finishedOn).ifPresent(day -> words.add("used up on " + day));
    words.add(told.map(Recalls::words).orElse("nothing on record of what was told"));
    words.add(
        "stands until a decision (told, accepted or override) is about "
            + (horse.isEmpty() ? about.get(0) : horse));
    return new RecallLine(
        fallen.lot(),
        client,
        horse,
        delivery.map(Delivery::deliveredOn),
        told.map(Decision::date),
        String.join("; ", words),
        fallen.since());
  }

  private RecallLine line(ToldWrong wrong) {
    return new RecallLine(
        wrong.lot(),
        wrong.client(),
        wrong.horse(),
        delivery(wrong.lot(), wrong.client()).map(Delivery::deliveredOn),
        Optional.of(wrong.told().date()),
        words(wrong.told())
            + "; that holds no longer: "
            + wrong.now()
            + "; stands until a decision (told, accepted or override) is about "
            + wrong.told().about(),
        asOf);
  }

  private static String words(Decision told) {
    return "told on "
        + told.date()
        + " by "
        + told.by()
        + " about "
        + told.about()
        + ": "
        + told.value()
        + (told.why().isBlank() ? "" : " (" + told.why() + ")");
  }

  /** The delivery that counts: the first that is not used up, else the last. */
  private Optional<Delivery> delivery(String lot, String client) {
    List<Delivery> own =
        deliveries.stream()
            .filter(d -> d.lotId().equals(lot) && d.clientId().equals(client))
            .sorted(Comparator.comparing(Delivery::deliveredOn))
            .toList();
    Optional<Delivery> open = own.stream().filter(d -> !isUsedUp(d)).findFirst();
    return open.isPresent() || own.isEmpty() ? open : Optional.of(own.get(own.size() - 1));
  }

  private boolean isUsedUp(Delivery delivery) {
    return delivery.finishedOn().filter(day -> !day.isAfter(asOf)).isPresent();
  }

  private Optional<Decision> told(List<String> about) {
    return decisions.stream()
        .filter(d -> d.kind().equals("told") && about.contains(d.about()))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row));
  }
}
