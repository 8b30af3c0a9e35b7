package rickyard.morning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rickyard.ledger.DatabaseAddress;
import rickyard.ledger.LedgerPlace;

/**
 * Where an office keeps its things.
 *
 * @param office the office folder
 * @param inbox reports in
 * @param registers the office's own tables
 * @param config the office's overrides; need not exist
 * @param ledger ours
 * @param out outputs; empty for {@code OFFICE/mornings/DATE}
 * @param database a server that keeps the ledger's index; empty for a file in the ledger folder
 */
public record OfficeFolders(
    Path office,
    Path inbox,
    Path registers,
    Path config,
    Path ledger,
    Optional<Path> out,
    Optional<DatabaseAddress> database) {

  /** Everything in folders. */
  public OfficeFolders(
      Path office, Path inbox, Path registers, Path config, Path ledger, Optional<Path> out) {
    this(office, inbox, registers, config, ledger, out, Optional.empty());
  }

  /** The usual places inside an office folder. */
  public static OfficeFolders of(Path office) {
    return new OfficeFolders(
        office,
        office.resolve("inbox"),
        office.resolve("registers"),
        office.resolve("config"),
        office.resolve("ledger"),
        Optional.empty());
  }

  /** The same with the ledger's index on a server. */
  public OfficeFolders with(DatabaseAddress server) {
    return new OfficeFolders(office, inbox, registers, config, ledger, out, Optional.of(server));
  }

  /** Where the ledger is kept. */
  LedgerPlace place() {
    return new LedgerPlace(ledger, database);
  }

  public Path outFor(LocalDate asOf) {
    return out.orElseGet(() -> office.resolve("mornings").resolve(asOf.toString()));
  }

  /** The office's config folder, if it has one. */
  public Optional<Path> officeConfig() {
    return Files.isDirectory(config) ? Optional.of(config) : Optional.empty();
  }

  /**
   * Refuses folders that are missing or that would mix what is read with what is written.
   *
   * @throws UsageException naming the folder and the remedy
   */
  public void check() {
    requireFolder("office", office);
    requireFolder("inbox", inbox);
    if (!Files.isDirectory(registers) && !registers.equals(office.resolve("registers"))) {
      throw new UsageException("The registers folder " + registers + " does not exist.");
    }
    out.ifPresent(this::requireApart);
  }

  /**
   * Refuses an office without registers: there would be nothing to check.
   *
   * @throws UsageException naming the folder
   */
  public void checkRegisters() {
    requireFolder("office", office);
    if (!Files.isDirectory(registers)) {
      throw new UsageException("There is no registers folder " + registers + " to check.");
    }
  }

  private static void requireFolder(String what, Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new UsageException(
          "The "
              + what
              + " folder "
              + folder
              + " does not exist. An office is a folder with inbox/ and registers/ in it.");
    }
  }

  private void requireApart(Path chosen) {
    Map<String, Path> others = new TreeMap<>();
    others.put("inbox", inbox);
    others.put("registers", registers);
    others.put("config", config);
    others.put("ledger", ledger);
    Path real = real(chosen);
    others.forEach(
        (name, folder) -> {
          Path other = real(folder);
          if (real.startsWith(other) || other.startsWith(real)) {
            throw new UsageException(
                "--out "
                    + chosen
                    + " lies in, on or around the "
                    + name
                    + " folder; choose another.");
          }
        });
  }

  private static Path real(Path path) {
    Path at = path.toAbsolutePath().normalize();
    List<Path> missing = new java.util.ArrayList<>();
    while (at != null && !Files.exists(at)) {
      missing.add(0, at.getFileName());
      at = at.getParent();
    }
    try {
      Path result = at == null ? path.toAbsolutePath() : at.toRealPath();
      for (Path name : missing) {
        result = result.resolve(name);
      }
      return result;
    } catch (IOException e) {
      return path.toAbsolutePath().normalize();
    }
  }
}
