package rickyard.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Keeps a ledger of an earlier version as it was: what brings it up to date may be wrong. */
final class Upgrade {
  private final Path folder;
  private final Journal journal;
  private final Rescue rescue;

  Upgrade(Path folder, Journal journal, Rescue rescue) {
    this.folder = folder;
    this.journal = journal;
    this.rescue = rescue;
  }

  /** Copies database and journal, once and whole; originals never change. */
  void keepCopy(Optional<Head> head) {
    Path copy = folder.resolve("before-" + Head.FORMAT);
    if (!isOlder(head) || Files.exists(copy)) {
      return;
    }
    Path temporary = folder.resolve(copy.getFileName() + DurableFiles.TEMPORARY);
    try {
      for (String part : new String[] {"db", "journal"}) {
        if (Files.isDirectory(folder.resolve(part))) {
          DurableFiles.copy(folder.resolve(part), temporary.resolve(part));
        }
      }
      DurableFiles.rename(temporary, copy);
    } catch (IOException e) {
      throw LedgerException.cannotWrite(folder, e);
    }
    rescue.say("upgrade  the ledger of an earlier version is kept in " + copy);
  }

  /** Before version 3 the journal had no head and its entries no seal. */
  private boolean isOlder(Optional<Head> head) {
    if (head.isPresent()) {
      return head.get().format() < Head.FORMAT;
    }
    return !journal.hasHead()
        && Files.isDirectory(folder.resolve("db"))
        && !journal.numbers().isEmpty()
        && journal.numbers().stream().allMatch(this::isUnsealed);
  }

  private boolean isUnsealed(int number) {
    return journal.find(number).map(e -> e.format() < JournalEntry.FORMAT).orElse(true);
  }
}
