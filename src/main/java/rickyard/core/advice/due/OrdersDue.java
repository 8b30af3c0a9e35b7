package rickyard.core.advice.due;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rickyard.core.advice.DietSummary;
import rickyard.core.advice.HorseAdvice;
import rickyard.core.advice.Priority;
import rickyard.core.advice.Proposal;
import rickyard.core.advice.ProposalItem;
import rickyard.core.forage.Lot;

/** Forage that a horse is to change to and that is not at its yard: a change waits for it. */
final class OrdersDue {
  private final FollowUpContext context;

  private OrdersDue(FollowUpContext context) {
    this.context = context;
  }

  static List<FollowUp> of(FollowUpContext context) {
    OrdersDue due = new OrdersDue(context);
    List<FollowUp> found = new ArrayList<>();
    for (HorseAdvice advice : context.advice()) {
      boolean isCall =
          advice.priority() == Priority.CALL_NOW || advice.priority() == Priority.CALL_TODAY;
      if (isCall && isJudged(advice)) {
        advice.advised().ifPresent(p -> due.add(advice, p, found));
      }
    }
    return found;
  }

  /** Nobody is told to change what cannot be judged. */
  private static boolean isJudged(HorseAdvice advice) {
    @Nullable DietSummary after = advice.after();
    return after != null && !after.verdict().equals("cannot-judge");
  }

  private void add(HorseAdvice advice, Proposal proposal, List<FollowUp> found) {
    for (ProposalItem item : proposal.items()) {
      boolean isNew = item.nowKg() <= 0 && item.thenKg() > 0;
      double needed = item.thenKg() * context.remedy().monthDays();
      double there = there(advice, item.item());
      if (isNew && there < needed) {
        found.add(
            FollowUp.of(
                context.asOf(),
                FollowUpKind.STOCK,
                item.item(),
                advice.client() + ": get it for " + advice.horse() + ", proposal 1 waits for it",
                words(item, needed, there)));
      }
    }
  }

  private String words(ProposalItem item, double needed, double there) {
    String lot =
        Optional.ofNullable(context.lots().get(item.item()))
            .map(l -> from(l, needed))
            .orElse("; bought by the bag");
    return String.format(
        Locale.ROOT,
        "%.0f kg for %.0f days, %.0f kg at the yard that no other horse eats%s",
        needed,
        context.remedy().monthDays(),
        there,
        lot);
  }

  private static String from(Lot lot, double needed) {
    String price =
        lot.pricePerTonne().isPresent()
            ? String.format(
                Locale.ROOT,
                ", %.2f for all of it by its price",
                lot.pricePerTonne().getAsDouble() * needed / 1000)
            : "";
    return "; held by " + lot.holder() + (lot.forSale() ? ", for sale" : "") + price;
  }

  /** What is at the yard beside what the other horses there eat of it meanwhile. */
  private double there(HorseAdvice advice, String item) {
    String client = advice.client();
    double own =
        Optional.ofNullable(context.lots().get(item))
            .filter(l -> l.holder().equals(client))
            .map(l -> l.stockKg().orElse(0))
            .orElse(0.0);
    double others =
        Fed.ofStay(context.advice()).of(item).stream()
            .filter(m -> m.client().equals(client) && !m.horse().equals(advice.horse()))
            .mapToDouble(Fed.Meal::kg)
            .sum();
    double all = context.delivered().left(item, client).orElse(0) + own;
    return Math.max(0, all - others * context.remedy().monthDays());
  }
}
