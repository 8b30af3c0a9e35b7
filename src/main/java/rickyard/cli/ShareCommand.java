package rickyard.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeShare;
import rickyard.report.view.CoOpView;

/** Shares scarce hay out over all horses of a co-op. */
@Command(
    name = "share",
    description = "Who of all horses is to have which hay, and what is short.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  rickyard share my-office",
      "  rickyard share my-office --csv",
      "  rickyard share my-office --csv --table shortage",
      "  rickyard share my-office --json",
      "",
      "The most sensitive horses come first, then the price. No hay is given out twice;",
      "a horse that needs cleared hay gets no other. Nothing is written."
    })
final class ShareCommand implements Callable<Integer> {
  /** The tables that can be asked for. */
  enum Part {
    SHARE,
    SHORTAGE,
    RETESTS
  }

  @Mixin private final FolderOptions folders = new FolderOptions();

  @Option(names = "--csv", description = "A table as CSV, with the columns of the morning.")
  private boolean csv;

  @Option(
      names = "--table",
      paramLabel = "TABLE",
      description = "With --csv: share, shortage or retests (default share).")
  private @Nullable Part table;

  @Option(names = "--json", description = "Shares, shortages, retests and notes as JSON.")
  private boolean json;

  @Option(
      names = "--units",
      paramLabel = "kg|lb",
      defaultValue = "kg",
      description = "Unit of the scale that amounts are rounded for (default kg).")
  @SuppressWarnings("NullAway.Init") // picocli sets the default
  private String units;

  @Option(names = "--as-of", paramLabel = "YYYY-MM-DD", description = "The day (default today).")
  private @Nullable LocalDate asOf;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  ShareCommand() {}

  @Override
  public Integer call() {
    check();
    LocalDate day = asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
    CoOpView view =
        OfficeShare.of(
            folders.folders(null), day, units, ConsoleProgress.aside(spec.commandLine().getErr()));
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        json
            ? ShareList.json(view)
            : csv
                ? ShareList.csv(view, table == null ? Part.SHARE : table)
                : ShareList.of(view, units));
    out.flush();
    return Rickyard.DONE;
  }

  private void check() {
    if (csv && json) {
      throw new ParameterException(spec.commandLine(), "--csv or --json, not both");
    }
    if (table != null && !csv) {
      throw new ParameterException(spec.commandLine(), "--table goes with --csv");
    }
    if (!units.equals("kg") && !units.equals("lb")) {
      throw new ParameterException(
          spec.commandLine(), "--units is kg or lb, not \"" + units + "\"");
    }
  }
}
