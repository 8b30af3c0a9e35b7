package rickyard.ledger;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where an office's ledger is kept.
 *
 * @param folder originals, journal, lock and logs; always a folder
 * @param server the database that keeps the index; empty for a file in the folder
 */
public record LedgerPlace(Path folder, Optional<DatabaseAddress> server) {

  /** All of it in one folder. */
  public static LedgerPlace of(Path folder) {
    return new LedgerPlace(folder, Optional.empty());
  }

  /** Where the index is, as part of a sentence. */
  public String index() {
    return server.map(DatabaseAddress::words).orElseGet(() -> folder.resolve("db").toString());
  }

  /** The sentence for a failure that the server is to blame for and no damage of the tables. */
  public Optional<LedgerException> refusal(Throwable failure) {
    return server.flatMap(address -> new ServerFaults(address).of(failure));
  }
}
