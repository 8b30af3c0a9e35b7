package rickyard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rickyard.morning.OfficeFolders;

/** The office and where its parts lie, for every command that works on one. */
final class FolderOptions {
  @Parameters(index = "0", paramLabel = "OFFICE", description = "The office folder.")
  @SuppressWarnings("NullAway.Init") // picocli refuses a call without it
  private Path office;

  @Option(names = "--inbox", paramLabel = "DIR", description = "Reports (default OFFICE/inbox).")
  private @Nullable Path inbox;

  @Option(
      names = "--registers",
      paramLabel = "DIR",
      description = "The office's own tables (default OFFICE/registers).")
  private @Nullable Path registers;

  @Option(
      names = "--config",
      paramLabel = "DIR",
      description = "The office's changes to the built-in tables (default OFFICE/config).")
  private @Nullable Path config;

  @Option(
      names = "--ledger",
      paramLabel = "DIR|JDBC-URL",
      description =
          "What Rickyard remembers (default OFFICE/ledger); with jdbc:postgresql://HOST/DATABASE"
              + " its index is on that server. A folder and a server may both be given. Without"
              + " it the environment's RICKYARD_LEDGER counts.")
  private @Nullable List<String> ledger;

  @Spec(Spec.Target.MIXEE)
  @SuppressWarnings("NullAway.Init") // picocli fills it before a call
  private CommandSpec spec;

  OfficeFolders folders(@Nullable Path out) {
    OfficeFolders usual = OfficeFolders.of(office);
    LedgerChoice choice = choice(usual.ledger());
    return new OfficeFolders(
        office,
        inbox == null ? usual.inbox() : inbox,
        registers == null ? usual.registers() : registers,
        config == null ? usual.config() : config,
        choice.folder(),
        Optional.ofNullable(out),
        choice.server());
  }

  private LedgerChoice choice(Path usual) {
    try {
      return LedgerChoice.of(ledger == null ? List.of() : ledger, usual, System.getenv());
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
    }
  }
}
