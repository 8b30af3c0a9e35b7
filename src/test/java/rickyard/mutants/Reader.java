package rickyard.mutants;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.core.forage.Report;
import rickyard.intake.Intake;
import rickyard.intake.grid.DocumentReader;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.Unfolding;
import rickyard.intake.interpret.Dictionary;
import rickyard.intake.interpret.Interpreter;

/** Reads files into good reports, and altered papers into whatever they say. */
final class Reader {
  private final DocumentReader documents = new DocumentReader();
  private final Interpreter interpreter;
  private final Intake intake;

  Reader(Dictionary dictionary) {
    this.interpreter = new Interpreter(dictionary);
    this.intake = new Intake(documents, interpreter, ReadLimits.DEFAULT);
  }

  /** The reports in a file. */
  List<GoodReport> reports(String name, byte[] bytes) {
    List<GoodReport> reports = new ArrayList<>();
    for (Unfolding.Leaf leaf : Unfolding.of(documents, bytes, name, ReadLimits.DEFAULT)) {
      leaf.opened()
          .fold(
              cells -> {
                Paper paper = Paper.of(cells.grid());
                report(paper)
                    .ifPresent(
                        r ->
                            reports.add(
                                new GoodReport(
                                    leaf.part().isEmpty() ? name : name + "!" + leaf.part(),
                                    cells.kind(),
                                    paper,
                                    Sites.of(paper, r),
                                    r)));
                return true;
              },
              parts -> true,
              bad -> true);
    }
    return reports;
  }

  /** What the paper says, read from its cells. */
  Optional<Report> report(Paper paper) {
    String sha = "%064x".formatted(1);
    return interpreter
        .interpret(paper.toGrid(), sha)
        .fold(found -> Optional.of(found.report()), none -> Optional.empty());
  }

  /** What the paper says, printed to a file and read from its bytes. */
  Optional<Report> report(PrintedAs form, Paper paper) {
    byte[] bytes = form.print(paper).getBytes(StandardCharsets.UTF_8);
    return intake.read(bytes, "mutant").documents().stream()
        .flatMap(d -> d.report().stream())
        .findFirst();
  }
}
