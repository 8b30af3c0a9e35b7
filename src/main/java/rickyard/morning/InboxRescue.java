package rickyard.morning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import rickyard.intake.arrive.Arrival;
import rickyard.intake.arrive.Inventory;
import rickyard.intake.grid.ReadLimits;
import rickyard.ledger.Rescue;

/** Puts a damaged original back from the inbox; looks there only when something is damaged. */
final class InboxRescue implements Rescue {
  private final Path inbox;
  private final Consumer<String> voice;
  private Optional<Inventory> inventory = Optional.empty();
  private final Map<String, Arrival> byHash = new TreeMap<>();

  InboxRescue(Path inbox, Consumer<String> voice) {
    this.inbox = inbox;
    this.voice = voice;
  }

  @Override
  public synchronized Optional<byte[]> find(String sha256) {
    Optional<Inventory> found = inventory();
    Arrival arrival = byHash.get(sha256);
    return found.isEmpty() || arrival == null
        ? Optional.empty()
        : found.get().read(arrival, Optional::of, problem -> Optional.empty());
  }

  private Optional<Inventory> inventory() {
    if (inventory.isEmpty()) {
      try {
        Inventory frozen = Inventory.freeze(inbox, ReadLimits.DEFAULT);
        frozen.arrivals().stream()
            .filter(a -> a.problem().isEmpty())
            .forEach(a -> byHash.putIfAbsent(a.sha256(), a));
        inventory = Optional.of(frozen);
      } catch (IOException e) {
        // An inbox that cannot be listed rescues nothing; the morning itself says so.
        return Optional.empty();
      }
    }
    return inventory;
  }

  @Override
  public void say(String line) {
    voice.accept(line);
  }
}
