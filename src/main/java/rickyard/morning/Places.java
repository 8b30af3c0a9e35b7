package rickyard.morning;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rickyard.core.forage.Report;
import rickyard.core.quantity.Place;
import rickyard.intake.ReadDocument;
import rickyard.ledger.ArrivalRow;

/** In which file and part a document lies: this morning's path first, else the first sighting. */
final class Places {
  private final Map<String, Where> byDocument = new HashMap<>();

  /**
   * A document's whereabouts.
   *
   * @param file relative path
   * @param part inside a container; empty otherwise
   * @param report what it says, empty if nothing
   * @param isEarlier whether an earlier morning held it
   */
  record Where(String file, String part, Optional<Report> report, boolean isEarlier) {}

  Places(FilesInHand files) {
    for (ArrivalRow arrival : files.arrivals()) {
      if (arrival.problemCode().isEmpty()) {
        add(files, arrival.sha256(), arrival.path());
      }
    }
    files.first().forEach((hash, seen) -> add(files, hash, seen.path()));
  }

  private void add(FilesInHand files, String hash, String path) {
    for (ReadDocument document : files.read().get(hash).documents()) {
      Where old = byDocument.get(document.sha256());
      boolean isEarlier = files.isKnown(hash);
      if (old == null) {
        byDocument.put(
            document.sha256(), new Where(path, document.part(), document.report(), isEarlier));
      } else if (isEarlier && !old.isEarlier()) {
        byDocument.put(
            document.sha256(), new Where(old.file(), old.part(), old.report(), true));
      }
    }
  }

  Optional<Where> find(String document) {
    return Optional.ofNullable(byDocument.get(document));
  }

  String file(String document) {
    return find(document).map(Where::file).orElse("");
  }

  String part(String document) {
    return find(document).map(Where::part).orElse("");
  }

  /** File and part of a place, in words. */
  String words(Place place) {
    String part = part(place.document());
    return file(place.document()) + (part.isEmpty() ? "" : ", part " + part);
  }
}
