package rickyard.core.remedy;

import java.util.List;

/**
 * The way from one ration to another, day by day.
 *
 * @param days from day 1; the last one is the proposal
 * @param isStepwise whether there are steps before the full share
 * @param words what must be said with it, in order
 */
public record ChangeoverPlan(List<ChangeoverDay> days, boolean isStepwise, List<String> words) {
  /** No way to go: nothing is fed otherwise. */
  public static final ChangeoverPlan NONE = new ChangeoverPlan(List.of(), false, List.of());

  public ChangeoverPlan {
    days = List.copyOf(days);
    words = List.copyOf(words);
  }
}
