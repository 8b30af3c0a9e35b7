package rickyard.fuzz;

import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rickyard.core.forage.Reading;
import rickyard.core.forage.Report;
import rickyard.intake.grid.Cell;
import rickyard.intake.grid.Grid;
import rickyard.intake.grid.Page;
import rickyard.intake.grid.Row;
import rickyard.intake.interpret.Dictionary;
import rickyard.intake.interpret.Interpretation;
import rickyard.intake.interpret.Interpreter;
import rickyard.tables.DictionaryTables;

/** What must hold of any grid and of whatever is read from it, be the input as mad as it likes. */
public final class Oracle {
  private static final Dictionary DICTIONARY = DictionaryTables.load(Optional.empty());
  private static final String DOCUMENT = "0".repeat(64);

  /** One input that takes more time of the processor is a finding. */
  private static final long SLOW_NANOS = 10_000_000_000L;

  /** The first inputs load and instrument classes. */
  private static final int WARM_UP = 100;

  private static int runs;

  private Oracle() {}

  /** Work that must not take long. */
  @FunctionalInterface
  public interface Work {
    void run();
  }

  /** The built-in dictionary. */
  public static Dictionary dictionary() {
    return DICTIONARY;
  }

  /** Runs some work and fails where it took too much time of the processor. */
  public static void soon(Work work) {
    long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    work.run();
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
    require(++runs < WARM_UP || took < SLOW_NANOS, "took " + took / 1_000_000 + " ms");
  }

  /** Fails with a sentence. */
  public static void require(boolean holds, String sentence) {
    if (!holds) {
      throw new AssertionError(sentence);
    }
  }

  /** Rows and columns ascend; what is printed as one line is one line. */
  public static void wellFormed(Grid grid) {
    int page = 0;
    for (Page each : grid.pages()) {
      require(each.number() > page, "page " + each.number() + " after " + page);
      page = each.number();
      int row = 0;
      for (Row line : each.rows()) {
        require(line.number() > row, "row " + line.number() + " after " + row);
        row = line.number();
        cells(line);
      }
    }
  }

  private static void cells(Row line) {
    require(!line.cells().isEmpty(), "a row without cells: " + line);
    int column = 0;
    for (Cell cell : line.cells()) {
      require(cell.column() > column, "column " + cell.column() + " after " + column);
      column = cell.column();
      require(
          Double.isFinite(cell.left()) && Double.isFinite(cell.right()), "no finite place " + cell);
      require(
          cell.text().codePoints().noneMatch(Character::isISOControl), "control character " + cell);
    }
  }

  /** Reads a grid; reading never fails, and what is taken as settled stands on the page. */
  public static void read(Grid grid) {
    Interpretation read = new Interpreter(DICTIONARY).interpret(grid, DOCUMENT);
    read.fold(
        understood -> {
          holds(grid, understood.report());
          return true;
        },
        not -> {
          require(!not.code().isEmpty() && !not.reason().isEmpty(), "no reason given");
          return true;
        });
  }

  private static void holds(Grid grid, Report report) {
    Set<String> texts = new TreeSet<>();
    for (Page page : grid.pages()) {
      page.rows().forEach(row -> row.cells().forEach(cell -> texts.add(cell.text())));
    }
    require(!report.samples().isEmpty(), "a report without samples");
    report
        .samples()
        .forEach(
            sample ->
                sample.readings().stream()
                    .filter(Reading::isSettled)
                    .forEach(reading -> holds(texts, reading)));
  }

  private static void holds(Set<String> texts, Reading reading) {
    String raw = reading.raw();
    require(
        texts.stream().anyMatch(t -> t.contains(raw)), "settled, but no cell says so: " + reading);
    require(
        raw.codePoints().noneMatch(p -> Character.isDigit(p) && (p < '0' || p > '9')),
        "settled from digits of another script: " + reading);
    require(raw.indexOf('\uFFFD') < 0, "settled across an unreadable character: " + reading);
    var value = reading.value().orElseThrow();
    require(Double.isFinite(value.best()), "settled, but not finite: " + reading);
    require(value.best() >= 0, "settled below nothing: " + reading);
  }
}
