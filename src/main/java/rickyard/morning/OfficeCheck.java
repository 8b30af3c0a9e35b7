package rickyard.morning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rickyard.registers.BadRow;
import rickyard.registers.Loaded;
import rickyard.tables.TableProblem;

/** What is wrong with an office's registers and config, without running a morning. */
public final class OfficeCheck {
  private OfficeCheck() {}

  /**
   * What was found.
   *
   * @param lines one sentence each, errors first
   * @param isClean whether there are no errors; warnings do not count
   */
  public record Result(List<String> lines, boolean isClean) {
    public Result {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Loads tables and registers.
   *
   * @throws rickyard.tables.UnusableTablesException if config cannot be used
   */
  public static Result of(OfficeFolders folders, LocalDate asOf) {
    Tables tables = Tables.load(folders.officeConfig());
    Loaded loaded = Inputs.registers(folders, asOf, Optional.empty(), tables);
    List<String> lines = new ArrayList<>();
    loaded.fatal().stream().map(TableProblem::message).forEach(lines::add);
    loaded.badRows().stream().map(BadRow::message).distinct().forEach(lines::add);
    boolean isClean = lines.isEmpty();
    loaded.warnings().stream().map(w -> "note: " + w.message()).forEach(lines::add);
    lines.add(
        isClean
            ? "Registers and config can be used: "
                + Words.count(loaded.office().horses().size(), "horse")
                + ", "
                + Words.count(loaded.office().lots().size(), "lot")
                + ", "
                + Words.count(loaded.office().feeds().size(), "feed")
                + "."
            : "Mend these rows; a morning still runs where only single rows are bad.");
    return new Result(lines, isClean);
  }
}
