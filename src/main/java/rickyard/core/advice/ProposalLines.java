package rickyard.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rickyard.core.remedy.ChangeoverDay;
import rickyard.core.remedy.ChangeoverPlan;
import rickyard.core.remedy.Remedy;
import rickyard.core.remedy.RemedyItem;
import rickyard.core.remedy.Serving;

/** Puts what the search found into the lines that pages and tables show. */
final class ProposalLines {
  private ProposalLines() {}

  /**
   * A proposal with what must be said of it and of its changeover.
   *
   * @param lacks what the changed ration lacks, a sentence with a leading space; or empty
   * @param unclearedDays so many first days of the changeover are not cleared yet
   */
  static Proposal of(
      int rank,
      Remedy remedy,
      String lacks,
      ChangeoverPlan plan,
      int unclearedDays,
      Optional<DietSummary> diet) {
    String words =
        lacks
            + (plan.words().isEmpty() ? "" : " " + String.join(" ", plan.words()))
            + (unclearedDays > 0 ? uncleared(unclearedDays) : "");
    return new Proposal(
        rank,
        remedy.kind().code(),
        remedy.isEnough(),
        remedy.why() + words,
        remedy.items().stream().map(ProposalLines::item).toList(),
        diet.orElse(null),
        unclearedDays);
  }

  private static String uncleared(int days) {
    return days == 1
        ? " Day 1 of the change is not cleared yet."
        : " Days 1 to " + days + " of the change are not cleared yet.";
  }

  private static ProposalItem item(RemedyItem item) {
    return new ProposalItem(
        item.item().id(),
        item.item().batch(),
        item.item().name(),
        item.item().role(),
        item.nowKg(),
        item.thenKg(),
        boxed(item.unitsPerMonth()),
        boxed(item.costPerDay()),
        boxed(item.daysOfStock()));
  }

  private static @Nullable Double boxed(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }

  /** The days of a proposal's changeover. */
  static List<ChangeoverLine> days(int rank, ChangeoverPlan plan) {
    List<ChangeoverLine> lines = new ArrayList<>();
    for (ChangeoverDay day : plan.days()) {
      for (Serving amount : day.amounts()) {
        lines.add(new ChangeoverLine(rank, day.day(), amount.item().id(), amount.kg()));
      }
    }
    return lines;
  }
}
