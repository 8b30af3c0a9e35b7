package rickyard.core.nutrition;

import static java.util.Objects.requireNonNull;

/**
 * Why an item of a ration could not be turned into kg: its horse cannot be judged until this is
 * settled.
 *
 * @param code {@code measure-not-weighed}, {@code unknown-unit} or {@code unknown-item}
 * @param clientId whose horse
 * @param horseId which horse
 * @param item lot or feed id
 * @param measure the unit as the register says it
 * @param words one sentence
 */
public record AmountProblem(
    String code, String clientId, String horseId, String item, String measure, String words) {
  public AmountProblem {
    requireNonNull(code, "code");
    requireNonNull(clientId, "clientId");
    requireNonNull(horseId, "horseId");
    requireNonNull(item, "item");
    requireNonNull(measure, "measure");
    requireNonNull(words, "words");
  }

  static AmountProblem unknownItem(Horse horse, RationItem item) {
    String batch = item.batch().isEmpty() ? "" : ", batch " + item.batch();
    return of(
        "unknown-item",
        "item",
        horse,
        item,
        "the item "
            + item.item()
            + batch
            + " of "
            + horse.id()
            + " is neither a lot nor a feed"
            + " whose dry matter is known");
  }

  static AmountProblem notWeighed(Horse horse, RationItem item) {
    return of(
        "measure-not-weighed",
        "unit",
        horse,
        item,
        "a "
            + item.unit()
            + " of "
            + item.item()
            + " was never weighed at "
            + horse.clientId()
            + ": weigh one and enter it");
  }

  static AmountProblem unknownUnit(Horse horse, RationItem item) {
    return of(
        "unknown-unit",
        "unit",
        horse,
        item,
        "the unit \"" + item.unit() + "\" of " + item.item() + " is not one that can be weighed");
  }

  /** Where it stands in the register is said first. */
  private static AmountProblem of(
      String code, String column, Horse horse, RationItem item, String words) {
    String place =
        item.row() > 0 ? "rations.csv, row " + item.row() + ", column \"" + column + "\": " : "";
    return new AmountProblem(
        code, horse.clientId(), horse.id(), item.item(), item.unit(), place + words);
  }
}
