package rickyard.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rickyard.report.season.OverTimeWords;
import rickyard.report.season.SeasonSummary;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.MorningView;

/**
 * The lots taken together, by material, laboratory, month and holder. Only for looking at: nothing
 * is decided or ordered by it.
 *
 * @param quantity what the figures are, in words with their unit; empty where no lot has any
 * @param parts one table for each way of taking them together
 */
public record Season(String quantity, List<Part> parts) {
  private static final Map<String, List<String>> HEADINGS =
      Map.of(
          "material", List.of("By material", "Material"),
          "material-year", List.of("By material and year of harvest", "Material and year"),
          "laboratory", List.of("By laboratory", "Laboratory"),
          "month", List.of("By month of sampling", "Month"),
          "holder", List.of("By holder", "Holder"));

  /** One line: how many lots with an analysis, how many with a figure, and what they hold. */
  public record Row(
      String key,
      String lots,
      String count,
      String mean,
      String sd,
      String range,
      List<String> shares) {}

  /** One way of grouping. */
  public record Part(String caption, String keyHeading, List<String> groups, Listed<Row> rows) {}

  static Season of(MorningView view) {
    SeasonSummary summary = SeasonSummary.of(view.season());
    if (summary.parts().isEmpty()) {
      return new Season("", List.of());
    }
    String quantity = view.season().quantities().isEmpty() ? "" : view.season().quantities().get(0);
    List<Part> parts = new ArrayList<>();
    for (SeasonSummary.Part part : summary.parts()) {
      if (!part.by().equals("material-year") || hasYears(part, summary)) {
        parts.add(part(view, summary, part, quantity));
      }
    }
    return new Season(Words.of("quantity", quantity.toLowerCase(java.util.Locale.ROOT)), parts);
  }

  /** Years are worth a table where they part a material. */
  private static boolean hasYears(SeasonSummary.Part byYear, SeasonSummary summary) {
    return byYear.rows().size() > summary.parts().get(0).rows().size();
  }

  private static Part part(
      MorningView view, SeasonSummary summary, SeasonSummary.Part part, String quantity) {
    List<String> headings = HEADINGS.getOrDefault(part.by(), List.of(part.by(), part.by()));
    return new Part(
        headings.get(0),
        headings.get(1),
        summary.groups().stream().map(g -> Words.of("group", g)).toList(),
        Listed.first(
            part.rows(), row -> row(view, summary, part.by(), row, quantity), "season.csv"));
  }

  private static Row row(
      MorningView view, SeasonSummary summary, String by, SeasonSummary.Row row, String quantity) {
    SeasonSummary.Stat stat =
        row.stats().stream()
            .filter(s -> s.quantity().equals(quantity))
            .findFirst()
            .orElseGet(() -> new SeasonSummary.Stat(quantity, "", 0, 0, null, 0, 0));
    boolean none = stat.lots() == 0;
    return new Row(
        key(view, by, row.of()),
        Integer.toString(row.lots()),
        Integer.toString(stat.lots()),
        none ? "–" : Shown.number(Double.valueOf(stat.mean())),
        stat.sd() == null ? "–" : Shown.number(stat.sd()),
        none
            ? "–"
            : Shown.number(Double.valueOf(stat.lowest()))
                + " to "
                + Shown.number(Double.valueOf(stat.highest())),
        summary.groups().stream().map(group -> share(row, group)).toList());
  }

  private static String key(MorningView view, String by, String of) {
    return switch (by) {
      case "holder" -> Names.client(view, of);
      case "material", "material-year" -> of.replace('-', ' ');
      default -> OverTimeWords.name(of);
    };
  }

  private static String share(SeasonSummary.Row row, String group) {
    return row.clearings().stream()
        .filter(c -> c.group().equals(group))
        .findFirst()
        .map(c -> c.clears() + " of " + c.lots() + " (" + Shown.share(c.clears(), c.lots()) + ")")
        .orElse("–");
  }
}
