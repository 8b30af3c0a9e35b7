package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** A file below the ledger folder. */
final class FileHome implements DatabaseHome {
  private final Path folder;

  FileHome(Path folder) {
    this.folder = folder;
  }

  private Path db() {
    return folder.resolve("db");
  }

  private Path old() {
    return folder.resolve("set-aside").resolve("db");
  }

  @Override
  public boolean isThere() {
    return Files.exists(db().resolve(ClosedMark.DATABASE));
  }

  @Override
  public boolean isAltered() {
    return ClosedMark.isAltered(db());
  }

  @Override
  public Database open() {
    return FileDatabase.open(db());
  }

  @Override
  public void remake(Consumer<Database> fill) {
    try (Database made = FileDatabase.open(folder.resolve("tmp").resolve("db"))) {
      fill.accept(made);
      made.checkpoint();
    }
    swap();
  }

  /** The new database takes the place of the old; killed in between, the next opening makes one. */
  private void swap() {
    try {
      DurableFiles.privateFolder(folder.resolve("set-aside"));
      if (Files.exists(db())) {
        DurableFiles.remove(old());
        DurableFiles.rename(db(), old());
      }
      DurableFiles.rename(folder.resolve("tmp").resolve("db"), db());
    } catch (IOException e) {
      throw LedgerException.cannotWrite(folder, e);
    }
  }

  @Override
  public String aside() {
    return "; the old one is in " + old();
  }

  @Override
  public Optional<LedgerException> refusal(Throwable failure) {
    return DatabaseFaults.isInUse(failure)
        ? Optional.of(
            new LedgerException(
                "The ledger's database in "
                    + db()
                    + " is open in another program; close that first.",
                failure))
        : Optional.empty();
  }

  @Override
  public boolean mayReplaceNewer() {
    return true;
  }

  @Override
  public void release() {
    // A file is held by whoever has it open.
  }
}
