package rickyard.core.nutrition;

import java.util.Arrays;
import java.util.List;

/**
 * The horses that a row of a requirement table is for.
 *
 * @param lives lives of {@link LifeStage}
 * @param levels levels, empty for all
 * @param fromMonth first month, inclusive
 * @param toMonth last month, inclusive
 */
public record Scope(List<String> lives, List<String> levels, int fromMonth, int toMonth) {
  public Scope {
    lives = List.copyOf(lives);
    levels = List.copyOf(levels);
    if (fromMonth > toMonth) {
      throw new IllegalArgumentException("months out of order: " + fromMonth + " to " + toMonth);
    }
  }

  /** A scope from table cells: names joined by {@code |}; blank or {@code *} means all levels. */
  public static Scope of(String lives, String levels, int fromMonth, int toMonth) {
    return new Scope(
        parts(lives), levels.equals("*") ? List.of() : parts(levels), fromMonth, toMonth);
  }

  private static List<String> parts(String cell) {
    return cell.isEmpty() ? List.of() : Arrays.asList(cell.split("\\|"));
  }

  public boolean holds(LifeStage stage) {
    return lives.contains(stage.life())
        && (levels.isEmpty() || levels.contains(stage.level()))
        && stage.month() >= fromMonth
        && stage.month() <= toMonth;
  }
}
