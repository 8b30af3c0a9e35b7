package rickyard.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeFolders;
import rickyard.morning.Options;
import rickyard.morning.Workers;
import rickyard.post.MailSettings;
import rickyard.report.Outputs;
import rickyard.report.view.PaperSize;

/** Runs one morning of an office. */
@Command(
    name = "morning",
    description = "Read the inbox, judge every lot, advise every horse, write the outputs.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  rickyard morning my-office",
      "  rickyard morning my-office --as-of 2026-03-16 --units lb --out today",
      "  rickyard morning my-office --send",
      "  rickyard morning my-office --ledger jdbc:postgresql://db.example:5432/hay",
      "  rickyard morning my-office --workers remote \\",
      "      --ledger jdbc:postgresql://db.example:5432/hay",
      "",
      "The same command after a crash goes on where it stopped; run again with nothing new it says",
      "so and changes nothing."
    })
final class MorningCommand implements Callable<Integer> {
  static final List<String> OUTPUTS = Outputs.ALL;

  @Mixin private final FolderOptions folders = new FolderOptions();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Outputs (default OFFICE/mornings/DATE).")
  private @Nullable Path out;

  @Option(
      names = "--as-of",
      paramLabel = "YYYY-MM-DD",
      description = "The day of this morning (default today).")
  private @Nullable LocalDate asOf;

  @Option(names = "--units", paramLabel = "kg|lb", description = "Units of pages (default kg).")
  private String units = "kg";

  @Option(
      names = "--outputs",
      paramLabel = "LIST",
      split = ",",
      description =
          "Which outputs: data, page, pdf, sheets, letters, calendar, xlsx (default all).",
      defaultValue = "data,page,pdf,sheets,letters,calendar,xlsx")
  private List<String> outputs = OUTPUTS;

  @Option(
      names = "--paper",
      paramLabel = "A4|letter",
      description = "Paper of sheets and summary.pdf (default A4).")
  private String paper = "A4";

  @Option(
      names = "--workers",
      paramLabel = "N|remote",
      converter = WorkersOption.class,
      description = {
        "Documents read at a time (default: cores, up to 4); or remote: have them read by",
        "rickyard worker on this and other machines, with the same --ledger on a server."
      })
  private Workers workers = Workers.of(Workers.usual());

  @Option(
      names = "--send",
      description = {
        "Send the alerts, and the letters released in decisions.csv, through the server of",
        "config/mail.properties. Without it nothing is sent."
      })
  private boolean send;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  MorningCommand() {}

  @Override
  public Integer call() {
    if (!units.equals("kg") && !units.equals("lb")) {
      throw new ParameterException(spec.commandLine(), "--units is kg or lb, not " + units);
    }
    for (String output : outputs) {
      if (!OUTPUTS.contains(output)) {
        throw new ParameterException(
            spec.commandLine(), "--outputs knows " + OUTPUTS + ", not " + output);
      }
    }
    OfficeFolders where = folders.folders(out);
    return MorningRun.run(
        spec,
        where,
        Optional.ofNullable(asOf),
        new Options(units, new TreeSet<>(outputs), size()),
        workers,
        mail(where));
  }

  private Optional<MailSettings> mail(OfficeFolders where) {
    if (!send) {
      return Optional.empty();
    }
    if (!outputs.contains("letters")) {
      throw new ParameterException(
          spec.commandLine(), "--send needs letters among the --outputs; nothing else is sent");
    }
    return Optional.of(MailSettings.load(where.officeConfig(), System.getenv()));
  }

  private PaperSize size() {
    return Arrays.stream(PaperSize.values())
        .filter(size -> size.code().equalsIgnoreCase(paper))
        .findFirst()
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(), "--paper is A4 or letter, not " + paper));
  }
}
