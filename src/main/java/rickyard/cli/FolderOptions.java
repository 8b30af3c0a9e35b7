package rickyard.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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
      paramLabel = "DIR",
      description = "What Rickyard remembers (default OFFICE/ledger).")
  private @Nullable Path ledger;

  OfficeFolders folders(@Nullable Path out) {
    OfficeFolders usual = OfficeFolders.of(office);
    return new OfficeFolders(
        office,
        inbox == null ? usual.inbox() : inbox,
        registers == null ? usual.registers() : registers,
        config == null ? usual.config() : config,
        ledger == null ? usual.ledger() : ledger,
        Optional.ofNullable(out));
  }
}
