package rickyard.mutants;

import java.util.stream.Collectors;

/** The page of a long run, in Markdown. */
final class MutantsPage {
  private MutantsPage() {}

  static String of(GoodReports reports, Tally tally, long seed) {
    return """
        # Altered reports

        Good reports are altered on purpose, read, settled and judged against every limit for lots in `config/limits.csv`, and compared with what the same reports give unaltered (their figures held against a truth that no reader made). Written by `mvn -P mutants verify`; same seed, same table.

        %d reports (%s), %d mutants, seed %d.

        - **caught**: something is asked, held back or refused, and nothing in force is wrong.
        - **harmless**: everything in force is as before.
        - **wrong, clears nothing**: a figure in force is wrong, and no lot clears that should not.
        - **no evidence**: a lot clears that should not, and the page could as well be an honest one; the reasons are below, each a condition on what is printed, and a mutant that meets none of them is a false clear.
        - **false clear**: a lot clears that should not. Demanded: none.

        %s
        ## No evidence

        %s
        What no reader can see, a second test can: the office's own history of a lot, and a laboratory that prints NSC or two columns, are what closes these gaps.

        ## Reports left as they are

        %s
        """
        .formatted(
            reports.good().size(),
            reports.kinds().entrySet().stream()
                .map(e -> e.getValue() + " " + e.getKey())
                .collect(Collectors.joining(", ")),
            tally.mutants(),
            seed,
            tally.byKind(),
            tally.byReason(),
            reports.left().entrySet().stream()
                .map(e -> "- `" + e.getKey() + "`: " + e.getValue())
                .collect(Collectors.joining("\n")));
  }
}
