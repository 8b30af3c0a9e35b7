package rickyard.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rickyard.ledger.DatabaseAddress;

/**
 * What {@code --ledger} chose.
 *
 * @param folder the ledger folder
 * @param server the database of its index, if it is on a server
 */
record LedgerChoice(Path folder, Optional<DatabaseAddress> server) {
  /** Counts where the option is not given. */
  static final String VARIABLE = "RICKYARD_LEDGER";

  /**
   * Reads the option.
   *
   * @param given its values, at most a folder and an address
   * @param usual the folder where none is given
   * @param environment the process's variables
   * @throws IllegalArgumentException with a sentence; no address is quoted in it
   */
  static LedgerChoice of(List<String> given, Path usual, Map<String, String> environment) {
    String standing = environment.getOrDefault(VARIABLE, "");
    List<String> values =
        given.isEmpty() && !standing.isEmpty() ? List.of(standing) : List.copyOf(given);
    List<String> addresses = values.stream().filter(DatabaseAddress::isMeant).toList();
    List<String> folders = values.stream().filter(v -> !DatabaseAddress.isMeant(v)).toList();
    if (addresses.size() > 1 || folders.size() > 1) {
      throw new IllegalArgumentException("--ledger takes one folder and one database at most");
    }
    return new LedgerChoice(
        folders.stream().findFirst().map(LedgerChoice::path).orElse(usual),
        addresses.stream().findFirst().map(a -> DatabaseAddress.parse(a, environment)));
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new IllegalArgumentException("--ledger is no folder: " + e.getReason(), e);
    }
  }
}
