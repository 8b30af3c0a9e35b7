package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

/**
 * The outcome of one document.
 *
 * @param document SHA-256 of its bytes
 * @param outcome accepted, question, duplicate or superseded
 * @param reasonCode stable code of the sample that decides it
 * @param reason in plain words
 */
public record SettledReport(String document, String outcome, String reasonCode, String reason) {
  public SettledReport {
    requireNonNull(document, "document");
    requireNonNull(outcome, "outcome");
    requireNonNull(reasonCode, "reasonCode");
    requireNonNull(reason, "reason");
  }
}
