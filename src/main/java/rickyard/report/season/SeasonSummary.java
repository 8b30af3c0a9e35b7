package rickyard.report.season;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import rickyard.report.view.SeasonLot;
import rickyard.report.view.SeasonView;

/**
 * The lots with an analysis in force, taken together in several ways.
 *
 * @param groups all groups that any lot was judged for, sorted
 * @param parts one for each way of taking them together; none without lots
 */
public record SeasonSummary(List<String> groups, List<Part> parts) {

  /** Ways of taking lots together, in the order of the page; codes of the CSV files. */
  public static final List<String> WAYS =
      List.of("material", "material-year", "laboratory", "month", "holder");

  /** What stands where a lot does not say what it is counted under. */
  public static final String NOT_STATED = "not stated";

  /** One way. */
  public record Part(String by, List<Row> rows) {
    public Part {
      rows = List.copyOf(rows);
    }
  }

  /** The lots under one key, with a figure for each quantity that any of them has. */
  public record Row(String of, int lots, List<Stat> stats, List<Clearing> clearings) {
    public Row {
      stats = List.copyOf(stats);
      clearings = List.copyOf(clearings);
    }
  }

  /**
   * One quantity of these lots.
   *
   * @param lots how many have a value
   * @param sd standard deviation of a sample (n − 1); null for a single lot
   */
  public record Stat(
      String quantity,
      String unit,
      int lots,
      double mean,
      @Nullable Double sd,
      double lowest,
      double highest) {}

  /** How these lots stand to the limits of one group; {@code lots} were judged for it. */
  public record Clearing(String group, int lots, int clears, int notFor, int undecided) {}

  public SeasonSummary {
    groups = List.copyOf(groups);
    parts = List.copyOf(parts);
  }

  /** Takes the lots together; Tablesaw is touched only where there are any. */
  public static SeasonSummary of(SeasonView view) {
    if (view.lots().isEmpty()) {
      return new SeasonSummary(List.of(), List.of());
    }
    List<String> groups = groups(view.lots());
    return new SeasonSummary(
        groups, WAYS.stream().map(way -> new Grouping(view, groups, way).part()).toList());
  }

  private static List<String> groups(List<SeasonLot> lots) {
    SortedSet<String> groups = new TreeSet<>();
    for (SeasonLot lot : lots) {
      groups.addAll(lot.suits());
      groups.addAll(lot.notFor());
      groups.addAll(lot.undecided());
    }
    return List.copyOf(groups);
  }
}
