package rickyard.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeSort;

/** Sorts lots by suitability. */
@Command(
    name = "sort",
    description = "Lots by suitability as the only forage; needs reports only.",
    mixinStandardHelpOptions = true,
    footer = {"", "Examples:", "  rickyard sort my-office", "  rickyard sort my-office --for ID"})
final class SortCommand implements Callable<Integer> {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Option(names = "--for", paramLabel = "GROUP", description = "How lots stand for one group.")
  private @Nullable String group;

  @Option(names = "--as-of", paramLabel = "YYYY-MM-DD", description = "The day (default today).")
  private @Nullable LocalDate asOf;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  SortCommand() {}

  @Override
  public Integer call() {
    LocalDate day = asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
    OfficeSort.of(
            folders.folders(null),
            day,
            Optional.ofNullable(group),
            ConsoleProgress.aside(spec.commandLine().getErr()))
        .forEach(spec.commandLine().getOut()::println);
    spec.commandLine().getOut().flush();
    return Rickyard.DONE;
  }
}
