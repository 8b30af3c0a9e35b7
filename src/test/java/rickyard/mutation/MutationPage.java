package rickyard.mutation;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The page about changes that no test sees, in Markdown. */
final class MutationPage {
  private final List<MutationReport> reports;
  private final List<String> notRun;
  private final Claims claims;
  private final StringBuilder page = new StringBuilder();

  private MutationPage(List<MutationReport> reports, List<String> notRun, Claims claims) {
    this.reports = List.copyOf(reports);
    this.notRun = List.copyOf(notRun);
    this.claims = claims;
  }

  /**
   * Writes the page.
   *
   * @param notRun rooms of which there is no report
   */
  static String of(List<MutationReport> reports, List<String> notRun, Claims claims) {
    MutationPage page = new MutationPage(reports, notRun, claims);
    page.write();
    return page.page.toString();
  }

  private void write() {
    page.append(
        """
        # Changes that no test sees

        A mutation tester (PIT, its default mutators) changes the compiled code in one place at a \
        time and runs the tests of the room. A change is *killed* if a test fails, *timed out* if \
        one never ends; it *survived* if all pass, and has *no coverage* if none runs the line. \
        Demanded: at least 90 % killed or timed out in each room, at most 5 % claimed to change \
        nothing. Written from the tester's reports by `mvn -P mutation test`; what is changed and \
        which tests are asked stands in that profile. Property tests are not asked: a test that \
        says what is expected has to see the change. Not to be mixed up with \
        [altered reports](mutants.md), which change what is read and not the code.

        | room | changes | killed | timed out | survived | no coverage | other | killed or timed out | claimed to change nothing |
        |---|---|---|---|---|---|---|---|---|
        """);
    reports.forEach(this::row);
    if (!notRun.isEmpty()) {
      page.append("\nNot run: ").append(String.join(", ", notRun)).append(".\n");
    }
    reports.forEach(this::unseen);
  }

  private void row(MutationReport report) {
    long all = report.mutants().size();
    long named = report.count("SURVIVED") + report.count("NO_COVERAGE") + report.seen();
    String line =
        String.join(
            " | ",
            report.room(),
            all + "",
            report.count("KILLED") + "",
            report.count("TIMED_OUT") + "",
            report.count("SURVIVED") + "",
            report.count("NO_COVERAGE") + "",
            all - named + "",
            share(report.seen(), all),
            claimed(report) + " (" + share(claimed(report), all) + ")");
    page.append("| ").append(line).append(" |\n");
  }

  private static String share(long part, long all) {
    return String.format(Locale.ROOT, "%.1f %%", all == 0 ? 0 : 100.0 * part / all);
  }

  /** Those alike, by what they are called. */
  private static Map<String, List<Mutant>> alike(MutationReport report) {
    return report.unseen().stream()
        .collect(Collectors.groupingBy(Mutant::key, TreeMap::new, Collectors.toList()));
  }

  private long claimed(MutationReport report) {
    return alike(report).values().stream()
        .mapToLong(m -> Math.min(m.size(), claims.find(m.get(0)).count()))
        .sum();
  }

  private void unseen(MutationReport report) {
    page.append("\n## ").append(report.room()).append("\n\n");
    if (report.unseen().isEmpty()) {
      page.append("Every change was seen.\n");
      return;
    }
    page.append("| class | method | change | unseen | claimed to change nothing because |\n");
    page.append("|---|---|---|---|---|\n");
    alike(report).values().forEach(this::unseen);
  }

  private void unseen(List<Mutant> alike) {
    Mutant one = alike.get(0);
    Claims.Claim claim = claims.find(one);
    String reason =
        claim.count() >= alike.size() || claim.count() == 0
            ? claim.reason()
            : claim.count() + " of them: " + claim.reason();
    String line =
        String.join(
            " | ", one.type(), "`" + one.method() + "`", one.change(), alike.size() + "", reason);
    page.append("| ").append(line.strip()).append(" |\n");
  }
}
