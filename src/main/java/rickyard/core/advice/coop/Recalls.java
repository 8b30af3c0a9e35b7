package rickyard.core.advice.coop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
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
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.forage.Decision;
import rickyard.core.forage.Lot;
import rickyard.core.judgement.Limit;
import rickyard.core.judgement.Severity;
import rickyard.core.judgement.Verdict;
import rickyard.core.judgement.Word;
import rickyard.core.nutrition.Delivery;

/**
 * Who has a lot whose verdict fell since the last finished morning. A verdict falls when a limit
 * that asks for a change was judged before and stands worse now; a lot that nobody could judge
 * before has told nobody anything.
 */
public final class Recalls {
  private static final Set<Word> JUDGED =
      Set.of(Word.CLEARS, Word.BORDERLINE_UNDER, Word.BORDERLINE_OVER);

  private final LocalDate asOf;
  private final SortedMap<String, Lot> lots;
  private final List<Delivery> deliveries;
  private final List<Decision> decisions;
  private final List<HorseAdvice> advice;

  /**
   * Prepares the search.
   *
   * @param asOf the morning's day; what was delivered or told later does not count
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
    this.decisions = List.copyOf(decisions);
    this.advice = List.copyOf(advice);
  }

  /**
   * The recalls, by lot, client and horse.
   *
   * @param before for each lot the word of each limit at the last finished morning
   * @param now for each lot its verdicts
   */
  public List<RecallLine> of(
      SortedMap<String, ? extends SortedMap<String, String>> before,
      SortedMap<String, List<Verdict>> now) {
    List<RecallLine> lines = new ArrayList<>();
    now.forEach(
        (lot, verdicts) -> {
          SortedMap<String, String> old =
              before.containsKey(lot) ? before.get(lot) : new TreeMap<>();
          List<Verdict> fallen = verdicts.stream().filter(v -> isFallen(old, v)).toList();
          if (!fallen.isEmpty()) {
            clients(lot).forEach(client -> add(lot, client, old, fallen, lines));
          }
        });
    return lines;
  }

  private static boolean isFallen(SortedMap<String, String> before, Verdict now) {
    boolean asksForChange =
        now.limit().severity() == Severity.STOP || now.limit().severity() == Severity.CHANGE;
    return asksForChange
        && Arrays.stream(Word.values())
            .filter(w -> w.code().equals(before.get(now.limit().id())))
            .anyMatch(w -> JUDGED.contains(w) && now.word().compareTo(w) > 0);
  }

  private SortedSet<String> clients(String lot) {
    Stream<String> delivered =
        deliveries.stream().filter(d -> d.lotId().equals(lot)).map(Delivery::clientId);
    Stream<String> holder =
        Optional.ofNullable(lots.get(lot)).map(Lot::holder).stream()
            .filter(h -> !h.isEmpty() && !h.equals("co-op"));
    return Stream.concat(delivered, holder).collect(Collectors.toCollection(TreeSet::new));
  }

  private void add(
      String lot,
      String client,
      SortedMap<String, String> before,
      List<Verdict> fallen,
      List<RecallLine> lines) {
    Set<String> groups = fallen.stream().map(v -> v.limit().group()).collect(Collectors.toSet());
    List<String> horses =
        advice.stream()
            .filter(a -> a.client().equals(client) && isFed(a, lot))
            .filter(
                a -> groups.contains(Limit.ALL) || a.groups().stream().anyMatch(groups::contains))
            .map(HorseAdvice::horse)
            .sorted()
            .toList();
    if (horses.isEmpty()) {
      lines.add(line(lot, client, "", before, fallen));
    }
    for (String horse : horses) {
      lines.add(line(lot, client, horse, before, concerning(horse, fallen)));
    }
  }

  private List<Verdict> concerning(String horse, List<Verdict> fallen) {
    Set<String> groups =
        advice.stream()
            .filter(a -> a.horse().equals(horse))
            .flatMap(a -> a.groups().stream())
            .collect(Collectors.toSet());
    return fallen.stream()
        .filter(v -> v.limit().group().equals(Limit.ALL) || groups.contains(v.limit().group()))
        .toList();
  }

  private static boolean isFed(HorseAdvice advice, String lot) {
    return holds(advice.before(), lot) || holds(advice.after(), lot);
  }

  private static boolean holds(@Nullable DietSummary diet, String lot) {
    return diet != null && diet.portions().stream().anyMatch(p -> p.item().equals(lot));
  }

  private RecallLine line(
      String lot,
      String client,
      String horse,
      SortedMap<String, String> before,
      List<Verdict> fallen) {
    Optional<Delivery> delivery = delivery(lot, client);
    Optional<Decision> told = told(lot, horse);
    List<String> words = new ArrayList<>();
    fallen.forEach(v -> words.add(words(before, v)));
    if (horse.isEmpty()) {
      words.add("no horse of a group concerned is known to eat it there");
    }
    delivery.flatMap(Delivery::finishedOn).ifPresent(day -> words.add("used up on " + day));
    words.add(told.map(Recalls::words).orElse("nothing on record of what was told"));
    return new RecallLine(
        lot,
        client,
        horse,
        delivery.map(Delivery::deliveredOn),
        told.map(Decision::date),
        String.join("; ", words));
  }

  private static String words(SortedMap<String, String> before, Verdict now) {
    return now.limit().id()
        + ": "
        + before.get(now.limit().id())
        + " before, "
        + now.word().code()
        + " now ("
        + now.reason()
        + ")";
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

  private Optional<Decision> told(String lot, String horse) {
    return decisions.stream()
        .filter(d -> d.kind().equals("told") && !d.date().isAfter(asOf))
        .filter(d -> d.about().equals(lot) || (!horse.isEmpty() && d.about().equals(horse)))
        .max(Comparator.comparing(Decision::date).thenComparing(Decision::row));
  }
}
