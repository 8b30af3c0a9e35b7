package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.List;

/**
 * Everything that a settlement is a function of.
 *
 * @param reports every report ever read, in any order; the same bytes may come more than once
 * @param lots the register of lots
 * @param batches the register's feeds and batches
 * @param answers the register of answers
 * @param decisions the register of decisions; corrections change values, others may be reopened
 * @param asOf the morning's date
 * @param layouts what earlier mornings remember of layouts
 */
public record Unsettled(
    List<Received> reports,
    List<Lot> lots,
    List<BagBatch> batches,
    List<Answer> answers,
    List<Decision> decisions,
    LocalDate asOf,
    LayoutBook layouts) {

  public Unsettled {
    reports = List.copyOf(reports);
    lots = List.copyOf(lots);
    batches = List.copyOf(batches);
    answers = List.copyOf(answers);
    decisions = List.copyOf(decisions);
    requireNonNull(asOf, "asOf");
    requireNonNull(layouts, "layouts");
  }

  /** A first morning: nothing is remembered of layouts. */
  public Unsettled(
      List<Received> reports,
      List<Lot> lots,
      List<BagBatch> batches,
      List<Answer> answers,
      List<Decision> decisions,
      LocalDate asOf) {
    this(reports, lots, batches, answers, decisions, asOf, LayoutBook.empty());
  }
}
