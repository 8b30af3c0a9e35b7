package rickyard.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeFolders;
import rickyard.morning.Options;
import rickyard.morning.Workers;

/** Runs the morning of the invented valley that comes with the program. */
@Command(
    name = "demo",
    description = "Copy the invented valley's office out of the program and run its morning.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  rickyard demo --out try", ""})
final class DemoCommand implements Callable<Integer> {
  private static final LocalDate DEMO_DAY = LocalDate.of(2026, 3, 16);

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where the office is copied to (default ${DEFAULT-VALUE}).",
      defaultValue = "target/demo")
  private Path out = Path.of("target", "demo");

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  DemoCommand() {}

  @Override
  public Integer call() {
    Path office = out.resolve("office");
    DemoOffice.copyTo(office);
    return MorningRun.run(
        spec,
        OfficeFolders.of(office),
        Optional.of(DEMO_DAY),
        new Options("kg", new TreeSet<>(MorningCommand.OUTPUTS)),
        Workers.of(Workers.usual()),
        Optional.empty());
  }
}
