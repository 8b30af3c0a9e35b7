package rickyard.docs;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rickyard.core.nutrition.CheckRow;
import rickyard.core.nutrition.RequirementChecks;
import rickyard.core.nutrition.RequirementChecks.Check;

/**
 * {@code docs/requirement-agreement.md}: how the requirements agree with the check values, by what
 * a value can prove and by class, and every exception.
 */
final class AgreementPage {
  private final List<Check> checks = RequirementChecks.all();

  String text() {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Agreement of the requirements with the check values

        Every row of `src/test/resources/reference/requirement-checks.csv` beside what Rickyard computes, at the row's printed precision; written by `GeneratedDocsTest` (see DEVELOPERS.md). Needs per day, needs per kg, steps of pregnancy, growth, intake rules, maximum tolerable levels and the constants count alike.

        Only the first line below is evidence from outside. A recalled value and a recalled equation are one memory; a value that an equation was fitted to, or that was computed from it, agrees by construction and only holds that nothing changes unseen.

        """);
    List<String> kinds = Arrays.stream(CheckRow.Evidence.values()).map(e -> e.words()).toList();
    page.append(table("what the value is", kinds, c -> c.row().evidence().words(), checks));
    page.append("\nBy class, all kinds of values:\n\n");
    page.append(byClass(checks));
    page.append("\nBy class, values printed in a source only:\n\n");
    page.append(
        byClass(
            checks.stream().filter(c -> c.row().evidence() == CheckRow.Evidence.PRINTED).toList()));
    page.append(edge());
    page.append(exceptions());
    return page.toString();
  }

  private static String byClass(List<Check> which) {
    List<String> classes = which.stream().map(c -> c.row().group()).distinct().sorted().toList();
    return table("class", classes, c -> c.row().group(), which);
  }

  private static String table(
      String head, List<String> names, Function<Check, String> group, List<Check> which) {
    StringBuilder rows = new StringBuilder("| " + head + " | rows | agree | listed below | % |\n");
    rows.append("|---|---|---|---|---|\n");
    for (String name : names) {
      rows.append(line(name, which.stream().filter(c -> group.apply(c).equals(name)).toList()));
    }
    return rows.append(line("all", which)).toString();
  }

  private static String line(String name, List<Check> of) {
    long agree = of.stream().filter(Check::agrees).count();
    long listed = of.stream().filter(c -> !c.mustAgree()).count();
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %.1f |%n",
        name,
        of.size(),
        agree,
        listed,
        100.0 * agree / of.size());
  }

  private String edge() {
    List<String> found =
        checks.stream()
            .filter(Check::isAtTheEdge)
            .map(c -> c.row().group() + " " + c.row().detail() + " " + c.row().nutrient())
            .toList();
    String which = found.isEmpty() ? "none" : found.size() + ": " + String.join("; ", found);
    return "\nAgree only with the 2 % of half a digit that is left to coefficients of four digits: "
        + which
        + ".\n";
  }

  private String exceptions() {
    List<String> lines = new ArrayList<>();
    lines.add("\n## Exceptions\n");
    lines.add(
        "`source`: the source is wrong or rounds oddly; `recall`: a recalled value differs;"
            + " `disagree`: sources disagree, both are kept and the page says so; `not-held`:"
            + " Rickyard has no such figure; `settled`: the reference names a mismatch that is"
            + " not one here.\n");
    lines.add("| class | kg | detail | nutrient | printed | ours | kind | reason |");
    lines.add("|---|---|---|---|---|---|---|---|");
    checks.stream()
        .filter(c -> c.exception().isPresent())
        .map(AgreementPage::line)
        .forEach(lines::add);
    return String.join("\n", lines) + "\n";
  }

  private static String line(Check check) {
    CheckRow row = check.row();
    RequirementChecks.Listed why = check.exception().orElseThrow();
    return String.join(
        " | ",
        "| " + row.group(),
        row.isOfOneWeight() ? figure(row.currentKg()) : "",
        row.detail(),
        row.nutrient(),
        row.value() + " " + row.unit(),
        check.got().map(AgreementPage::figure).orElse("none"),
        why.kind(),
        Sheets.cell(why.reason()) + " |");
  }

  private static String figure(double value) {
    return new BigDecimal(value).round(new MathContext(5)).stripTrailingZeros().toPlainString();
  }
}
