package rickyard.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import rickyard.morning.Morning;
import rickyard.morning.MorningEnd;
import rickyard.morning.OfficeFolders;
import rickyard.morning.Options;
import rickyard.morning.Workers;
import rickyard.post.MailSettings;

/** Starts a morning and prints its lines; the demo runs the same way. */
final class MorningRun {
  private MorningRun() {}

  static int run(
      CommandSpec spec,
      OfficeFolders folders,
      Optional<LocalDate> asOf,
      Options options,
      Workers workers,
      Optional<MailSettings> mail) {
    PrintWriter out = spec.commandLine().getOut();
    ConsoleProgress progress = new ConsoleProgress(out, Ansi.AUTO.enabled());
    folders.check();
    return Ending.during(
        spec.commandLine().getErr(),
        () -> {
          MorningEnd end =
              new Morning(folders, options, workers, progress, RunLog::open, mail)
                  .run(asOf, LocalDate.now(ZoneId.systemDefault()));
          end.lines().forEach(progress::line);
          return end.postTrouble() ? Rickyard.FAILED : Rickyard.DONE;
        });
  }
}
