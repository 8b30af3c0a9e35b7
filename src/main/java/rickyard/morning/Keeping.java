package rickyard.morning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rickyard.intake.arrive.Arrival;
import rickyard.ledger.ArrivalRow;
import rickyard.ledger.Originals;

/**
 * Keeps the bytes of everything that arrived. Each original has to lie on the disk before the next
 * step, and to wait for the disk takes longer than anything else about it: small ones are written
 * several at a time.
 */
final class Keeping {
  private static final int AT_A_TIME = 8;

  /** Bytes; of larger files one is in memory at a time. */
  private static final long SMALL = 1 << 20;

  private final Inputs inputs;
  private final Originals originals;
  private final Map<String, Arrival> byPath = new HashMap<>();

  Keeping(Inputs inputs, Originals originals) {
    this.inputs = inputs;
    this.originals = originals;
    inputs.inventory().arrivals().forEach(a -> byPath.put(a.relativePath(), a));
  }

  /** The rows, with a problem where a file changed meanwhile. */
  List<ArrivalRow> keep(List<ArrivalRow> rows) {
    List<ArrivalRow> small = new ArrayList<>();
    Set<String> known = new HashSet<>();
    for (ArrivalRow row : rows) {
      if (row.problemCode().isEmpty() && row.bytes() <= SMALL && known.add(row.sha256())) {
        small.add(row);
      }
    }
    Map<String, ArrivalRow> kept = new HashMap<>();
    Hands.map(AT_A_TIME, small, this::keep).forEach(row -> kept.put(row.path(), row));
    return rows.stream().map(row -> kept.getOrDefault(row.path(), row)).map(this::keep).toList();
  }

  /** Keeps the bytes of a file; one that changed since the inventory gets a problem instead. */
  private ArrivalRow keep(ArrivalRow row) {
    if (!row.problemCode().isEmpty() || originals.has(row.sha256(), row.bytes())) {
      return row;
    }
    Arrival arrival = byPath.get(row.path());
    if (arrival == null) {
      throw new IllegalStateException("no entry of the inventory for a row of the arrivals");
    }
    return inputs
        .inventory()
        .read(
            arrival,
            bytes -> {
              originals.keep(row.sha256(), bytes);
              return row;
            },
            problem ->
                new ArrivalRow(
                    row.path(), row.sha256(), row.bytes(), problem.code(), problem.sentence()));
  }
}
