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
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeSort;
import rickyard.report.view.LotRow;

/** Sorts lots by suitability. */
@Command(
    name = "sort",
    description = "Lots by suitability as the only forage; needs reports only.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  rickyard sort my-office",
      "  rickyard sort my-office --for ID",
      "  rickyard sort my-office --for ID --csv"
    })
final class SortCommand implements Callable<Integer> {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Mixin private final Shape shape = new Shape();

  @Option(names = "--for", paramLabel = "GROUP", description = "How lots stand for one group.")
  private @Nullable String group;

  @Option(names = "--as-of", paramLabel = "YYYY-MM-DD", description = "The day (default today).")
  private @Nullable LocalDate asOf;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  SortCommand() {}

  @Override
  public Integer call() {
    shape.check(spec);
    LocalDate day = asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
    Optional<String> asked = Optional.ofNullable(group);
    List<LotRow> rows =
        OfficeSort.of(
            folders.folders(null), day, asked, ConsoleProgress.aside(spec.commandLine().getErr()));
    shape.print(spec, LotList.table(rows, asked), () -> LotList.of(rows, asked));
    return Rickyard.DONE;
  }
}
