package rickyard.registers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rickyard.core.nutrition.Ration;
import rickyard.core.nutrition.RationItem;

/**
 * Rows of rations.csv as rations: the rows of one horse with the same {@code since} are one. A
 * horse with one bad row has no ration here, because a ration with an item missing would be judged
 * as if it were whole.
 */
final class RationRows {
  private static final List<String> UNITS =
      List.of("kg", "lb", "pct_bw", "ad-lib", "bale", "flake", "net", "scoop");
  private static final List<String> FED = List.of("forage", "bucket");
  private static final List<String> PREPARED = List.of("dry", "soaked", "steamed");

  private static final Comparator<RationItem> ORDER =
      Comparator.comparing(RationItem::item)
          .thenComparing(RationItem::batch)
          .thenComparing(RationItem::asForage)
          .thenComparing(RationItem::prepared);

  private final Keys keys;
  private final Set<List<String>> seen = new HashSet<>();
  private final Set<String> spoilt = new TreeSet<>();
  private final Map<String, Map<LocalDate, List<RationItem>>> items = new TreeMap<>();

  RationRows(Keys keys) {
    this.keys = keys;
  }

  void add(RegisterRow row) {
    String horse = keys.horse(row, "horse_id");
    String item = keys.item(row, "item");
    String batch = batch(row, item);
    String unit = row.requiredWord("unit", UNITS);
    OptionalDouble amount = amount(row, unit);
    String fed = row.requiredWord("fed", FED);
    OptionalInt meals = row.whole("meals", 1, 24);
    String prepared = row.word("prepared", PREPARED);
    if (row.text("since").isEmpty()) {
      row.wrong("since", "blank", "YYYY-MM-DD");
    }
    Optional<LocalDate> since = row.day("since");
    if (!seen.add(List.of(horse, item, batch, fed, prepared, row.text("since")))) {
      row.wrong("item", "given-twice", "each item once in a ration");
    }
    if (row.isBad()) {
      spoilt.add(horse);
      return;
    }
    items
        .computeIfAbsent(horse, h -> new TreeMap<>())
        .computeIfAbsent(since.orElseThrow(), s -> new ArrayList<>())
        .add(
            new RationItem(
                item,
                batch,
                amount.orElse(0),
                unit,
                fed.equals("forage"),
                meals,
                prepared.isEmpty() ? "dry" : prepared,
                row.number()));
  }

  private String batch(RegisterRow row, String item) {
    String batch = row.optionalKey("batch");
    Set<String> known = keys.batchesOf(item);
    if (known.isEmpty() || known.contains(batch)) {
      if (known.isEmpty() && !batch.isEmpty() && keys.has(Register.LOTS, item)) {
        row.wrong("batch", "batch-of-a-lot", "a blank cell: " + item + " is a lot");
      }
      return batch;
    }
    if (batch.isEmpty() && known.size() == 1) {
      return batch;
    }
    String expected =
        batch.isEmpty()
            ? "the batch, because " + item + " has several"
            : "a batch of " + item + " in feeds.csv";
    row.wrong("batch", "unknown-batch", expected + ": " + String.join(", ", known));
    return batch;
  }

  private static OptionalDouble amount(RegisterRow row, String unit) {
    if (unit.equals("ad-lib")) {
      return row.notNegative("amount");
    }
    if (row.text("amount").isEmpty()) {
      row.wrong("amount", "blank", "a number not below 0");
    }
    return switch (unit) {
      case "pct_bw" -> row.number("amount", 0, 10, "0 to 10 % of body weight");
      case "kg" -> row.number("amount", 0, 100, "0 to 100 kg a day");
      case "lb" -> row.number("amount", 0, 220, "0 to 220 lb a day");
      default -> row.number("amount", 0, 100, "0 to 100 a day");
    };
  }

  /** The rations of horses without a bad row, by horse and day. */
  List<Ration> rations() {
    List<Ration> rations = new ArrayList<>();
    items.forEach(
        (horse, bySince) -> {
          if (!spoilt.contains(horse)) {
            bySince.forEach(
                (since, list) -> {
                  list.sort(ORDER);
                  rations.add(new Ration(horse, since, list));
                });
          }
        });
    return List.copyOf(rations);
  }
}
