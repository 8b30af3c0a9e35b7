package rickyard.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeRebuild;

/** Makes the ledger's database anew. */
@Command(
    name = "rebuild",
    description = "Check originals and journal and make the ledger's database anew from them.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example:",
      "  rickyard rebuild my-office",
      "",
      "Changes no result: every later morning is as it would have been. A database in a file is",
      "kept in ledger/set-aside; on a server the office's own tables are emptied. Interrupted, it can be run again."
    })
final class RebuildCommand implements Callable<Integer> {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  RebuildCommand() {}

  @Override
  public Integer call() {
    ConsoleProgress progress =
        new ConsoleProgress(spec.commandLine().getOut(), Ansi.AUTO.enabled());
    return Ending.during(
        spec.commandLine().getErr(),
        () -> {
          OfficeRebuild.of(folders.folders(null), progress, RunLog::open).forEach(progress::line);
          return Rickyard.DONE;
        });
  }
}
