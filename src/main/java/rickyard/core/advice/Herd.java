package rickyard.core.advice;

import static java.util.Objects.requireNonNull;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Horses of one client on one shared bale: what each eats of it nobody knows, so the bale is judged
 * for the most sensitive of them.
 *
 * @param name as the register writes it
 * @param members names of the horses with their groups of limits, those without limits too
 * @param bales what is shared, sorted
 * @param verdicts on the bales, for every group of the herd
 * @param unread horses whose rows cannot be read: whether they share the bale is not known
 */
record Herd(
    String name,
    SortedMap<String, SortedSet<String>> members,
    SortedSet<String> bales,
    List<BaleVerdict> verdicts,
    List<String> unread) {
  Herd {
    requireNonNull(name, "name");
    members = Collections.unmodifiableSortedMap(new TreeMap<>(members));
    bales = Collections.unmodifiableSortedSet(new TreeSet<>(bales));
    verdicts = List.copyOf(verdicts);
    unread = List.copyOf(unread);
  }

  /** The groups of all its horses together. */
  SortedSet<String> groups() {
    return members.values().stream()
        .flatMap(SortedSet::stream)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Whether a shared bale does not clear what a horse of the herd needs. */
  boolean isBaleInTheWay() {
    return verdicts.stream().anyMatch(BaleVerdict::standsAgainst);
  }

  /** The horses with limits, each with its groups, in words. */
  private String sensitive() {
    return members.entrySet().stream()
        .filter(m -> !m.getValue().isEmpty())
        .map(m -> m.getKey() + " (" + String.join(", ", m.getValue()) + ")")
        .collect(Collectors.joining(", "));
  }

  List<NoteLine> notes() {
    String who = sensitive();
    String what =
        bales.isEmpty()
            ? "the herd " + name + " shares a bale, and no ration says which"
            : "the herd " + name + " shares " + String.join(", ", bales);
    String judged =
        who.isEmpty()
            ? "; no horse of it has limits of its own"
            : "; it is judged for its most sensitive: "
                + who
                + "; a ration of its own holds only for a horse that is fed apart";
    NoteLine first = new NoteLine("shared-bale-for", what + judged);
    return unread.isEmpty()
        ? List.of(first)
        : List.of(
            first,
            new NoteLine(
                "shared-bale-unread",
                "whether these share the bale is not known, their rows cannot be read: "
                    + String.join(", ", unread)));
  }

  /** What can be done about a bale that is in the way: no amounts, the bale is nobody's own. */
  Proposal proposal(List<String> otherBales) {
    List<String> inTheWay =
        verdicts.stream()
            .filter(BaleVerdict::standsAgainst)
            .map(BaleVerdict::bale)
            .distinct()
            .toList();
    List<String> apart =
        verdicts.stream()
            .filter(BaleVerdict::standsAgainst)
            .flatMap(v -> v.sensitive().stream())
            .distinct()
            .sorted()
            .toList();
    String others =
        otherBales.isEmpty()
            ? "no lot in reach clears for the whole herd"
            : "or put out a bale that clears for the whole herd: " + String.join(", ", otherBales);
    String first =
        apart.isEmpty() ? "take it away" : "feed " + String.join(" and ", apart) + " apart from it";
    String why =
        String.join(", ", inTheWay)
            + " is shared by "
            + String.join(", ", members.keySet())
            + " and does not clear for all of them: "
            + first
            + ", "
            + others
            + ".";
    return new Proposal(1, "none", false, why, List.of(), null);
  }
}
