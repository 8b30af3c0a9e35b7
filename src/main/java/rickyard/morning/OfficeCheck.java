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
   * @param errors what has to be mended, what stops a morning first
   * @param notes what is only noticed
   * @param counts what could be read, in words
   */
  public record Result(List<TableProblem> errors, List<TableProblem> notes, String counts) {
    public Result {
      errors = List.copyOf(errors);
      notes = List.copyOf(notes);
    }

    /** Whether there are no errors; notes do not count. */
    public boolean isClean() {
      return errors.isEmpty();
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
    List<TableProblem> errors = new ArrayList<>(loaded.fatal());
    loaded.badRows().stream().map(BadRow::problem).forEach(errors::add);
    String counts =
        Words.count(loaded.office().horses().size(), "horse")
            + ", "
            + Words.count(loaded.office().lots().size(), "lot")
            + ", "
            + Words.count(loaded.office().feeds().size(), "feed");
    return new Result(errors.stream().distinct().toList(), loaded.warnings(), counts);
  }
}
