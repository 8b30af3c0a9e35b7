package rickyard.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeAbout;
import rickyard.report.about.AboutCard;

/** Half a screen for the ringing phone. */
@Command(
    name = "about",
    description = "A horse, client or lot for the ringing phone: ration, verdict, told, hay left.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  rickyard about my-office merlin",
      "  rickyard about my-office \"Tollow Ridge\"",
      "  rickyard about my-office HAV-1 --json",
      "",
      "A key, a name or a part of either; where it means several, they are listed."
    })
final class AboutCommand implements Callable<Integer> {
  @Mixin private final FolderOptions folders = new FolderOptions();

  @Mixin private final Shape shape = new Shape();

  @Parameters(index = "1", paramLabel = "NAME", description = "A horse, client or lot.")
  @SuppressWarnings("NullAway.Init") // picocli refuses a call without it
  private String name;

  @Option(
      names = "--units",
      paramLabel = "kg|lb",
      defaultValue = "kg",
      description = "Unit of amounts (default kg).")
  @SuppressWarnings("NullAway.Init") // picocli sets the default
  private String units;

  @Option(names = "--as-of", paramLabel = "YYYY-MM-DD", description = "The day (default today).")
  private @Nullable LocalDate asOf;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  AboutCommand() {}

  @Override
  public Integer call() {
    shape.check(spec);
    if (!units.equals("kg") && !units.equals("lb")) {
      throw new ParameterException(
          spec.commandLine(), "--units is kg or lb, not \"" + units + "\"");
    }
    if (name.isBlank()) {
      throw new ParameterException(spec.commandLine(), "Whom or what? A name is needed.");
    }
    LocalDate day = asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
    List<AboutCard> cards =
        OfficeAbout.open(
                folders.folders(null),
                day,
                units,
                ConsoleProgress.aside(spec.commandLine().getErr()))
            .of(name);
    shape.print(spec, AboutList.table(cards), () -> AboutList.of(cards));
    return Rickyard.DONE;
  }
}
