package rickyard.ledger;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** A schema on a server, held by one session from the first look to the closing. */
final class ServerHome implements DatabaseHome {
  private final Path folder;
  private final DatabaseAddress address;
  private final ServerFaults faults;
  private final Consumer<String> voice;
  private Optional<ServerSession> session = Optional.empty();

  ServerHome(Path folder, DatabaseAddress address, Consumer<String> voice) {
    this.folder = folder;
    this.address = address;
    this.voice = voice;
    this.faults = new ServerFaults(address);
  }

  private ServerSession session() {
    if (session.isEmpty()) {
      session = Optional.of(ServerSession.open(address, OfficeId.of(folder), voice));
    }
    return session.get();
  }

  @Override
  public boolean isThere() {
    return session().schema().hasTable(Database.HISTORY);
  }

  /** Seals show what was changed in a row; the server looks after its files. */
  @Override
  public boolean isAltered() {
    return false;
  }

  @Override
  public Database open() {
    return ServerDatabase.open(session(), faults, this::release);
  }

  @Override
  public void remake(Consumer<Database> fill) {
    try {
      session().schema().requireNoneNewer();
      session().schema().empty();
      try (Database made = ServerDatabase.open(session(), faults, () -> {})) {
        fill.accept(made);
        made.checkpoint();
      }
    } catch (RuntimeException e) {
      throw faults.of(e).map(RuntimeException.class::cast).orElse(e);
    }
  }

  @Override
  public String aside() {
    return "";
  }

  @Override
  public Optional<LedgerException> refusal(Throwable failure) {
    return faults.of(failure);
  }

  /** Others may use the server with the later version; nothing of it is kept aside here. */
  @Override
  public boolean mayReplaceNewer() {
    return false;
  }

  @Override
  public void release() {
    session.ifPresent(ServerSession::close);
    session = Optional.empty();
  }
}
