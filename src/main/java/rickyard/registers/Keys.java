package rickyard.registers;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The keys that the registers hold, rows with other faults included, for the checks between them. A
 * register that could not be read at all knows every key, so that one fault is told once.
 */
final class Keys {
  /** Proposals cost time; after this many unknown names a load makes no more of them. */
  private static final int MOST_PROPOSALS = 200;

  private static final int MOST_CANDIDATES = 5000;
  private static final int MOST_NEAR_SEARCHES = 50;

  private final Map<Register, SortedMap<String, Set<String>>> known;
  private final Set<Register> unchecked;
  private int proposalsLeft = MOST_PROPOSALS;
  private int nearSearchesLeft = MOST_NEAR_SEARCHES;

  /**
   * The keys of the rows.
   *
   * @param rows the registers that could be read
   * @param unchecked the registers whose keys are not known
   */
  Keys(Map<Register, List<RegisterRow>> rows, Set<Register> unchecked) {
    this.known = new TreeMap<>();
    this.unchecked = new TreeSet<>(unchecked);
    collect(rows, Register.CLIENTS, "client_id", "client_id");
    collect(rows, Register.HORSES, "horse_id", "client_id");
    collect(rows, Register.LOTS, "lot_id", "lot_id");
    collect(rows, Register.FEEDS, "feed_id", "batch");
  }

  private void collect(
      Map<Register, List<RegisterRow>> rows, Register register, String key, String value) {
    SortedMap<String, Set<String>> keys = new TreeMap<>();
    for (RegisterRow row : rows.getOrDefault(register, List.of())) {
      if (!row.text(key).isEmpty()) {
        keys.computeIfAbsent(row.text(key), k -> new TreeSet<>()).add(row.text(value));
      }
    }
    known.put(register, keys);
  }

  private SortedMap<String, Set<String>> of(Register register) {
    return known.getOrDefault(register, new TreeMap<>());
  }

  boolean has(Register register, String key) {
    return of(register).containsKey(key) || unchecked.contains(register);
  }

  /** The clients of a horse as its rows say: one, unless the register is faulty. */
  Set<String> clientsOf(String horseId) {
    return of(Register.HORSES).getOrDefault(horseId, Set.of());
  }

  Set<String> horseIds() {
    return of(Register.HORSES).keySet();
  }

  /** The horses whose id is one mistake away from {@code id}. */
  Set<String> horsesNear(String id) {
    Set<String> near = new TreeSet<>();
    if (nearSearchesLeft > 0) {
      nearSearchesLeft--;
      for (String horse : horseIds()) {
        if (Math.abs(horse.length() - id.length()) <= 1 && Nearest.distance(horse, id) == 1) {
          near.add(horse);
        }
      }
    }
    return near;
  }

  /** The batches of a feed; empty where the feed is not in the register. */
  Set<String> batchesOf(String feedId) {
    return of(Register.FEEDS).getOrDefault(feedId, Set.of());
  }

  /** The ids that are both a lot's and a feed's. */
  Set<String> lotsThatAreFeeds() {
    Set<String> both = new TreeSet<>(of(Register.LOTS).keySet());
    both.retainAll(of(Register.FEEDS).keySet());
    return both;
  }

  /** The client named by a cell; an unknown one makes the row bad. */
  String client(RegisterRow row, String column) {
    return named(row, column, Register.CLIENTS, "a client of clients.csv");
  }

  /** The horse named by a cell; an unknown one makes the row bad. */
  String horse(RegisterRow row, String column) {
    return named(row, column, Register.HORSES, "a horse of horses.csv");
  }

  /** The lot named by a cell; an unknown one makes the row bad. */
  String lot(RegisterRow row, String column) {
    return named(row, column, Register.LOTS, "a lot of lots.csv");
  }

  /** The lot or feed named by a cell; an unknown one makes the row bad. */
  String item(RegisterRow row, String column) {
    String id = row.key(column);
    if (!id.isEmpty() && !has(Register.LOTS, id) && !has(Register.FEEDS, id)) {
      Set<String> all = new TreeSet<>(of(Register.LOTS).keySet());
      all.addAll(of(Register.FEEDS).keySet());
      row.wrong(column, "unknown-item", "a lot of lots.csv or a feed of feeds.csv" + near(id, all));
    }
    return id;
  }

  private String named(RegisterRow row, String column, Register register, String expected) {
    String id = row.key(column);
    if (!id.isEmpty() && !has(register, id)) {
      row.wrong(
          column,
          "unknown-" + register.columns().get(0).names().get(0).replace("_id", ""),
          expected + near(id, of(register).keySet()));
    }
    return id;
  }

  private String near(String id, Set<String> known) {
    if (proposalsLeft == 0 || known.size() > MOST_CANDIDATES) {
      return "";
    }
    proposalsLeft--;
    Optional<String> nearest = Nearest.of(id, known);
    return nearest.map(n -> " (nearest: " + n + ")").orElse("");
  }
}
