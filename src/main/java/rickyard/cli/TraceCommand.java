package rickyard.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeTrace;

/** Shows how a number came about. */
@Command(
    name = "trace",
    description = "How a number of a lot or horse came about, down to page, row and column.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  rickyard trace my-office HAV-1",
      "  rickyard trace my-office merlin NSC_WSC"
    })
final class TraceCommand implements Callable<Integer> {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Mixin private final Shape shape = new Shape();

  @Parameters(index = "1", paramLabel = "LOT|HORSE", description = "A lot, feed or horse id.")
  @SuppressWarnings("NullAway.Init") // picocli refuses a call without it
  private String name;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "QUANTITY",
      description = "An analyte code, for example NSC_WSC, STARCH, CA.")
  private @Nullable String quantity;

  @Option(names = "--as-of", paramLabel = "YYYY-MM-DD", description = "The day (default today).")
  private @Nullable LocalDate asOf;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  TraceCommand() {}

  @Override
  public Integer call() {
    shape.check(spec);
    LocalDate day = asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
    List<String> trace =
        OfficeTrace.of(
            folders.folders(null),
            day,
            name,
            Optional.ofNullable(quantity),
            ConsoleProgress.aside(spec.commandLine().getErr()));
    shape.print(spec, TraceList.table(name, trace), () -> TraceList.of(trace));
    return Rickyard.DONE;
  }
}
