package rickyard.core.advice.due;

import java.util.ArrayList;
import java.util.List;

/** Gathers what falls due, the earliest first. */
public final class FollowUps {
  private FollowUps() {}

  /** Everything that is due or falls due within the days that are looked ahead. */
  public static List<FollowUp> of(FollowUpContext context) {
    List<FollowUp> found = new ArrayList<>();
    Fed fed = Fed.of(context.advice());
    found.addAll(RetestsDue.of(context, fed));
    found.addAll(StocksDue.of(context));
    found.addAll(OrdersDue.of(context));
    found.addAll(WeightsDue.of(context));
    found.addAll(ShelfLivesDue.of(context, fed));
    found.addAll(RechecksDue.of(context));
    found.addAll(TripsDue.of(context));
    context.open().forEach(q -> found.add(FollowUp.of(context.asOf(), q)));
    return found.stream().distinct().sorted(FollowUp.ORDER).toList();
  }
}
