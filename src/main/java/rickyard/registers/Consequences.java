package rickyard.registers;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.tables.TableProblem;

/**
 * Whom a bad row concerns: the thing it describes, and the horses whose diet rests on it. Erring
 * here means erring towards too many horses that wait for a correction.
 */
final class Consequences {
  private final Keys keys;
  private final Findings findings;
  private final Map<String, Set<String>> horsesByItem = new TreeMap<>();
  private final Map<String, Set<String>> horsesByMeasuredItem = new TreeMap<>();
  private final Map<String, Set<String>> horsesByClient = new TreeMap<>();

  Consequences(Keys keys, List<RegisterRow> rations, Findings findings) {
    this.keys = keys;
    this.findings = findings;
    for (RegisterRow row : rations) {
      String horse = row.text("horse_id");
      add(horsesByItem, row.text("item"), horse);
      if (RowParsers.MEASURES.contains(row.text("unit"))) {
        add(horsesByMeasuredItem, row.text("item"), horse);
      }
    }
    for (String horse : keys.horseIds()) {
      keys.clientsOf(horse).forEach(client -> add(horsesByClient, client, horse));
    }
  }

  private static void add(Map<String, Set<String>> map, String key, String value) {
    map.computeIfAbsent(key, k -> new TreeSet<>()).add(value);
  }

  /** Files the problems of a row, if it has any, under everything that they concern. */
  void of(Register register, RegisterRow row) {
    for (TableProblem problem : row.problems()) {
      switch (register) {
        case ADVISERS -> bad(Concern.ADVISER, row, "adviser", "", problem);
        case CLIENTS -> bad(Concern.CLIENT, row, "client_id", "client_id", problem);
        case HORSES -> bad(Concern.HORSE, row, "horse_id", "client_id", problem);
        case LOTS -> {
          bad(Concern.LOT, row, "lot_id", "", problem);
          horses(horsesByItem.getOrDefault(row.text("lot_id"), Set.of()), problem);
        }
        case FEEDS -> {
          bad(Concern.FEED, row, "feed_id", "", problem);
          horses(horsesByItem.getOrDefault(row.text("feed_id"), Set.of()), problem);
        }
        case DELIVERIES -> {
          bad(Concern.LOT, row, "lot_id", "client_id", problem);
          horses(deliveredTo(row, problem), problem);
        }
        case RATIONS -> ration(row, problem);
        case MEASURES -> {
          bad(Concern.CLIENT, row, "client_id", "client_id", problem);
          horses(measuredBy(row), problem);
        }
        case ANSWERS -> bad(Concern.ANSWER, row, "question_id", "", problem);
        case DECISIONS -> bad(Concern.DECISION, row, "about", "", problem);
      }
    }
  }

  private void bad(
      Concern concern, RegisterRow row, String key, String client, TableProblem problem) {
    findings.bad(concern, row.text(key), client.isEmpty() ? "" : row.text(client), problem);
  }

  private void horses(Set<String> horses, TableProblem problem) {
    for (String horse : horses) {
      Set<String> clients = keys.clientsOf(horse);
      String client = clients.isEmpty() ? "" : clients.iterator().next();
      findings.bad(Concern.HORSE, horse, client, problem);
    }
  }

  /**
   * A ration row without a horse may be any horse's, so it makes the register unusable; one of an
   * unknown horse may be the missing row of one with nearly the same id.
   */
  private void ration(RegisterRow row, TableProblem problem) {
    String horse = row.text("horse_id");
    if (horse.isEmpty()) {
      findings.fatal(problem);
      return;
    }
    horses(Set.of(horse), problem);
    if (problem.code().equals("unknown-horse")) {
      horses(keys.horsesNear(horse), problem);
    }
  }

  /** The client's horses on the lot or on the one it replaces; all, where that is not readable. */
  private Set<String> deliveredTo(RegisterRow row, TableProblem problem) {
    Set<String> ofClient =
        new TreeSet<>(horsesByClient.getOrDefault(row.text("client_id"), Set.of()));
    boolean readable = !List.of("lot_id", "replaces", "").contains(problem.column());
    if (readable) {
      Set<String> fed = new TreeSet<>(horsesByItem.getOrDefault(row.text("lot_id"), Set.of()));
      fed.addAll(horsesByItem.getOrDefault(row.text("replaces"), Set.of()));
      ofClient.retainAll(fed);
    }
    return ofClient;
  }

  private Set<String> measuredBy(RegisterRow row) {
    Set<String> horses =
        new TreeSet<>(horsesByClient.getOrDefault(row.text("client_id"), Set.of()));
    horses.retainAll(horsesByMeasuredItem.getOrDefault(row.text("item"), Set.of()));
    return horses;
  }
}
