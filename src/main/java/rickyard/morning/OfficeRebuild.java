package rickyard.morning;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import rickyard.intake.isolate.IsolatedIntake;
import rickyard.ledger.Ledger;
import rickyard.ledger.Mornings;

/** Makes an office's database anew from originals and journal, every one of them checked. */
public final class OfficeRebuild {
  private OfficeRebuild() {}

  /**
   * Rebuilds; killed on the way, the same command does it again.
   *
   * @param progress told how far it is
   * @param openLog called with the ledger folder once the office is held
   * @return what to tell the person at the end
   * @throws OfficeHeldException if another run holds the office
   * @throws UsageException if there is no ledger
   */
  public static List<String> of(OfficeFolders folders, Progress progress, Consumer<Path> openLog) {
    if (!Files.isDirectory(folders.office())) {
      throw new UsageException("The office folder " + folders.office() + " does not exist.");
    }
    if (!Files.isDirectory(folders.ledger())) {
      throw new UsageException(
          "There is no ledger " + folders.ledger() + " yet; the first morning makes it.");
    }
    Readers readers = new Readers(Tables.load(folders.officeConfig()).dictionary());
    return new OfficeLedger(folders, progress)
        .rebuilt(() -> openLog.accept(folders.ledger()), ledger -> read(ledger, readers, progress));
  }

  private static List<String> read(Ledger ledger, Readers readers, Progress progress) {
    Mornings mornings = ledger.mornings();
    Map<String, String> names = new LinkedHashMap<>();
    mornings
        .seenBefore(mornings.count() + 1)
        .forEach(seen -> names.putIfAbsent(seen.sha256(), seen.path()));
    String digest = readers.digest();
    int done = 0;
    try (IsolatedIntake intake = readers.intake(1, progress)) {
      for (Map.Entry<String, String> document : names.entrySet()) {
        byte[] bytes = ledger.originals().read(document.getKey());
        ledger
            .results()
            .keepReading(document.getKey(), digest, intake.read(bytes, document.getValue()));
        progress.step("read", ++done, names.size());
      }
    }
    ledger.checkpoint();
    return List.of(
        "Rebuilt: "
            + Words.count(mornings.count(), "finished morning")
            + " and "
            + Words.count(names.size(), "original")
            + ", each checked and read again.");
  }
}
