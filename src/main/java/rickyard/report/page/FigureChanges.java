package rickyard.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rickyard.report.text.Harmless;
import rickyard.report.text.Shown;
import rickyard.report.text.Words;
import rickyard.report.view.AmendmentRow;
import rickyard.report.view.AnalysisRow;

/**
 * Which figures of a report another one changed. Like is compared with like: what both print, else
 * what follows from the printed parts of both.
 */
final class FigureChanges {
  private static final List<String> DECIDING = List.of("NSC_WSC", "NSC_ESC", "WSC", "STARCH", "DM");

  /** Figures named; the rest is counted. */
  private static final int MOST = 6;

  private final List<AnalysisRow> old;
  private final List<AnalysisRow> now;

  private FigureChanges(AmendmentRow row) {
    this.old = row.old();
    this.now = row.now();
  }

  /** A figure on both sides. */
  private record Pair(String code, AnalysisRow was, AnalysisRow is) {
    private String words() {
      String name = Words.of("nutrient", code);
      String before = Shown.number(was.value());
      String after = Shown.number(is.value()) + " " + unit(is);
      return unit(was).equals(unit(is))
          ? name + " " + before + " → " + after
          : name + " " + before + " " + unit(was) + " → " + after;
    }

    private boolean isOther() {
      return !unit(was).equals(unit(is))
          || !Shown.number(was.value()).equals(Shown.number(is.value()));
    }

    /** The difference in standard uncertainties of the figure in force. */
    private double size() {
      Double u = is.u();
      double difference = Math.abs(number(was) - number(is));
      return u == null || u <= 0 ? Double.POSITIVE_INFINITY : difference / u;
    }
  }

  /** The changes in words, without a full stop. */
  static String of(AmendmentRow row) {
    FigureChanges changes = new FigureChanges(row);
    return row.now().isEmpty() ? changes.gone(row) : changes.compared();
  }

  private String gone(AmendmentRow row) {
    List<String> figures =
        DECIDING.stream()
            .flatMap(code -> either(old, code).stream())
            .map(FigureChanges::words)
            .toList();
    String words =
        switch (figures.size()) {
          case 0 -> "its figures no longer count";
          case 1 -> figures.get(0) + " no longer counts";
          default -> String.join(", ", figures) + " no longer count";
        };
    return row.why().equals("withdrawn") ? words + "; nothing takes its place" : words;
  }

  private static String words(AnalysisRow row) {
    return Words.of("nutrient", row.analyte()) + " " + Shown.number(row.value()) + " " + unit(row);
  }

  private String compared() {
    List<String> words = new ArrayList<>();
    for (String code : DECIDING) {
      deciding(code).ifPresent(words::add);
    }
    boolean decides = !words.isEmpty();
    Set<String> others = new LinkedHashSet<>();
    now.forEach(r -> others.add(r.analyte()));
    DECIDING.forEach(others::remove);
    others.stream()
        .flatMap(code -> pair(code).stream())
        .filter(pair -> pair.isOther() && (!sameUnit(pair) || pair.size() > 1))
        .sorted(Comparator.comparingDouble(Pair::size).reversed())
        .map(Pair::words)
        .forEach(words::add);
    if (words.isEmpty()) {
      return "no figure changed by more than its uncertainty";
    }
    int more = words.size() - MOST;
    return (decides ? "" : "no figure that decides changed; ")
        + words.stream().limit(MOST).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  private static boolean sameUnit(Pair pair) {
    return unit(pair.was()).equals(unit(pair.is()));
  }

  private Optional<String> deciding(String code) {
    Optional<Pair> pair = pair(code);
    if (pair.isPresent()) {
      return pair.filter(Pair::isOther).map(Pair::words);
    }
    Optional<AnalysisRow> was = either(old, code);
    Optional<AnalysisRow> is = either(now, code);
    String name = Words.of("nutrient", code);
    if (was.isPresent() && is.isEmpty()) {
      return was.map(r -> name + " " + Shown.number(r.value()) + " " + unit(r) + " → not given");
    }
    return was.isEmpty()
        ? is.map(r -> name + " not given → " + Shown.number(r.value()) + " " + unit(r))
        : Optional.empty();
  }

  private Optional<Pair> pair(String code) {
    // Starch and sugar are judged by the sum of their parts where a report gives them.
    boolean isSum =
        code.startsWith("NSC_")
            && computed(old, code).isPresent()
            && computed(now, code).isPresent();
    Optional<AnalysisRow> was = printed(old, code);
    Optional<AnalysisRow> is = printed(now, code);
    if (isSum || was.isEmpty() || is.isEmpty()) {
      was = computed(old, code).or(() -> printed(old, code));
      is = computed(now, code).or(() -> printed(now, code));
    }
    Optional<AnalysisRow> after = is;
    return was.flatMap(w -> after.map(i -> new Pair(code, w, i)));
  }

  private static Optional<AnalysisRow> either(List<AnalysisRow> rows, String code) {
    return printed(rows, code).or(() -> computed(rows, code));
  }

  private static Optional<AnalysisRow> printed(List<AnalysisRow> rows, String code) {
    return rows.stream()
        .filter(r -> r.analyte().equals(code) && !r.origin().equals("derived") && r.value() != null)
        .findFirst();
  }

  /** The derived figure, or the sum of its printed parts where they stand on one basis. */
  private static Optional<AnalysisRow> computed(List<AnalysisRow> rows, String code) {
    Optional<AnalysisRow> derived =
        rows.stream()
            .filter(r -> r.analyte().equals(code) && r.origin().equals("derived"))
            .filter(r -> r.value() != null)
            .findFirst();
    if (derived.isPresent() || !code.startsWith("NSC_")) {
      return derived;
    }
    Optional<AnalysisRow> sugar = printed(rows, code.substring("NSC_".length()));
    Optional<AnalysisRow> starch = printed(rows, "STARCH");
    return sugar.flatMap(
        s ->
            starch
                .filter(t -> unit(s).equals(unit(t)))
                .map(t -> sum(s, number(s) + number(t), code)));
  }

  private static AnalysisRow sum(AnalysisRow like, double value, String code) {
    return new AnalysisRow(
        "",
        "",
        0,
        0,
        "",
        like.lot(),
        like.lab(),
        like.reportNo(),
        like.revision(),
        like.reportStatus(),
        like.sampledOn(),
        code,
        "",
        "",
        "",
        like.basis(),
        like.unit(),
        value,
        value,
        value,
        null,
        "derived",
        "calc",
        like.state(),
        like.batch(),
        false,
        "");
  }

  private static double number(AnalysisRow row) {
    Double value = row.value();
    return value == null ? Double.NaN : value;
  }

  private static String unit(AnalysisRow row) {
    String unit = row.unit().equals("1") ? "" : row.unit();
    return Harmless.line(unit + " " + Words.of("basis", row.basis())).strip();
  }
}
