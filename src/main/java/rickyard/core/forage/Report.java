package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A laboratory's document as read.
 *
 * @param document SHA-256 of its bytes, lower-case hex
 * @param lab the laboratory's name as printed; empty if none
 * @param reportNo the report's number as printed; empty if none
 * @param revision the revision as a number, 0 for a first issue
 * @param replaces the report number that it says it replaces; empty if none
 * @param status what it says of its own standing
 * @param reportedOn the day of issue, if printed and unambiguous
 * @param samples at least one
 * @param notes doubts about the document as a whole
 * @param layout the page by its own words, without its figures
 */
public record Report(
    String document,
    String lab,
    String reportNo,
    int revision,
    String replaces,
    ReportStatus status,
    Optional<LocalDate> reportedOn,
    List<Sample> samples,
    List<Doubt> notes,
    Layout layout)
    implements Serializable {

  public Report {
    requireNonNull(document, "document");
    requireNonNull(lab, "lab");
    requireNonNull(reportNo, "reportNo");
    requireNonNull(replaces, "replaces");
    requireNonNull(status, "status");
    requireNonNull(reportedOn, "reportedOn");
    samples = List.copyOf(samples);
    notes = List.copyOf(notes);
    requireNonNull(layout, "layout");
    if (samples.isEmpty()) {
      throw new IllegalArgumentException("a report holds at least one sample");
    }
  }

  /** A report whose layout nobody described. */
  public Report(
      String document,
      String lab,
      String reportNo,
      int revision,
      String replaces,
      ReportStatus status,
      Optional<LocalDate> reportedOn,
      List<Sample> samples,
      List<Doubt> notes) {
    this(
        document,
        lab,
        reportNo,
        revision,
        replaces,
        status,
        reportedOn,
        samples,
        notes,
        Layout.none());
  }

  /** The report as it stands for one of its samples. */
  Report standingFor(Sample sample) {
    ReportStatus own = sample.standing().orElse(status);
    return own == status
        ? this
        : new Report(
            document, lab, reportNo, revision, replaces, own, reportedOn, samples, notes, layout);
  }
}
