package rickyard.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rickyard.ledger.DatabaseAddress;
import rickyard.morning.OfficeFolders;
import rickyard.morning.UsageException;
import rickyard.morning.Worker;

/** Reads documents for mornings that ask for workers. */
@Command(
    name = "worker",
    description = "Read documents for mornings that are run with --workers remote.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  rickyard worker my-office --ledger jdbc:postgresql://db.example:5432/hay",
      "  rickyard worker --ledger jdbc:postgresql://db.example:5432/hay --workers 4",
      "  rickyard worker --ledger jdbc:postgresql://db.example:5432/hay --config copy",
      "",
      "It needs no folder of the office: documents come through the server. OFFICE says",
      "which one is meant where a database holds several, and where its changes to the",
      "built-in tables are. It stays until it is ended, at any moment: what it had in",
      "hand is read by another. It reads only for runs of the same program with the same",
      "tables."
    })
final class WorkerCommand implements Callable<Integer> {
  private static final int MOST = 64;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "OFFICE",
      description = "The office folder, if it is at hand.")
  private @Nullable Path office;

  @Option(
      names = "--config",
      paramLabel = "DIR",
      description = "The office's changes to the built-in tables (default OFFICE/config).")
  private @Nullable Path config;

  @Option(
      names = "--ledger",
      paramLabel = "DIR|JDBC-URL",
      description =
          "The server of the office's ledger, jdbc:postgresql://HOST/DATABASE; without it the"
              + " environment's RICKYARD_LEDGER counts. A ledger folder besides says which office"
              + " is meant.")
  private @Nullable List<String> ledger;

  @Option(
      names = "--workers",
      paramLabel = "N",
      defaultValue = "1",
      description = "Documents read at a time (default ${DEFAULT-VALUE}).")
  private int workers;

  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli fills spec before call
  WorkerCommand() {}

  @Override
  public Integer call() {
    if (workers < 1 || workers > MOST) {
      throw new ParameterException(
          spec.commandLine(), "--workers is 1 to " + MOST + ", not " + workers);
    }
    Optional<OfficeFolders> usual = Optional.ofNullable(office).map(OfficeFolders::of);
    usual.ifPresent(folders -> requireFolder(folders.office()));
    Optional.ofNullable(config).ifPresent(WorkerCommand::requireFolder);
    Path none = Path.of("");
    LedgerChoice choice = choice(usual.map(OfficeFolders::ledger).orElse(none));
    DatabaseAddress server =
        choice
            .server()
            .orElseThrow(
                () ->
                    new UsageException(
                        "A worker needs the server of the office's ledger: give --ledger"
                            + " jdbc:postgresql://HOST/DATABASE, as for the morning with --workers"
                            + " remote."));
    new Worker(
            server,
            Optional.of(choice.folder()).filter(folder -> !folder.equals(none)),
            Optional.ofNullable(config).or(() -> usual.flatMap(OfficeFolders::officeConfig)),
            workers,
            new ConsoleProgress(spec.commandLine().getOut(), Ansi.AUTO.enabled()))
        .run();
    return Rickyard.DONE;
  }

  private static void requireFolder(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new UsageException("The folder " + folder + " does not exist.");
    }
  }

  private LedgerChoice choice(Path usual) {
    try {
      return LedgerChoice.of(ledger == null ? List.of() : ledger, usual, System.getenv());
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
    }
  }
}
