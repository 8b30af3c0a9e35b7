package rickyard.core.advice.coop;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.PortionLine;
import rickyard.core.nutrition.Horse;
import rickyard.core.remedy.share.Need;

/**
 * A horse, or a herd on one bale, that eats hay of lots.
 *
 * @param id of the horse or herd; of one lot of a mixture with the lot behind it
 * @param groups of all members
 * @param limited those of them that need cleared hay
 * @param group the most sensitive of these, else of those that need a cleared diet; empty where
 *     there is none
 * @param rank its place in the order of sensitivity
 * @param members at least one
 * @param may lots that it may be given
 * @param now lots that it is fed as things stand
 * @param mixed whether it eats this lot in a mixture that clears as a whole diet
 */
record Eater(
    String id,
    SortedSet<String> groups,
    SortedSet<String> limited,
    String group,
    int rank,
    List<Member> members,
    Set<String> may,
    SortedSet<String> now,
    boolean mixed) {

  /**
   * One horse and the hay that it eats per day.
   *
   * @param fed the diet that the hay is of
   * @param replaced all hay of lots that gives its place to other hay
   * @param kgByLot kg as fed per day of each lot
   * @param dmByLot kg of dry matter per day of each lot
   */
  record Member(
      Horse horse,
      HorseAdvice advice,
      DietSummary fed,
      SortedSet<String> replaced,
      SortedMap<String, Double> kgByLot,
      SortedMap<String, Double> dmByLot) {
    Member {
      replaced = Collections.unmodifiableSortedSet(new TreeSet<>(replaced));
      kgByLot = Collections.unmodifiableSortedMap(new TreeMap<>(kgByLot));
      dmByLot = Collections.unmodifiableSortedMap(new TreeMap<>(dmByLot));
    }

    double kgDm() {
      return dmByLot.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    double kg() {
      return kgByLot.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Hay of lots that it is fed as things stand, whatever else is proposed. */
    SortedSet<String> standing() {
      SortedSet<String> lots = new TreeSet<>(replaced);
      Optional<DietSummary> diet = advice.held().or(() -> Optional.ofNullable(advice.after()));
      Set<String> items =
          diet.stream()
              .flatMap(d -> d.portions().stream())
              .filter(PortionLine::asForage)
              .map(PortionLine::item)
              .collect(Collectors.toSet());
      lots.retainAll(items);
      return lots;
    }

    /** The same horse with one of its lots only. */
    Member only(String lot) {
      SortedMap<String, Double> kg = new TreeMap<>(kgByLot);
      SortedMap<String, Double> dm = new TreeMap<>(dmByLot);
      kg.keySet().retainAll(List.of(lot));
      dm.keySet().retainAll(List.of(lot));
      return new Member(horse, advice, fed, replaced, kg, dm);
    }
  }

  Eater {
    groups = Collections.unmodifiableSortedSet(new TreeSet<>(groups));
    limited = Collections.unmodifiableSortedSet(new TreeSet<>(limited));
    members = List.copyOf(members);
    may = Set.copyOf(may);
    now = Collections.unmodifiableSortedSet(new TreeSet<>(now));
  }

  /** Whether a member is fed of a lot as things stand. */
  boolean isFed(String lot) {
    return members.stream().anyMatch(m -> m.standing().contains(lot));
  }

  String client() {
    return members.get(0).horse().clientId();
  }

  double kgDm() {
    return members.stream().mapToDouble(Member::kgDm).sum();
  }

  double kg() {
    return members.stream().mapToDouble(Member::kg).sum();
  }

  List<String> horses() {
    return members.stream().map(m -> m.horse().id()).toList();
  }

  Eater withMay(Set<String> lots) {
    return new Eater(id, groups, limited, group, rank, members, lots, now, mixed);
  }

  /** What it needs until the horizon. */
  Need need(double days) {
    return new Need(
        id, client(), rank, !limited.isEmpty(), Math.round(kgDm() * days * 1000), may, now);
  }
}
