package rickyard.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rickyard.report.text.Plain;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;

/**
 * Verdicts gathered by what was measured: the value is said once, drawn once, and limits that read
 * alike share a line.
 */
public final class Blocks {
  /** A quantity's value, its picture, its limits and why they read as they do. */
  public record Block(String heading, String picture, List<Line> lines, List<String> reasons) {}

  /** Groups with the same limit and the same words. */
  public record Line(String groups, String limit, String before, String verdict, String chance) {}

  /**
   * One limit of a lot or diet, as the page needs it.
   *
   * @param low the least that it can be; null if unknown
   * @param high the most that it can be; null if a part of it is unknown
   * @param subject of what: hay alone, whole diet, one bucket meal
   * @param before the verdict word of the last morning; empty where that is not shown
   * @param reason empty where that is shown elsewhere
   */
  record Held(
      String subject,
      String group,
      String quantity,
      double limit,
      String unit,
      @Nullable Double value,
      @Nullable Double low,
      @Nullable Double high,
      @Nullable Double u,
      @Nullable Double chance,
      String before,
      String verdict,
      String reason) {

    private String key() {
      return subject + "\n" + quantity + "\n" + unit + "\n" + value + "\n" + high + "\n" + u;
    }

    private String words() {
      return Words.of("quantity", quantity)
          + ", "
          + Words.of("subject", subject)
          + ": "
          + Shown.bounded(value, low, high, u)
          + (value == null ? "" : " " + Words.of("unit", unit));
    }
  }

  private Blocks() {}

  /**
   * The blocks in the order of the first limit of each.
   *
   * @param of whose: a lot's or horse's name
   */
  static List<Block> of(List<Held> limits, String of, Anchors anchors) {
    Map<String, List<Held>> byQuantity = new LinkedHashMap<>();
    for (Held held : limits) {
      byQuantity.computeIfAbsent(held.key(), q -> new ArrayList<>()).add(held);
    }
    return byQuantity.values().stream().map(held -> block(held, of, anchors)).toList();
  }

  /** The same with pictures for the first of them only, which repeat the numbers beside them. */
  static List<Block> drawn(List<Block> blocks, int pictures) {
    List<Block> drawn = new ArrayList<>();
    for (Block block : blocks) {
      String picture = drawn.size() < pictures ? block.picture() : "";
      drawn.add(new Block(block.heading(), picture, block.lines(), block.reasons()));
    }
    return drawn;
  }

  private static Block block(List<Held> limits, String of, Anchors anchors) {
    Held first = limits.get(0);
    Double value = first.value();
    String heading = first.words();
    if (value == null || !Double.isFinite(value)) {
      return new Block(heading, "", lines(limits), reasons(limits));
    }
    List<LimitPicture.Mark> marks =
        limits.stream()
            .map(held -> new LimitPicture.Mark(held.limit(), Words.of("mark", held.group())))
            .toList();
    String picture =
        LimitPicture.of(
            anchors.picture(),
            of + ", " + heading,
            value,
            first.u(),
            first.high() == null,
            Words.of("unit", first.unit()),
            marks);
    return new Block(heading, picture, lines(limits), reasons(limits));
  }

  private static List<String> reasons(List<Held> limits) {
    return limits.stream()
        .map(held -> Plain.sentence(held.reason()))
        .filter(reason -> !reason.isEmpty())
        .distinct()
        .toList();
  }

  private static List<Line> lines(List<Held> limits) {
    Map<Line, Set<String>> groups = new LinkedHashMap<>();
    for (Held held : limits) {
      Line alike =
          new Line(
              "",
              Shown.number(Double.valueOf(held.limit())) + " " + Words.of("unit", held.unit()),
              held.before().isEmpty() ? "" : Words.of("verdict", held.before()),
              Words.of("verdict", held.verdict()),
              Shown.chance(held.chance()));
      groups
          .computeIfAbsent(alike, l -> new LinkedHashSet<>())
          .add(Words.of("group", held.group()));
    }
    List<Line> lines = new ArrayList<>();
    groups.forEach(
        (line, names) ->
            lines.add(
                new Line(
                    String.join(", ", names),
                    line.limit(),
                    line.before(),
                    line.verdict(),
                    line.chance())));
    return lines;
  }
}
