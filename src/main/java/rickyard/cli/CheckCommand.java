package rickyard.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeCheck;
import rickyard.morning.OfficeFolders;

/** Checks registers and config of an office. */
@Command(
    name = "check",
    description = "Check registers and config: every error with file, row and column.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  rickyard check my-office"})
final class CheckCommand implements Callable<Integer> {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Mixin private final Shape shape = new Shape();

  @Option(
      names = "--as-of",
      paramLabel = "YYYY-MM-DD",
      description = "The day for which dates are checked (default today).")
  private @Nullable LocalDate asOf;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  CheckCommand() {}

  @Override
  public Integer call() {
    shape.check(spec);
    OfficeFolders where = folders.folders(null);
    where.checkRegisters();
    OfficeCheck.Result result =
        OfficeCheck.of(where, asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf);
    shape.print(spec, ProblemList.table(result), () -> ProblemList.of(result));
    return result.isClean() ? Rickyard.DONE : Rickyard.USAGE;
  }
}
