package rickyard.intake;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.Optional;
import rickyard.core.forage.Report;

/**
 * What became of one document: a file, or a part inside a mail or an archive.
 *
 * @param part names inside the containers, joined by {@code !}; empty for the file itself
 * @param sha256 of its bytes
 * @param bytes their number
 * @param kind csv, pdf, zip, mail …
 * @param container whether it only holds other documents
 * @param report what it says, empty if it is a container or says nothing
 * @param code stable code where there is no report; empty otherwise
 * @param reason a plain sentence for the code
 */
public record ReadDocument(
    String part,
    String sha256,
    long bytes,
    String kind,
    boolean container,
    Optional<Report> report,
    String code,
    String reason)
    implements Serializable {

  public ReadDocument {
    requireNonNull(part, "part");
    requireNonNull(sha256, "sha256");
    requireNonNull(kind, "kind");
    requireNonNull(report, "report");
    requireNonNull(code, "code");
    requireNonNull(reason, "reason");
    if (!container && report.isEmpty() && code.isEmpty()) {
      throw new IllegalArgumentException("a document without a report must say why: " + part);
    }
  }
}
